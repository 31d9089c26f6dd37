import { fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { reportsOfBook } from "../shared/reports.ts";
import { kindName } from "../shared/words.ts";

const directive = (topic: string) => fromMemory("Directive 2014/68/EU", undefined, topic);

export const declarationLast = rule({
  id: "declaration-last",
  title: "No evidence of the declaration of conformity is later than the declaration",
  basis: directive("Annex IV and the conformity assessment procedures: the declaration closes them"),
  kind: "declaration",
  severity: "nonconformity",
  owner: "authorised signatory",
  inputs: {
    day: date("date"),
    certificates: anyOf(things("equipment.<body-certificate:equipment>", { day: date("date") })),
    tests: anyOf(things("equipment.<pressure-test:equipment>", { day: date("date") })),
    valves: anyOf(things("equipment.<safety-valve:equipment>", { day: optional(date("bench.date")) })),
    ...reportsOfBook,
    nonconformities: anyOf(things("book.nonconformity-report", { day: optional(date("closed")) })),
    inspections: anyOf(things('book.document[type="final-inspection-report"].revisions[]', { day: date("approved") })),
  },
  *check({ day, ...evidence }, declaration) {
    const late = Object.values(evidence)
      .flat()
      .flatMap((one) =>
        one.day !== undefined && canPrecede(one.day, day) === "no"
          ? [{ at: one, message: `${kindName(one.$.kind)} ${one.$.name} of ${one.day.text}` }]
          : [],
      );
    if (late.length > 0)
      yield {
        at: "day",
        message: `declaration ${declaration.name} was signed on ${day.text}, before its evidence was complete`,
        why: `later: ${late.map(({ message }) => message).join("; ")}`,
        hint: "correct the wrong date, or have the declaration signed again",
        related: late,
      };
  },
  examples: [
    {
      name: "on the day of the last certificate",
      given: { day: "2026-07-20", certificates: [{ day: "2026-07-20" }] },
      objections: [],
    },
    {
      name: "a day before the certificate",
      given: { day: "2026-07-19", certificates: [{ $: "BC-02", day: "2026-07-20" }] },
      objections: ["declaration X-01 was signed on 2026-07-19, before its evidence was complete"],
    },
    {
      name: "before the final inspection",
      given: { day: "2026-07-19", inspections: [{ $: "DOC-09#0", day: "2026-07-20" }] },
      objections: ["declaration X-01 was signed on 2026-07-19, before its evidence was complete"],
    },
    {
      name: "before the last nonconformity was closed",
      given: { day: "2026-07-19", nonconformities: [{ day: "2026-07-20" }, {}] },
      objections: ["declaration X-01 was signed on 2026-07-19, before its evidence was complete"],
    },
  ],
});

export const declarationStandard = rule({
  id: "declaration-standard",
  title: "A declaration names the standard the equipment was designed to, in its edition",
  basis: directive("Annex IV: standards and other specifications used"),
  kind: "declaration",
  severity: "nonconformity",
  owner: "authorised signatory",
  inputs: {
    standards: list(thing("standards[]", { standard: text("standard"), edition: text("edition") })),
    design: thing("equipment.designStandard", { standard: text("standard"), edition: text("edition") }),
  },
  *check({ standards, design }, declaration) {
    const named = standards.filter(
      ({ standard }) => standard === design.standard || standard.startsWith(`${design.standard}-`),
    );
    if (!named.some(({ edition }) => edition === design.edition))
      yield {
        at: "standards",
        message: `declaration ${declaration.name} does not name ${design.standard}:${design.edition}, to which the equipment was designed`,
        why: `it names ${standards.map(({ standard, edition }) => `${standard}:${edition}`).join(", ")}`,
        hint: "correct the list of standards, or the standard of the equipment",
        related: [{ at: [design, "standard"], message: "stated here" }],
      };
  },
  examples: [
    {
      name: "named",
      given: {
        standards: [{ standard: "EN 13445", edition: "2021" }],
        design: { standard: "EN 13445", edition: "2021" },
      },
      objections: [],
    },
    {
      name: "its parts named",
      given: {
        standards: [{ standard: "EN 13445-3", edition: "2021" }],
        design: { standard: "EN 13445", edition: "2021" },
      },
      objections: [],
    },
    {
      name: "another edition",
      given: {
        standards: [{ standard: "EN 13445", edition: "2014" }],
        design: { standard: "EN 13445", edition: "2021" },
      },
      objections: ["declaration X-01 does not name EN 13445:2021, to which the equipment was designed"],
    },
    {
      name: "not named",
      given: {
        standards: [{ standard: "EN 10028-2", edition: "2017" }],
        design: { standard: "EN 13445", edition: "2021" },
      },
      objections: ["declaration X-01 does not name EN 13445:2021, to which the equipment was designed"],
    },
  ],
});

export const certificateValid = rule({
  id: "body-certificate-valid",
  title: "A certificate of the inspection body is valid on the day of the declaration",
  basis: directive("type examination and approval of quality systems: period of validity"),
  kind: "declaration",
  severity: "nonconformity",
  owner: "inspection body",
  inputs: {
    day: date("date"),
    certificates: anyOf(things("bodyCertificates[]", { to: optional(date("validTo")), type: text("type") })),
  },
  *check({ day, certificates }, declaration) {
    for (const certificate of certificates)
      if (certificate.to !== undefined && canPrecede(day, certificate.to) === "no")
        yield {
          at: [certificate, "to"],
          on: certificate,
          message: `certificate ${certificate.$.name} (${certificate.type}) ended on ${certificate.to.text}; declaration ${declaration.name} is of ${day.text}`,
          why: "the declaration rests on it",
          hint: "add the certificate that prolongs it, or correct the wrong date",
          related: [{ at: "day", message: `declared on ${day.text}` }],
        };
  },
  examples: [
    {
      name: "on its last day",
      given: { day: "2026-07-20", certificates: [{ to: "2026-07-20", type: "EU-type examination" }] },
      objections: [],
    },
    {
      name: "without an end",
      given: { day: "2026-07-20", certificates: [{ type: "product verification" }] },
      objections: [],
    },
    {
      name: "a day after its end",
      given: { day: "2026-07-21", certificates: [{ $: "BC-01", to: "2026-07-20", type: "EU-type examination" }] },
      objections: ["certificate BC-01 (EU-type examination) ended on 2026-07-20; declaration X-01 is of 2026-07-21"],
    },
  ],
});

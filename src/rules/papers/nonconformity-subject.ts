import { ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, flag, list, optional, text, thing, things } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";
import { correctedBy, nonconformityCourse as basis } from "../shared/nonconformities.ts";
import { kindName } from "../shared/words.ts";

export const repairDecided = rule({
  ...basis,
  id: "repair-decided",
  title: "A repair agrees with the nonconformity report it was made for",
  kind: "repair",
  when: [{ path: "nonconformity", exists: true }],
  severity: "nonconformity",
  inputs: {
    joint: text("joint"),
    welders: anyOf(list(text("welders[]"))),
    dresser: optional(text("dressing.by")),
    report: thing("nonconformity", {
      disposition: text("disposition"),
      corrector: optional(text("correctedBy")),
      closer: optional(text("closedBy")),
    }),
  },
  *check({ joint, welders, dresser, report }, repair) {
    const { disposition, corrector, closer } = report;
    const makers = dresser === undefined ? welders : [dresser];
    const did = dresser === undefined ? "welded" : "dressed it";
    const faults = [
      correctedBy.includes(disposition) ? "" : `ends in "${disposition}"`,
      corrector === undefined || corrector === closer || makers.length === 0 || makers.includes(corrector)
        ? ""
        : `names ${corrector} as who corrected, and not ${makers.join(" or ")}, who ${did}`,
    ].filter((fault) => fault !== "");
    if (faults.length > 0)
      yield {
        at: report,
        message: `repair ${repair.name} of joint ${joint} was made for nonconformity report ${report.$.name}, which ${faults.join(" and ")}`,
        why: "the repair names the report",
        hint: "compare both with their originals and correct the wrong one",
        related: [{ at: report, message: "stated here" }],
      };
  },
  examples: [
    { name: "they agree", given: made({}), objections: [] },
    { name: "nobody named who corrected yet", given: made({ corrector: undefined }), objections: [] },
    {
      name: "scrapped",
      given: made({ disposition: "scrap" }),
      objections: ['repair X-01 of joint C2 was made for nonconformity report NCR-01, which ends in "scrap"'],
    },
    {
      name: "another welder",
      given: made({ corrector: "S1" }),
      objections: [
        "repair X-01 of joint C2 was made for nonconformity report NCR-01, which names S1 as who corrected, and not W07, who welded",
      ],
    },
  ],
});

function made(changes: Readonly<Record<string, string | undefined>>) {
  const report = { disposition: "rework", corrector: "W07", ...changes };
  const stated = Object.fromEntries(
    Object.entries<string | undefined>(report).filter(([, value]) => value !== undefined),
  );
  return { joint: "C2", welders: ["W07"], report: { $: "NCR-01", ...stated } };
}

/** What contains pressure makes a report about it one that concerns pressure. */
export const pressureConcerned: readonly Rule[] = ["part", "joint"].map((kind) =>
  rule({
    ...basis,
    id: `${kind}-pressure-related`,
    title: `A report that affects a ${kind} under pressure says that it concerns pressure`,
    basis: ownChoice("what concerns pressure is closed before the test, and the body that inspects is asked"),
    kind,
    when: [
      { path: "pressureBearing", equals: true },
      { path: "<nonconformity-report:affected[]>", exists: true },
    ],
    severity: "query",
    inputs: { reports: anyOf(things("<nonconformity-report:affected[]>", { related: flag("pressureRelated") })) },
    *check({ reports }, subject) {
      for (const report of reports)
        if (!report.related)
          yield {
            at: [report, "related"],
            on: report,
            message: `nonconformity report ${report.$.name} says that it does not concern pressure, and affects ${kind} ${subject.name}, which contains it`,
            why: `${kind} ${subject.name} is recorded as bearing pressure`,
            hint: "correct the report; if what was found has no bearing on pressure, answer this query",
            related: [{ at: "subject", message: "bears pressure" }],
          };
    },
    examples: [
      { name: "it says so", given: { reports: [{ related: true }] }, objections: [] },
      {
        name: "it says that it does not",
        given: { reports: [{ $: "NCR-01", related: false }] },
        objections: [
          `nonconformity report NCR-01 says that it does not concern pressure, and affects ${kind} X-01, which contains it`,
        ],
      },
    ],
  }),
);

/** What was found in a report is raised when that has been made. */
export const raisedAfterFound: readonly Rule[] = ["ndt-report"].map((kind) =>
  rule({
    ...basis,
    id: `${kind}-raised`,
    title: `A nonconformity is raised when the ${kindName(kind)} it is about has been made`,
    kind,
    when: [{ path: "<nonconformity-report:affected[]>", exists: true }],
    severity: "query",
    inputs: {
      day: date("date"),
      reports: anyOf(
        things("<nonconformity-report:affected[]>", {
          raised: date("raised"),
        }),
      ),
      all: anyOf(
        things(`book.${kind}`, { day: date("date"), named: anyOf(things("<nonconformity-report:affected[]>", {})) }),
      ),
    },
    *check({ day, reports, all }, subject) {
      // What comes to an open report later, as a re-test that failed, is no wrong day: another was there when it was raised.
      const isOpen = ({ $, raised }: (typeof reports)[number]) =>
        all.some((one) => canPrecede(one.day, raised) !== "no" && one.named.some((other) => other.$.id === $.id));
      for (const report of reports)
        if (canPrecede(day, report.raised) === "no" && !isOpen(report))
          yield {
            at: [report, "raised"],
            on: report,
            name: subject.id,
            message: `nonconformity report ${report.$.name} was raised on ${report.raised.text}; ${kindName(kind)} ${subject.name}, which it is about, is of ${day.text}`,
            why: "the report names it as affected",
            hint: "correct the wrong day, or name the right record",
            related: [{ at: "day", message: day.text }],
          };
    },
    examples: [
      { name: "on one day", given: { day: "2026-06-11", reports: [{ raised: "2026-06-11" }] }, objections: [] },
      {
        name: "a re-test that came to it later",
        given: {
          day: "2026-06-16",
          reports: [{ $: "NCR-01", raised: "2026-06-11" }],
          all: [{ $: "R-01", day: "2026-06-11", named: [{ $: "NCR-01" }] }],
        },
        objections: [],
      },
      {
        name: "a day before",
        given: { day: "2026-06-12", reports: [{ $: "NCR-01", raised: "2026-06-11" }] },
        objections: [
          `nonconformity report NCR-01 was raised on 2026-06-11; ${kindName(kind)} X-01, which it is about, is of 2026-06-12`,
        ],
      },
    ],
  }),
);

export const deviationReported = rule({
  ...basis,
  id: "deviation-reported",
  title: "A deviation for a nonconformity is decided after that was raised, and is the concession the report names",
  kind: "deviation",
  when: [
    { path: "nonconformity", exists: true },
    { path: "date", exists: true },
  ],
  severity: "nonconformity",
  inputs: {
    day: date("date"),
    report: thing("nonconformity", { raised: date("raised"), concession: optional(text("concession")) }),
  },
  *check({ day, report }, deviation) {
    if (canPrecede(report.raised, day) === "no")
      yield {
        at: "day",
        name: "order",
        message: `deviation ${deviation.name} was decided on ${day.text}, before nonconformity report ${report.$.name} was raised on ${report.raised.text}`,
        why: `deviation ${deviation.name} names the report`,
        hint: "correct the wrong day against the originals",
        related: [{ at: [report, "raised"], message: `raised on ${report.raised.text}` }],
      };
    if (report.concession !== deviation.id)
      yield {
        at: "subject",
        name: "concession",
        message: `deviation ${deviation.name} is for nonconformity report ${report.$.name}, which names ${report.concession ?? "none"} as its concession`,
        why: "each names the other",
        hint: "correct the wrong link",
        related: [{ at: report, message: "stated here" }],
      };
  },
  examples: [
    {
      name: "on the day it was raised",
      given: { day: "2026-03-27", report: { raised: "2026-03-27", concession: "X-01" } },
      objections: [],
    },
    {
      name: "not named by the report",
      given: { day: "2026-03-27", report: { $: "NCR-01", raised: "2026-03-27" } },
      objections: ["deviation X-01 is for nonconformity report NCR-01, which names none as its concession"],
    },
    {
      name: "a day before it",
      given: { day: "2026-03-26", report: { $: "NCR-03", raised: "2026-03-27", concession: "X-01" } },
      objections: [
        "deviation X-01 was decided on 2026-03-26, before nonconformity report NCR-03 was raised on 2026-03-27",
      ],
    },
    {
      name: "another concession",
      given: { day: "2026-03-27", report: { $: "NCR-03", raised: "2026-03-27", concession: "DEV-02" } },
      objections: ["deviation X-01 is for nonconformity report NCR-03, which names DEV-02 as its concession"],
    },
  ],
});

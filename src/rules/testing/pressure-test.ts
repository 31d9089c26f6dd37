import { fromMemory } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, flag, list, optional, table, text, things, type Thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { owedBy } from "../../model/owes.ts";

const proof = fromMemory(
  "Directive 2014/68/EU",
  undefined,
  "Annex I, final assessment: the proof test is made on the finished equipment",
);

const event = { day: date("date") };
type Event = Thing<typeof event>;

/** A weld that joins nothing but parts without pressure is proved by no pressure test; one to a part with pressure is. */
const proved = ({ bearing }: { readonly bearing: readonly boolean[] }) =>
  bearing.length === 0 || bearing.includes(true);

export const testAfterWork = rule({
  id: "pressure-test-after-work",
  title: "The pressure test comes after the last weld, tube end, repair, heat treatment and test",
  basis: proof,
  kind: "pressure-test",
  severity: "nonconformity",
  owner: "quality",
  inputs: {
    day: date("date"),
    runs: anyOf(
      things("book.weld-log.runs[]", {
        day: date("date"),
        finished: optional(date("finished")),
        bearing: anyOf(list(flag("record.joint.parts[].pressureBearing"))),
      }),
    ),
    tubeEnds: anyOf(things("book.tube-end-group", event)),
    repairs: anyOf(things("book.repair", { ...event, bearing: anyOf(list(flag("joint.parts[].pressureBearing"))) })),
    charges: anyOf(things("book.heat-treatment", { day: date("finished") })),
    reports: anyOf(
      things("book.ndt-report", {
        day: date("date"),
        stage: optional(text("stage")),
        method: text("method"),
        bearing: anyOf(list(flag("rows[].joint.parts[].pressureBearing"))),
      }),
    ),
  },
  *check({ day, runs, tubeEnds, repairs, charges, reports }, test) {
    const late = (list: readonly Event[], what: string) =>
      list
        .filter((one) => canPrecede(one.day, day) === "no")
        .map((one) => ({ at: one, message: `${what} ${one.$.name} on ${one.day.text}` }));
    const works = [
      ...late(runs.filter(proved), "weld"),
      ...late(tubeEnds, "tube ends"),
      ...late(repairs.filter(proved), "repair"),
      ...late(charges, "heat treatment"),
      ...late(
        reports.filter((one) => one.stage !== "after pressure test" && proved(one)),
        "test report",
      ),
    ];
    if (works.length > 0)
      yield {
        at: "day",
        message: `pressure test ${test.name} was made on ${day.text}, before the work was finished`,
        why: `later: ${works.map(({ message }) => message).join("; ")}`,
        hint: "correct the wrong date; else repeat the test, or record the deviation under which the later work was permitted",
        related: works,
      };
  },
  examples: [
    {
      name: "on the day of the last weld",
      given: { day: "2026-07-01", runs: [{ day: "2026-07-01" }] },
      objections: [],
    },
    {
      name: "a day before the last weld",
      given: { day: "2026-07-01", runs: [{ $: "WL-03#cap", day: "2026-07-02" }] },
      objections: ["pressure test X-01 was made on 2026-07-01, before the work was finished"],
    },
    {
      name: "a day before a weld of parts without pressure",
      given: { day: "2026-07-01", runs: [{ $: "WL-09#cap", day: "2026-07-02", bearing: [false, false] }] },
      objections: [],
    },
    {
      name: "a day before a weld of a lug to a shell",
      given: { day: "2026-07-01", runs: [{ $: "WL-09#cap", day: "2026-07-02", bearing: [true, false] }] },
      objections: ["pressure test X-01 was made on 2026-07-01, before the work was finished"],
    },
    {
      name: "before the last tubes were expanded",
      given: { day: "2026-07-01", tubeEnds: [{ $: "TE-01", day: "2026-07-02" }] },
      objections: ["pressure test X-01 was made on 2026-07-01, before the work was finished"],
    },
    {
      name: "an hour before a repair",
      given: { day: "2026-07-01T10:00+02:00", repairs: [{ day: "2026-07-01T11:00+02:00" }] },
      objections: ["pressure test X-01 was made on 2026-07-01T10:00+02:00, before the work was finished"],
    },
    {
      name: "before a test that was not meant to follow it",
      given: { day: "2026-07-01", reports: [{ day: "2026-07-02", method: "RT" }] },
      objections: ["pressure test X-01 was made on 2026-07-01, before the work was finished"],
    },
    {
      name: "before a test meant to follow it",
      given: { day: "2026-07-01", reports: [{ day: "2026-07-02", stage: "after pressure test", method: "MT" }] },
      objections: [],
    },
    {
      name: "before a heat treatment",
      given: { day: "2026-07-01", charges: [{ day: "2026-07-02" }] },
      objections: ["pressure test X-01 was made on 2026-07-01, before the work was finished"],
    },
  ],
});

export const testBeforeCoating = rule({
  id: "pressure-test-before-coating",
  title: "Joints are bare during the pressure test",
  basis: proof,
  kind: "pressure-test",
  severity: "nonconformity",
  owner: "quality",
  inputs: { coated: flag("coated") },
  *check({ coated }, test) {
    if (coated)
      yield {
        at: "coated",
        message: `joints were painted, coated or lagged before pressure test ${test.name}`,
        why: "a coat can hide a leak for as long as the test lasts",
        hint: "state in a deviation which joints were left bare, or strip them and repeat the test",
      };
  },
  examples: [
    { name: "bare", given: { coated: false }, objections: [] },
    {
      name: "coated",
      given: { coated: true },
      objections: ["joints were painted, coated or lagged before pressure test X-01"],
    },
  ],
});

export const testWitnessed = rule({
  id: "pressure-test-witnessed",
  title: "The inspection body signs the pressure test of equipment of category II to IV",
  basis: proof,
  kind: "pressure-test",
  severity: "gap",
  owner: "inspection body",
  inputs: {
    roles: list(text("signatures[].role")),
    category: optional(text("equipment.directive.category")),
    witness: table("proof-test-witness"),
  },
  owes: [owedBy("quality", "pressure-test", "roles")],
  *check({ roles, category, witness }, test) {
    if (category !== undefined && !roles.includes("inspection body") && witness(category).text("asked") === "yes")
      yield {
        at: "roles",
        message: `the inspection body has not signed pressure test ${test.name}; the equipment is of category ${category}`,
        why: `signed by: ${roles.join(", ")}`,
        hint: "add the signature of the inspector, or the letter that released the test",
      };
  },
  examples: [
    { name: "signed", given: { roles: ["quality control", "inspection body"], category: "IV" }, objections: [] },
    { name: "not needed", given: { roles: ["quality control"], category: "I" }, objections: [] },
    {
      name: "from category II",
      given: { roles: ["quality control"], category: "II" },
      objections: ["the inspection body has not signed pressure test X-01; the equipment is of category II"],
    },
  ],
});

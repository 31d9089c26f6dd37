import { fromMemory, ownChoice } from "../model/basis.ts";
import { addMonths, compareDays } from "../model/dates.ts";
import { date, flag, list, optional, quantity, text, thing } from "../model/input.ts";
import { rule } from "../model/rule.ts";

const personnel = fromMemory(
  "ISO 9712",
  undefined,
  "certification of testing personnel: method, level, validity, vision",
);

export const testerCertified = rule({
  id: "tester-certified",
  title: "A tester holds a certificate for the method on that day, and a vision test in force",
  basis: personnel,
  kind: "ndt-report",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    method: text("method"),
    day: date("date"),
    least: quantity("profile.testerLevelLeast", "1"),
    vision: quantity("profile.nearVisionMonths", "1"),
    visual: text("profile.visualTesterCertificate"),
    tester: thing("operator", {
      certificates: list(
        thing("<ndt-personnel:person>", {
          method: text("method"),
          level: text("level"),
          from: date("issued"),
          to: date("validTo"),
          seen: date("visionTest"),
        }),
      ),
    }),
  },
  *check({ method, day, least, vision, visual, tester }, report) {
    if (method === "VT" && visual !== "required") return;
    const held = tester.certificates;
    const fitting = held.filter((one) => one.method === method && Number(one.level) >= least.value);
    const valid = fitting.filter(
      ({ from, to }) => compareDays(from.day, day.day) <= 0 && compareDays(day.day, to.day) <= 0,
    );
    if (valid.length === 0)
      yield {
        at: "day",
        on: tester,
        name: method,
        message: `tester ${tester.$.id} held no ${method} certificate of level ${least.text} or higher on ${day.day}`,
        why: held
          .map((one) => `${one.$.id}: ${one.method} level ${one.level}, ${one.from.day} to ${one.to.day}`)
          .join("; "),
        hint: "add the certificate that covers the day, or correct date or tester; else have the test repeated",
        related: [{ at: "tester", message: `report ${report.id}` }],
      };
    else if (
      !valid.some(
        ({ seen }) =>
          compareDays(seen.day, day.day) <= 0 && compareDays(day.day, addMonths(seen.day, vision.value)) <= 0,
      )
    )
      yield {
        at: "day",
        on: tester,
        name: `${method} vision`,
        message: `the vision test of tester ${tester.$.id} did not cover ${day.day}`,
        why: `${valid.map((one) => `${one.$.id}: vision tested on ${one.seen.day}`).join("; ")}; it holds ${vision.text} months`,
        hint: "add the vision test that covers the day, or have the test repeated",
        related: [{ at: "tester", message: `report ${report.id}` }],
      };
  },
  examples: [
    { name: "on the last day of both", given: report({ day: "2026-05-31" }), objections: [] },
    { name: "on the first day", given: report({ day: "2025-06-01" }, { seen: "2025-06-01" }), objections: [] },
    {
      name: "a day before it was issued",
      given: report({ day: "2025-05-31" }),
      objections: ["tester P07 held no RT certificate of level 2 or higher on 2025-05-31"],
    },
    {
      name: "a day after its end",
      given: report({ day: "2026-06-01" }, { to: "2026-05-31" }),
      objections: ["tester P07 held no RT certificate of level 2 or higher on 2026-06-01"],
    },
    {
      name: "another method",
      given: report({ method: "UT" }),
      objections: ["tester P07 held no UT certificate of level 2 or higher on 2026-03-10"],
    },
    {
      name: "level 1",
      given: report({}, { level: "1" }),
      objections: ["tester P07 held no RT certificate of level 2 or higher on 2026-03-10"],
    },
    {
      name: "vision tested more than twelve months before",
      given: report({ day: "2026-06-01" }),
      objections: ["the vision test of tester P07 did not cover 2026-06-01"],
    },
    {
      name: "vision tested only afterwards",
      given: report({}, { seen: "2026-03-11" }),
      objections: ["the vision test of tester P07 did not cover 2026-03-10"],
    },
    {
      name: "visual tester whom the profile exempts",
      given: report({ method: "VT", visual: "not required" }),
      objections: [],
    },
    {
      name: "visual tester whom the profile does not exempt",
      given: report({ method: "VT" }),
      objections: ["tester P07 held no VT certificate of level 2 or higher on 2026-03-10"],
    },
  ],
});

function report(changes: Readonly<Record<string, string>>, certificate: Readonly<Record<string, string>> = {}) {
  const held = {
    $: "NP-04",
    method: "RT",
    level: "2",
    from: "2025-06-01",
    to: "2030-05-31",
    seen: "2025-05-31",
    ...certificate,
  };
  return {
    method: "RT",
    day: "2026-03-10",
    least: "2",
    vision: "12",
    visual: "required",
    tester: { $: "P07", certificates: [held] },
    ...changes,
  };
}

export const testerApproved = rule({
  id: "tester-approved",
  title: "Testers of equipment of category III and IV are approved by a third party",
  basis: fromMemory(
    "Directive 2014/68/EU",
    undefined,
    "Annex I, non-destructive tests: personnel approved by a recognised third-party organisation",
  ),
  kind: "ndt-personnel",
  severity: "nonconformity",
  owner: "testing",
  inputs: { approval: flag("thirdPartyApproval"), category: optional(text("book.equipment.directive.category")) },
  *check({ approval, category }, certificate) {
    if (!approval && (category === "III" || category === "IV"))
      yield {
        at: "approval",
        message: `tester's certificate ${certificate.id} is not approved by a third party; the equipment is of category ${category}`,
        why: "from category III upwards a recognised third party approves those who test permanent joints",
        hint: "add the approval; else have the tests repeated by an approved tester",
      };
  },
  examples: [
    { name: "approved", given: { approval: true, category: "IV" }, objections: [] },
    { name: "not needed", given: { approval: false, category: "II" }, objections: [] },
    {
      name: "from category III",
      given: { approval: false, category: "III" },
      objections: ["tester's certificate X-01 is not approved by a third party; the equipment is of category III"],
    },
  ],
});

export const testerPeriod = rule({
  id: "tester-certificate-period",
  title: "A tester's certificate runs no longer than the period of validity",
  basis: personnel,
  kind: "ndt-personnel",
  severity: "nonconformity",
  owner: "testing",
  inputs: { from: date("issued"), to: date("validTo"), months: quantity("profile.ndtCertificateMonths", "1") },
  *check({ from, to, months }, certificate) {
    const longest = addMonths(from.day, months.value);
    if (compareDays(to.day, longest) > 0)
      yield {
        at: "to",
        message: `tester's certificate ${certificate.id} is entered as valid to ${to.day}; issued on ${from.day} it can hold to ${longest}`,
        why: `a certificate holds ${months.text} months`,
        hint: "compare with the certificate; a renewal is a record of its own",
      };
  },
  examples: [
    { name: "five years to the day", given: { from: "2025-06-01", to: "2030-06-01", months: "60" }, objections: [] },
    {
      name: "a day more",
      given: { from: "2025-06-01", to: "2030-06-02", months: "60" },
      objections: [
        "tester's certificate X-01 is entered as valid to 2030-06-02; issued on 2025-06-01 it can hold to 2030-06-01",
      ],
    },
  ],
});

const stricter = ["B", "C", "D"];

export const testLevel = rule({
  id: "test-level",
  title: "A joint is judged to its quality level, or to a stricter one",
  basis: ownChoice("what a laxer level accepts may be rejected by the level the joint must reach"),
  kind: "ndt-report#rows",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    report: thing("record", { level: text("qualityLevel"), method: text("method") }),
    joint: thing("joint", { level: text("qualityLevel") }),
  },
  *check({ report, joint }) {
    if (stricter.indexOf(report.level) > stricter.indexOf(joint.level))
      yield {
        at: [report, "level"],
        on: report,
        message: `report ${report.$.id} judges joint ${joint.$.id} to level ${report.level}; it must reach level ${joint.level}`,
        why: `${report.method} of a joint of level ${joint.level}`,
        hint: "have the results judged again to the level of the joint",
        related: [{ at: [joint, "level"], message: `level ${joint.level} asked for here` }],
      };
  },
  examples: [
    { name: "the same level", given: { report: { level: "B", method: "RT" }, joint: { level: "B" } }, objections: [] },
    {
      name: "a stricter level",
      given: { report: { level: "B", method: "RT" }, joint: { level: "C" } },
      objections: [],
    },
    {
      name: "a laxer level",
      given: { report: { $: "RT-01", level: "C", method: "RT" }, joint: { $: "C2", level: "B" } },
      objections: ["report RT-01 judges joint C2 to level C; it must reach level B"],
    },
  ],
});

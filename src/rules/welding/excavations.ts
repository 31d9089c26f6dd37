import { commonPractice, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, exists, list, quantity, text, thing, things } from "../../model/input.ts";
import { exactly, holds as stands } from "../../model/quantity.ts";
import { weldedRepair } from "../../requirements/testing-conditions.ts";
import { rule } from "../../model/rule.ts";

const shared = { kind: "repair", severity: "nonconformity", owner: "testing" } as const;
const shown = commonPractice("magnetic particles or penetrant show that a defect is out before it is welded over");

export const repairExcavationNamed = rule({
  ...shared,
  id: "repair-excavation-named",
  title: "A repair that was excavated names the surface test of its excavation",
  basis: shown,
  when: [weldedRepair, { path: "depth", exists: true }],
  severity: "query",
  inputs: { depth: quantity("depth", "mm"), tested: exists("excavationTest") },
  *check({ depth, tested }, repair) {
    if (!tested && stands(depth, ">", exactly(0, "mm")) === "yes")
      yield {
        at: "subject",
        accuses: [],
        message: `repair ${repair.name} names no test of its excavation, ${depth.text} deep`,
        why: "nothing shows that the defect was out before it was welded over",
        hint: "add the report of the surface test; if it was not made, have the repair judged",
      };
  },
  examples: [
    { name: "tested", given: { depth: "5.0 mm", tested: true }, objections: [] },
    { name: "nothing taken out", given: { depth: "0 mm" }, objections: [] },
    {
      name: "no test",
      given: { depth: "5.0 mm" },
      objections: ["repair X-01 names no test of its excavation, 5.0 mm deep"],
    },
  ],
});

export const repairExcavated = rule({
  ...shared,
  id: "repair-excavated",
  title: "An excavation is tested on its surface, and passes, before it is welded again; the report is of that joint",
  basis: shown,
  when: [{ path: "excavationTest", exists: true }],
  inputs: {
    welded: date("date"),
    joint: text("joint"),
    report: thing("excavationTest", {
      method: text("method"),
      date: date("date"),
      rows: anyOf(things("rows[]", { joint: text("joint"), result: text("result") })),
    }),
  },
  *check({ welded, joint, report }, repair) {
    const own = report.rows.filter((row) => row.joint === joint);
    const fault = { at: "subject", accuses: [] } as const;
    if (canPrecede(report.date, welded) === "no")
      yield {
        ...fault,
        name: "order",
        message: `repair ${repair.name} was welded on ${welded.text}, before its excavation was tested`,
        why: `report ${report.$.name} of ${report.date.text}`,
        hint: "correct the wrong date; else have the repair judged",
      };
    if (!["MT", "PT"].includes(report.method) || own.length === 0 || own.some(({ result }) => result !== "accepted"))
      yield {
        ...fault,
        name: "report",
        message: `repair ${repair.name} rests on report ${report.$.name}, which shows no excavation of joint ${joint} clear`,
        why: `${report.method}; rows of the joint: ${own.map(({ result }) => result).join(", ") || "none"}`,
        hint: "name the report of the surface test of this excavation",
      };
  },
  examples: [
    { name: "tested clear before", given: repaired({}), objections: [] },
    {
      name: "welded first",
      given: repaired({ date: "2026-06-13" }),
      objections: ["repair X-01 was welded on 2026-06-12, before its excavation was tested"],
    },
    {
      name: "the report of another joint",
      given: repaired({ rows: [{ joint: "C1", result: "accepted" }] }),
      objections: ["repair X-01 rests on report PT-01, which shows no excavation of joint C2 clear"],
    },
    {
      name: "of a radiograph",
      given: repaired({ method: "RT" }),
      objections: ["repair X-01 rests on report PT-01, which shows no excavation of joint C2 clear"],
    },
  ],
});

function repaired(report: Readonly<Record<string, unknown>>) {
  return {
    welded: "2026-06-12",
    joint: "C2",
    report: { $: "PT-01", method: "PT", date: "2026-06-12", rows: [{ joint: "C2", result: "accepted" }], ...report },
  };
}

export const repairNonconformity = rule({
  ...shared,
  id: "repair-nonconformity",
  title: "The nonconformity report of a repair is about its joint",
  basis: ownChoice("a decision about another joint decides nothing here"),
  when: [{ path: "nonconformity", exists: true }],
  inputs: {
    joint: text("joint"),
    report: thing("nonconformity", { affected: anyOf(list(text("affected[]"))) }),
  },
  *check({ joint, report }, repair) {
    if (!report.affected.some((name) => [joint, `joint:${joint}`, repair.id, `repair:${repair.id}`].includes(name)))
      yield {
        at: "subject",
        accuses: [],
        message: `repair ${repair.name} belongs to ${report.$.name}, which is not about joint ${joint}`,
        why: `records it affects: ${report.affected.length}, and none is joint or repair`,
        hint: "name the nonconformity report of this joint, or complete what it affects",
      };
  },
  examples: [
    {
      name: "about its joint",
      given: { joint: "C2", report: { $: "NCR-01", affected: ["ndt-report:RT-03", "joint:C2"] } },
      objections: [],
    },
    {
      name: "about another joint",
      given: { joint: "C2", report: { $: "NCR-01", affected: ["joint:C1"] } },
      objections: ["repair X-01 belongs to NCR-01, which is not about joint C2"],
    },
  ],
});

import { commonPractice, fromMemory, ownChoice } from "../../model/basis.ts";
import { canPrecede } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, table, text, thing, things } from "../../model/input.ts";
import { atMost, exactly, holds as stands } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { holds, person, said } from "../shared/roles.ts";

export const fitUpOffset = rule({
  id: "fit-up-offset",
  title: "The edges of a butt joint are fitted within the offset its quality level permits, by the thinner part",
  basis: fromMemory("EN ISO 5817", "2014", "linear misalignment of plates and of circumferential seams"),
  kind: "weld-log",
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    offset: optional(quantity("fitUp.offset", "mm")),
    limits: table("weld-misalignment"),
    joint: thing("joint", {
      type: text("type"),
      role: text("role"),
      level: text("qualityLevel"),
      thicknesses: list(quantity("thicknesses[]", "mm")),
    }),
  },
  *check({ offset, limits, joint }, log) {
    const { type, role, level, thicknesses } = joint;
    const [thinnest] = [...thicknesses].sort((a, b) => a.low - b.low);
    if (offset === undefined || type !== "butt" || thinnest === undefined) return;
    const most = limits(role === "circumferential" ? "circumferential" : "plate", level, thinnest).quantity("most");
    if (most !== undefined && atMost(offset, most) !== "yes")
      yield {
        at: "offset",
        message: `weld log ${log.name} has the edges of joint ${joint.$.name} ${offset.text} apart; quality level ${level} permits ${most.text} at ${thinnest.text}`,
        why: `a ${role} joint`,
        hint: "compare with the weld log sheet; if it is true, raise a nonconformity report and have it decided",
        related: [{ at: [joint, "level"], message: `quality level ${level}` }],
      };
  },
  examples: [
    { name: "within", given: fitted("1.2 mm", "longitudinal"), objections: [] },
    { name: "a round seam may be farther out", given: fitted("3 mm", "circumferential"), objections: [] },
    {
      name: "a long seam of 8 mm",
      given: fitted("1.3 mm", "longitudinal"),
      objections: ["weld log X-01 has the edges of joint L1 1.3 mm apart; quality level C permits 1.2 mm at 8.0 mm"],
    },
    { name: "not measured", given: { joint: fitted("1 mm", "longitudinal").joint }, objections: [] },
  ],
});

function fitted(offset: string, role: string) {
  return { offset, joint: { $: "L1", type: "butt", role, level: "C", thicknesses: ["8.0 mm", "9.0 mm"] } };
}

const checkers = ["welding coordinator", "quality control", "shop", "inspection body"] as const;

export const fitUpBy = rule({
  id: "fit-up-by",
  title: "A fit-up is checked by who may check it on that day",
  basis: commonPractice("a coordinator, the quality control or the shop's foreman checks it, not who welds"),
  kind: "weld-log",
  severity: "nonconformity",
  owner: "shop",
  inputs: { day: date("fitUp.date"), by: thing("fitUp.by", person) },
  *check({ day, by }, log) {
    if (!holds(by, checkers, day))
      yield {
        at: "by",
        accuses: [],
        message: `the fit-up of weld log ${log.name} is checked by ${by.$.id}, who had no such post on ${day.text}`,
        why: said(by),
        hint: "correct the register of people, or have the fit-up confirmed by who may check it",
      };
  },
  examples: [
    {
      name: "the coordinator",
      given: { day: "2026-05-27", by: { roles: [{ role: "welding coordinator" }] } },
      objections: [],
    },
    {
      name: "a welder",
      given: { day: "2026-05-27", by: { $: "W03", roles: [{ role: "welder" }] } },
      objections: ["the fit-up of weld log X-01 is checked by W03, who had no such post on 2026-05-27"],
    },
  ],
});

export const jointOnDrawing = rule({
  id: "joint-on-drawing",
  title: "The drawing a joint names lists it, where the drawing lists joints",
  basis: ownChoice("a weld map names its joints"),
  kind: "joint",
  severity: "nonconformity",
  owner: "design",
  inputs: { drawing: thing("drawing", { listed: anyOf(list(text("record.joints[]"))) }) },
  *check({ drawing }, joint) {
    if (drawing.listed.length > 0 && !drawing.listed.includes(joint.id))
      yield {
        at: "drawing",
        accuses: [],
        message: `joint ${joint.name} is shown on ${drawing.$.name}, which does not list it`,
        why: `${drawing.listed.length} joints are listed there`,
        hint: "name the drawing that shows it, or complete its list of joints",
      };
  },
  examples: [
    { name: "listed", given: { drawing: { listed: ["X-01", "L2"] } }, objections: [] },
    { name: "a drawing without a list", given: { drawing: {} }, objections: [] },
    {
      name: "left out",
      given: { drawing: { $: "DRG-02 revision B", listed: ["L1", "L2"] } },
      objections: ["joint X-01 is shown on DRG-02 revision B, which does not list it"],
    },
  ],
});

export const repairExcavated = rule({
  id: "repair-excavated",
  title: "An excavation is tested on its surface, and passes, before it is welded again; the report is of that joint",
  basis: commonPractice("magnetic particles or penetrant show that a defect is out before it is welded over"),
  kind: "repair",
  severity: "nonconformity",
  owner: "testing",
  inputs: {
    welded: date("date"),
    joint: text("joint"),
    report: anyOf(
      things("excavationTest", {
        method: text("method"),
        date: date("date"),
        rows: anyOf(things("rows[]", { joint: text("joint"), result: text("result") })),
      }),
    ),
    ncr: anyOf(things("nonconformity", { affected: anyOf(list(text("affected[]"))) })),
    excavated: optional(quantity("depth", "mm")),
  },
  *check({ welded, joint, report, ncr, excavated }, repair) {
    const fault = (name: string, message: string, why: string, hint: string) => ({
      at: "subject" as const,
      accuses: [],
      name,
      message: `repair ${repair.name} ${message}`,
      why,
      hint,
    });
    if (report.length === 0 && excavated !== undefined && stands(excavated, ">", exactly(0, "mm")) === "yes")
      yield {
        ...fault(
          "none",
          `names no test of its excavation, ${excavated.text} deep`,
          "nothing shows that the defect was out before it was welded over",
          "add the report of the surface test; if it was not made, have the repair judged",
        ),
        unsure: true,
      };
    for (const one of report) {
      const own = one.rows.filter((row) => row.joint === joint);
      if (canPrecede(one.date, welded) === "no")
        yield fault(
          "order",
          `was welded on ${welded.text}, before its excavation was tested`,
          `report ${one.$.name} of ${one.date.text}`,
          "correct the wrong date; else have the repair judged",
        );
      if (!["MT", "PT"].includes(one.method) || own.length === 0 || own.some(({ result }) => result !== "accepted"))
        yield fault(
          "report",
          `rests on report ${one.$.name}, which shows no excavation of joint ${joint} clear`,
          `${one.method}; rows of the joint: ${own.map(({ result }) => result).join(", ") || "none"}`,
          "name the report of the surface test of this excavation",
        );
    }
    for (const one of ncr)
      if (!one.affected.some((name) => [joint, `joint:${joint}`, repair.id, `repair:${repair.id}`].includes(name)))
        yield fault(
          "nonconformity",
          `belongs to ${one.$.name}, which is not about joint ${joint}`,
          `it affects ${one.affected.join(", ") || "nothing"}`,
          "name the nonconformity report of this joint, or complete what it affects",
        );
  },
  examples: [
    { name: "tested clear before", given: repaired({}), objections: [] },
    { name: "no depth, no test: nothing was taken out", given: { welded: "2026-06-12", joint: "C2" }, objections: [] },
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
      name: "no test",
      given: { welded: "2026-06-12", joint: "C2", excavated: "5.0 mm" },
      objections: ["repair X-01 names no test of its excavation, 5.0 mm deep"],
    },
    {
      name: "a nonconformity about another joint",
      given: { ...repaired({}), ncr: [{ $: "NCR-01", affected: ["joint:C1"] }] },
      objections: ["repair X-01 belongs to NCR-01, which is not about joint C2"],
    },
  ],
});

function repaired(report: Readonly<Record<string, unknown>>) {
  return {
    welded: "2026-06-12",
    joint: "C2",
    excavated: "5.0 mm",
    report: [{ $: "PT-01", method: "PT", date: "2026-06-12", rows: [{ joint: "C2", result: "accepted" }], ...report }],
  };
}

import { commonPractice, fromMemory, ownChoice } from "../../model/basis.ts";
import { anyOf, date, list, optional, quantity, table, text, thing } from "../../model/input.ts";
import { atMost } from "../../model/quantity.ts";
import { rule } from "../../model/rule.ts";
import { holds, person, said } from "../shared/roles.ts";

export const fitUpOffset = rule({
  id: "fit-up-offset",
  title: "The edges of a butt joint are fitted within the offset its quality level permits, by the thinner part",
  basis: fromMemory("EN ISO 5817", "2014", "linear misalignment of plates and of circumferential seams"),
  kind: "weld-log",
  when: [
    { path: "fitUp.offset", exists: true },
    { path: "joint.type", equals: "butt" },
  ],
  severity: "nonconformity",
  owner: "shop",
  inputs: {
    offset: optional(quantity("fitUp.offset", "mm")),
    limits: table("weld-misalignment"),
    joint: thing("joint", {
      role: text("role"),
      level: text("qualityLevel"),
      thicknesses: list(quantity("thicknesses[]", "mm")),
    }),
  },
  *check({ offset, limits, joint }, log) {
    const { role, level, thicknesses } = joint;
    const [thinnest] = [...thicknesses].sort((a, b) => a.low - b.low);
    if (offset === undefined || thinnest === undefined) return;
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
  ],
});

function fitted(offset: string, role: string) {
  return { offset, joint: { $: "L1", role, level: "C", thicknesses: ["8.0 mm", "9.0 mm"] } };
}

const checkers = ["welding coordinator", "quality control", "shop", "inspection body"] as const;

export const fitUpBy = rule({
  id: "fit-up-by",
  title: "A fit-up is checked by who may check it on that day",
  basis: commonPractice("a coordinator, the quality control or the shop's foreman checks it, not who welds"),
  kind: "weld-log",
  severity: "nonconformity",
  owner: "shop",
  inputs: { day: date("fitUp.date"), named: text("fitUp.by"), by: thing("fitUp.by", person) },
  *check({ day, by }, log) {
    if (!holds(by, checkers, day))
      yield {
        at: "named",
        accuses: [],
        message: `the fit-up of weld log ${log.name} is checked by ${by.$.id}, who was not registered as ${checkers.join(" or ")} on ${day.text}`,
        why: said(by),
        hint: "correct who checked it, or the register of people; else have the fit-up confirmed by who may check it",
        related: [{ at: "by", message: "registered here" }],
      };
  },
  examples: [
    {
      name: "the coordinator",
      given: { day: "2026-05-27", named: "M1", by: { roles: [{ role: "welding coordinator" }] } },
      objections: [],
    },
    {
      name: "a welder",
      given: { day: "2026-05-27", named: "W03", by: { $: "W03", roles: [{ role: "welder" }] } },
      objections: [
        "the fit-up of weld log X-01 is checked by W03, who was not registered as welding coordinator or quality control or shop or inspection body on 2026-05-27",
      ],
    },
  ],
});

export const jointOnDrawing = rule({
  id: "joint-on-drawing",
  title: "The drawing a joint names lists it, where the drawing lists joints",
  basis: ownChoice("a weld map names its joints"),
  kind: "joint",
  when: [{ path: "drawing.record.joints[]", exists: true }],
  severity: "nonconformity",
  owner: "design",
  inputs: { drawing: thing("drawing", { listed: anyOf(list(text("record.joints[]"))) }) },
  *check({ drawing }, joint) {
    if (!drawing.listed.includes(joint.id))
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
    {
      name: "left out",
      given: { drawing: { $: "DRG-02 revision B", listed: ["L1", "L2"] } },
      objections: ["joint X-01 is shown on DRG-02 revision B, which does not list it"],
    },
  ],
});

import { commonPractice, fromMemory, ownChoice } from "../../model/basis.ts";
import { anyOf, date, list, optional, quantity, text, thing } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { offsetInputs, offsetJoint, offsetRefused } from "../shared/offset.ts";
import { holds, person, said } from "../shared/roles.ts";

export const fitUpOffset = rule({
  id: "fit-up-offset",
  title: "The edges of a butt joint are fitted within the offset that quality level and standard of the vessel permit",
  basis: fromMemory(
    "EN ISO 5817 and EN 13445-4",
    undefined,
    "linear misalignment; the thinner part, the stricter of both",
  ),
  kind: "weld-log",
  when: [
    { path: "fitUp.offset", exists: true },
    { path: "joint.type", equals: "butt" },
  ],
  severity: "nonconformity",
  owner: "shop",
  inputs: { offset: optional(quantity("fitUp.offset", "mm")), joint: thing("joint", offsetJoint), ...offsetInputs },
  *check({ offset, joint, ...given }, log) {
    const refused = offset === undefined ? undefined : offsetRefused(offset, joint, given);
    if (offset !== undefined && refused !== undefined)
      yield {
        at: "offset",
        message: `weld log ${log.name} has the edges of joint ${joint.$.name} ${offset.text} apart; ${refused}`,
        why: `a ${joint.role} joint`,
        hint: "compare with the weld log sheet; if it is true, raise a nonconformity report and have it decided",
        related: [{ at: [joint, "level"], message: `quality level ${joint.level}` }],
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
    {
      name: "of a vessel whose standard is stricter",
      given: fitted("1.1 mm", "longitudinal", "EN 13445"),
      objections: ["weld log X-01 has the edges of joint L1 1.1 mm apart; EN 13445-4 permits 1 mm at 8.0 mm"],
    },
    {
      name: "a round seam of such a vessel",
      given: fitted("1.9 mm", "circumferential", "EN 13445"),
      objections: ["weld log X-01 has the edges of joint L1 1.9 mm apart; EN 13445-4 permits 1.8 mm at 8.0 mm"],
    },
  ],
});

function fitted(offset: string, role: string, family = "EN 12953") {
  return { offset, family, joint: { $: "L1", type: "butt", role, level: "C", thicknesses: ["8.0 mm", "9.0 mm"] } };
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
        on: by,
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

import { fromMemory } from "../../model/basis.ts";
import { anyOf, list, optional, quantity, text, thing, things } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { offsetInputs, offsetJoint, offsetRefused } from "../shared/offset.ts";

const shared = { kind: "dimension-check#rows", severity: "nonconformity", owner: "quality" } as const;
const hint = "compare with the sheet; if it is so, have it rounded, or raise a nonconformity report and have it judged";
const offsetHint = "compare with the sheet; if it is so, raise a nonconformity report and have it judged";
const sizes = {
  inside: optional(quantity("insideDiameter", "mm")),
  outside: optional(quantity("outsideDiameter", "mm")),
  wall: optional(quantity("nominalThickness", "mm")),
};

/** Share of the diameter up to which a wall is thin, and what diameters of one section may differ by, in percent. */
const [thin, ofThin, ofOthers] = [0.01, 1.5, 1];

export const sectionRound = rule({
  ...shared,
  id: "section-round",
  title: "Diameters of one section differ by no more than the standard of the equipment permits",
  basis: fromMemory(
    "EN 13445-4 and EN 12953-4",
    undefined,
    "1.5 % of the diameter for a vessel with a wall up to a hundredth of it, 1 % for others and for boilers; 1 % as well in regulation 544 of the Indian Boiler Regulations",
  ),
  when: [
    { path: "shape", exists: true },
    { path: "shape", equals: "diameters of one section" },
  ],
  inputs: {
    feature: text("feature"),
    measured: list(quantity("measured[]", "mm")),
    result: optional(text("result")),
    part: optional(thing("part", sizes)),
    type: optional(text("book.equipment.type")),
  },
  *check({ feature, measured, result, part, type }) {
    const all = measured.map(({ value }) => value);
    if (all.length < 2) {
      yield {
        at: "measured",
        accuses: [],
        name: "number",
        message: `${feature} has one reading; a section is measured across at two places or more`,
        why: `measured: ${measured.map(({ text: one }) => one).join(", ")}`,
        hint: "add the readings, or correct what the row is of",
      };
      return;
    }
    const [least, most] = [Math.min(...all), Math.max(...all)];
    const across = part?.inside?.value ?? part?.outside?.value ?? (least + most) / 2;
    const isThin = part?.wall !== undefined && part.wall.value <= thin * across;
    const percent = isThin && type !== "steam-boiler" ? ofThin : ofOthers;
    const limit = (percent / 100) * across;
    if (result === "rejected" || most - least <= limit + 1e-9) return;
    yield {
      at: "measured",
      unsure: part === undefined,
      message: `${feature}: the diameters differ by ${Number((most - least).toFixed(2))} mm; ${Number(limit.toFixed(1))} mm is permitted`,
      why: `${percent} % of ${Number(across.toFixed(1))} mm; from ${least} mm to ${most} mm`,
      hint,
    };
  },
  examples: [
    { name: "on the limit", given: round("8 mm", "1175.12 mm", "1192.88 mm"), objections: [] },
    {
      name: "oval",
      given: round("8 mm", "1165 mm", "1203 mm"),
      objections: ["left edge: the diameters differ by 38 mm; 17.8 mm is permitted"],
    },
    {
      name: "a thicker wall",
      given: round("14 mm", "1177 mm", "1191 mm"),
      objections: ["left edge: the diameters differ by 14 mm; 11.8 mm is permitted"],
    },
    {
      name: "one reading",
      given: round("8 mm", "1184 mm"),
      objections: ["left edge has one reading; a section is measured across at two places or more"],
    },
    { name: "rejected", given: { ...round("8 mm", "1165 mm", "1203 mm"), result: "rejected" }, objections: [] },
  ],
});

function round(wall: string, ...measured: readonly string[]) {
  return { feature: "left edge", measured, part: { inside: "1184 mm", wall }, type: "air-receiver" };
}

/** Share of the diameter up to which a wall counts as thin, and the peaking permitted below and above it, in mm. */
const [slender, ofSlender, ofStout] = [0.025, 5, 10];

export const peakingPermitted = rule({
  ...shared,
  id: "peaking-permitted",
  title: "A longitudinal seam peaks no more than the standard of the equipment permits",
  basis: fromMemory(
    "EN 13445-4",
    undefined,
    "peaking of longitudinal welds under loads that hardly cycle: 5 mm, 10 mm where the wall is above 2.5 % of the diameter",
  ),
  when: [
    { path: "shape", exists: true },
    { path: "shape", equals: "peaking" },
  ],
  inputs: {
    feature: text("feature"),
    measured: list(quantity("measured[]", "mm")),
    result: optional(text("result")),
    joint: optional(thing("joint", { parts: anyOf(things("parts[]", sizes)) })),
  },
  *check({ feature, measured, result, joint }) {
    if (joint === undefined) {
      yield {
        at: "measured",
        accuses: [],
        name: "joint",
        unsure: true,
        message: `${feature} is peaking and names no joint`,
        why: "a shell peaks at its longitudinal seams",
        hint: "name the joint, or correct what the row is of",
      };
      return;
    }
    const stout = joint.parts.every(({ inside, outside, wall }) => {
      const across = inside ?? outside;
      return wall !== undefined && across !== undefined && wall.value > slender * across.value;
    });
    const limit = stout && joint.parts.length > 0 ? ofStout : ofSlender;
    const worst = [...measured].sort((a, b) => b.value - a.value)[0];
    if (worst === undefined || result === "rejected" || worst.value <= limit + 1e-9) return;
    yield {
      at: "measured",
      message: `${feature} is ${worst.text}; ${limit} mm is permitted`,
      why: `joint ${joint.$.name}`,
      hint,
    };
  },
  examples: [
    { name: "on the limit", given: peaked("5.0 mm"), objections: [] },
    { name: "above it", given: peaked("7.0 mm"), objections: ["peaking at L1 is 7.0 mm; 5 mm is permitted"] },
    {
      name: "of no joint",
      given: { feature: "left edge", measured: ["1184 mm"] },
      objections: ["left edge is peaking and names no joint"],
    },
    { name: "a stout wall", given: peaked("7.0 mm", "40 mm"), objections: [] },
  ],
});

function peaked(measured: string, wall = "8 mm") {
  return { feature: "peaking at L1", measured: [measured], joint: { $: "L1", parts: [{ inside: "1184 mm", wall }] } };
}

export const offsetMeasured = rule({
  ...shared,
  id: "offset-measured",
  title: "Edges that were measured are no farther apart than quality level and standard of the vessel permit",
  basis: fromMemory(
    "EN ISO 5817 and EN 13445-4",
    undefined,
    "linear misalignment; the thinner part, the stricter of both",
  ),
  when: [
    { path: "shape", exists: true },
    { path: "shape", equals: "offset of edges" },
  ],
  inputs: {
    feature: text("feature"),
    measured: list(quantity("measured[]", "mm")),
    result: optional(text("result")),
    joint: optional(thing("joint", offsetJoint)),
    ...offsetInputs,
  },
  *check({ feature, measured, result, joint, ...given }) {
    const worst = [...measured].sort((a, b) => b.value - a.value)[0];
    if (worst === undefined || result === "rejected") return;
    if (joint?.type !== "butt") {
      yield {
        at: "measured",
        accuses: [],
        name: "joint",
        unsure: true,
        message: `${feature} is an offset of edges and names ${joint === undefined ? "no joint" : `joint ${joint.$.name}, no butt joint`}`,
        why: "the limit is that of a butt joint",
        hint: "name the joint, or correct what the row is of",
      };
      return;
    }
    const refused = offsetRefused(worst, joint, given);
    if (refused !== undefined)
      yield {
        at: "measured",
        message: `${feature} is ${worst.text}; ${refused}`,
        why: `a ${joint.role} joint`,
        hint: offsetHint,
      };
  },
  examples: [
    { name: "on the limit", given: apart("1.8 mm"), objections: [] },
    {
      name: "farther",
      given: apart("2.6 mm"),
      objections: ["offset of edges, C1 is 2.6 mm; EN 13445-4 permits 1.8 mm at 8.0 mm"],
    },
    {
      name: "of no joint",
      given: { feature: "offset of edges, C1", measured: ["0.5 mm"], family: "EN 13445" },
      objections: ["offset of edges, C1 is an offset of edges and names no joint"],
    },
    {
      name: "of a corner",
      given: apart("0.5 mm", "corner"),
      objections: ["offset of edges, C1 is an offset of edges and names joint C1, no butt joint"],
    },
    { name: "rejected", given: { ...apart("2.6 mm"), result: "rejected" }, objections: [] },
  ],
});

function apart(measured: string, type = "butt") {
  return {
    feature: "offset of edges, C1",
    measured: [measured],
    family: "EN 13445",
    joint: { $: "C1", type, role: "circumferential", level: "C", thicknesses: ["8.0 mm", "8.0 mm"] },
  };
}

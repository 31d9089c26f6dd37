import { commonPractice, derivedFrom } from "../../model/basis.ts";
import { list, quantity } from "../../model/input.ts";
import { rule, type Rule } from "../../model/rule.ts";

/** mm, beyond what rounding of the three figures leaves open. */
const slack = 0.5;

const diameters = rule({
  id: "part-diameters",
  title: "Outside diameter, inside diameter and thickness of a part agree",
  basis: derivedFrom("outside diameter = inside diameter and twice the wall"),
  kind: "part",
  when: [
    { path: "insideDiameter", exists: true },
    { path: "outsideDiameter", exists: true },
  ],
  severity: "nonconformity",
  owner: "design",
  inputs: {
    inside: quantity("insideDiameter", "mm"),
    outside: quantity("outsideDiameter", "mm"),
    thickness: quantity("nominalThickness", "mm"),
  },
  *check({ inside, outside, thickness }, part) {
    const made = inside.value + 2 * thickness.value;
    const open = inside.halfUnit + outside.halfUnit + 2 * thickness.halfUnit + slack;
    if (Math.abs(outside.value - made) > open)
      yield {
        at: "outside",
        accuses: [],
        message: `part ${part.name} has an outside diameter of ${outside.text}; inside diameter and wall make ${Number(made.toFixed(2))} mm`,
        why: `${inside.text} inside, ${thickness.text} thick`,
        hint: "compare the three with the drawing and correct the one that is wrong",
        related: [
          { at: "inside", message: `${inside.text} here` },
          { at: "thickness", message: `${thickness.text} here` },
        ],
      };
  },
  examples: [
    { name: "as drawn", given: { inside: "1184 mm", outside: "1200 mm", thickness: "8.0 mm" }, objections: [] },
    {
      name: "a wall more",
      given: { inside: "1184 mm", outside: "1210 mm", thickness: "8.0 mm" },
      objections: ["part X-01 has an outside diameter of 1210 mm; inside diameter and wall make 1200 mm"],
    },
  ],
});

/** Of the nominal thickness, either way. */
const share = 0.25;

const measured = rule({
  id: "measured-near-nominal",
  title: "A measured thickness is near the nominal one",
  basis: commonPractice("plates, tubes and ends are made within a quarter of their nominal thickness"),
  kind: "part",
  when: [{ path: "measuredThickness", exists: true }],
  severity: "query",
  owner: "quality",
  inputs: { nominal: quantity("nominalThickness", "mm"), measured: list(quantity("measuredThickness[]", "mm")) },
  *check({ nominal, measured: all }, part) {
    const out = all.filter(({ value }) => Math.abs(value - nominal.value) > share * nominal.value);
    if (out.length > 0)
      yield {
        at: "measured",
        accuses: [],
        message: `part ${part.name} measures ${out.map(({ text }) => text).join(" and ")}; it is nominally ${nominal.text} thick`,
        why: `measured: ${all.map(({ text }) => text).join(", ")}`,
        hint: "compare with the sheet of measurements; correct the figure, or answer this query with why the part is so",
        related: [{ at: "nominal", message: `${nominal.text} here` }],
      };
  },
  examples: [
    { name: "formed", given: { nominal: "8.0 mm", measured: ["7.3 mm", "8.0 mm"] }, objections: [] },
    {
      name: "ten times",
      given: { nominal: "8.0 mm", measured: ["81 mm", "8.0 mm"] },
      objections: ["part X-01 measures 81 mm; it is nominally 8.0 mm thick"],
    },
  ],
});

/** Sizes of one part held against each other. */
export const partSizes: readonly Rule[] = [diameters, measured];

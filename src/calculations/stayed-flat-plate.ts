import { plateCoefficient, supportOfPlate } from "./functions/plates.ts";
import { stayedFlatPlateExamples } from "./stayed-flat-plate-examples.ts";
import { derivedFrom, excerptSeen } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const coefficient = (name: string, support: string, display: string) => ({
  path: `profile.${name}`,
  unit: "1",
  means: `coefficient: ${support}`,
  display,
});

export const stayedFlatPlate = calculation({
  id: "stayed-flat-plate",
  title: "Region of a stayed flat plate",
  basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 574, as repeated in a worked sheet"),
  covers:
    "Thickness that one region of a flat plate asks for, without allowances, from the largest circle between its supports. The circle touches at least three points of support that do not all lie on one half of it; that they do is not checked, nor that no larger circle can be drawn. The circle is that of the drawing: supports keep their places when they corrode. Long strips between two edges without stays, openings in the region and bolted covers are not covered.",
  appliesTo: {
    kind: "part#regions",
    when: [
      { path: "record.pressureBearing", equals: true },
      { path: "record.role", equals: ["tube-plate", "flat-plate"] },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    d: { path: "circleDiameter", unit: "mm", means: "diameter of the largest circle", display: "d_c", unsafe: "low" },
    f: { path: "record.calculation(design-stress).f", unit: "MPa", means: "design stress", unsafe: "high" },
    supports: { path: "supports[]", unit: "rows", means: "supports the circle touches", rows: supportOfPlate },
    kf: {
      path: "profile.plateStressShare",
      unit: "1",
      means: "share of the design stress that is used",
      display: "k_f",
    },
    Cf: coefficient("plateFlangedEdge", "flanged edge", "C_f"),
    Cw: coefficient("plateWeldedEdge", "welded edge", "C_w"),
    Cg: coefficient("plateGusset", "gusset stay", "C_g"),
    Cs: coefficient("plateStay", "bar stay, stay tube, access tube", "C_s"),
    Ct: coefficient("plateSmokeTube", "plain smoke tube inside its nest", "C_t"),
    Cd: coefficient("plateDoubtful", "doubtful support", "C_d"),
    Ce: coefficient("plateEdgesOnly", "least where there is no stay", "C_e"),
  },
  functions: [plateCoefficient],
  steps: [
    {
      symbol: "C",
      unit: "1",
      means: "coefficient of the supports",
      formula: "plateCoefficient(supports, Cf, Cw, Cg, Cs, Ct, Cd, Ce)",
      round: { decimals: 3, direction: "up" },
    },
    {
      symbol: "e",
      unit: "mm",
      means: "thickness the region asks for, without allowances",
      formula: "C*d*sqrt(p/(kf*f))",
      round: { decimals: 2, direction: "up" },
    },
  ],
  limits: [
    {
      left: "C",
      relation: ">=",
      right: "0.298",
      means: "the coefficient is at least that of a clamped plate at its plastic limit",
      basis: derivedFrom("plastic limit load of a clamped circular plate: p·d² = 11.26·σ·e²"),
    },
    {
      left: "e",
      relation: "<=",
      right: "0.2*d",
      means: "the plate bends like a thin plate: e is at most a fifth of the circle",
      wrong: "the thickness is {left}, above a fifth of the circle, {right}",
      basis: derivedFrom("theory of thin plates; beyond a fifth shear counts beside bending"),
    },
  ],
  accept: [],
  compared: [
    { symbol: "C", unsafe: "low" },
    { symbol: "e", unsafe: "low" },
  ],
  crossCheck: {
    means: "clamped circular plate, elastic, at the full design stress; as near as its plastic limit lies below it",
    symbol: "e",
    formula: "d*sqrt(3/16*p/f)",
    unit: "mm",
    within: "d*sqrt(p/f)*(sqrt(3/16) - sqrt(1/11.26))",
    basis: derivedFrom("clamped circular plate under pressure: σ = 0.75·p·(r/e)² at its edge"),
  },
  examples: stayedFlatPlateExamples,
});

import { barExamples, stayTubeExamples } from "./stay-examples.ts";
import { derivedFrom, excerptSeen } from "../model/basis.ts";
import { calculation, type CalculationInput, type CalculationStep, type Limit } from "../model/calculation.ts";

const regulations = excerptSeen("Indian Boiler Regulations 1950", "regulations 202 and 581");
const area =
  "The area is bounded half way to the neighbouring supports, as recorded; that it is so is not checked. Bending, threads, pins and the welds at the ends are not covered.";

const p: CalculationInput = {
  path: "book.equipment.calculationPressure",
  unit: "MPa",
  means: "calculation pressure",
  unsafe: "low",
};
const A: CalculationInput = {
  path: "carriedArea",
  unit: "mm²",
  means: "area of plate that one stay carries, gross",
  unsafe: "low",
};
const a: CalculationInput = {
  path: "occupiedArea",
  unit: "mm²",
  means: "part of it that tubes and the stay itself occupy",
  unsafe: "high",
};
const c: CalculationInput = { path: "corrosionAllowance", unit: "mm", means: "corrosion allowance", unsafe: "low" };
const f: CalculationInput = {
  path: "calculation(design-stress).f",
  unit: "MPa",
  means: "design stress",
  unsafe: "high",
};
const undertolerance = (of: string): CalculationInput => ({
  path: "thicknessUndertolerance",
  unit: "mm",
  means: `undertolerance of the ${of}`,
  unsafe: "low",
});

const load: readonly CalculationStep[] = [
  { symbol: "AL", unit: "mm²", means: "area under pressure", formula: "A - a", display: "A_L" },
  {
    symbol: "F",
    unit: "N",
    means: "load of the stay",
    formula: "p*AL",
    round: { decimals: 0, direction: "up" },
    basis: derivedFrom("equilibrium of the plate that belongs to one stay"),
  },
  {
    symbol: "σp",
    unit: "MPa",
    means: "permitted stress",
    formula: "min(σs, f)",
    display: "σ_perm",
    round: { decimals: 1, direction: "down" },
  },
];
const loadLimits: readonly Limit[] = [
  { left: "p", relation: ">", right: "'0 MPa'", means: "the pressure is above nothing" },
  { left: "a", relation: ">=", right: "'0 mm²'", means: "the occupied area is not negative" },
  { left: "AL", relation: ">", right: "'0 mm²'", means: "the stay carries more plate than is occupied" },
  { left: "c", relation: ">=", right: "'0 mm'", means: "the corrosion allowance is not negative" },
];
const stress: CalculationStep = {
  symbol: "σ",
  unit: "MPa",
  means: "stress in the corroded section",
  formula: "F/As",
  // Nothing left is said by the limits, not by a division by zero.
  when: { left: "As", relation: ">", right: "'0 mm²'" },
  round: { decimals: 1, direction: "up" },
};

/** A round bar between two plates. */
export const stay = calculation({
  id: "stay",
  title: "Bar stay",
  basis: regulations,
  scope: `Diameter of a round bar stay under tension, corroded all round. ${area}`,
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: "stay" },
    ],
  },
  inputs: {
    p,
    A,
    a,
    d: { path: "outsideDiameter", unit: "mm", means: "diameter of the bar", unsafe: "high" },
    en: { path: "nominalThickness", unit: "mm", means: "governing section the strength is taken for", display: "e_n" },
    c,
    δ: undertolerance("diameter"),
    f,
    σs: { path: "profile.stayStress", unit: "MPa", means: "greatest permitted stress", display: "σ_max" },
    dmin: { path: "profile.stayDiameterLeast", unit: "mm", means: "least diameter", display: "d_min" },
  },
  steps: [
    ...load,
    {
      symbol: "ds",
      unit: "mm",
      means: "diameter against the load, without allowances",
      formula: "sqrt(4*F/(π*σp))",
      when: { left: "AL", relation: ">", right: "'0 mm²'" },
      display: "d_s",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "dreq",
      unit: "mm",
      means: "required diameter",
      formula: "max(ds + 2*c + δ, dmin)",
      display: "d_req",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "As",
      unit: "mm²",
      means: "corroded section",
      formula: "π/4*(d - 2*c - δ)^2",
      display: "A_s",
      round: { decimals: 1, direction: "down" },
    },
    stress,
  ],
  limits: [
    ...loadLimits,
    {
      name: "section too small",
      left: "d - 2*c - δ",
      relation: ">",
      right: "'0 mm'",
      means: "a section is left after allowances",
      wrong: "the diameter left after allowances is {left}; it must be above {right}",
    },
    {
      left: "en",
      relation: "=",
      right: "d",
      means: "the governing section of a bar is its diameter",
      wrong: "the governing section of a bar is its diameter, {right}, not {left}",
    },
  ],
  accept: [
    { left: "d", relation: ">=", right: "dreq", means: "the diameter is at least the required one", accuses: "d" },
  ],
  compared: [
    { symbol: "F", unsafe: "low" },
    { symbol: "dreq", unsafe: "low" },
    { symbol: "As", unsafe: "high" },
    { symbol: "σ", unsafe: "low" },
  ],
  adopted: "d",
  examples: barExamples,
});

/** A thick tube of a nest that ties its plates together. */
export const stayTube = calculation({
  id: "stay-tube",
  title: "Stay tube",
  basis: regulations,
  scope: `Wall of a stay tube under tension, corroded from outside and thinner from inside by its undertolerance. Pressure from outside is not covered. ${area}`,
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: "stay-tube" },
    ],
  },
  inputs: {
    p,
    A,
    a,
    d: { path: "outsideDiameter", unit: "mm", means: "outside diameter", display: "d_o", unsafe: "high" },
    en: { path: "nominalThickness", unit: "mm", means: "nominal wall", display: "e_n", unsafe: "high" },
    c,
    δ: undertolerance("wall"),
    f,
    σs: { path: "profile.stayTubeStress", unit: "MPa", means: "greatest permitted stress", display: "σ_max" },
    emin: { path: "profile.stayTubeWallLeast", unit: "mm", means: "least wall", display: "e_min" },
  },
  steps: [
    ...load,
    {
      symbol: "dc",
      unit: "mm",
      means: "outside diameter when corroded",
      formula: "d - 2*c",
      display: "d_c",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "es",
      unit: "mm",
      means: "wall against the load, without allowances; half the diameter where no tube would do",
      formula: "dc/2 - sqrt(max(dc^2/4 - F/(π*σp), '0 mm²'))",
      display: "e_s",
      round: { decimals: 2, direction: "up" },
      basis: derivedFrom("the wall e of a ring of section A: e = d/2 − √(d²/4 − A/π)"),
    },
    {
      symbol: "ereq",
      unit: "mm",
      means: "required nominal wall",
      formula: "max(es + c + δ, emin)",
      display: "e_req",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "ea",
      unit: "mm",
      means: "analysis wall",
      formula: "en - c - δ",
      display: "e_a",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "As",
      unit: "mm²",
      means: "corroded section",
      formula: "π*(dc - ea)*ea",
      display: "A_s",
      round: { decimals: 1, direction: "down" },
    },
    stress,
  ],
  limits: [
    ...loadLimits,
    { left: "ea", relation: ">", right: "'0 mm'", means: "a wall is left after allowances" },
    {
      left: "d",
      relation: ">",
      right: "2*en",
      means: "the outside diameter is above twice the wall",
      wrong: "the outside diameter is {left}; it must be above twice the wall, {right}",
    },
  ],
  accept: [
    { left: "en", relation: ">=", right: "ereq", means: "the wall is at least the required one", accuses: "en" },
  ],
  compared: [
    { symbol: "F", unsafe: "low" },
    { symbol: "ereq", unsafe: "low" },
    { symbol: "As", unsafe: "high" },
    { symbol: "σ", unsafe: "low" },
  ],
  adopted: "en",
  examples: stayTubeExamples,
});

import { barExamples } from "./stay-examples.ts";
import { A, a, area, c, f, load, loadLimits, p, regulations, stress, undertolerance } from "./shared/stays.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

/** A round bar between two plates. */
export const stay = calculation({
  id: "stay",
  title: "Bar stay",
  basis: regulations,
  covers: `Diameter of a round bar stay under tension, corroded all round. ${area}`,
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
  owes: [owedBy("design", "design-approved", "A", "a", "d", "c", "δ")],
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

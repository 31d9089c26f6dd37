import { stayTubeExamples } from "./stay-examples.ts";
import { A, a, area, c, f, load, loadLimits, p, regulations, stress, undertolerance } from "./shared/stays.ts";
import { derivedFrom } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

/** A thick tube of a nest that ties its plates together. */
export const stayTube = calculation({
  id: "stay-tube",
  scope: "tube-nests",
  title: "Stay tube",
  basis: regulations,
  covers: `Wall of a stay tube under tension, corroded from outside and thinner from inside by its undertolerance. Pressure from outside is not covered. ${area}`,
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
  owes: [owedBy("design", "design-approved", "A", "a")],
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

import { commonPractice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const limits = { smin: 0.3, smax: 0.8 };

export const tubeHole = calculation({
  id: "tube-hole",
  scope: "tube-nests",
  title: "Holes of a tube plate against the tubes",
  basis: commonPractice("0.3 mm to 0.8 mm between tube and hole before expanding"),
  covers: "Nominal diameters of hole and tube, before expanding. Tolerances and grooves of the holes are not covered.",
  appliesTo: { kind: "part#tubeFields" },
  inputs: {
    dh: { path: "holeDiameter", unit: "mm", means: "diameter of the holes", display: "d_h" },
    d: { path: "tube.outsideDiameter", unit: "mm", means: "outside diameter of the tubes", display: "d_o" },
    smin: { path: "profile.holeClearanceLeast", unit: "mm", means: "least clearance", display: "s_min" },
    smax: { path: "profile.holeClearanceMost", unit: "mm", means: "greatest clearance", display: "s_max" },
  },
  owes: [owedBy("design", "design-approved", "d")],
  steps: [
    {
      symbol: "s",
      unit: "mm",
      means: "clearance, on the diameter",
      formula: "dh - d",
      round: { decimals: 2, direction: "nearest" },
    },
  ],
  limits: [],
  accept: [
    { left: "s", relation: ">=", right: "smin", means: "the tube enters its hole with play", accuses: "dh" },
    { left: "s", relation: "<=", right: "smax", means: "the hole is not too wide to expand the tube", accuses: "dh" },
  ],
  compared: [{ symbol: "s", unsafe: "any" }],
  examples: [
    {
      source: "worked by hand: 51.3 − 51, the least clearance",
      class: "constructed",
      given: { dh: 51.3, d: 51, ...limits },
      expect: { s: 0.3 },
      within: 1e-9,
    },
    {
      source: "constructed: a tenth too narrow",
      class: "constructed",
      given: { dh: 51.2, d: 51, ...limits },
      expect: { s: 0.2 },
      within: 1e-9,
    },
    {
      source: "constructed: the widest",
      class: "constructed",
      given: { dh: 61.1, d: 60.3, ...limits },
      expect: { s: 0.8 },
      within: 1e-9,
    },
    {
      source: "constructed: a tenth too wide",
      class: "constructed",
      given: { dh: 61.2, d: 60.3, ...limits },
      expect: { s: 0.9 },
      within: 1e-9,
    },
  ],
});

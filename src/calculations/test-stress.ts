import { coefficientLimit } from "./shared/wall.ts";
import { commonPractice, derivedFrom, fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { testWall } from "./shared/test-wall.ts";

export const testStress = calculation({
  id: "test-stress",
  title: "Stress in a shell course at the hydrostatic test",
  basis: fromMemory("EN 13445-3", undefined, "general membrane stress under test conditions"),
  covers:
    "Mean circumferential stress of a shell course at the specified test pressure, in the thickness as built without corrosion, against its yield strength at 20 °C. The weight of the water is not covered.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: "shell-course" },
    ],
  },
  inputs: {
    PT: testWall.PT,
    Di: { path: "insideDiameter", unit: "mm", means: "inside diameter", display: "D_i", unsafe: "low" },
    en: testWall.en,
    δ: testWall.δ,
    z: { path: "weldCoefficient", unit: "1", means: "weld joint coefficient", unsafe: "high" },
    ReH: testWall.ReH,
    kS: {
      path: "profile.testStressFraction",
      unit: "1",
      means: "share of the yield strength permitted at the test",
      display: "k_S",
    },
  },
  steps: [
    {
      symbol: "e",
      unit: "mm",
      means: "least thickness as built",
      formula: "en - δ",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "σ",
      unit: "MPa",
      means: "mean circumferential stress at the test pressure",
      formula: "PT*(Di + e) / (2*e*z)",
      round: { decimals: 1, direction: "up" },
      basis: derivedFrom("equilibrium of half a cylinder, at the mean diameter"),
    },
    {
      symbol: "σT",
      unit: "MPa",
      means: "permitted stress at the test",
      formula: "kS*ReH",
      display: "σ_T",
      round: { decimals: 1, direction: "down" },
    },
  ],
  limits: [
    { left: "e", relation: ">", right: "'0 mm'", means: "a thickness is left after the undertolerance" },
    coefficientLimit,
    {
      left: "e",
      relation: "<=",
      right: "0.16*(Di + 2*e)",
      means: "the wall is thin, so that the mean stress tells",
      wrong: "the wall is {left}, above 0.16 of the outside diameter, {right}",
      basis: commonPractice("mean-diameter stress up to e/De = 0.16"),
    },
  ],
  accept: [
    {
      left: "σ",
      relation: "<=",
      right: "σT",
      means: "the stress at the test pressure is at most the permitted share of the yield strength",
      accuses: "PT",
    },
  ],
  compared: [
    { symbol: "σ", unsafe: "low" },
    { symbol: "σT", unsafe: "high" },
  ],
  crossCheck: {
    means: "thick-walled cylinder: hoop stress at the bore",
    symbol: "σ",
    formula: "PT/z*((Di/2 + e)^2 + (Di/2)^2)/((Di/2 + e)^2 - (Di/2)^2)",
    unit: "MPa",
    within: "PT*e/(Di*z)",
    basis: derivedFrom("G. Lamé's solution of the thick-walled cylinder; it exceeds the mean by P·e/(2·(Di + e))"),
  },
  examples: [
    {
      source: "worked by hand: 2·(1000 + 10)/(2·10·1) = 101",
      class: "constructed",
      given: { PT: 2, Di: 1000, en: 10.3, δ: 0.3, z: 1, ReH: 265, kS: 0.95 },
      expect: { e: 10, σ: 101, σT: 251.75 },
      within: 1e-9,
    },
    {
      source: "worked by hand: a shell of 1900 × 12 at 15.2 bar, 1.52·(1900 + 11.7)/(2·11.7·0.85)",
      class: "constructed",
      given: { PT: 1.52, Di: 1900, en: 12, δ: 0.3, z: 0.85, ReH: 265, kS: 0.95 },
      expect: { e: 11.7, σ: 146.09271, σT: 251.75 },
      within: 0.000001,
    },
    {
      source: "constructed: exactly the permitted stress, 5.02·(990 + 10)/(2·10) = 251",
      class: "constructed",
      given: { PT: 5.02, Di: 990, en: 10.3, δ: 0.3, z: 1, ReH: 251, kS: 1 },
      expect: { σ: 251, σT: 251 },
      within: 1e-9,
    },
    {
      source: "constructed: above the permitted stress",
      class: "constructed",
      given: { PT: 2.51, Di: 990, en: 10.3, δ: 0.3, z: 0.5, ReH: 264, kS: 0.95 },
      expect: { σ: 251, σT: 250.8 },
      within: 1e-9,
    },
    {
      source: "constructed: nothing left of the thickness",
      class: "constructed",
      given: { PT: 2, Di: 1000, en: 0.2, δ: 0.3, z: 1, ReH: 265, kS: 0.95 },
      expect: { e: -0.1 },
      within: 1e-9,
      outside: ["a thickness is left after the undertolerance"],
    },
    {
      source: "constructed: weld joint coefficient above 1",
      class: "constructed",
      given: { PT: 2, Di: 1000, en: 10.3, δ: 0.3, z: 1.01, ReH: 265, kS: 0.95 },
      expect: { σ: 100 },
      within: 1e-9,
      outside: ["the weld joint coefficient is at most 1"],
    },
    {
      source: "constructed: a wall too thick for the mean stress to tell",
      class: "constructed",
      given: { PT: 2, Di: 100, en: 25.3, δ: 0.3, z: 1, ReH: 265, kS: 0.95 },
      expect: { σ: 5 },
      within: 1e-9,
      outside: ["the wall is thin, so that the mean stress tells"],
    },
  ],
});

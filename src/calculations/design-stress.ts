import { proofStrength, proofStrengthPoint } from "./functions/proof-strength.ts";
import { excerptSeen, fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const annex = excerptSeen("Directive 2014/68/EU", "Annex I, 7.1.2, permissible membrane stress of ferritic steel");
const keys = "material.standard, material.edition, material.grade, nominalThickness";

const points = (values: readonly (readonly [number, number])[]) =>
  values.map(([temperature, strength]) => ({ temperature: `${temperature} °C`, proofStrength: `${strength} MPa` }));
const plate265 = points([
  [50, 256],
  [100, 241],
  [150, 223],
  [200, 205],
  [250, 188],
]);

export const designStress = calculation({
  id: "design-stress",
  title: "Nominal design stress",
  basis: annex,
  scope:
    "Shell courses, ends, nozzle necks, manhole frames, flat plates and stays of normalised or normalising-rolled ferritic steel, below the creep range. Strengths are those of the grade's standard for the nominal thickness, never those of the certificate. Fine-grained or specially heat-treated steel and austenitic steel are not covered. Flanges and fittings rated by their own standard are not calculated here.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      {
        path: "role",
        equals: ["shell-course", "end", "nozzle-neck", "manhole", "tube-plate", "flat-plate", "stay", "stay-tube"],
      },
    ],
  },
  inputs: {
    tE: {
      path: "book.equipment.calculationTemperature",
      unit: "°C",
      means: "calculation temperature of the equipment",
      display: "t_E",
      unsafe: "low",
    },
    tP: {
      path: "calculationTemperature",
      unit: "°C",
      means: "calculation temperature of this part, where it has one of its own",
      need: "optional",
      otherwise: 20,
      display: "t_P",
      unsafe: "low",
    },
    ReH: {
      path: `table(grade-strength, ${keys}).yieldStrength`,
      unit: "MPa",
      means: "least yield strength at 20 °C",
      display: "R_eH",
    },
    Rm: {
      path: `table(grade-strength, ${keys}).tensileStrength`,
      unit: "MPa",
      means: "least tensile strength at 20 °C",
      display: "R_m",
    },
    points: {
      path: `table(grade-proof-strength, ${keys}).points[]`,
      unit: "rows",
      means: "least 0.2 % proof strength at elevated temperatures",
      rows: proofStrengthPoint,
    },
    SY: { path: "profile.safetyFactorYield", unit: "1", means: "safety factor on the proof strength", display: "S_Y" },
    ST: {
      path: "profile.safetyFactorTensile",
      unit: "1",
      means: "safety factor on the tensile strength",
      display: "S_T",
    },
  },
  functions: [proofStrength],
  steps: [
    {
      symbol: "t",
      unit: "°C",
      means: "calculation temperature: the higher of the two",
      formula: "max(tE, tP)",
      round: { decimals: 0, direction: "up" },
    },
    {
      symbol: "Rp02",
      unit: "MPa",
      means: "least 0.2 % proof strength at the calculation temperature",
      formula: "proofStrength(points, ReH, t)",
      display: "R_p0.2/t",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "f",
      unit: "MPa",
      means: "design stress at the calculation temperature",
      formula: "min(Rp02/SY, Rm/ST)",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "f20",
      unit: "MPa",
      means: "design stress at 20 °C, for the test pressure",
      formula: "min(ReH/SY, Rm/ST)",
      display: "f_20",
      round: { decimals: 1, direction: "nearest" },
    },
  ],
  limits: [
    {
      left: "t",
      relation: "<=",
      right: "380[°C]",
      means: "the calculation temperature lies below the creep range",
      basis: fromMemory("EN 13445-3", undefined, "strength independent of time up to 380 °C for ferritic steel"),
    },
  ],
  accept: [],
  compared: [
    { symbol: "Rp02", unsafe: "high" },
    { symbol: "f", unsafe: "high" },
    { symbol: "f20", unsafe: "low" },
  ],
  examples: [
    {
      source: "worked by hand: tabulated temperature, the yield strength governs: 205/1.5 against 410/2.4",
      class: "constructed",
      given: { tE: 200, ReH: 265, Rm: 410, points: plate265, SY: 1.5, ST: 2.4 },
      expect: { Rp02: 205, f: 136.6667, f20: 170.8333 },
      within: 0.0001,
    },
    {
      source: "worked by hand: 20 °C to 50 °C from the yield strength, 265 − 9·(10/30); the tensile strength governs",
      class: "constructed",
      given: { tE: 30, ReH: 265, Rm: 410, points: plate265, SY: 1.5, ST: 2.4 },
      expect: { Rp02: 262, f: 170.8333, f20: 170.8333 },
      within: 0.0001,
    },
    {
      source: "worked by hand: interpolation between 100 °C and 150 °C, 241 − 18·0.4",
      class: "constructed",
      given: { tE: 100, tP: 120, ReH: 265, Rm: 410, points: plate265, SY: 1.5, ST: 2.4 },
      expect: { Rp02: 233.8, f: 155.8667 },
      within: 0.0001,
    },
    {
      source: "worked by hand: at the end of the range without creep, 160 − 10·0.6 between 350 °C and 400 °C",
      class: "constructed",
      given: {
        tE: 380,
        ReH: 265,
        Rm: 410,
        points: points([
          [350, 160],
          [400, 150],
        ]),
        SY: 1.5,
        ST: 2.4,
      },
      expect: { Rp02: 154, f: 102.6667 },
      within: 0.0001,
    },
    {
      source: "constructed: one kelvin into the creep range",
      class: "constructed",
      given: {
        tE: 381,
        ReH: 265,
        Rm: 410,
        points: points([
          [350, 160],
          [400, 150],
        ]),
        SY: 1.5,
        ST: 2.4,
      },
      expect: { Rp02: 153.8 },
      within: 0.0001,
      outside: ["the calculation temperature lies below the creep range"],
    },
  ],
});

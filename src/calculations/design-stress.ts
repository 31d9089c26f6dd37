import { designStressExamples } from "./design-stress-examples.ts";
import { proofStrength, proofStrengthPoint } from "./functions/proof-strength.ts";
import { heatedRoles, tubeRoles } from "./shared/boiler.ts";
import { excerptSeen, fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const annex = excerptSeen("Directive 2014/68/EU", "Annex I, 7.1.2, permissible membrane stress of ferritic steel");
const keys = "material.standard, material.edition, material.grade, nominalThickness";

/** Roles of parts whose strength is calculated from a design stress. */
const stressed: readonly string[] = [...heatedRoles, ...tubeRoles];

export const designStress = calculation({
  id: "design-stress",
  title: "Nominal design stress",
  basis: annex,
  covers:
    "Shell courses, ends, plates, furnaces, stays, tubes, nozzle necks and manhole frames of normalised or normalising-rolled ferritic steel, below the creep range. Strengths are those of the grade's standard for the nominal thickness, never those of the certificate. Fine-grained or specially heat-treated steel and austenitic steel are not covered. Flanges and fittings rated by their own standard are not calculated here.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: stressed },
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
    tM: {
      path: "calculation(metal-temperature).t",
      unit: "°C",
      means: "temperature of a part of a boiler, from how it is heated",
      need: "optional",
      otherwise: 20,
      display: "t_M",
      unsafe: "low",
    },
    tT: {
      path: "calculation(tube-temperature).t",
      unit: "°C",
      means: "temperature of a tube of a boiler, from how it is heated",
      need: "optional",
      otherwise: 20,
      display: "t_T",
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
      means: "calculation temperature: the highest of all",
      formula: "max(tE, tP, tM, tT)",
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
      right: "'380 °C'",
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
  examples: designStressExamples,
});

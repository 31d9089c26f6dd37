import { least } from "./functions/parts.ts";
import { coefficientLimit, corrodedBore, wallLeft, wallOf } from "./shared/wall.ts";
import { derivedFrom, fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const en13445 = fromMemory("EN 13445-3", undefined, "cylindrical shells under internal pressure");

const wall = wallOf("thickness");

export const cylindricalShell = calculation({
  id: "cylindrical-shell",
  title: "Cylindrical shell under internal pressure",
  basis: en13445,
  covers:
    "Required thickness of a cylindrical shell course for internal pressure alone, with the inside diameter that corrosion leaves. Openings, supports, wind, and other loads are not covered.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: "shell-course" },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    Di: { path: "insideDiameter", unit: "mm", means: "inside diameter", display: "D_i", unsafe: "low" },
    f: { path: "calculation(design-stress).f", unit: "MPa", means: "design stress", unsafe: "high" },
    z: { path: "weldCoefficient", unit: "1", means: "weld joint coefficient", unsafe: "high" },
    ...wall.inputs,
  },
  owes: [owedBy("design", "design-approved", "Di", "z", "c", "δ"), owedBy("quality", "final-inspection", "measured")],
  functions: [least],
  steps: [
    corrodedBore,
    {
      symbol: "e",
      unit: "mm",
      means: "required thickness without allowances",
      formula: "p*Dc / (2*f*z - p)",
      round: { decimals: 2, direction: "up" },
    },
    wall.required,
    wall.analysis,
    {
      symbol: "pmax",
      unit: "MPa",
      means: "highest pressure the analysis thickness carries",
      formula: "2*f*z*ea / (Dc + ea)",
      display: "p_max",
      round: { decimals: 3, direction: "down" },
    },
    ...wall.measured,
  ],
  limits: [
    {
      left: "p",
      relation: "<",
      right: "f*z",
      means: "the pressure is small against the design stress",
      wrong: "the pressure is {left}; it must be below the design stress times the weld joint coefficient, {right}",
      basis: derivedFrom("beyond it the formula runs towards its pole at p = 2·f·z"),
    },
    coefficientLimit,
    {
      name: "wall too thick",
      left: "e/(Di + 2*en)",
      relation: "<=",
      right: "0.16",
      means: "the wall is thin: e/De is at most 0.16",
      wrong: "the wall is {left} of the outside diameter, above {right}",
      basis: en13445,
    },
    wallLeft,
  ],
  accept: [wall.thickEnough, wall.measuredEnough],
  announces: wall.announces,
  compared: [
    { symbol: "e", unsafe: "low" },
    { symbol: "ereq", unsafe: "low" },
    { symbol: "pmax", unsafe: "high" },
  ],
  adopted: "en",
  crossCheck: {
    means: "thick-walled cylinder: the thickness at which the hoop stress at the bore equals f·z",
    symbol: "e",
    formula: "Dc/2*(sqrt((f*z + p)/(f*z - p)) - 1)",
    unit: "mm",
    within: "0.4*e*(p/(f*z))^2",
    basis: derivedFrom("G. Lamé's solution of the thick-walled cylinder; the series of both differ by p²/(4·f²·z²)"),
  },
  examples: [
    {
      source: "worked by hand: 1·2000/(2·150·0.85 − 1)",
      class: "constructed",
      given: { p: 1, Di: 1998, f: 150, z: 0.85, c: 1, δ: 0.3, en: 10 },
      expect: { Dc: 2000, e: 7.874016, ereq: 9.174016, ea: 8.7, pmax: 1.104445 },
      within: 0.000001,
    },
    {
      source: "worked by hand: 1.3·2400/(2·137.8·0.85 − 1.3), the nominal thickness too small, one reading too thin",
      class: "constructed",
      given: {
        p: 1.3,
        Di: 2398.5,
        f: 137.8,
        z: 0.85,
        c: 0.75,
        δ: 0.3,
        en: 14,
        measured: [{ value: "14.3 mm" }, { value: "14.1 mm" }],
      },
      expect: { e: 13.392857, ereq: 14.442857, em: 14.1, emin: 14.142857 },
      within: 0.000001,
    },
    {
      source: "worked by hand: a shell of 1900 × 12 at 10 bar, 1·1900/(2·140.5·0.85 − 1)",
      class: "constructed",
      given: { p: 1, Di: 1898.5, f: 140.5, z: 0.85, c: 0.75, δ: 0.3, en: 12 },
      expect: { e: 7.988228, ereq: 9.038228, ea: 10.95 },
      within: 0.000001,
    },
    {
      source:
        "worked by hand: 1·(2000 + 2·3)/254; by the bore as built, 7.874016 + 3, the nominal thickness would have been enough",
      class: "constructed",
      given: { p: 1, Di: 2000, f: 150, z: 0.85, c: 3, δ: 0, en: 10.88 },
      expect: { Dc: 2006, e: 7.897638, ereq: 10.897638, pmax: 0.997775 },
      within: 0.000001,
    },
    {
      source: "worked by hand: without an allowance the bore as built counts, 1·2000/254 + 3 of undertolerance",
      class: "constructed",
      given: { p: 1, Di: 2000, f: 150, z: 0.85, c: 0, δ: 3, en: 10.88 },
      expect: { Dc: 2000, e: 7.874016, ereq: 10.874016 },
      within: 0.000001,
    },
    {
      source: "constructed: measured exactly what is needed, and nominal exactly what is required",
      class: "constructed",
      given: { p: 2, Di: 988, f: 100, z: 1, c: 1, δ: 0.5, en: 11.5, measured: [{ value: "11.0 mm" }] },
      expect: { e: 10, ereq: 11.5, em: 11, emin: 11 },
      within: 1e-9,
    },
    {
      source: "constructed: wall at the limit, e = 80 with Di = 300 and De = 500",
      class: "constructed",
      given: { p: 42.10526315789474, Di: 300, f: 100, z: 1, c: 0, δ: 20, en: 100 },
      expect: { e: 80 },
      within: 1e-9,
    },
    {
      source: "constructed: wall beyond the limit, e = 81 with Di = 300 and De = 500",
      class: "constructed",
      given: { p: 42.51968503937008, Di: 300, f: 100, z: 1, c: 0, δ: 19, en: 100 },
      expect: { e: 81 },
      within: 1e-9,
      outside: ["the wall is thin: e/De is at most 0.16"],
    },
    {
      source: "constructed: pressure as high as the design stress",
      class: "constructed",
      given: { p: 100, Di: 300, f: 100, z: 1, c: 0, δ: 0, en: 400 },
      expect: { e: 300 },
      within: 1e-9,
      outside: ["the pressure is small against the design stress", "the wall is thin: e/De is at most 0.16"],
    },
    {
      source: "constructed: weld joint coefficient above 1",
      class: "constructed",
      given: { p: 1, Di: 1999, f: 100, z: 10, c: 0, δ: 0, en: 10 },
      expect: { e: 1 },
      within: 1e-9,
      outside: ["the weld joint coefficient is at most 1"],
    },
    {
      source: "constructed: weld joint coefficient of nothing",
      class: "constructed",
      given: { p: 1, Di: 2000, f: 100, z: 0, c: 0, δ: 0, en: 10 },
      expect: { pmax: 0 },
      within: 1e-9,
      outside: ["the pressure is small against the design stress"],
    },
    {
      source: "constructed: allowances eat the whole thickness",
      class: "constructed",
      given: { p: 1, Di: 2000, f: 100, z: 1, c: 5, δ: 5, en: 10 },
      expect: { ea: 0 },
      within: 1e-9,
      outside: ["a thickness is left after allowances"],
    },
  ],
});

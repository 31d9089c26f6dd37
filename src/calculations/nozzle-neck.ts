import { least } from "./functions/parts.ts";
import { coefficientLimit, wallLeft, wallOf } from "./shared/wall.ts";
import { derivedFrom, fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const en13445 = fromMemory("EN 13445-3", undefined, "cylindrical shells under internal pressure, by outside diameter");

const wall = wallOf("wall");

/** A cylindrical shell by its outside diameter, as tubes are ordered: corrosion from inside does not change that. */
export const nozzleNeck = calculation({
  id: "nozzle-neck",
  title: "Nozzle neck under internal pressure",
  basis: en13445,
  covers:
    "Required wall of a nozzle neck or the body of a manhole frame that is a cylinder, for internal pressure alone. The opening it stands in, loads from piping, threads cut into it and its flange are not covered.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: "nozzle-neck" },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    De: { path: "outsideDiameter", unit: "mm", means: "outside diameter", display: "D_e", unsafe: "low" },
    f: { path: "calculation(design-stress).f", unit: "MPa", means: "design stress", unsafe: "high" },
    z: {
      path: "weldCoefficient",
      unit: "1",
      means: "weld joint coefficient of a neck with a seam of its own; 1 of one without",
      need: "optional",
      otherwise: 1,
      unsafe: "high",
    },
    ...wall.inputs,
  },
  owes: [owedBy("design", "design-approved", "De", "c", "δ")],
  functions: [least],
  steps: [
    {
      symbol: "e",
      unit: "mm",
      means: "required wall without allowances",
      formula: "p*De / (2*f*z + p)",
      round: { decimals: 2, direction: "up" },
    },
    wall.required,
    wall.analysis,
    {
      symbol: "pmax",
      unit: "MPa",
      means: "highest pressure the analysis thickness carries",
      formula: "2*f*z*ea / (De - ea)",
      display: "p_max",
      round: { decimals: 3, direction: "down" },
    },
    ...wall.measured,
  ],
  limits: [
    coefficientLimit,
    {
      name: "wall too thick",
      left: "e/De",
      relation: "<=",
      right: "0.16",
      means: "the wall is thin: e/De is at most 0.16",
      wrong: "the wall is {left} of the outside diameter, above {right}",
      basis: en13445,
    },
    wallLeft,
  ],
  accept: [wall.thickEnough, wall.measuredEnough],
  compared: [
    { symbol: "e", unsafe: "low" },
    { symbol: "ereq", unsafe: "low" },
    { symbol: "pmax", unsafe: "high" },
  ],
  crossCheck: {
    means: "thick-walled cylinder: the wall at which the hoop stress at the bore equals f·z",
    symbol: "e",
    formula: "De/2*(1 - sqrt((f*z - p)/(f*z + p)))",
    unit: "mm",
    within: "0.3*e*(p/(f*z))^2",
    basis: derivedFrom("G. Lamé's solution of the thick-walled cylinder; the series of both differ by p²/(4·f²·z²)"),
  },
  examples: [
    {
      source: "worked by hand: 1·114.3/(2·120 + 1)",
      class: "constructed",
      given: { p: 1, De: 114.3, f: 120, c: 0.75, δ: 1.4, en: 11 },
      expect: { e: 0.474274, ereq: 2.624274, ea: 8.85, pmax: 20.142247 },
      within: 0.000001,
    },
    {
      source: "worked by hand: with a seam of 0.85, 2·219.1/(2·100·0.85 + 2); a reading too thin",
      class: "constructed",
      given: { p: 2, De: 219.1, f: 100, z: 0.85, c: 1, δ: 0.5, en: 4, measured: [{ value: "3.5 mm" }] },
      expect: { e: 2.547674, ereq: 4.047674, em: 3.5, emin: 3.547674 },
      within: 0.000001,
    },
    {
      source: "constructed: a neck of half a millimetre",
      class: "constructed",
      given: { p: 1, De: 101, f: 50, c: 0, δ: 0, en: 0.5 },
      expect: { e: 1, ereq: 1, ea: 0.5 },
      within: 1e-9,
    },
    {
      source: "constructed: measured exactly what is needed, and nominal exactly what is required",
      class: "constructed",
      given: { p: 2, De: 202, f: 100, c: 1, δ: 0.5, en: 3.5, measured: [{ value: "3.0 mm" }] },
      expect: { e: 2, ereq: 3.5, em: 3, emin: 3 },
      within: 1e-9,
    },
    {
      source: "constructed: wall at the limit, e = 16 with De = 100",
      class: "constructed",
      given: { p: 38.095238095238095, De: 100, f: 100, c: 0, δ: 4, en: 20 },
      expect: { e: 16 },
      within: 1e-9,
    },
    {
      source: "constructed: wall beyond the limit, e = 17 with De = 100",
      class: "constructed",
      given: { p: 40.963855421686745, De: 100, f: 100, c: 0, δ: 3, en: 20 },
      expect: { e: 17 },
      within: 1e-9,
      outside: ["the wall is thin: e/De is at most 0.16"],
    },
    {
      source: "constructed: weld joint coefficient above 1",
      class: "constructed",
      given: { p: 1, De: 2001, f: 100, z: 10, c: 0, δ: 0, en: 10 },
      expect: { e: 1 },
      within: 1e-9,
      outside: ["the weld joint coefficient is at most 1"],
    },
    {
      source: "constructed: allowances eat the whole wall",
      class: "constructed",
      given: { p: 1, De: 201, f: 100, c: 5, δ: 5, en: 10 },
      expect: { ea: 0 },
      within: 1e-9,
      outside: ["a thickness is left after allowances"],
    },
  ],
});

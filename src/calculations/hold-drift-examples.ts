import { readingsEvery } from "./pressure-hold-examples.ts";
import type { CalculationExample } from "../model/calculation.ts";

const course = [{ insideDiameter: "2400 mm", nominalThickness: "16.3 mm", undertolerance: "0.3 mm" }];
const test = {
  courses: course,
  furnaces: [],
  hoops: [],
  chambers: [],
  accessTubes: [],
  tubes: [],
  stayTubes: [],
  V: 3000,
  pn: 20.1,
  hA: 0,
  hB: 0,
  gap: 5,
  rA: 0.05,
  rB: 0.05,
  thermometers: [{ resolution: "0.1 K" }],
  k: 1.25,
};
const cylinder = (count: number, outside: number, length: number, thickness: number, undertolerance: number) => ({
  count,
  outside,
  length,
  thickness,
  undertolerance,
});
const boilerFull = {
  courses: [{ insideDiameter: "1900 mm", nominalThickness: "12 mm", undertolerance: "0.3 mm" }],
  V: 7250,
  furnaces: [cylinder(2, 850, 1450, 16, 0.3)],
  hoops: [cylinder(1, 850, 200, 16, 0.3)],
  chambers: [cylinder(1, 1300, 600, 16, 0.3)],
  accessTubes: [cylinder(1, 406.4, 230, 12.5, 1.6)],
  tubes: [cylinder(50, 51, 3150, 3.6, 0.45), cylinder(88, 51, 3990, 3.6, 0.45)],
  stayTubes: [cylinder(16, 51, 3150, 6.3, 0.8), cylinder(24, 51, 3990, 6.3, 0.8)],
};
const other = "the same balance in another program, with the expansion of water as numeric derivative of its density";

/** A hold of 30 min that starts and ends as stated, [bar, °C], with both gauges alike. */
const hold = (start: readonly [number, number], end: readonly [number, number]) =>
  readingsEvery(
    5,
    Array.from({ length: 7 }, (_, index) => {
      const [p, t] = index < 6 ? start : end;
      return [p, p, t];
    }),
  );

export const holdDriftExamples: readonly CalculationExample[] = [
  {
    source: `${other}; a drop that the cooling water explains`,
    class: "second method",
    given: { ...test, readings: hold([20.3, 15], [20.15, 14.8]) },
    expect: {
      T: 14.9,
      αw: 0.000149685,
      κw: 0.0000467522,
      C: 0.0000892857,
      s: 150,
      g: 0.835684,
      ΔPe: -0.167137,
      x: 0.017137,
      u: 0.049897,
    },
    within: 0.000001,
  },
  {
    source: `${other}; the same vessel loses 0.3 bar at constant temperature`,
    class: "second method",
    given: { ...test, readings: hold([20.4, 15], [20.1, 15]) },
    expect: { ΔT: 0, ΔPe: 0, x: -0.3, u: 0.037376 },
    within: 0.000001,
  },
  {
    source: `${other}; near 6.3 °C the temperature explains nothing`,
    class: "second method",
    given: { ...test, readings: hold([20.3, 6.3], [20.1, 6.2]) },
    expect: { g: -0.007359, ΔPe: 0.000736, x: -0.200736, u: 0.014438 },
    within: 0.000001,
  },
  {
    source: "constructed: the pressure rises while the water does not warm",
    class: "constructed",
    given: { ...test, readings: hold([20.2, 15], [20.3, 15]) },
    expect: { x: 0.1, xr: 0.1, xd: 0, u: 0.037376 },
    within: 0.000001,
  },
  {
    source:
      "constructed: lost 0.15 bar by the fifth reading and pumped up again to where it was: first and last tell nothing",
    class: "constructed",
    given: {
      ...test,
      readings: readingsEvery(
        5,
        [20.3, 20.25, 20.2, 20.15, 20.15, 20.3, 20.3].map((p) => [p, p, 15]),
      ),
    },
    expect: { ΔP: 0, x: 0, xd: -0.15, xr: 0.15, u: 0.037376 },
    within: 0.000001,
  },
  {
    source: "the same sums in another program: a shell boiler of 7250 l of water round furnaces, chamber and tubes",
    class: "second method",
    given: { ...test, ...boilerFull, readings: hold([20.3, 15], [20.15, 14.8]) },
    expect: { s: 162.393162, φ: 0.5410927, sw: 25.087493, C: 0.0001638991 },
    within: 0.000001,
  },
  {
    source: "constructed: warmest water covered",
    class: "constructed",
    given: { ...test, readings: hold([20.2, 40], [20.2, 40]) },
    expect: { T: 40, x: 0 },
    within: 0.000001,
  },
  {
    source: "constructed: water warmer than at any test",
    class: "constructed",
    given: { ...test, readings: hold([20.2, 40.1], [20.2, 40.1]) },
    expect: { T: 40.1 },
    within: 0.000001,
    outside: ["the water is at most 40 °C, as at a test"],
  },
  {
    source: "constructed: water about to freeze",
    class: "constructed",
    given: { ...test, readings: hold([20.2, 0.9], [20.2, 0.9]) },
    expect: { T: 0.9 },
    within: 0.000001,
    outside: ["the water is not about to freeze"],
  },
];

import { fromMemory } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";

const basis = fromMemory("EN 13445-3", undefined, "torispherical ends");

/** Factor β of a torispherical end; `X` = r/Di between 0.06 and 0.2, `Y` = the smaller of e/R and 0.04. */
export function knuckleFactor(X: number, Y: number): number {
  const Z = Math.log10(1 / Y);
  const N = 1.006 - 1 / (6.2 + (90 * Y) ** 4);
  const at006 = N * (-0.3635 * Z ** 3 + 2.2124 * Z ** 2 - 3.2937 * Z + 1.8873);
  const at01 = N * (-0.1833 * Z ** 3 + 1.0383 * Z ** 2 - 1.2943 * Z + 0.837);
  const at02 = Math.max(0.95 * (0.56 - 1.94 * Y - 82.5 * Y ** 2), 0.5);
  return X <= 0.1 ? 25 * ((0.1 - X) * at006 + (X - 0.06) * at01) : 10 * ((0.2 - X) * at01 + (X - 0.1) * at02);
}

const mostRounds = 200;
const enough = 1e-12;

/**
 * Named function `knuckleThickness(p, Di, R, r, f)` in mm: the thickness that satisfies
 * ey = β·p·(0.75·R + 0.2·Di)/f, where β itself depends on ey/R. Found by repeated substitution.
 */
export const knuckleThickness: ListFunction = {
  name: "knuckleThickness",
  means:
    "thickness of the knuckle against axisymmetric yielding, from ey = β·p·(0.75·R + 0.2·Di)/f with β of ey itself",
  basis,
  parameters: [
    { name: "p", unit: "MPa" },
    { name: "Di", unit: "mm" },
    { name: "R", unit: "mm" },
    { name: "r", unit: "mm" },
    { name: "f", unit: "MPa" },
  ],
  unit: "mm",
  compute: numbers(([p = Number.NaN, Di = Number.NaN, R = Number.NaN, r = Number.NaN, f = Number.NaN]) => {
    const X = r / Di;
    // The calculation's own limits judge 0.06 to 0.2; far outside them the interpolation has no meaning at all.
    if (!(X >= 0.04 && X <= 0.25))
      return {
        refused: `the knuckle radius is ${printed(X)} of the inside diameter; the factor is known from 0.06 to 0.2`,
      };
    let thickness = R / 1000;
    for (let round = 1; round <= mostRounds; round++) {
      const Y = Math.min(thickness / R, 0.04);
      const factor = knuckleFactor(X, Y);
      const next = (factor * p * (0.75 * R + 0.2 * Di)) / f;
      if (!(next > 0)) return { refused: "the factor β of the knuckle comes out negative for these values" };
      if (Math.abs(next - thickness) <= enough * next)
        return {
          value: next,
          lines: [`β = ${printed(factor)} at r/Di = ${printed(X)}, e/R = ${printed(Y)}, after ${round} rounds`],
        };
      thickness = next;
    }
    return { refused: `the thickness of the knuckle did not settle within ${mostRounds} rounds` };
  }),
};

/** Named function `whereThin(eb, ey, limit)` in mm: eb where ey is at most the limit, else 0. */
export const whereThin: ListFunction = {
  name: "whereThin",
  means: "thickness against buckling of the knuckle, asked for only where ey is at most 0.005·Di",
  basis,
  parameters: [
    { name: "eb", unit: "mm" },
    { name: "ey", unit: "mm" },
    { name: "limit", unit: "mm" },
  ],
  unit: "mm",
  compute: numbers(([eb = Number.NaN, ey = Number.NaN, limit = Number.NaN]) =>
    ey <= limit * (1 + 1e-9)
      ? { value: eb, lines: [`ey is at most ${printed(limit)} mm: buckling of the knuckle is judged`] }
      : { value: 0, lines: [`ey exceeds ${printed(limit)} mm: buckling of the knuckle is not asked for`] },
  ),
};

const printed = (value: number) => String(Number(value.toPrecision(5)));

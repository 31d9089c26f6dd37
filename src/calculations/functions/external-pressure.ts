import { excerptSeen, fromMemory, ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { quantity } from "../../model/input.ts";
import { numbers, quantityIn, rowsThenNumbers } from "./arguments.ts";

/** Named function `meanDiameter(Do, en)` in mm; refused where the wall leaves no bore. */
export const meanDiameter: ListFunction = {
  name: "meanDiameter",
  means: "mean diameter: outside diameter less one nominal wall",
  basis: ownChoice("an outside diameter of at most two walls contradicts itself"),
  parameters: [
    { name: "Do", unit: "mm" },
    { name: "en", unit: "mm" },
  ],
  unit: "mm",
  compute: numbers(([Do = Number.NaN, en = Number.NaN]) =>
    en > 0 && Do > 2 * en
      ? { value: Do - en, lines: [] }
      : { refused: `an outside diameter of ${printed(Do)} mm and a wall of ${printed(en)} mm leave no bore` },
  ),
};

/** Named function `elasticFactor(u, us, S, Su)`: the greater factor Su where the out-of-roundness u exceeds us, else S. */
export const elasticFactor: ListFunction = {
  name: "elasticFactor",
  means: "safety factor against elastic collapse, greater for a cylinder less round",
  basis: excerptSeen("TRD 306", "section 9: a greater factor for an out-of-roundness above 1.5 %, up to 2 %"),
  parameters: [
    { name: "u", unit: "%" },
    { name: "us", unit: "%" },
    { name: "S", unit: "1" },
    { name: "Su", unit: "1" },
  ],
  unit: "1",
  compute: numbers(([u = Number.NaN, limit = Number.NaN, usual = Number.NaN, greater = Number.NaN]) =>
    u <= limit * (1 + 1e-9)
      ? { value: usual, lines: [`out-of-roundness at most ${printed(limit)} %: the usual factor`] }
      : { value: Math.max(usual, greater), lines: [`out-of-roundness above ${printed(limit)} %: the greater factor`] },
  ),
};

/** What a measured diameter is read with: the reading itself. */
export const diameterReading = { value: quantity("", "mm") } as const;

/** Named function `ovality(readings)` in %: 200·(largest − least)/(largest + least). One reading says nothing: refused. */
export const ovality: ListFunction = {
  name: "ovality",
  means: "out-of-roundness from measured diameters: 200·(largest − least)/(largest + least)",
  basis: fromMemory("EN 12953-3", undefined, "out-of-roundness of furnaces"),
  parameters: [{ name: "readings", unit: "rows" }],
  unit: "%",
  compute: rowsThenNumbers((rows) => {
    const largest = Math.max(...rows.map((row) => quantityIn(row, "value").high));
    const least = Math.min(...rows.map((row) => quantityIn(row, "value").low));
    if (rows.length < 2) return { refused: "out-of-roundness takes at least two measured diameters" };
    if (!(least > 0 && Number.isFinite(largest)))
      return { refused: "a measured diameter is not positive, or a bound without an end" };
    return {
      value: (200 * (largest - least)) / (largest + least),
      lines: [`largest ${printed(largest)} mm, least ${printed(least)} mm, of ${rows.length} readings`],
    };
  }),
};

const poisson = 0.3;
const mostWaves = 200;

/**
 * Elastic collapse pressure of a perfect cylinder on simple supports, loaded on its side and its ends, and the number of
 * waves it collapses in: the least over n ≥ 2 of R. von Mises' solution. `E` in MPa, mean radius, wall and length in mm.
 */
export function collapseOfCylinder(E: number, e: number, R: number, L: number) {
  const Z = (Math.PI * R) / L;
  const pressure = (n: number) => {
    const bending = (e ** 2 * (n ** 2 - 1 + Z ** 2) ** 2) / (12 * R ** 2 * (1 - poisson ** 2));
    return ((E * e) / R / (n ** 2 - 1 + Z ** 2 / 2)) * (1 / (n ** 2 / Z ** 2 + 1) ** 2 + bending);
  };
  let waves = 2;
  for (let n = 3; n <= mostWaves; n++) if (pressure(n) < pressure(waves)) waves = n;
  return { pressure: pressure(waves), waves };
}

/** Named function `collapsePressure(E, e, d, L)` in MPa: von Mises' elastic collapse pressure at mean diameter d. */
export const collapsePressure: ListFunction = {
  name: "collapsePressure",
  means: "elastic collapse pressure of a perfect cylinder on simple supports, least over the number of waves, ν = 0.3",
  basis: fromMemory("EN 13445-3", undefined, "elastic instability pressure of a cylinder, after R. von Mises"),
  parameters: [
    { name: "E", unit: "MPa" },
    { name: "e", unit: "mm" },
    { name: "d", unit: "mm" },
    { name: "L", unit: "mm" },
  ],
  unit: "MPa",
  compute: numbers(([E = Number.NaN, e = Number.NaN, d = Number.NaN, L = Number.NaN]) => {
    if (!(E > 0 && e >= 0 && d > 0 && L > 0))
      return { refused: "modulus, wall, diameter and length must be positive for a collapse pressure" };
    const { pressure, waves } = collapseOfCylinder(E, e, d / 2, L);
    return waves === mostWaves && e > 0
      ? { refused: `the cylinder would collapse in more than ${mostWaves} waves: it is no shell` }
      : { value: pressure, lines: [`collapse in ${waves} waves`] };
  }),
};

const printed = (value: number) => String(Number(value.toPrecision(6)));

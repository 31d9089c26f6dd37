import { fromMemory } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/** Temperature in °C and Young's modulus in MPa of unalloyed and low-alloy ferritic steel. */
const points: readonly (readonly [number, number])[] = [
  [20, 212_000],
  [100, 207_000],
  [200, 199_000],
  [300, 192_000],
  [400, 184_000],
];

/** Young's modulus of ferritic steel in MPa at `t` in °C, linear between tabulated temperatures; undefined outside 20 to 400 °C. */
export function modulusOfSteel(t: number): number | undefined {
  const upper = points.findIndex(([temperature]) => t <= temperature);
  const [to, from] = [points[upper], points[Math.max(upper - 1, 0)]];
  if (to === undefined || from === undefined || !(t >= 20)) return undefined;
  const share = to === from ? 0 : (t - from[0]) / (to[0] - from[0]);
  return from[1] + share * (to[1] - from[1]);
}

/** Named function `steelModulus(t)`: Young's modulus of ferritic steel in MPa; refused outside the table. */
export const steelModulus: ListFunction = {
  name: "steelModulus",
  means: "Young's modulus of unalloyed or low-alloy ferritic steel, linear between tabulated temperatures",
  basis: fromMemory("handbook table of ferritic steel", undefined, "212, 207, 199, 192, 184 GPa at 20 to 400 °C"),
  parameters: [{ name: "t", unit: "°C" }],
  unit: "MPa",
  compute: numbers(([t = Number.NaN]) => {
    const value = modulusOfSteel(t);
    return value === undefined
      ? { refused: `Young's modulus is known from 20 °C to 400 °C, not at ${short(t)} °C` }
      : { value, lines: [`linear in the table of ferritic steel, at ${short(t)} °C`] };
  }),
};

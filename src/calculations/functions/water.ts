import type { ListFunction, ListResult } from "../../model/calculation.ts";
import { published } from "../../model/basis.ts";
import { short } from "../../model/print-number.ts";
import { compressibilityOfWater, expansionOfWater, kell as kellPaper } from "../../model/water.ts";
import { numbers } from "./arguments.ts";

const kell = published(kellPaper, undefined, "correlations of density and compressibility");

const inRange = (t: number, compute: (t: number) => number): ListResult =>
  t >= 0 && t <= 100
    ? { value: compute(t), lines: [] }
    : { refused: `water temperature ${short(t)} °C lies outside 0 to 100 °C, where the correlation was fitted` };

/** Named function `expansion(t)`: volumetric expansion of water in 1/K. */
export const waterExpansion: ListFunction = {
  name: "waterExpansion",
  means: "volumetric thermal expansion of water",
  basis: kell,
  parameters: [{ name: "t", unit: "°C" }],
  unit: "1/K",
  compute: numbers(([t = Number.NaN]) => inRange(t, expansionOfWater)),
};

/** Named function `compressibility(t)`: compressibility of water in 1/bar. */
export const waterCompressibility: ListFunction = {
  name: "waterCompressibility",
  means: "isothermal compressibility of water",
  basis: kell,
  parameters: [{ name: "t", unit: "°C" }],
  unit: "1/bar",
  compute: numbers(([t = Number.NaN]) => inRange(t, compressibilityOfWater)),
};

import { derivedFrom } from "../../model/basis.ts";
import type { ListArgument, ListFunction, ListResult } from "../../model/calculation.ts";
import { quantity } from "../../model/input.ts";
import { short } from "../../model/print-number.ts";
import { allRows, quantityIn, type Row } from "./arguments.ts";

/** What a cylinder that stands in the water gives: how many there are, and their size, by the fields that state it. */
const cylinderBy = (outside: string, length: string) =>
  ({
    count: quantity("quantity", "1"),
    outside: quantity(outside, "mm"),
    length: quantity(length, "mm"),
    thickness: quantity("nominalThickness", "mm"),
    undertolerance: quantity("thicknessUndertolerance", "mm"),
  }) as const;

export const cylinderInWater = cylinderBy("outsideDiameter", "length");
export const hoopInWater = cylinderBy("hoop.furnace.outsideDiameter", "hoop.width");

const lists = ["furnaces", "hoops", "chambers", "accessTubes", "tubes", "stayTubes"];
const parameters = [...lists.map((name) => ({ name, unit: "rows" })), { name: "V", unit: "l" }];
const litre = 1e6;

/** Volume in l that the cylinders of a row take from the water. */
const volume = (row: Row) =>
  (quantityIn(row, "count").high *
    (Math.PI / 4) *
    quantityIn(row, "outside").high ** 2 *
    quantityIn(row, "length").high) /
  litre;
const slender = (row: Row) =>
  quantityIn(row, "outside").high / (quantityIn(row, "thickness").low - quantityIn(row, "undertolerance").high);

/** Makes a function that sums over all cylinders a share of the water's volume. */
const sumOver = (
  name: string,
  means: string,
  why: string,
  share: (row: Row) => number,
  shown: string,
): ListFunction => ({
  name,
  means,
  basis: derivedFrom(why),
  parameters,
  unit: "1",
  compute: (...values: readonly ListArgument[]): ListResult => {
    const water = values.at(-1);
    if (typeof water !== "number" || !(water > 0)) return { refused: "the volume of the water is not above nothing" };
    const all = allRows(values.slice(0, -1));
    const shares = all.map((row) => share(row) / water);
    const value = shares.reduce((sum, one) => sum + one, 0);
    if (!Number.isFinite(value) || shares.some((one) => one < 0))
      return { refused: "a part that stands in the water has no size or no wall" };
    return { value, lines: all.map((row, index) => `${row.$.id}: ${shown} ${short(shares[index] ?? Number.NaN)}`) };
  },
});

/** Named function `displaced(furnaces, …, V)`: volume that the cylinders in the water take, by that of the water. */
export const displaced = sumOver(
  "displaced",
  "volume of the furnaces, chambers and tubes that stand in the water, by the volume of the water",
  "a shell encloses the water and what stands in it",
  volume,
  "V_i/V =",
);

/** Named function `yieldOfInternals(furnaces, …, V)`: their D/e, each with its share of the water's volume. */
export const yieldOfInternals = sumOver(
  "yieldOfInternals",
  "sum over the cylinders in the water of D/e times their volume, by the volume of the water",
  "pressure from outside narrows them, which gives the water room",
  (row) => slender(row) * volume(row),
  "D/e·V_i/V =",
);

import { derivedFrom, fromMemory, ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { quantity, text } from "../../model/input.ts";
import { quantityIn, rowsThenNumbers, textIn, type Row } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/** One support that the circle of a region touches: its sort. */
export const supportOfPlate = { support: text("") } as const;

/** Which number of the call belongs to a sort of support. */
const sorts: Readonly<Record<string, number>> = {
  "flanged-edge": 0,
  "welded-edge": 1,
  gusset: 2,
  "bar-stay": 3,
  "stay-tube": 3,
  "access-tube": 3,
  "smoke-tube": 4,
  doubtful: 5,
};
const edges: readonly string[] = ["flanged-edge", "welded-edge"];
const tubes: readonly string[] = ["smoke-tube", "stay-tube"];
const leastSupports = 3;

/**
 * Named function `plateCoefficient(supports, flanged, welded, gusset, stay, smokeTube, doubtful, edgesOnly)`: the mean
 * coefficient C of the supports that the circle of a region touches. A doubtful one decides for all.
 */
export const plateCoefficient: ListFunction = {
  name: "plateCoefficient",
  means: "mean coefficient of the supports that the circle touches; one doubtful support decides for all",
  basis: fromMemory("EN 12953-3", undefined, "stayed flat surfaces, circle touching supports of different sorts"),
  parameters: [
    { name: "supports", unit: "rows" },
    ...["flanged", "welded", "gusset", "stay", "smokeTube", "doubtful", "edgesOnly"].map((name) => ({
      name,
      unit: "1",
    })),
  ],
  unit: "1",
  compute: rowsThenNumbers((rows, numbers) => {
    const supports = rows.map((row) => textIn(row, "support"));
    if (supports.length < leastSupports)
      return {
        refused: `the circle touches ${supports.length} supports; three points fix it: name each, the same sort again where it touches twice`,
      };
    const unknown = supports.find((one) => sorts[one] === undefined);
    if (unknown !== undefined) return { refused: `there is no coefficient for the support "${unknown}"` };
    const other = supports.find((one) => !tubes.includes(one));
    if (supports.includes("smoke-tube") && other !== undefined)
      return {
        refused: `a plain smoke tube supports the plate inside its nest only; this circle touches ${other} too`,
      };
    const each = supports.map((one) => numbers[sorts[one] ?? -1] ?? Number.NaN);
    const [doubtful = Number.NaN, edgesOnly = Number.NaN] = numbers.slice(5);
    const mean = each.reduce((sum, one) => sum + one, 0) / each.length;
    const lines = [`mean of ${supports.map((one, at) => `${one} ${short(each[at] ?? Number.NaN)}`).join(", ")}`];
    if (supports.includes("doubtful"))
      return { value: Math.max(mean, doubtful), lines: [...lines, "a support is doubtful: its coefficient decides"] };
    if (supports.every((one) => edges.includes(one)))
      return {
        value: Math.max(mean, edgesOnly),
        lines: [...lines, `no stay: a plate held at its edges only, at least ${short(edgesOnly)}`],
      };
    return { value: mean, lines };
  }),
};

/** What a region gives to its plate: the thickness it asks for without allowances. */
export const regionOfPlate = { thickness: quantity("calculation(stayed-flat-plate).e", "mm") } as const;

/** What a field of tubes gives to its plate: the thickness that holds expanded tubes. */
export const fieldOfPlate = { thickness: quantity("calculation(tube-nest).emin", "mm") } as const;

const greatest = (rows: readonly Row[]) => {
  const values = rows.map((row) => quantityIn(row, "thickness").high);
  const value = Math.max(...values);
  return {
    value,
    lines: rows.map((row, at) => {
      const own = values[at] ?? Number.NaN;
      return `${row.$.id}: ${short(own)} mm${own === value ? ", the greatest" : ""}`;
    }),
  };
};

/** Named function `greatestRegion(regions)` in mm: the greatest thickness a region asks for. */
export const greatestRegion: ListFunction = {
  name: "greatestRegion",
  means: "greatest thickness that a region of the plate asks for",
  basis: derivedFrom("a plate of one thickness satisfies all its regions"),
  parameters: [{ name: "regions", unit: "rows" }],
  unit: "mm",
  compute: rowsThenNumbers((regions) =>
    regions.length === 0 ? { refused: "the plate has no region" } : greatest(regions),
  ),
};

/** Named function `greatestField(fields)` in mm: the greatest thickness a field of tubes asks for; 0 without any. */
export const greatestField: ListFunction = {
  name: "greatestField",
  means: "greatest thickness that a field of expanded tubes asks for; none where the plate has no such field",
  basis: ownChoice("a plate of one thickness satisfies all its fields"),
  parameters: [{ name: "fields", unit: "rows" }],
  unit: "mm",
  compute: rowsThenNumbers((fields) =>
    fields.length === 0 ? { value: 0, lines: ["no field of tubes"] } : greatest(fields),
  ),
};

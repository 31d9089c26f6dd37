import { derivedFrom, fromMemory, ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { quantity } from "../../model/input.ts";
import { allRows, quantityIn, rowsThenNumbers, type Row } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/** What a thickness reading is read with: the reading itself. */
export const thicknessReading = { value: quantity("", "mm") } as const;

/** Makes a named function of thicknesses in mm that gives the least of them, with the row it stands in. */
export function leastThickness(
  named: Pick<ListFunction, "name" | "means" | "basis"> & { readonly rows: string },
  line: (values: readonly number[]) => string,
  refused: string,
): ListFunction {
  const { rows: name, ...about } = named;
  return {
    ...about,
    parameters: [{ name, unit: "rows" }],
    unit: "mm",
    compute: rowsThenNumbers((rows) => {
      const values = rows.map((row) => quantityIn(row, "value").low);
      const value = Math.min(...values);
      if (!Number.isFinite(value)) return { refused };
      return { value, lines: [line(values)], at: rows.filter((_, index) => values[index] === value).slice(0, 1) };
    }),
  };
}

/** Named function `least(readings)` in mm: the least measured thickness. */
export const least = leastThickness(
  {
    name: "least",
    means: "least of the measured thicknesses",
    basis: ownChoice("the thinnest place decides"),
    rows: "readings",
  },
  (values) => `least of ${values.length} readings`,
  "no thickness was measured",
);

/** What a main pressure part gives to the test pressure: its design stress at the test and at the calculation temperature. */
export const stressOfPart = {
  f20: quantity("calculation(design-stress).f20", "MPa"),
  f: quantity("calculation(design-stress).f", "MPa"),
} as const;

/** Named function `lowestRatio(courses, ends)`: the lowest f20/f of the main pressure parts. */
export const lowestRatio: ListFunction = {
  name: "lowestRatio",
  means:
    "lowest ratio of the design stress at 20 °C to that at the calculation temperature among the main pressure parts",
  basis: fromMemory("EN 13445-5", undefined, "standard hydrostatic test, lowest ratio of the main pressure parts"),
  parameters: [
    { name: "courses", unit: "rows" },
    { name: "ends", unit: "rows" },
  ],
  unit: "1",
  compute: (...lists) => {
    const ratios = allRows(lists).map((row) => ({
      row,
      ratio: quantityIn(row, "f20").value / quantityIn(row, "f").value,
    }));
    const [first, ...others] = ratios;
    if (first === undefined) return { refused: "there is no main pressure part with a design stress" };
    const lowest = others.reduce((one, other) => (other.ratio < one.ratio ? other : one), first);
    return {
      value: lowest.ratio,
      lines: ratios.map(({ row, ratio }) => `${row.$.id}: ${short(ratio)}${row === lowest.row ? ", the lowest" : ""}`),
      at: [lowest.row],
    };
  },
};

/** What a shell course gives to the stiffness of the filled vessel. */
export const wallOfCourse = {
  insideDiameter: quantity("insideDiameter", "mm"),
  nominalThickness: quantity("nominalThickness", "mm"),
  undertolerance: quantity("thicknessUndertolerance", "mm"),
} as const;

/** Named function `slenderness(courses)`: the greatest Di/e of the shell courses, e without undertolerance. */
export const slenderness: ListFunction = {
  name: "slenderness",
  means: "greatest ratio of inside diameter to least thickness as built among the shell courses",
  basis: derivedFrom("thin-walled cylinder: the more slender the wall, the more it yields to pressure"),
  parameters: [{ name: "courses", unit: "rows" }],
  unit: "1",
  compute: rowsThenNumbers((courses) => {
    const ratios = courses.map((row) => ({ row, ratio: quantityIn(row, "insideDiameter").high / wall(row) }));
    const [first, ...others] = ratios;
    if (first === undefined) return { refused: "there is no shell course" };
    const greatest = others.reduce((one, other) => (other.ratio > one.ratio ? other : one), first);
    if (!(greatest.ratio > 0) || ratios.some(({ row }) => wall(row) <= 0))
      return { refused: "a shell course has no thickness left after its undertolerance" };
    return {
      value: greatest.ratio,
      lines: ratios.map(({ row, ratio }) => `${row.$.id}: Di/e = ${short(ratio)}`),
      at: [greatest.row],
    };
  }),
};

const wall = (row: Row) => quantityIn(row, "nominalThickness").low - quantityIn(row, "undertolerance").high;

/** What a valve gives to the sum of capacities: the lower of what it is certified for and what we recompute counts. */
export const capacityOfValve = {
  certified: quantity("certifiedCapacity", "kg/h"),
  recomputed: quantity("calculation(gas-safety-valve).Qm", "kg/h"),
} as const;

/** The same of a valve for steam. */
export const capacityOfSteamValve = {
  certified: quantity("certifiedCapacity", "kg/h"),
  recomputed: quantity("calculation(steam-safety-valve).Qm", "kg/h"),
} as const;

/** Named function `totalCapacity(valves)` in kg/h: of each valve the lower of certified and recomputed capacity. */
export const totalCapacity: ListFunction = {
  name: "totalCapacity",
  means: "sum over the valves of the lower of certified and recomputed capacity",
  basis: ownChoice("a certificate is never trusted beyond what the recomputation gives"),
  parameters: [{ name: "valves", unit: "rows" }],
  unit: "kg/h",
  compute: rowsThenNumbers((valves) => {
    if (valves.length === 0) return { refused: "there is no safety valve" };
    const capacities = valves.map((row) =>
      Math.min(quantityIn(row, "certified").low, quantityIn(row, "recomputed").value),
    );
    return {
      value: capacities.reduce((sum, capacity) => sum + capacity, 0),
      lines: valves.map((row, index) => `${row.$.id}: ${short(capacities[index] ?? Number.NaN)} kg/h`),
      at: valves,
    };
  }),
};

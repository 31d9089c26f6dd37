import { derivedFrom } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { optional, quantity, text } from "../../model/input.ts";
import type { Measure } from "../../model/quantity.ts";
import { quantityIn, rowsThenNumbers, textIn, type Row } from "./arguments.ts";

/** Where an opening of a shell lies, and how wide it is: over its branch, or its own width along the axis. */
export const openingOfShell = {
  opening: text("opening"),
  along: quantity("along", "mm"),
  around: quantity("around", "mm"),
  outside: optional(quantity("branch.outsideDiameter", "mm")),
  width: optional(quantity("axialWidth", "mm")),
} as const;

const printed = (value: number) => String(Number(value.toPrecision(6)));
const highOf = (row: Row, name: string): number => (row[name] as Measure | undefined)?.high ?? 0;
const halfOf = (row: Row): number => Math.max(highOf(row, "outside"), highOf(row, "width")) / 2;

/** Clear distance of two openings on the unrolled shell of circumference `round`, edge to edge, in mm. */
function clearBetween(a: Row, b: Row, round: number): number {
  const along = quantityIn(a, "along").value - quantityIn(b, "along").value;
  const apart = Math.abs(quantityIn(a, "around").value - quantityIn(b, "around").value) % round;
  return Math.hypot(along, Math.min(apart, round - apart)) - halfOf(a) - halfOf(b);
}

/**
 * Named function `leastClear(openings, Do)` in mm: least clear distance of two openings of a shell, edge to edge on its
 * outside. A single opening has only itself for a neighbour, once round the shell.
 */
export const leastClear: ListFunction = {
  name: "leastClear",
  means: "least clear distance of two openings, edge to edge on the unrolled outside of the shell",
  basis: derivedFrom("geometry of the unrolled cylinder; openings count as circles of their greatest recorded width"),
  parameters: [
    { name: "openings", unit: "rows" },
    { name: "Do", unit: "mm" },
  ],
  unit: "mm",
  compute: rowsThenNumbers((rows, [Do = Number.NaN]) => {
    const [first] = rows;
    if (first === undefined || !(Do > 0)) return { refused: "the shell must have a diameter, and an opening" };
    const point = rows.find((row) => halfOf(row) <= 0);
    if (point !== undefined)
      return { refused: `opening ${textIn(point, "opening")} has neither a branch with a diameter nor a width` };
    const round = Math.PI * Do;
    let nearest = { clear: round - 2 * halfOf(first), pair: [first] as readonly Row[] };
    rows.forEach((a, index) => {
      for (const b of rows.slice(index + 1)) {
        const clear = clearBetween(a, b, round);
        if (clear < nearest.clear) nearest = { clear, pair: [a, b] };
      }
    });
    const names = nearest.pair.map((row) => textIn(row, "opening"));
    const said = names.length < 2 ? `${names[0] ?? ""} is alone` : `${names.join(" and ")} are the nearest`;
    return { value: nearest.clear, lines: [`${said}: ${printed(nearest.clear)} mm between them`], at: nearest.pair };
  }),
};

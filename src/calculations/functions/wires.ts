import { ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { short } from "../../model/print-number.ts";
import { lineFor, wireNumber } from "../../model/wires.ts";
import { quantityIn, rowsThenNumbers, textIn } from "./arguments.ts";
import { leastThickness } from "./parts.ts";

/** Named function `thinner(walls)` in mm: the least of the thicknesses that meet at a joint. */
export const thinner = leastThickness(
  {
    name: "thinner",
    means: "thickness of the thinner part",
    basis: ownChoice("where two thicknesses meet, the thinner asks for the thinner wire"),
    rows: "walls",
  },
  (values) =>
    values.length > 1 ? `thinner of ${values.map(short).join(" and ")} mm` : `${short(values[0] ?? NaN)} mm`,
  "no thickness of the joint is stated",
);

/** Named function `thicker(walls)` in mm: the greatest of the thicknesses that meet at a joint. */
export const thicker: ListFunction = {
  name: "thicker",
  means: "thickness of the thicker part",
  basis: ownChoice("the film lies behind the thicker part"),
  parameters: [{ name: "walls", unit: "rows" }],
  unit: "mm",
  compute: rowsThenNumbers((rows) => {
    const values = rows.map((row) => quantityIn(row, "value").high);
    const value = Math.max(...values);
    return Number.isFinite(value)
      ? { value, lines: [`thicker of ${values.map(short).join(" and ")} mm`] }
      : { refused: "no thickness of the joint is stated" };
  }),
};

/** Named function `wire(points, t)`: number of the wire that a table of required wires asks for at a thickness t in mm. */
export const wire: ListFunction = {
  name: "wire",
  means: "number of the wire that the table asks for at a thickness",
  basis: ownChoice(
    "the line of the table in which the thickness lies, its upper end included; never between two lines",
  ),
  parameters: [
    { name: "points", unit: "rows" },
    { name: "t", unit: "mm" },
  ],
  unit: "1",
  compute: rowsThenNumbers((rows, [t = Number.NaN]) => {
    const line = lineFor(
      rows.map((row) => ({ over: quantityIn(row, "over"), wire: textIn(row, "wire") })),
      t,
    );
    if (line === undefined) return { refused: `the table of wires has no line for ${short(t)} mm` };
    const value = wireNumber(line.wire);
    return value === undefined
      ? { refused: `the table asks for "${line.wire}" above ${line.over.text}, which is no wire of ISO 19232-1` }
      : { value, lines: [`${line.wire} above ${line.over.text}`] };
  }),
};

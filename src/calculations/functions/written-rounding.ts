import { ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { quantityIn, rowsThenNumbers } from "./arguments.ts";

/** Named function `writtenRounding(rows)` in K: half a unit of the last digit a temperature is written with. */
export const writtenRounding: ListFunction = {
  name: "writtenRounding",
  means: "half a unit of the last digit a temperature is written with",
  basis: ownChoice("who writes a whole degree has rounded: 184 °C stands for 183.5 °C to 184.5 °C"),
  parameters: [{ name: "limits", unit: "rows" }],
  unit: "ΔK",
  compute: rowsThenNumbers(([row]) =>
    row === undefined
      ? { refused: "no temperature is written" }
      : {
          value: quantityIn(row, "temperature").halfUnit,
          lines: [`written as ${quantityIn(row, "temperature").text}`],
        },
  ),
};

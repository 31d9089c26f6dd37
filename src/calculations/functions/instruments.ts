import { ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { quantity } from "../../model/input.ts";
import { quantityIn, rowsThenNumbers } from "./arguments.ts";

/** The smallest difference that can be read on a thermometer. */
export const thermometer = { resolution: quantity("resolution", "ΔK") } as const;

/** Named function `coarsest(thermometers)` in K: the greatest of their resolutions. */
export const coarsest: ListFunction = {
  name: "coarsest",
  means: "resolution of the coarsest thermometer",
  basis: ownChoice("nobody knows which of several thermometers was read"),
  parameters: [{ name: "thermometers", unit: "rows" }],
  unit: "ΔK",
  compute: rowsThenNumbers((thermometers) => {
    const value = Math.max(...thermometers.map((row) => quantityIn(row, "resolution").high));
    return Number.isFinite(value)
      ? {
          value,
          lines: thermometers.map((row) => `${row.$.id}: ${quantityIn(row, "resolution").text}`),
          at: thermometers,
        }
      : { refused: "no resolution of a thermometer is known" };
  }),
};

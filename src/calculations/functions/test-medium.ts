import { commonPractice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";

/** Media of a pressure test, in the order in which formulas number them. */
export const testMedia = ["water", "water with additive", "oil", "air", "nitrogen"] as const;

/** Pressure of a column in bar/m; of oil nobody knows it without its density. */
const columns: readonly (number | undefined)[] = [0.0981, 0.0981, undefined, 0, 0];

/** Named function `headPerMetre(medium)` in bar/m: the pressure of a column of the test medium. */
export const headPerMetre: ListFunction = {
  name: "headPerMetre",
  means: "pressure of a column of the test medium: 0.0981 bar/m of water, nothing of a gas",
  basis: commonPractice("weight of 1000 kg/m³ of water; a column of gas weighs next to nothing"),
  parameters: [{ name: "medium", unit: "1" }],
  unit: "bar/m",
  compute: numbers(([medium = Number.NaN]) => {
    const value = columns[medium];
    return value === undefined
      ? { refused: `the weight of a column of ${testMedia[medium] ?? "this medium"} is not known` }
      : { value, lines: [`test medium: ${testMedia[medium] ?? ""}`] };
  }),
};

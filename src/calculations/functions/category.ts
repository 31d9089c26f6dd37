import { excerptSeen, fromMemory } from "../../model/basis.ts";
import type { ListFunction, ListResult } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/** Categories in rising order, as equipment records state them; the value of the function is the position in this list. */
export const categories: readonly string[] = ["sound engineering practice", "I", "II", "III", "IV"];

const lowest = "sound engineering practice";

const rank = (name: string): number => categories.indexOf(name);
const found = (name: string, line: string): ListResult => ({ value: rank(name), lines: [line] });
const directive = "Directive 2014/68/EU";

/** Positions of `state` and `heated` as the calculation gives them. */
export const states: readonly string[] = ["liquid", "gas", "steam"];

/**
 * Category of a vessel for a gas of group 2, after Annex II table 2; `PS` in bar, `V` in l. Two corners of the drawing
 * could not be told from memory: there it refuses instead of guessing.
 */
export function categoryOfGasGroup2(PS: number, V: number): ListResult {
  const energy = PS * V;
  const said = `PS·V = ${short(energy)} bar·l`;
  if (PS <= 0.5) return found(lowest, `PS = ${short(PS)} bar is not above 0.5 bar`);
  if (V <= 1) {
    if (PS <= 1000) return found(lowest, `V = ${short(V)} l is at most 1 l and PS at most 1000 bar`);
    return found(PS <= 3000 ? "III" : "IV", `V = ${short(V)} l is at most 1 l, PS = ${short(PS)} bar`);
  }
  if (energy <= 50) return found(lowest, `${said}, at most 50`);
  if (energy <= 200) return found("I", `${said}, over 50, at most 200`);
  if (PS > 3000) return found("IV", `PS = ${short(PS)} bar is above 3000 bar`);
  if (energy <= 1000) {
    if (PS < 1 && V > 1000)
      return { refused: `${said} with V over 1000 l: whether II or III is to be read from the drawing of table 2` };
    return found("II", `${said}, over 200, at most 1000`);
  }
  if (energy <= 3000) return found("III", `${said}, over 1000, at most 3000`);
  if (PS <= 4)
    return { refused: `${said} with PS at most 4 bar: whether III or IV is to be read from the drawing of table 2` };
  return found("IV", `${said}, over 3000`);
}

/** Category of equipment heated to make steam, after Annex II table 5; `PS` in bar, `V` in l. */
export function categoryOfHeated(PS: number, V: number): ListResult {
  const energy = PS * V;
  const said = `PS·V = ${short(energy)} bar·l`;
  if (PS <= 0.5) return found(lowest, `PS = ${short(PS)} bar is not above 0.5 bar`);
  if (V <= 2) return found(lowest, `V = ${short(V)} l is at most 2 l`);
  if (PS > 32) return found("IV", `PS = ${short(PS)} bar is above 32 bar`);
  if (V > 1000) return found("IV", `V = ${short(V)} l is above 1000 l`);
  if (energy > 3000) return found("IV", `${said}, over 3000`);
  if (energy > 200) return found("III", `${said}, over 200, at most 3000`);
  if (energy > 50) return found("II", `${said}, over 50, at most 200`);
  return found("I", `${said}, at most 50`);
}

/** Named function `gasCategory(PS, V, group, state)`: position in `categories`. */
export const gasCategory: ListFunction = {
  name: "gasCategory",
  means: "category of a vessel for gas or vapour, from pressure and volume",
  basis: fromMemory(directive, undefined, "Annex II, table 2"),
  parameters: [
    { name: "PS", unit: "bar" },
    { name: "V", unit: "l" },
    { name: "group", unit: "1" },
    { name: "state", unit: "1" },
  ],
  unit: "1",
  compute: numbers(([PS = Number.NaN, V = Number.NaN, group = Number.NaN, state = Number.NaN]) => {
    if (!(PS >= 0 && V > 0)) return { refused: "pressure and volume must be positive" };
    if (group !== 2) return { refused: "fluids of group 1 are judged after table 1 or 3, which is not known here" };
    if (states[state] !== "gas" && states[state] !== "steam")
      return { refused: "liquids are judged after table 3 or 4, which is not known here" };
    return categoryOfGasGroup2(PS, V);
  }),
};

/** Named function `heatedCategory(PS, V)`: position in `categories`. */
export const heatedCategory: ListFunction = {
  name: "heatedCategory",
  means: "category of fired or otherwise heated equipment for steam above 110 °C, from pressure and volume",
  basis: excerptSeen(directive, "Annex II, table 5, bands as others repeat them, the drawing itself not seen"),
  parameters: [
    { name: "PS", unit: "bar" },
    { name: "V", unit: "l" },
  ],
  unit: "1",
  compute: numbers(([PS = Number.NaN, V = Number.NaN]) =>
    PS >= 0 && V > 0 ? categoryOfHeated(PS, V) : { refused: "pressure and volume must be positive" },
  ),
};

import { ownChoice } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";

/** How hot gas heats a part, as records state it; the value of the input is the position in this list. */
export const heatings: readonly string[] = ["none", "convection", "radiation"];

/** Named function `byHeating(heating, unheated, swept, radiated)` in °C: the temperature that belongs to the heating. */
export const byHeating: ListFunction = {
  name: "byHeating",
  means: "metal temperature for the way the part is heated",
  basis: ownChoice("the record says how hot gas heats the part"),
  parameters: [
    { name: "heating", unit: "1" },
    { name: "unheated", unit: "°C" },
    { name: "swept", unit: "°C" },
    { name: "radiated", unit: "°C" },
  ],
  unit: "°C",
  compute: numbers(([heating = Number.NaN, ...temperatures]) => {
    const [value, name] = [temperatures[heating], heatings[heating]];
    return value === undefined || name === undefined
      ? { refused: "how the part is heated is not known" }
      : { value, lines: [`heating: ${name}`] };
  }),
};

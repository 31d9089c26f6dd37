import { published } from "../../model/basis.ts";
import type { Basis } from "../../model/basis.ts";
import type { ListFunction, ListResult } from "../../model/calculation.ts";
import {
  isRefusal,
  liquid,
  saturated,
  saturationTemperature,
  vapour,
  type Refusal,
  type State,
} from "../../steam/index.ts";
import { numbers } from "./arguments.ts";

const release = "IAPWS R7-97";
const region1 = published(release, "2012", "region 1, equation (7) and table 3");
const region2 = published(release, "2012", "region 2, equations (15) to (17) and table 12");
const region4 = published(release, "2012", "region 4, equation (31)");

/** Absolute pressure of calculations (bar) in MPa, and a temperature in °C in K: what the equations take. */
export const megapascal = (bar: number) => bar / 10;
export const kelvin = (celsius: number) => celsius + 273.15;

/** A result of the steam equations as a named function gives it. */
export const resultOf = <T>(value: T | Refusal, pick: (value: T) => number): ListResult =>
  isRefusal(value) ? value : { value: pick(value), lines: [] };

/** Makes a named function of the absolute pressure `p` in bar alone. */
function ofPressure(
  name: string,
  means: string,
  unit: string,
  basis: Basis,
  compute: (p: number) => ListResult,
): ListFunction {
  return {
    name,
    means,
    basis,
    parameters: [{ name: "p", unit: "bar(a)" }],
    unit,
    compute: numbers(([p = Number.NaN]) => compute(megapascal(p))),
  };
}

/** Named function `boilingTemperature(p)` in °C: saturation temperature of water. */
export const boilingTemperature = ofPressure(
  "boilingTemperature",
  "saturation temperature of water",
  "°C",
  region4,
  (p) => resultOf(saturationTemperature(p), (T) => T - 273.15),
);

/** Named function `volumeOfSteam(p)` in m³/kg: specific volume of dry saturated steam. */
export const volumeOfSteam = ofPressure(
  "volumeOfSteam",
  "specific volume of dry saturated steam",
  "m³/kg",
  region2,
  (p) => resultOf(saturated(p), ({ vapour: { v } }) => v),
);

/** Named function `enthalpyOfSteam(p)` in kJ/kg: specific enthalpy of dry saturated steam. */
export const enthalpyOfSteam = ofPressure(
  "enthalpyOfSteam",
  "specific enthalpy of dry saturated steam",
  "kJ/kg",
  region2,
  (p) => resultOf(saturated(p), ({ vapour: { h } }) => h),
);

/** Named function `enthalpyOfBoilingWater(p)` in kJ/kg: specific enthalpy of water at saturation. */
export const enthalpyOfBoilingWater = ofPressure(
  "enthalpyOfBoilingWater",
  "specific enthalpy of water at saturation",
  "kJ/kg",
  region1,
  (p) => resultOf(saturated(p), ({ liquid: { h } }) => h),
);

/** Named function `enthalpyOfWater(p, t)` in kJ/kg: specific enthalpy of water that does not boil. */
export const enthalpyOfWater: ListFunction = {
  name: "enthalpyOfWater",
  means: "specific enthalpy of water at the pressure of the boiler",
  basis: region1,
  parameters: [
    { name: "p", unit: "bar(a)" },
    { name: "t", unit: "°C" },
  ],
  unit: "kJ/kg",
  compute: numbers(([p = Number.NaN, t = Number.NaN]) => resultOf(liquid(megapascal(p), kelvin(t)), ({ h }) => h)),
};

/** Steam at `p` in bar (absolute) and so many kelvin above saturation: its temperature in K and its state. */
export function steamAt(p: number, superheat: number): { readonly T: number; readonly state: State } | Refusal {
  const boiling = saturated(megapascal(p));
  if (isRefusal(boiling)) return boiling;
  // At saturation the state is at hand; asked for anew it could fall to the other side by a rounding.
  if (superheat === 0) return { T: boiling.T, state: boiling.vapour };
  if (!(superheat > 0)) return { refused: "steam is not colder than saturation" };
  const T = boiling.T + superheat;
  const state = vapour(megapascal(p), T);
  return isRefusal(state) ? state : { T, state };
}

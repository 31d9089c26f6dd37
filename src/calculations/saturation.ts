import { saturationExamples } from "./saturation-examples.ts";
import { boilingTemperature, enthalpyOfBoilingWater, enthalpyOfSteam, volumeOfSteam } from "./functions/steam.ts";
import { atmosphere } from "./shared/boiler.ts";
import { writtenRounding } from "./functions/written-rounding.ts";
import { fromMemory, published } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { quantity } from "../model/input.ts";

export const saturation = calculation({
  id: "saturation",
  scope: "steam",
  title: "Saturation at the maximum allowable pressure",
  basis: published("IAPWS R7-97", "2012", "regions 1, 2 and 4"),
  covers:
    "Boiling temperature and properties of water and dry saturated steam at the maximum allowable pressure, up to 165 bar absolute. The pressure of a water column and of dissolved salts is left out.",
  appliesTo: { kind: "equipment", when: [{ path: "fluid.state", equals: "steam" }] },
  inputs: {
    PS: {
      path: "limits.maximumAllowablePressure",
      unit: "bar",
      means: "maximum allowable pressure",
      display: "P_S",
      unsafe: "low",
    },
    patm: atmosphere,
    TS: {
      path: "limits.maximumAllowableTemperature",
      unit: "°C",
      means: "maximum allowable temperature",
      display: "T_S",
      unsafe: "high",
    },
    limits: {
      path: "limits",
      unit: "rows",
      means: "the limits as they are written",
      rows: { temperature: quantity("maximumAllowableTemperature", "°C") },
    },
  },
  functions: [writtenRounding, boilingTemperature, volumeOfSteam, enthalpyOfBoilingWater, enthalpyOfSteam],
  steps: [
    {
      symbol: "p",
      unit: "bar(a)",
      means: "maximum allowable pressure, absolute",
      formula: "patm + PS",
      round: { decimals: 3, direction: "nearest" },
    },
    {
      symbol: "ts",
      unit: "°C",
      means: "saturation temperature",
      formula: "boilingTemperature(p)",
      display: "t_s",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "vs",
      unit: "m³/kg",
      means: "specific volume of dry saturated steam",
      formula: "volumeOfSteam(p)",
      display: "v^″",
      round: { decimals: 5, direction: "nearest" },
    },
    {
      symbol: "hb",
      unit: "kJ/kg",
      means: "specific enthalpy of boiling water",
      formula: "enthalpyOfBoilingWater(p)",
      display: "h^′",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "hs",
      unit: "kJ/kg",
      means: "specific enthalpy of dry saturated steam",
      formula: "enthalpyOfSteam(p)",
      display: "h^″",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "r",
      unit: "ΔK",
      means: "half a unit of the last digit the temperature is written with",
      formula: "writtenRounding(limits)",
      round: { decimals: 3, direction: "down" },
    },
    {
      symbol: "τ",
      unit: "1",
      means: "distance from the critical temperature, for the second method",
      formula: "1 - (ts + 273.15)/647.096",
      empirical: true,
      round: { decimals: 5, direction: "nearest" },
    },
  ],
  limits: [],
  accept: [
    {
      name: "TS too low",
      left: "TS + r",
      relation: ">=",
      right: "ts",
      means: "the maximum allowable temperature, as it is written, is not below the saturation temperature",
      wrong: "the maximum allowable temperature TS is {TS}, below the saturation temperature of {right}",
      accuses: "TS",
    },
  ],
  compared: [
    { symbol: "p", unsafe: "low" },
    { symbol: "ts", unsafe: "low" },
    { symbol: "vs", unsafe: "any" },
    { symbol: "hb", unsafe: "any" },
    { symbol: "hs", unsafe: "any" },
  ],
  crossCheck: {
    means: "saturation pressure at the temperature found, from another equation",
    symbol: "p",
    formula:
      "220.64*exp((-7.85951783*τ + 1.84408259*τ^1.5 - 11.7866497*τ^3 + 22.6807411*τ^3.5 - 15.9618719*τ^4 + 1.80122502*τ^7.5)/(1 - τ))",
    unit: "bar(a)",
    // The coefficients belong to τ and to the critical pressure in bar.
    empirical: true,
    within: "0.0005*p",
    basis: fromMemory(
      "W. Wagner and A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783",
      undefined,
      "vapour pressure of saturated ordinary water",
    ),
  },
  examples: saturationExamples,
});

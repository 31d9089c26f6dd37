import { metalTemperatureExamples } from "./metal-temperature-examples.ts";
import { byHeating, heatings } from "./functions/heating.ts";
import { boiling, forItsHeating, heatedRoles, ofSteamEquipment, statedTemperature } from "./shared/boiler.ts";
import { fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

export const metalTemperature = calculation({
  id: "metal-temperature",
  scope: "steam",
  title: "Calculation temperature of a part of a boiler",
  basis: fromMemory("EN 12953-3", undefined, "calculation temperature"),
  covers:
    "Metal temperature of plates, shells, furnaces, branches and stays that hold boiling water or saturated steam, from how hot gas heats them. Tubes have a calculation of their own. Superheated steam, scale and overheating are not covered.",
  appliesTo: {
    kind: "part",
    when: [{ path: "pressureBearing", equals: true }, { path: "role", equals: heatedRoles }, ofSteamEquipment],
  },
  inputs: {
    ts: boiling,
    heating: { path: "heating", unit: "1", means: "how hot gas heats the part", options: heatings },
    e: { path: "nominalThickness", unit: "mm", means: "nominal thickness", unsafe: "low" },
    kc: {
      path: "profile.convectionRisePerThickness",
      unit: "K/mm",
      means: "rise per thickness of a plate swept by hot gas",
      display: "k_c",
    },
    kr: {
      path: "profile.radiationRisePerThickness",
      unit: "K/mm",
      means: "rise per thickness of a plate that the flame radiates on",
      display: "k_r",
    },
    Δ: { path: "profile.heatedSurfaceRise", unit: "ΔK", means: "rise at the heated surface" },
    tmin: {
      path: "profile.radiationLeastTemperature",
      unit: "°C",
      means: "least calculation temperature of a plate that the flame radiates on",
      display: "t_min",
    },
    tP: statedTemperature,
  },
  owes: [owedBy("design", "design-approved", "heating")],
  functions: [byHeating],
  steps: [
    {
      symbol: "tc",
      unit: "°C",
      means: "temperature of a plate swept by hot gas",
      formula: "ts + kc*e + Δ",
      display: "t_c",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "tr",
      unit: "°C",
      means: "temperature of a plate that the flame radiates on",
      formula: "max(ts + kr*e + Δ, tmin)",
      display: "t_r",
      round: { decimals: 1, direction: "up" },
    },
    forItsHeating("tc", "tr"),
  ],
  limits: [],
  accept: [
    {
      left: "tP",
      relation: ">=",
      right: "t",
      means: "the stated calculation temperature is not below that of the heating",
      accuses: "tP",
      needs: "tP",
    },
  ],
  compared: [{ symbol: "t", unsafe: "low" }],
  examples: metalTemperatureExamples,
});

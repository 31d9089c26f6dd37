import { byHeating, heatings } from "./functions/heating.ts";
import { boiling, forItsHeating, ofSteamEquipment, statedTemperature, tubeRoles } from "./shared/boiler.ts";
import { fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const rises = { Δc: 25, Δr: 50 };

export const tubeTemperature = calculation({
  id: "tube-temperature",
  scope: "tube-nests",
  title: "Calculation temperature of a tube of a boiler",
  basis: fromMemory("EN 12953-3", undefined, "calculation temperature of tubes"),
  covers:
    "Metal temperature of smoke tubes and stay tubes in boiling water, from how the gas in them gives its heat. Water tubes, superheater tubes, scale and overheating are not covered.",
  appliesTo: {
    kind: "part",
    when: [{ path: "pressureBearing", equals: true }, { path: "role", equals: tubeRoles }, ofSteamEquipment],
  },
  inputs: {
    ts: boiling,
    heating: { path: "heating", unit: "1", means: "how hot gas heats the tube", options: heatings },
    Δc: {
      path: "profile.tubeConvectionRise",
      unit: "ΔK",
      means: "rise of a tube that hot gas heats by convection",
      display: "Δ_c",
    },
    Δr: {
      path: "profile.tubeRadiationRise",
      unit: "ΔK",
      means: "rise of a tube that hot gas heats mainly by radiation",
      display: "Δ_r",
    },
    tP: statedTemperature,
  },
  owes: [owedBy("design", "design-approved", "heating")],
  functions: [byHeating],
  steps: [
    {
      symbol: "tc",
      unit: "°C",
      means: "temperature of a tube heated by convection",
      formula: "ts + Δc",
      display: "t_c",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "tr",
      unit: "°C",
      means: "temperature of a tube heated mainly by radiation",
      formula: "ts + Δr",
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
  examples: [
    {
      source: "worked by hand: 184.1 + 25, stated exactly so",
      class: "constructed",
      given: { ts: 184.1, heating: 1, ...rises, tP: 209.1 },
      expect: { t: 209.1 },
      within: 1e-9,
    },
    {
      source: "worked by hand: 184.1 + 50, stated a kelvin too low",
      class: "constructed",
      given: { ts: 184.1, heating: 2, ...rises, tP: 233.1 },
      expect: { t: 234.1 },
      within: 1e-9,
    },
    {
      source: "constructed: a tube that no gas heats",
      class: "constructed",
      given: { ts: 184.1, heating: 0, ...rises },
      expect: { tc: 209.1, tr: 234.1, t: 184.1 },
      within: 1e-9,
    },
  ],
});

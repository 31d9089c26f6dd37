import { steamValveExamples } from "./steam-safety-valve-examples.ts";
import {
  dryExponent,
  exponentOfFlow,
  exponentTurningWet,
  fluxInEquilibrium,
  volumeOfSuperheated,
} from "./functions/steam-flow.ts";
import { boilingTemperature } from "./functions/steam.ts";
import {
  allowedCapacity,
  capacityAccepted,
  coefficientLimits,
  comparedCapacity,
  judgingInputs,
  nozzleFactors,
  relievingPressure,
  valveInputs,
} from "./shared/discharge.ts";
import { derivedFrom, fromMemory, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

export const steamSafetyValve = calculation({
  id: "steam-safety-valve",
  scope: "steam",
  title: "Capacity of a safety valve for steam",
  basis: fromMemory("EN ISO 4126-7", undefined, "discharge capacity for steam in critical flow"),
  covers:
    "Certified discharge capacity of a safety valve for dry saturated or superheated steam, in critical flow. Wet steam, water, and losses in the inlet line are not covered. A certificate may lie anywhere between the two methods, with the tolerance on either side: between 20 K and 40 K of superheat they differ by up to 5 %, and neither is wrong. The exponent is computed, not read from the table of the standard.",
  appliesTo: { kind: "safety-valve", when: [{ path: "medium.state", equals: "steam" }] },
  inputs: {
    ...valveInputs("steam"),
    t0: {
      path: "medium.temperature",
      unit: "°C",
      means: "temperature at the inlet; up to saturation the steam is dry saturated",
      display: "t_0",
      unsafe: "low",
    },
    ...judgingInputs,
  },
  functions: [
    boilingTemperature,
    volumeOfSuperheated,
    exponentTurningWet,
    dryExponent,
    exponentOfFlow,
    fluxInEquilibrium,
  ],
  steps: [
    ...relievingPressure,
    {
      symbol: "tset",
      unit: "°C",
      means: "saturation temperature at the set pressure",
      formula: "boilingTemperature(patm + pset)",
      display: "t_set",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "ts",
      unit: "°C",
      means: "saturation temperature at the relieving pressure",
      formula: "boilingTemperature(p0)",
      display: "t_s",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "ΔT",
      unit: "ΔK",
      means: "superheat",
      formula: "max('0 ΔK', t0 - ts)",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "v0",
      unit: "m³/kg",
      means: "specific volume at the inlet",
      formula: "volumeOfSuperheated(p0, ΔT)",
      display: "v_0",
      round: { decimals: 5, direction: "up" },
    },
    {
      symbol: "kw",
      unit: "1",
      means: "isentropic exponent of saturated steam that turns wet",
      formula: "wetExponent(p0)",
      display: "k_wet",
      round: { decimals: 4, direction: "down" },
    },
    {
      symbol: "kd",
      unit: "1",
      means: "isentropic exponent of steam that stays dry",
      formula: "dryExponent(p0, ΔT)",
      display: "k_dry",
      round: { decimals: 4, direction: "down" },
    },
    {
      symbol: "k",
      unit: "1",
      means: "isentropic exponent of the flow",
      formula: "exponentOfFlow(kw, kd, ΔT)",
      round: { decimals: 4, direction: "down" },
    },
    ...nozzleFactors,
    {
      symbol: "Qm",
      unit: "kg/h",
      means: "certified discharge capacity, recomputed",
      formula: "0.2883*C*A*Kdr*Kb*sqrt(p0/v0)",
      empirical: true,
      display: "Q_m",
      round: { decimals: 0, direction: "down" },
    },
    {
      symbol: "G",
      unit: "kg/(s·m²)",
      means: "mass flux of an ideal nozzle, for the second method",
      formula: "fluxInEquilibrium(p0, ΔT, patm + pb)",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "Qe",
      unit: "kg/h",
      means: "certified discharge capacity by the second method",
      formula: "3600*Kdr*A/1000000*G",
      // 3600 s/h and 10⁶ mm²/m².
      empirical: true,
      display: "Q_e",
      round: { decimals: 0, direction: "nearest" },
    },
    ...allowedCapacity("min(Qm, Qe)", "max(Qm, Qe)"),
  ],
  limits: [
    {
      left: "k",
      relation: ">",
      right: "1",
      means: "the isentropic exponent is above 1",
      basis: derivedFrom(
        "the formulas of C and of the critical ratio have no value at 1; steam passes it near 115 bar",
      ),
    },
    ...coefficientLimits,
    {
      left: "t0",
      relation: ">=",
      right: "tset - '1 ΔK'",
      means: "the steam is not colder than saturated steam at the set pressure",
      wrong: "the steam is {left}, colder than saturated steam at the set pressure, {tset}",
      basis: ownChoice("a record may state the saturation temperature at the set pressure, rounded; less is no steam"),
    },
  ],
  accept: capacityAccepted,
  compared: comparedCapacity,
  crossCheck: {
    means: "greatest flux of an isentropic expansion with liquid and vapour in equilibrium",
    symbol: "Qm",
    formula: "Qe",
    unit: "kg/h",
    // The band grows with the superheat in kelvin: a bare number.
    empirical: true,
    within: "Qm*(0.005 + 0.35*(kd - k)*ΔT/40)",
    basis: derivedFrom(
      "equations of IAPWS R7-97(2012); the wet exponent, kept up to 40 K of superheat, understates the flow the more the hotter the steam",
    ),
  },
  examples: steamValveExamples,
});

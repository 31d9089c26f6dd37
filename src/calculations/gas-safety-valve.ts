import { gasValveExamples } from "./gas-safety-valve-examples.ts";
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
import { derivedFrom, fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const sizing = fromMemory("EN ISO 4126-7", undefined, "discharge capacity for gas");

export const gasSafetyValve = calculation({
  id: "gas-safety-valve",
  scope: "gas",
  title: "Capacity of a safety valve for gas",
  basis: sizing,
  covers:
    "Certified discharge capacity of a safety valve for a gas of constant isentropic exponent, in critical flow. Steam, liquids and two-phase flow are not covered, nor are losses in the inlet line.",
  appliesTo: { kind: "safety-valve", when: [{ path: "medium.state", equals: "gas" }] },
  inputs: {
    ...valveInputs("gas"),
    k: {
      path: "medium.isentropicExponent",
      unit: "1",
      means: "isentropic exponent of the gas at relieving conditions",
      unsafe: "high",
    },
    M: { path: "medium.molarMass", unit: "kg/kmol", means: "molar mass of the gas", unsafe: "high" },
    Z: { path: "medium.compressibilityFactor", unit: "1", means: "compressibility factor of the gas", unsafe: "low" },
    T0: { path: "medium.temperature", unit: "K", means: "relieving temperature", display: "T_0", unsafe: "low" },
    ...judgingInputs,
  },
  owes: [owedBy("design", "final-inspection", "k", "M", "Z")],
  steps: [
    ...relievingPressure,
    ...nozzleFactors,
    {
      symbol: "Qm",
      unit: "kg/h",
      means: "certified discharge capacity, recomputed",
      formula: "p0*C*A*Kdr*Kb*sqrt(M/(Z*T0))",
      empirical: true,
      display: "Q_m",
      round: { decimals: 0, direction: "down" },
    },
    ...allowedCapacity("Qm", "Qm"),
  ],
  limits: [
    { left: "k", relation: ">", right: "1", means: "the isentropic exponent is above 1" },
    { left: "k", relation: "<=", right: "1.8", means: "the isentropic exponent is at most 1.8" },
    ...coefficientLimits,
  ],
  accept: capacityAccepted,
  compared: comparedCapacity,
  crossCheck: {
    means: "one-dimensional isentropic flow of a perfect gas, R = 8314.46 J/(kmol·K)",
    symbol: "Qm",
    formula: "3600*Kdr*A/1000000*p0*100000*sqrt(2*k/(k - 1)*(rt^(2/k) - rt^((k + 1)/k)))*sqrt(M/(8314.46*Z*T0))",
    unit: "kg/h",
    // The constants carry units: 3600 s/h, 10⁶ mm²/m², 10⁵ Pa/bar, R in J/(kmol·K).
    empirical: true,
    within: "0.001*Qm",
    basis: derivedFrom(
      "mass flow through the narrowest section of an isentropic nozzle; the constants 3.948 of C are rounded",
    ),
  },
  examples: gasValveExamples,
});

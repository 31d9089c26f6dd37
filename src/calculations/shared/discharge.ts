import { derivedFrom, fromMemory, ownChoice } from "../../model/basis.ts";
import type { Acceptance, Calculation, CalculationInput, CalculationStep, Limit } from "../../model/calculation.ts";

/**
 * What the capacity of a safety valve is computed from for any gas or vapour: the calculations for gas and for steam differ
 * in the exponent and in the density at the inlet alone.
 */
export const valveInputs = (medium: string) =>
  ({
    pset: { path: "setPressure", unit: "bar", means: "set pressure", display: "p_set", unsafe: "high" },
    op: { path: "overpressure", unit: "1", means: "certified overpressure", unsafe: "high" },
    patm: {
      path: "atmosphericPressure",
      unit: "bar(a)",
      means: "atmospheric pressure; that of sea level where none is recorded",
      need: "optional",
      otherwise: 1.013,
      display: "p_atm",
      unsafe: "high",
    },
    pb: {
      path: "backPressure",
      unit: "bar",
      means: "back pressure at the outlet while blowing",
      display: "p_b",
      unsafe: "low",
    },
    A: { path: "flowArea", unit: "mm²", means: "least flow area", unsafe: "high" },
    Kdr: {
      path: "coefficient",
      unit: "1",
      means: `certified coefficient of discharge for ${medium}`,
      display: "K_dr",
      unsafe: "high",
    },
  }) as const satisfies Readonly<Record<string, CalculationInput>>;

/** What the result is judged against. */
export const judgingInputs = {
  PS: {
    path: "equipment.limits.maximumAllowablePressure",
    unit: "bar",
    means: "maximum allowable pressure",
    display: "P_S",
    unsafe: "high",
  },
  Qc: { path: "certifiedCapacity", unit: "kg/h", means: "certified capacity", display: "Q_c", unsafe: "high" },
  tol: {
    path: "profile.capacityTolerance",
    unit: "1",
    means: "how far a certified capacity may lie from the recomputed one",
    display: "Δ",
  },
  kmax: {
    path: "profile.highestPressureWhileBlowing",
    unit: "1",
    means: "highest share of the maximum allowable pressure while the valve blows",
    display: "k_max",
  },
} as const satisfies Calculation["inputs"];

/** Pressure at full discharge and relieving pressure, from pset, op and patm. */
export const relievingPressure: readonly CalculationStep[] = [
  {
    symbol: "pr",
    unit: "bar",
    means: "pressure at full discharge",
    formula: "pset*(1 + op)",
    display: "p_r",
    round: { decimals: 3, direction: "up" },
  },
  {
    symbol: "p0",
    unit: "bar(a)",
    means: "relieving pressure, absolute",
    formula: "patm + pr",
    display: "p_0",
    round: { decimals: 3, direction: "down" },
  },
];

/** Functions of the exponent k and of the pressure ratio over the valve. */
export const nozzleFactors: readonly CalculationStep[] = [
  {
    symbol: "C",
    unit: "1",
    means: "function of the isentropic exponent",
    formula: "3.948*sqrt(k*(2/(k + 1))^((k + 1)/(k - 1)))",
    round: { decimals: 3, direction: "down" },
  },
  {
    symbol: "rc",
    unit: "1",
    means: "critical pressure ratio",
    formula: "(2/(k + 1))^(k/(k - 1))",
    display: "r_c",
    round: { decimals: 4, direction: "nearest" },
  },
  {
    symbol: "rb",
    unit: "1",
    means: "ratio of absolute back pressure to relieving pressure",
    formula: "(patm + pb)/p0",
    display: "r_b",
    round: { decimals: 4, direction: "up" },
  },
  {
    symbol: "rt",
    unit: "1",
    means: "pressure ratio in the narrowest section",
    formula: "max(rc, rb)",
    display: "r_t",
    basis: derivedFrom("flow is critical while the back pressure lies below the critical pressure"),
  },
  {
    symbol: "Kb",
    unit: "1",
    means: "factor for back pressure, 1 in critical flow",
    formula: "sqrt(2*k/(k - 1)*(rt^(2/k) - rt^((k + 1)/k)) / (k*(2/(k + 1))^((k + 1)/(k - 1))))",
    display: "K_b",
    round: { decimals: 3, direction: "down" },
  },
];

/** Limits of the certified coefficient of discharge. */
export const coefficientLimits: readonly Limit[] = [
  {
    left: "Kdr",
    relation: "<=",
    right: "0.9",
    means: "the certified coefficient of discharge is at most 0.9",
    basis: fromMemory("EN ISO 4126-1", undefined, "certified coefficient: measured less 10 %"),
  },
  {
    left: "rb",
    relation: "<=",
    right: "rc",
    means: "the flow is critical, as the coefficient of discharge was certified",
    basis: ownChoice("a coefficient certified in critical flow does not hold in subcritical flow"),
  },
];

const certificateRounds = ownChoice("a certified figure rounded within the tolerance is not an error");

/**
 * Steps of the least and the greatest capacity a certificate may state for these data: each the given figure with the
 * tolerance. Where two methods differ, what lies between them is right by one of them.
 */
export const allowedCapacity = (least: string, greatest: string): readonly CalculationStep[] => [
  {
    symbol: "Qlo",
    unit: "kg/h",
    means: "least capacity that fits these data: recomputed, less the tolerance",
    formula: `${least}*(1 - tol)`,
    display: "Q_low",
    round: { decimals: 1, direction: "up" },
    basis: certificateRounds,
  },
  {
    symbol: "Qhi",
    unit: "kg/h",
    means: "greatest capacity that fits these data: recomputed, with the tolerance",
    formula: `${greatest}*(1 + tol)`,
    display: "Q_high",
    round: { decimals: 1, direction: "down" },
    basis: certificateRounds,
  },
];

/** The certified capacity against the recomputed one, and the pressure at full discharge. */
export const capacityAccepted: readonly Acceptance[] = [
  {
    left: "Qc",
    relation: "<=",
    right: "Qhi",
    means: "the certified capacity is at most the recomputed one with its tolerance",
    wrong: "the certified capacity is {left}; {Qm} is recomputed, with its tolerance of {tol} at most {right}",
    accuses: "Qc",
    basis: certificateRounds,
  },
  {
    left: "Qc",
    relation: ">=",
    right: "Qlo",
    means: "the certified capacity is at least the recomputed one less its tolerance",
    wrong:
      "the certified capacity is {left}; {Qm} is recomputed, less its tolerance of {tol} at least {right}: it belongs to other data",
    accuses: "Qc",
    basis: ownChoice("a certified figure far from its own data was copied wrongly, or belongs to another valve"),
  },
  {
    left: "pr",
    relation: "<=",
    right: "kmax*PS",
    means: "the pressure at full discharge does not exceed the highest permitted one",
    wrong: "the pressure at full discharge is {left}, above {kmax} of the maximum allowable pressure, {right}",
    accuses: "pset",
  },
];

/** What a sheet of the maker states for any medium. */
export const comparedCapacity: Calculation["compared"] = [
  { symbol: "p0", unsafe: "high" },
  { symbol: "C", unsafe: "high" },
  { symbol: "Kb", unsafe: "high" },
  { symbol: "Qm", unsafe: "high" },
];

import { derivedFrom, excerptSeen } from "../../model/basis.ts";
import type { CalculationInput, CalculationStep, Limit } from "../../model/calculation.ts";

export const regulations = excerptSeen("Indian Boiler Regulations 1950", "regulations 202 and 581");
export const area =
  "The area is bounded half way to the neighbouring supports, as recorded; that it is so is not checked. Bending, threads, pins and the welds at the ends are not covered.";

/** Inputs that every stay has. */
export const p: CalculationInput = {
  path: "book.equipment.calculationPressure",
  unit: "MPa",
  means: "calculation pressure",
  unsafe: "low",
};
export const A: CalculationInput = {
  path: "carriedArea",
  unit: "mm²",
  means: "area of plate that one stay carries, gross",
  unsafe: "low",
};
export const a: CalculationInput = {
  path: "occupiedArea",
  unit: "mm²",
  means: "part of it that tubes and the stay itself occupy",
  unsafe: "high",
};
export const c: CalculationInput = {
  path: "corrosionAllowance",
  unit: "mm",
  means: "corrosion allowance",
  unsafe: "low",
};
export const f: CalculationInput = {
  path: "calculation(design-stress).f",
  unit: "MPa",
  means: "design stress",
  unsafe: "high",
};
export const undertolerance = (of: string): CalculationInput => ({
  path: "thicknessUndertolerance",
  unit: "mm",
  means: `undertolerance of the ${of}`,
  unsafe: "low",
});

/** Load and permitted stress of a stay. */
export const load: readonly CalculationStep[] = [
  { symbol: "AL", unit: "mm²", means: "area under pressure", formula: "A - a", display: "A_L" },
  {
    symbol: "F",
    unit: "N",
    means: "load of the stay",
    formula: "p*AL",
    round: { decimals: 0, direction: "up" },
    basis: derivedFrom("equilibrium of the plate that belongs to one stay"),
  },
  {
    symbol: "σp",
    unit: "MPa",
    means: "permitted stress",
    formula: "min(σs, f)",
    display: "σ_perm",
    round: { decimals: 1, direction: "down" },
  },
];
export const loadLimits: readonly Limit[] = [
  { left: "AL", relation: ">", right: "'0 mm²'", means: "the stay carries more plate than is occupied" },
];
export const stress: CalculationStep = {
  symbol: "σ",
  unit: "MPa",
  means: "stress in the corroded section",
  formula: "F/As",
  // Nothing left is said by the limits, not by a division by zero.
  when: { left: "As", relation: ">", right: "'0 mm²'" },
  round: { decimals: 1, direction: "up" },
};

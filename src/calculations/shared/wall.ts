import { thicknessReading } from "../functions/parts.ts";
import { derivedFrom } from "../../model/basis.ts";
import type { Acceptance, Calculation, CalculationInput, CalculationStep } from "../../model/calculation.ts";

const up = { decimals: 2, direction: "up" } as const;
const down = { decimals: 2, direction: "down" } as const;

/** What a wall is judged by once the thickness e that its load asks for is known (all in mm). */
export interface Wall {
  /** c, δ, en, measured. */
  readonly inputs: {
    readonly c: CalculationInput;
    readonly δ: CalculationInput;
    readonly en: CalculationInput;
    readonly measured: CalculationInput;
  };
  /** ereq = e + c + δ. */
  readonly required: CalculationStep;
  /** ea = en - c - δ. */
  readonly analysis: CalculationStep;
  /** em and emin; they need the function `least`. */
  readonly measured: readonly CalculationStep[];
  /** en >= ereq. */
  readonly thickEnough: Acceptance;
  /** em >= emin, where it was measured. */
  readonly measuredEnough: Acceptance;
  /** emin, while nothing is measured. */
  readonly announces: NonNullable<Calculation["announces"]>;
}

/** The least that must be measured of the finished wall, by the symbol of the calculation. */
export const leastMeasured: NonNullable<Calculation["announces"]> = [
  { awaits: "measuredThickness[]", limits: [{ symbol: "emin", is: "at least" }] },
];

/** A seam is no stronger than the plate it joins. */
export const coefficientLimit: Calculation["limits"][number] = {
  left: "z",
  relation: "<=",
  right: "1",
  means: "the weld joint coefficient is at most 1",
};

/** Allowances leave something to calculate with. */
export const wallLeft: Calculation["limits"][number] = {
  left: "ea",
  relation: ">",
  right: "'0 mm'",
  means: "a thickness is left after allowances",
};

/** Di + 2c: metal lost inside makes the bore larger, and the pressure then acts on the larger one. */
export const corrodedBore: CalculationStep = {
  symbol: "Dc",
  unit: "mm",
  means: "inside diameter when the corrosion allowance is used up",
  formula: "Di + 2*c",
  display: "D_c",
  round: { decimals: 2, direction: "up" },
  basis: derivedFrom("corrosion from inside takes its allowance off the wall all round"),
};

/** A wall by the word its pages use for it: the thickness of a plate, the wall of a tube. */
export const wallOf = (word: "thickness" | "wall"): Wall => ({
  inputs: {
    c: { path: "corrosionAllowance", unit: "mm", means: "corrosion allowance", unsafe: "low" },
    δ: { path: "thicknessUndertolerance", unit: "mm", means: `undertolerance of the ${word}`, unsafe: "low" },
    en: { path: "nominalThickness", unit: "mm", means: `nominal ${word}`, display: "e_n", unsafe: "high" },
    measured: {
      path: "measuredThickness[]",
      unit: "rows",
      means: `measured ${word === "wall" ? "walls" : "thicknesses"}`,
      need: "optional",
      rows: thicknessReading,
    },
  },
  required: {
    symbol: "ereq",
    unit: "mm",
    means: `required nominal ${word}`,
    formula: "e + c + δ",
    display: "e_req",
    round: up,
  },
  analysis: {
    symbol: "ea",
    unit: "mm",
    means: "analysis thickness",
    formula: "en - c - δ",
    display: "e_a",
    round: down,
  },
  measured: [
    {
      symbol: "em",
      unit: "mm",
      means: `least measured ${word}`,
      formula: "least(measured)",
      display: "e_m",
      round: down,
    },
    {
      symbol: "emin",
      unit: "mm",
      means: `${word} that must be left before corrosion`,
      formula: "e + c",
      display: "e_min",
      round: up,
    },
  ],
  thickEnough: {
    left: "en",
    relation: ">=",
    right: "ereq",
    means: `the nominal ${word} is at least the required one`,
    accuses: "en",
  },
  measuredEnough: {
    left: "em",
    relation: ">=",
    right: "emin",
    means: `the least measured ${word} is at least the calculated one with corrosion allowance`,
    accuses: "measured",
    needs: "measured",
    owner: "quality",
  },
  announces: leastMeasured,
});

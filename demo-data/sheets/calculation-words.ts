import { calculations } from "../../src/calculations/index.ts";
import type { CalculationStep } from "../../src/model/calculation.ts";
import type { CalculationWords } from "./calculation-sheet.ts";

const signs: readonly (readonly [RegExp, string])[] = [
  [/sqrt\(/g, "√("],
  [/\s*\*\s*/g, " · "],
  [/'([^']*)'/g, "$1"],
];

/** A line of the working; none where the value is taken from a list, a table or a curve. */
function lineOf({ symbol, formula }: CalculationStep): readonly string[] {
  const called = formula.match(/[A-Za-z]+(?=\()/g) ?? [];
  if (called.some((name) => !["sqrt", "min", "max"].includes(name))) return [];
  return [`${symbol} = ${signs.reduce((text, [from, to]) => text.replace(from, to), formula)}`];
}

/** Title, symbols and formulas of a sheet, as the design manual has them: those of the calculation of the same name. */
export function calculationWords(id: string): CalculationWords | undefined {
  const found = calculations.find((one) => one.id === id);
  if (found === undefined) return undefined;
  const { title, inputs, steps } = found;
  const meanings = [
    ...Object.entries(inputs).map(([symbol, { means }]) => [symbol, means] as const),
    ...steps.map(({ symbol, means }) => [symbol, means] as const),
  ];
  return {
    title,
    symbols: Object.fromEntries(meanings),
    lines: steps.flatMap(lineOf),
  };
}

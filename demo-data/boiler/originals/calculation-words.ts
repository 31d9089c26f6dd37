import { calculations } from "../../../src/calculations/index.ts";
import type { CalculationWords } from "../../sheets/calculation-sheet.ts";

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
    lines: steps.map(({ symbol, formula }) => `${symbol} = ${formula}`),
  };
}

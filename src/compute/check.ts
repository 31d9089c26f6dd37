import type { Calculation, Comparison } from "../model/calculation.ts";
import { formulaSymbols } from "../model/formula/ast.ts";
import { comparisonUnitProblem, formulaUnitProblem, type FunctionUnits } from "../model/formula/units.ts";
import { ProgramError } from "../model/program-error.ts";
import { nameProblems } from "../model/claim.ts";
import { wordProblems } from "./refusal.ts";
import { formulaOf } from "../model/formula/formula-of.ts";

/** Throws when a symbol of a calculation is not declared or declared twice, or when its units do not multiply out. */
export function checkSymbols(calculation: Calculation): void {
  const [first] = checkCalculation(calculation);
  if (first !== undefined) throw new ProgramError(`calculation ${calculation.id}: ${first}`);
}

/** What is wrong with the symbols and units of a calculation, in words. Empirical steps are trusted in their units. */
export function checkCalculation(calculation: Calculation): readonly string[] {
  const { inputs, steps, limits, accept, compared, adopted, crossCheck, functions = [] } = calculation;
  const problems: string[] = [];
  const note = (where: string, problem: string | undefined) => {
    if (problem !== undefined) problems.push(`${where}: ${problem}`);
  };
  const symbols = new Map(
    Object.entries(inputs).map(([symbol, { unit, rows }]) => [symbol, rows === undefined ? unit : "rows"]),
  );
  const named: ReadonlyMap<string, FunctionUnits> = new Map(
    functions.map((one) => [one.name, { parameters: one.parameters.map(({ unit }) => unit), unit: one.unit }]),
  );
  const context = { symbols, functions: named };
  const compare = (where: string, { left, right }: Comparison) => note(where, comparisonProblem(left, right, context));

  for (const [symbol, { rows, unit, options }] of Object.entries(inputs)) {
    if (rows !== undefined && unit !== "rows")
      note(`input ${symbol}`, `has rows, so its unit is "rows", not "${unit}"`);
    if (rows === undefined && unit === "rows") note(`input ${symbol}`, "says rows, but not what is read of them");
    if (options !== undefined && unit !== "1") note(`input ${symbol}`, "has options, so its unit is 1");
  }
  for (const { symbol, unit, formula, empirical, when } of steps) {
    if (when !== undefined) compare(`condition of step ${symbol}`, when);
    const own = { ...context, formula: formulaOf(formula), unit, ...(empirical !== undefined && { empirical }) };
    note(`step ${symbol}`, formulaUnitProblem(own));
    if (symbols.has(symbol)) note(`step ${symbol}`, "is declared twice");
    symbols.set(symbol, unit);
  }
  for (const claims of [limits, accept])
    for (const problem of [...nameProblems(claims), ...claims.flatMap((one) => wordProblems(calculation, one))])
      note("comparison", problem);
  for (const limit of limits) compare(`limit "${limit.means}"`, limit);
  for (const one of accept) {
    compare(`acceptance "${one.means}"`, one);
    if (one.when !== undefined) compare(`condition of acceptance "${one.means}"`, one.when);
    if (!Object.hasOwn(inputs, one.accuses))
      note(`acceptance "${one.means}"`, `accuses "${one.accuses}", which is no input`);
    if (one.needs !== undefined && !Object.hasOwn(inputs, one.needs))
      note(`acceptance "${one.means}"`, `needs "${one.needs}", which is no input`);
  }
  for (const { symbol } of compared)
    if (!steps.some((step) => step.symbol === symbol)) note("comparison", `"${symbol}" is no step`);
  if (adopted !== undefined && !Object.hasOwn(inputs, adopted)) note("adopted value", `"${adopted}" is no input`);
  if (crossCheck !== undefined) {
    const { symbol, unit, formula, within, empirical } = crossCheck;
    note(
      "second method",
      formulaUnitProblem({
        ...context,
        formula: formulaOf(formula),
        unit,
        ...(empirical !== undefined && { empirical }),
      }),
    );
    if (empirical !== true) note("second method", comparisonProblem(formula, within, context));
    if (symbols.get(symbol) === undefined) note("second method", `"${symbol}" is no symbol`);
    else if (symbols.get(symbol) !== unit)
      note("second method", `is in ${unit}, ${symbol} in ${symbols.get(symbol) ?? ""}`);
  }
  return problems;
}

function comparisonProblem(
  left: string,
  right: string,
  context: Parameters<typeof comparisonUnitProblem>[2],
): string | undefined {
  const sides = [formulaOf(left), formulaOf(right)] as const;
  // Calls of named functions belong to steps: a limit compares what steps and inputs give.
  const list = sides.flatMap(formulaSymbols).find((symbol) => context.symbols.get(symbol) === "rows");
  if (list !== undefined) return `"${list}" is a list: give its value a step of its own`;
  return comparisonUnitProblem(...sides, context);
}

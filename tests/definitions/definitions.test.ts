import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { checkSymbols } from "../../src/compute/check.ts";
import { run } from "../../src/compute/run-plain.ts";
import type { Calculation, CalculationExample } from "../../src/model/calculation.ts";
import { parseFormula } from "../../src/model/formula/parse.ts";
import { comparisonUnitProblem, formulaUnitProblem, type FunctionUnits } from "../../src/model/formula/units.ts";

const runs = (calculation: Calculation) =>
  calculation.examples.map((example) => ({ example, done: run(calculation, example.given) }));
const inside = (example: CalculationExample) => (example.outside ?? []).length === 0;

describe.each(calculations.map((calculation) => [calculation.id, calculation] as const))("%s", (_, calculation) => {
  it.each(calculation.examples.map((example, index) => [`${index + 1}: ${example.source}`, example] as const))(
    "example %s",
    (_, example) => {
      const done = run(calculation, example.given);
      expect(done.refused).toBeUndefined();
      for (const [symbol, expected] of Object.entries(example.expect)) {
        const value = done.values.get(symbol);
        expect(value, `${symbol} has a value`).toBeDefined();
        expect(
          Math.abs((value ?? Number.NaN) - expected),
          `${symbol} = ${value}, expected ${expected}`,
        ).toBeLessThanOrEqual(example.within + 1e-12 * Math.abs(expected));
      }
      const broken = done.limits.filter(({ holds }) => !holds).map(({ of }) => of.means);
      expect(broken.sort()).toEqual([...(example.outside ?? [])].sort());
      if (inside(example) && calculation.crossCheck !== undefined) expect(done.crossCheck?.agrees).toBe(true);
    },
  );

  it("has examples, each with a source and something expected", () => {
    expect(calculation.examples.length).toBeGreaterThan(0);
    for (const { source, expect: expected } of calculation.examples) {
      expect(source).not.toBe("");
      expect(Object.keys(expected)).not.toHaveLength(0);
    }
  });

  it("has an example on each side of each limit and of each acceptance", () => {
    const done = runs(calculation);
    for (const { means } of calculation.limits)
      expect(
        sidesOf(
          done.flatMap((one) => one.done.limits),
          means,
        ),
        `limit "${means}"`,
      ).toEqual([false, true]);
    const judged = done.filter(({ example }) => inside(example)).flatMap((one) => one.done.accept);
    for (const { means } of calculation.accept)
      expect(sidesOf(judged, means), `acceptance "${means}"`).toEqual([false, true]);
  });

  it("names every limit and acceptance differently", () => {
    const names = [...calculation.limits, ...calculation.accept].map(({ means }) => means);
    expect(new Set(names).size).toBe(names.length);
  });

  it("uses only symbols that are declared before, and accuses inputs", () => {
    expect(() => checkSymbols(calculation)).not.toThrow();
    for (const { accuses } of calculation.accept) expect(Object.keys(calculation.inputs)).toContain(accuses);
  });

  it("has units that multiply out, with scale", () => {
    expect(unitProblems(calculation)).toEqual([]);
  });

  it("gives every step a value in some example", () => {
    const reached = new Set(runs(calculation).flatMap(({ done }) => done.steps.map(({ step }) => step.symbol)));
    expect(calculation.steps.map(({ symbol }) => symbol).filter((symbol) => !reached.has(symbol))).toEqual([]);
  });
});

describe("the list of calculations", () => {
  it("holds the calculations of every file of its folder", async () => {
    const folder = new URL("../../src/calculations/", import.meta.url);
    const files = readdirSync(folder).filter(
      (name) => name.endsWith(".ts") && !/(^index|^owed|-examples)\.ts$/.test(name),
    );
    const found = await Promise.all(
      files.map(async (name) =>
        Object.values((await import(new URL(name, folder).href)) as object).filter(isCalculation),
      ),
    );
    expect(
      found
        .flat()
        .map(({ id }) => id)
        .sort(),
    ).toEqual(calculations.map(({ id }) => id).sort());
    for (const [index, list] of found.entries()) expect(list, files[index]).not.toHaveLength(0);
  });

  it("has no id twice", () => {
    expect(new Set(calculations.map(({ id }) => id)).size).toBe(calculations.length);
  });
});

const isCalculation = (value: unknown): value is Calculation =>
  typeof value === "object" && value !== null && "appliesTo" in value && "steps" in value;

function sidesOf(list: readonly { readonly of: { readonly means: string }; readonly holds: boolean }[], means: string) {
  return [...new Set(list.filter(({ of }) => of.means === means).map(({ holds }) => holds))].sort();
}

function unitProblems(calculation: Calculation): readonly string[] {
  const symbols = new Map(Object.entries(calculation.inputs).map(([symbol, { unit }]) => [symbol, unit]));
  const functions: ReadonlyMap<string, FunctionUnits> = new Map(
    (calculation.functions ?? []).map((one) => [
      one.name,
      { parameters: one.parameters.map(({ unit }) => unit), unit: one.unit },
    ]),
  );
  const context = { symbols, functions };
  const problems: (string | undefined)[] = [];
  for (const { symbol, formula, unit, empirical } of calculation.steps) {
    const problem = formulaUnitProblem({
      ...context,
      formula: parseFormula(formula),
      unit,
      ...(empirical !== undefined && { empirical }),
    });
    problems.push(problem === undefined ? undefined : `${symbol}: ${problem}`);
    symbols.set(symbol, unit);
  }
  for (const { left, right } of [...calculation.limits, ...calculation.accept])
    problems.push(comparisonUnitProblem(parseFormula(left), parseFormula(right), context));
  return problems.filter((problem) => problem !== undefined);
}

import type {
  Acceptance,
  Calculation,
  CalculationStep,
  Comparison,
  ListArgument,
  ListFunction,
} from "../model/calculation.ts";
import type { ComputedStep } from "../model/book.ts";
import { formulaSymbols, type Formula } from "../model/formula/ast.ts";
import { evaluate, governing, type Scope } from "../model/formula/evaluate.ts";
import { formulaOf } from "../model/formula/formula-of.ts";

/** Values by symbol, in the units the calculation declares; rows for its named functions. */
export type GivenValues = ReadonlyMap<string, ListArgument>;

export interface Comparative<C extends Comparison = Comparison> {
  readonly of: C;
  readonly left: number;
  readonly right: number;
  readonly holds: boolean;
}

export interface Run {
  /** Inputs and results. */
  readonly values: ReadonlyMap<string, number>;
  readonly steps: readonly ComputedStep[];
  readonly limits: readonly Comparative<Calculation["limits"][number]>[];
  readonly accept: readonly Comparative<Calculation["accept"][number]>[];
  readonly crossCheck?: { readonly value: number; readonly agrees: boolean };
  /** Rows that decided the value of a step, as its named function says, by symbol. */
  readonly decisive: ReadonlyMap<string, Rows>;
  /** Why the calculation came to no result: a named function refused its rows, or the mathematics failed. */
  readonly refused?: string;
  /** The step that was refused. */
  readonly refusedStep?: CalculationStep;
}

type Rows = Extract<ListArgument, readonly unknown[]>;

class Refused extends Error {
  readonly step: CalculationStep;
  constructor(step: CalculationStep, message: string) {
    super(message);
    this.step = step;
  }
}

/**
 * Does a calculation with given values. Steps whose optional inputs are absent are left out, and so are the limits and
 * acceptances that need them. The values are bound already (`run-plain.ts` binds plain ones). Never throws on data; throws
 * `ProgramError` for a faulty definition.
 */
export function run(calculation: Calculation, given: GivenValues): Run {
  const values = new Map<string, number>();
  const rows = new Map<string, Rows>();
  for (const [symbol, value] of given) {
    if (typeof value === "number") values.set(symbol, value);
    else rows.set(symbol, value);
  }
  for (const [symbol, { otherwise, rows: read, need }] of Object.entries(calculation.inputs)) {
    if (otherwise !== undefined && !values.has(symbol)) values.set(symbol, otherwise);
    if (read !== undefined && need === "any" && !rows.has(symbol)) rows.set(symbol, []);
  }
  const known = (formula: Formula) => formulaSymbols(formula).every((symbol) => values.has(symbol) || rows.has(symbol));
  const both = ({ left, right }: Comparison) => known(formulaOf(left)) && known(formulaOf(right));
  const applies = ({ when }: CalculationStep) => when === undefined || (both(when) && compared(when, values).holds);
  const steps: ComputedStep[] = [];
  const decisive = new Map<string, Rows>();
  try {
    for (const step of calculation.steps) {
      const formula = formulaOf(step.formula);
      if (!known(formula) || !applies(step)) continue;
      const done = doStep(step, formula, { values, rows }, calculation.functions ?? [], decisive);
      values.set(step.symbol, done.value);
      steps.push(done);
    }
  } catch (reason) {
    if (!(reason instanceof Refused)) throw reason;
    return { values, steps, limits: [], accept: [], decisive, refused: reason.message, refusedStep: reason.step };
  }
  const check = <C extends Comparison>(list: readonly C[]): Comparative<C>[] =>
    list.filter(both).map((one) => compared(one, values));
  const needed = ({ needs, when }: Acceptance) =>
    (needs === undefined || given.has(needs)) && (when === undefined || !both(when) || compared(when, values).holds);
  const limits = check(calculation.limits);
  // Optional values may leave out steps, but an acceptance only with the value it names: what is not compared is no pass.
  const open = calculation.accept.find((one) => needed(one) && !both(one));
  if (
    limits.every(({ holds }) => holds) &&
    (open !== undefined || (steps.length === 0 && calculation.steps.length > 0))
  ) {
    const refused = `values are missing to judge that ${open?.means ?? "anything holds"}`;
    return { values, steps, limits, accept: [], decisive, refused };
  }
  const cross = calculation.crossCheck;
  const second =
    cross !== undefined && values.has(cross.symbol) && known(formulaOf(cross.formula))
      ? evaluate(formulaOf(cross.formula), { values })
      : undefined;
  return {
    values,
    steps,
    decisive,
    limits,
    accept: check(calculation.accept.filter(needed)),
    ...(cross !== undefined &&
      second !== undefined && {
        crossCheck: {
          value: second,
          agrees:
            Math.abs(second - (values.get(cross.symbol) ?? Number.NaN)) <=
            evaluate(formulaOf(cross.within), { values }),
        },
      }),
  };
}

function doStep(
  step: CalculationStep,
  formula: Formula,
  scope: Omit<Scope<Rows>, "functions">,
  named: readonly ListFunction[],
  decisive: Map<string, Rows>,
): ComputedStep {
  const lines: string[] = [];
  const functions = new Map(
    named.map((one) => [
      one.name,
      (...args: readonly ListArgument[]) => {
        const result = one.compute(...args);
        if ("refused" in result) throw new Refused(step, result.refused);
        lines.push(...result.lines);
        if (result.at !== undefined) decisive.set(step.symbol, result.at);
        return result.value;
      },
    ]),
  );
  const full = { functions, ...scope };
  const decided = governing(formula, (argument) => evaluate<Rows>(argument, full));
  const value = decided === undefined ? evaluate<Rows>(formula, full) : (decided.values[decided.index] ?? Number.NaN);
  if (!Number.isFinite(value)) throw new Refused(step, `the ${step.means} has no value for these inputs`);
  return {
    step,
    value,
    lines,
    ...(decided !== undefined && { governing: { index: decided.index, values: decided.values } }),
  };
}

/** Compares unrounded, with a relative guard of 1e-9: equality at a limit counts as within. */
export function compared<C extends Comparison>(of: C, values: ReadonlyMap<string, number>): Comparative<C> {
  const left = evaluate(formulaOf(of.left), { values });
  const right = evaluate(formulaOf(of.right), { values });
  const guard = 1e-9 * Math.max(Math.abs(left), Math.abs(right));
  const difference = left - right;
  const holds = {
    "<=": difference <= guard,
    ">=": difference >= -guard,
    "<": difference < -guard,
    ">": difference > guard,
    "=": Math.abs(difference) <= guard,
  }[of.relation];
  return { of, left, right, holds };
}

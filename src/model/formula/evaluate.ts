import { ProgramError } from "../program-error.ts";
import type { BinaryNode, Formula } from "./ast.ts";

/**
 * What the names of a formula stand for, in the units declared for them. `Rows` is what a list is to its named
 * functions: a symbol in `rows` may only be a whole argument of a function.
 */
export interface Scope<Rows = never> {
  readonly values: ReadonlyMap<string, number>;
  readonly rows?: ReadonlyMap<string, Rows>;
  readonly functions?: ReadonlyMap<string, (...args: readonly (number | Rows)[]) => number>;
}

interface Standard {
  /** How many arguments; absent: one or more. */
  readonly count?: number;
  readonly compute: (...args: readonly number[]) => number;
}

const unary = (compute: (x: number) => number): Standard => ({ count: 1, compute: (x = Number.NaN) => compute(x) });

/** Functions every formula may call. Angles are in radians. */
export const standardFunctions: ReadonlyMap<string, Standard> = new Map([
  ["sqrt", unary(Math.sqrt)],
  ["abs", unary(Math.abs)],
  ["exp", unary(Math.exp)],
  ["ln", unary(Math.log)],
  ["log10", unary(Math.log10)],
  ["sin", unary(Math.sin)],
  ["cos", unary(Math.cos)],
  ["tan", unary(Math.tan)],
  ["asin", unary(Math.asin)],
  ["acos", unary(Math.acos)],
  ["min", { compute: Math.min }],
  ["max", { compute: Math.max }],
]);

/**
 * The value of a formula. It is not finite where the mathematics fail (division by zero, root of a negative number): the
 * caller decides what that means. Throws `ProgramError` for a name that stands for nothing.
 */
export function evaluate<Rows = never>(formula: Formula, scope: Scope<Rows>): number {
  switch (formula.type) {
    case "number":
      return formula.value;
    case "symbol": {
      const value = scope.values.get(formula.name);
      if (value === undefined) throw new ProgramError(`the formula has no value for "${formula.name}"`);
      return value;
    }
    case "negate":
      return -evaluate(formula.operand, scope);
    case "binary":
      return evaluateBinary(formula, scope);
    case "call":
      return evaluateCall(formula.name, formula.args, scope);
  }
}

function evaluateBinary<Rows>({ operator, left, right }: BinaryNode, scope: Scope<Rows>): number {
  const a = evaluate(left, scope);
  const b = evaluate(right, scope);
  switch (operator) {
    case "+":
      return a + b;
    case "-":
      return a - b;
    case "*":
      return a * b;
    case "/":
      return a / b;
    case "^":
      return a ** b;
  }
}

function evaluateCall<Rows>(name: string, args: readonly Formula[], scope: Scope<Rows>): number {
  const own = scope.functions?.get(name);
  if (own !== undefined) return own(...args.map((arg) => rowsOf(arg, scope) ?? evaluate(arg, scope)));
  const standard = standardFunctions.get(name);
  if (standard === undefined) throw new ProgramError(`the formula calls "${name}", which is no known function`);
  if (standard.count !== undefined && standard.count !== args.length)
    throw new ProgramError(`the formula calls "${name}" with ${args.length} arguments instead of ${standard.count}`);
  return standard.compute(...args.map((arg) => evaluate(arg, scope)));
}

function rowsOf<Rows>(arg: Formula, scope: Scope<Rows>): Rows | undefined {
  return arg.type === "symbol" ? scope.rows?.get(arg.name) : undefined;
}

/** Which argument of a `max(…)` or `min(…)` decides, first of equals. */
export interface Governing {
  readonly of: "max" | "min";
  readonly index: number;
  readonly values: readonly number[];
}

/** Of a formula that is as a whole the greater or smaller of several: which one governs. Else undefined. */
export function governing(formula: Formula, valueOf: (argument: Formula) => number): Governing | undefined {
  if (formula.type !== "call" || (formula.name !== "max" && formula.name !== "min")) return undefined;
  const values = formula.args.map(valueOf);
  const extreme = formula.name === "max" ? Math.max(...values) : Math.min(...values);
  const index = values.indexOf(extreme);
  return index < 0 ? undefined : { of: formula.name, index, values };
}

import { nearestWords } from "../nearest.ts";
import { knownUnit } from "../units.ts";
import { formulaFunctions, formulaSymbols, type BinaryNode, type Formula } from "./ast.ts";
import { evaluate, standardFunctions } from "./evaluate.ts";
import { plainText } from "./plain-text.ts";
import { typeset } from "./typeset.ts";
import {
  afterFactor,
  alike,
  meets,
  productOf,
  pure,
  raised,
  sumOf,
  UnitMismatch,
  type Shown,
  valueOfUnit,
  type UnitValue,
} from "./unit-rules.ts";
import { describeValue, reasonOf } from "./unit-words.ts";

/** Units by symbol; "rows" for a list. */
export type DeclaredUnits = ReadonlyMap<string, string>;

/** A named function: "rows" or a unit for each parameter, and the unit of its result. */
export interface FunctionUnits {
  readonly parameters: readonly string[];
  readonly unit: string;
}

export interface UnitContext {
  readonly symbols: DeclaredUnits;
  readonly functions?: ReadonlyMap<string, FunctionUnits>;
}

export interface FormulaUnits extends UnitContext {
  readonly formula: Formula;
  /** Declared unit of the result. */
  readonly unit: string;
  /** A formula from experience does not multiply out: declared units are trusted, only names are checked. */
  readonly empirical?: boolean;
}

/** What is wrong with the units of a formula, in words; undefined when they multiply out, with scale. */
export function formulaUnitProblem({ formula, unit, empirical, ...context }: FormulaUnits): string | undefined {
  return problemOf(() => {
    checkNames(formula, context);
    const wanted = valueOfUnit(knownUnit(unit));
    if (empirical === true) return;
    const found = infer(formula, context);
    if (!meets(found, wanted))
      throw new UnitMismatch(
        `${show(formula)} is in ${describeValue(found)}, declared is ${unit}${reasonOf(found, wanted)}`,
      );
  });
}

/** What is wrong with the units of a comparison of two formulas, in words; undefined when they can be compared. */
export function comparisonUnitProblem(left: Formula, right: Formula, context: UnitContext): string | undefined {
  return problemOf(() => {
    for (const side of [left, right]) checkNames(side, context);
    alike(infer(left, context), infer(right, context), shown(left, right));
  });
}

function problemOf(check: () => void): string | undefined {
  try {
    check();
    return undefined;
  } catch (reason) {
    if (reason instanceof UnitMismatch) return reason.message;
    throw reason;
  }
}

function checkNames(formula: Formula, { symbols, functions }: UnitContext): void {
  // Every letter is near every other.
  for (const symbol of formulaSymbols(formula))
    if (!symbols.has(symbol))
      throw new UnitMismatch(
        `"${symbol}" is neither an input nor an earlier step${symbol.length > 1 ? nearestWords(symbol, symbols.keys()) : ""}`,
      );
  for (const name of formulaFunctions(formula)) {
    const own = functions?.has(name) === true;
    if (own && standardFunctions.has(name))
      throw new UnitMismatch(`"${name}" is a function every formula has: rename it`);
    if (!own && !standardFunctions.has(name)) throw new UnitMismatch(`"${name}" is no known function`);
  }
}

const show = (formula: Formula) => `"${plainText(typeset(formula))}"`;
const shown =
  (...formulas: readonly Formula[]): Shown =>
  () =>
    formulas.map(show).join(" and ");

function infer(formula: Formula, context: UnitContext): UnitValue {
  switch (formula.type) {
    case "number":
      if (formula.unit !== undefined) return valueOfUnit(knownUnit(formula.unit));
      return formula.value === 0 ? { ...pure, sort: "nought" } : pure;
    case "symbol": {
      const unit = context.symbols.get(formula.name) ?? "1";
      if (unit === "rows")
        throw new UnitMismatch(`"${formula.name}" is a list and enters through a named function only`);
      return valueOfUnit(knownUnit(unit));
    }
    case "negate": {
      const value = infer(formula.operand, context);
      if (value.sort === "point")
        throw new UnitMismatch(`${show(formula.operand)} is a point and has no negative: subtract it from another`);
      return value;
    }
    case "binary":
      return inferBinary(formula, context);
    case "call":
      return inferCall(formula.name, formula.args, context);
  }
}

function inferBinary(formula: BinaryNode, context: UnitContext): UnitValue {
  const { operator, left, right } = formula;
  const a = infer(left, context);
  if (operator === "^") return inferPower(a, formula, context);
  const b = infer(right, context);
  if (operator === "*" || operator === "/") {
    const what = operator === "*" ? "multiplied" : "divided";
    const one = afterFactor(a, shown(left), what, "point");
    const other = afterFactor(b, shown(right), what, "point");
    return productOf(one, other, operator === "*" ? 1 : -1);
  }
  return sumOf(a, b, operator, shown(formula));
}

function inferPower(base: UnitValue, { left, right }: BinaryNode, context: UnitContext): UnitValue {
  const value = afterFactor(base, shown(left), "raised to a power", "free");
  const exponent = infer(right, context);
  if (!meets(exponent, pure))
    throw new UnitMismatch(`the exponent ${show(right)} is in ${describeValue(exponent)}, it must be a pure number`);
  if (meets(value, pure)) return pure;
  if (formulaSymbols(right).length > 0 || formulaFunctions(right).some((name) => !standardFunctions.has(name)))
    throw new UnitMismatch(`${show(left)} is in ${describeValue(value)}, so its exponent must be a constant`);
  return raised(value, evaluate(right, { values: new Map() }));
}

function inferCall(name: string, args: readonly Formula[], context: UnitContext): UnitValue {
  const own = context.functions?.get(name);
  if (own !== undefined) return inferNamed(name, own, args, context);
  const [first = pure, ...rest] = args.map((arg) => infer(arg, context));
  const [part] = args;
  const where = shown({ type: "call", name, args });
  if (name === "min" || name === "max") return rest.reduce((one, other) => alike(one, other, where), first);
  if (part === undefined || args.length !== 1) throw new UnitMismatch(`${where()} takes one argument`);
  if (name === "sqrt") return raised(afterFactor(first, shown(part), "put under a root", "free"), 0.5);
  if (name === "abs") return afterFactor(first, shown(part), "taken without its sign", "point");
  if (!meets(first, pure))
    throw new UnitMismatch(
      `${show(part)} is in ${describeValue(first)}, ${name} takes a pure number${angleAdvice(name)}`,
    );
  return pure;
}

const angleAdvice = (name: string) => (["sin", "cos", "tan"].includes(name) ? " (an angle in rad)" : "");

function inferNamed(name: string, own: FunctionUnits, args: readonly Formula[], context: UnitContext): UnitValue {
  if (args.length !== own.parameters.length)
    throw new UnitMismatch(`"${name}" takes ${own.parameters.length} arguments, not ${args.length}`);
  for (const [at, arg] of args.entries()) {
    const wanted = own.parameters[at] ?? "1";
    const isRows = arg.type === "symbol" && context.symbols.get(arg.name) === "rows";
    if (isRows && wanted === "rows") continue;
    if (isRows || wanted === "rows")
      throw new UnitMismatch(`"${name}" takes ${wanted} as argument ${at + 1}, not ${show(arg)}`);
    const found = infer(arg, context);
    if (!meets(found, valueOfUnit(knownUnit(wanted))))
      throw new UnitMismatch(`${show(arg)} is in ${describeValue(found)}, "${name}" takes ${wanted}`);
  }
  return valueOfUnit(knownUnit(own.unit));
}

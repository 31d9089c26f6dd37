import { formulaSymbols } from "./formula/ast.ts";
import { evaluate } from "./formula/evaluate.ts";
import { parseFormula } from "./formula/parse.ts";
import { formulaUnitProblem } from "./formula/units.ts";
import { ProgramError } from "./program-error.ts";
import { parseQuantity } from "./quantity.ts";
import { anyOther, parseInterval, type Cell, type Interval, type Table, type TableKey } from "./table.ts";

/** A key as it is written in a row, or what would have been expected. */
export function readKey(text: string, { match }: TableKey): string | Interval | { readonly expected: string } {
  if (text === "") return { expected: "a value" };
  if (match === "equal" || text === anyOther) return text;
  return parseInterval(text) ?? { expected: `an interval such as "over 3 up to 16", or "${anyOther}"` };
}

const formulaSign = /^= ?/;

/** Whether a cell is computed from the keys when the row is looked up. */
export const isFormula = (cell: Cell | undefined): cell is string => typeof cell === "string" && formulaSign.test(cell);

/**
 * What is wrong with the text of a cell, in words; undefined when it is sound. A column with a unit holds quantities in it,
 * or formulas of the keys that have units, in those units.
 */
export function cellProblem(text: string, unit: string | undefined, keys: Table["keys"]): string | undefined {
  if (text === "") return "expected a value";
  if (unit === undefined) return undefined;
  if (!isFormula(text)) return parseQuantity(text, { unit }).ok ? undefined : `expected a value in ${unit}`;
  const symbols = new Map(keys.flatMap(({ name, unit: own }) => (own === undefined ? [] : [[name, own] as const])));
  try {
    const formula = formulaOf(text);
    const unknown = formulaSymbols(formula).find((name) => !symbols.has(name));
    if (unknown !== undefined) {
      const sizes = [...symbols.keys()].join(", ");
      return `"${unknown}" of the formula is no key with a unit${sizes === "" ? "" : `, as ${sizes} is`}`;
    }
    const problem = formulaUnitProblem({ formula, unit, symbols });
    return problem === undefined ? undefined : `the formula does not fit: ${problem}`;
  } catch (reason) {
    if (reason instanceof ProgramError) return reason.message;
    throw reason;
  }
}

const formulas = new Map<string, ReturnType<typeof parseFormula>>();

/** Formulas of cells are parsed once. */
function formulaOf(text: string): ReturnType<typeof parseFormula> {
  let formula = formulas.get(text);
  if (formula === undefined) formulas.set(text, (formula = parseFormula(text.replace(formulaSign, ""))));
  return formula;
}

/** More digits than twelve are those of the computer, not of the table. */
const digits = 12;

/** The value of a formula as a quantity text, from the numbers of the keys in their units; undefined where it has none. */
export function computeCell(text: string, unit: string, numbers: ReadonlyMap<string, number>): string | undefined {
  const formula = formulaOf(text);
  if (formulaSymbols(formula).some((name) => !numbers.has(name))) return undefined;
  const value = Number(evaluate(formula, { values: numbers }).toPrecision(digits));
  return Number.isFinite(value) ? (unit === "1" ? String(value) : `${value} ${unit}`) : undefined;
}

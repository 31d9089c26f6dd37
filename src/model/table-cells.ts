import { formulaSymbols } from "./formula/ast.ts";
import { evaluate } from "./formula/evaluate.ts";
import { parseFormula } from "./formula/parse.ts";
import { formulaUnitProblem } from "./formula/units.ts";
import { ProgramError } from "./program-error.ts";
import { parseQuantity } from "./quantity.ts";
import {
  anyOther,
  parseInterval,
  type Cell,
  type Interval,
  type Table,
  type TableKey,
  type TableRow,
} from "./table.ts";

/** A key as it is written in a row, or what would have been expected. */
export function readKey(text: string, { match }: TableKey): string | Interval | { readonly expected: string } {
  if (text === "") return { expected: "a value" };
  if (match === "equal" || text === anyOther) return text;
  return parseInterval(text) ?? { expected: `an interval such as "over 3 up to 16", or "${anyOther}"` };
}

const formulaSign = /^= ?/;

const isFormula = (cell: Cell): cell is string => typeof cell === "string" && formulaSign.test(cell);

/** A key in braces among words is the key itself, as it was asked for. */
const keyInWords = /\{([^{}]*)\}/g;

/** What is wrong with a list of words, in words; undefined when it is sound. */
export function wordsProblem(words: readonly string[], keys: Table["keys"]): string | undefined {
  const names = keys.map(({ name }) => name);
  const unknown = words
    .flatMap((word) => [...word.matchAll(keyInWords)])
    .find(([, name = ""]) => !names.includes(name));
  return unknown === undefined
    ? undefined
    : `"${unknown[0]}" names no key; write one of ${names.join(", ")} in the braces`;
}

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

/** The keys of a look-up: as texts, and those with a unit as numbers in it. */
export interface KeysAsked {
  readonly texts: ReadonlyMap<string, string>;
  readonly numbers: ReadonlyMap<string, number>;
}

const isWords = (cell: Cell): cell is readonly string[] => typeof cell !== "string" && typeof cell[0] === "string";

const computes = (cell: Cell): boolean => isFormula(cell) || (isWords(cell) && cell.some((one) => one.includes("{")));

/** The cells of a row with their formulas in numbers; a formula without a value is left out, as a cell that states nothing. */
export function computeCells(
  values: TableRow["values"],
  columns: Table["columns"],
  keys: KeysAsked,
): TableRow["values"] {
  const cells = Object.entries(values);
  if (!cells.some(([, cell]) => computes(cell))) return values;
  return Object.fromEntries(
    cells.flatMap(([name, cell]): readonly (readonly [string, Cell])[] => {
      if (isWords(cell)) return [[name, cell.map((one) => spelled(one, keys))]];
      if (!isFormula(cell)) return [[name, cell]];
      const value = computeFormula(cell, columns[name]?.unit ?? "1", keys);
      return value === undefined ? [] : [[name, value]];
    }),
  );
}

const spelled = (word: string, { texts }: KeysAsked) =>
  word.replace(keyInWords, (_, name: string) => texts.get(name) ?? "");

function computeFormula(text: string, unit: string, { numbers }: KeysAsked): string | undefined {
  const formula = formulaOf(text);
  if (formulaSymbols(formula).some((name) => !numbers.has(name))) return undefined;
  const value = Number(evaluate(formula, { values: numbers }).toPrecision(digits));
  if (!Number.isFinite(value)) return undefined;
  return unit === "1" ? String(value) : `${value} ${unit}`;
}

import type { Formula } from "./ast.ts";
import { parseFormula } from "./parse.ts";

const formulas = new Map<string, Formula>();

/** Formulas of definitions are parsed once. */
export function formulaOf(text: string): Formula {
  let formula = formulas.get(text);
  if (formula === undefined) formulas.set(text, (formula = parseFormula(text)));
  return formula;
}

/** A formula as parsed. Formulas are written once, in the standard's own symbols and units, and read several ways. */
export type Formula =
  | NumberNode
  | SymbolNode
  | { readonly type: "negate"; readonly operand: Formula }
  | BinaryNode
  | { readonly type: "call"; readonly name: string; readonly args: readonly Formula[] };

/** A number with the digits of its source; `unit` when it is a constant such as `'3 mm'`. */
export interface NumberNode {
  readonly type: "number";
  readonly value: number;
  readonly text: string;
  readonly unit?: string;
}

export interface SymbolNode {
  readonly type: "symbol";
  readonly name: string;
}

export type Operator = "+" | "-" | "*" | "/" | "^";

export interface BinaryNode {
  readonly type: "binary";
  readonly operator: Operator;
  readonly left: Formula;
  readonly right: Formula;
}

/** The parts a formula is directly made of, left to right. */
export function partsOf(formula: Formula): readonly Formula[] {
  switch (formula.type) {
    case "number":
    case "symbol":
      return [];
    case "negate":
      return [formula.operand];
    case "binary":
      return [formula.left, formula.right];
    case "call":
      return formula.args;
  }
}

const symbols = new WeakMap<Formula, readonly string[]>();

/** Names of the symbols a formula reads, each once, in order of appearance. */
export function formulaSymbols(formula: Formula): readonly string[] {
  let names = symbols.get(formula);
  if (names === undefined) {
    names = [...new Set(namesIn(formula, (node) => (node.type === "symbol" ? node.name : undefined)))];
    symbols.set(formula, names);
  }
  return names;
}

/** Names of the functions a formula calls, each once, in order of appearance. */
export function formulaFunctions(formula: Formula): readonly string[] {
  return [...new Set(namesIn(formula, (node) => (node.type === "call" ? node.name : undefined)))];
}

function namesIn(formula: Formula, nameOf: (node: Formula) => string | undefined): readonly string[] {
  const own = nameOf(formula);
  return [...(own === undefined ? [] : [own]), ...partsOf(formula).flatMap((part) => namesIn(part, nameOf))];
}

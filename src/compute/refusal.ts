import type { BoundInput } from "../model/book.ts";
import type { Calculation, CalculationInput, CalculationStep, Claim } from "../model/calculation.ts";
import { apart, figure, type Figure } from "../model/apart.ts";
import { formulaOf } from "../model/formula/formula-of.ts";
import type { Comparative } from "./run.ts";

/** What words of a comparison are made of. */
export interface Spoken {
  readonly calculation: Calculation;
  readonly inputs: ReadonlyMap<string, BoundInput>;
  readonly values: ReadonlyMap<string, number>;
}

/** How the left side of a failed comparison stands to the right; where equality fails too, what it must be. */
const beside = {
  "<=": ", above ",
  ">=": ", below ",
  "<": "; it must be below ",
  ">": "; it must be above ",
  "=": ", not ",
};

/**
 * A comparison that failed, in words: what is wrong, with both values so that the difference shows. Made of what the
 * symbols mean, unless the comparison says it itself (`wrong`).
 */
export function refusalOf(spoken: Spoken, { of, left, right }: Comparative<Claim>): string {
  const unit = unitOfSide(spoken, of.left) ?? unitOfSide(spoken, of.right) ?? "1";
  const names = symbolOf(spoken, of.left)?.options ?? symbolOf(spoken, of.right)?.options;
  const [a, b] =
    names === undefined
      ? apart(figureOf(spoken, of.left, left, unit), figureOf(spoken, of.right, right, unit))
      : [names[left] ?? String(left), names[right] ?? String(right)];
  if (of.wrong !== undefined)
    return of.wrong.replaceAll(/\{([^}]+)\}/gu, (_, name: string) => {
      const bare = name.replaceAll("|", "");
      const said = bare === "left" ? a : bare === "right" ? b : valueOf(spoken, name);
      return bare === name ? said : said.replace(/^-/, "");
    });
  const limit = symbolOf(spoken, of.right);
  return `the ${nameOf(spoken, of.left)} is ${a}${beside[of.relation]}${limit === undefined ? b : `the ${nameOf(spoken, of.right)}, ${b}`}`;
}

/** What keeps a refusal from being said: a side that no symbol names, or a place in its words that no symbol fills. */
export function wordProblems(calculation: Calculation, { wrong, left, right, means }: Claim): readonly string[] {
  if (wrong !== undefined) {
    const asked = [...wrong.matchAll(/\{([^}]+)\}/gu)].map(([, name = ""]) => name);
    return asked
      .filter((name) => !/^\|?(left|right)\|?$/.test(name) && declared(calculation, name) === undefined)
      .map((name) => `"${means}" puts in "${name}", which is no symbol`);
  }
  const said = formulaOf(left).type === "symbol" && ["symbol", "number"].includes(formulaOf(right).type);
  return said ? [] : [`"${means}" compares formulas: say in "wrong" what is wrong when it fails`];
}

const declared = ({ inputs, steps }: Calculation, symbol: string): CalculationInput | CalculationStep | undefined =>
  Object.hasOwn(inputs, symbol) ? inputs[symbol] : steps.find((step) => step.symbol === symbol);

const symbolOf = ({ calculation }: Spoken, side: string) =>
  formulaOf(side).type === "symbol" ? declared(calculation, side) : undefined;

/** "clearance" of "clearance, on the diameter". */
const nameOf = (spoken: Spoken, side: string): string => symbolOf(spoken, side)?.means.split(/[,:;]/)[0] ?? side;

function unitOfSide(spoken: Spoken, side: string): string | undefined {
  const formula = formulaOf(side);
  if (formula.type === "number") return formula.unit;
  const own = symbolOf(spoken, side);
  return own === undefined || own.options !== undefined || own.unit === "rows" ? undefined : own.unit;
}

/** A value of a record keeps its own digits. */
function figureOf({ inputs }: Spoken, side: string, value: number, unit: string): Figure {
  const bound = inputs.get(side);
  const written = bound?.origin?.type === "record" && bound.bound === undefined ? bound.written : undefined;
  return { value, unit, ...(written !== undefined && { written }) };
}

function valueOf(spoken: Spoken, symbol: string): string {
  const own = declared(spoken.calculation, symbol);
  const value = spoken.values.get(symbol);
  if (own === undefined || value === undefined) return "none";
  return own.options?.[value] ?? spoken.inputs.get(symbol)?.written ?? figure(value, own.unit);
}

import type { Done } from "./book.ts";
import type { Calculation } from "./calculation.ts";
import { formulaSymbols } from "./formula/ast.ts";
import type { Address } from "./record.ts";
import { formulaOf } from "./formula/formula-of.ts";

const behind = new WeakMap<Calculation, Map<string, readonly string[]>>();

/** Every symbol in formulas, and in the steps before. */
export function symbolsBehind(calculation: Calculation, formulas: readonly string[]): readonly string[] {
  const known = behind.get(calculation) ?? new Map<string, readonly string[]>();
  behind.set(calculation, known);
  const name = formulas.join("\n");
  let found = known.get(name);
  if (found === undefined) known.set(name, (found = symbolsIn(calculation, formulas)));
  return found;
}

function symbolsIn({ steps }: Calculation, formulas: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  const visit = (symbol: string): void => {
    if (seen.has(symbol)) return;
    seen.add(symbol);
    // One symbol may have several steps, each for its own case: which of them is taken, what decides it says.
    for (const { formula, when } of steps.filter((one) => one.symbol === symbol)) visitAll([formula, ...sides(when)]);
  };
  const visitAll = (texts: readonly string[]): void => {
    texts.flatMap((text) => formulaSymbols(formulaOf(text))).forEach(visit);
  };
  visitAll(formulas);
  return [...seen];
}

const sides = (one: { readonly left: string; readonly right: string } | undefined): readonly string[] =>
  one === undefined ? [] : [one.left, one.right];

/** Symbols a result rests on: those behind it, and those behind the limits, outside of which it says nothing. */
export const symbolsOf = (calculation: Calculation, symbol: string): readonly string[] =>
  symbolsBehind(calculation, [symbol, ...calculation.limits.flatMap(sides)]);

/**
 * A calculation without what rests on certain inputs, as far as that can still be judged: null where a limit of validity
 * rests on one of them, since outside its limits no result stands.
 */
export function without(calculation: Calculation, inputs: ReadonlySet<string>): Calculation | null {
  const free = (formulas: readonly string[]) =>
    symbolsBehind(calculation, formulas).every((symbol) => !inputs.has(symbol));
  if (!calculation.limits.every((limit) => free(sides(limit)))) return null;
  const { crossCheck, ...rest } = calculation;
  return {
    ...rest,
    inputs: Object.fromEntries(Object.entries(calculation.inputs).filter(([symbol]) => !inputs.has(symbol))),
    steps: calculation.steps.filter(({ symbol }) => free([symbol])),
    accept: calculation.accept.filter(({ left, right, accuses, needs }) =>
      free([left, right, accuses, ...(needs === undefined ? [] : [needs])]),
    ),
    ...(crossCheck !== undefined && free([crossCheck.symbol, crossCheck.formula, crossCheck.within]) && { crossCheck }),
  };
}

const places = new WeakMap<Done, Map<string, ReadonlySet<Address>>>();

/** Places one result rests on: a value that only another result was made from is not among them. */
export function placesBehind(done: Done, symbol: string): ReadonlySet<Address> {
  const known = places.get(done) ?? new Map<string, ReadonlySet<Address>>();
  places.set(done, known);
  let found = known.get(symbol);
  if (found === undefined) {
    const own = ["", ...symbolsOf(done.calculation, symbol)].flatMap((one) => [...(done.reads.get(one) ?? [])]);
    known.set(symbol, (found = new Set(own)));
  }
  return found;
}

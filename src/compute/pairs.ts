import type { BoundInput, Done } from "../model/book.ts";
import type { CalculationInput } from "../model/calculation.ts";
import { isList, isObject } from "../model/json.ts";
import type { BookRecord } from "../model/record.ts";

export type Side = "low" | "high" | "any";

/** A value a sheet states. */
export interface Stated {
  readonly list: "inputs" | "results";
  readonly symbol: string;
  /** Empty when the row states no value. */
  readonly text: string;
  readonly pointer: string;
}

/** A value of the sheet against ours, in one unit. */
export interface Pair extends Stated {
  readonly sort: "input" | "result" | "adopted";
  readonly unit: string;
  readonly ours: number;
  readonly unsafe: Side;
  readonly within?: number;
  /** A copied input: exact, or within half a unit where that is at most 0.5 % of the value. */
  readonly copied: boolean;
  readonly options?: readonly string[];
  readonly means: string;
}

/** The rows of a sheet's list, as quantities or as words. */
export function statedIn(sheet: BookRecord, list: "inputs" | "results"): readonly Stated[] {
  const rows = sheet.value[list];
  return (isList(rows) ? rows : []).flatMap((row, index) => {
    if (!isObject(row) || typeof row["symbol"] !== "string") return [];
    const name = typeof row["word"] === "string" ? "word" : "value";
    const text = row[name];
    return [
      { list, symbol: row["symbol"], text: typeof text === "string" ? text : "", pointer: `/${list}/${index}/${name}` },
    ];
  });
}

/** What a stated value is compared with; null when the calculation has no such value in this case. */
export function pairOf(computed: Done, stated: Stated): Pair | null {
  const pairs = [inputPair(computed, stated), resultPair(computed, stated)];
  // A sheet may list a result of another calculation among its inputs, or repeat an input among its results.
  return (stated.list === "inputs" ? pairs : pairs.reverse()).find((pair) => pair !== null) ?? null;
}

function inputPair({ calculation, inputs }: Done, stated: Stated): Pair | null {
  const input = Object.hasOwn(calculation.inputs, stated.symbol) ? calculation.inputs[stated.symbol] : undefined;
  const bound = inputs.get(stated.symbol);
  return input === undefined || bound === undefined ? null : pairWith(input, bound, stated);
}

/** A stated input against the value that was bound to it. */
export function pairWith(input: CalculationInput, bound: BoundInput, stated: Stated): Pair | null {
  if (bound.value === undefined) return null;
  return {
    sort: "input",
    unit: input.unit,
    ours: bound.value,
    unsafe: input.unsafe ?? "any",
    copied: bound.origin?.type !== "calculation",
    means: input.means,
    ...stated,
    ...(input.options !== undefined && { options: input.options }),
  };
}

function resultPair({ calculation, steps }: Done, stated: Stated): Pair | null {
  const done = steps.find(({ step }) => step.symbol === stated.symbol);
  if (done === undefined) return null;
  const declared = calculation.compared.find((one) => one.symbol === stated.symbol);
  return {
    sort: "result",
    unit: done.step.unit,
    ours: done.value,
    unsafe: declared?.unsafe ?? "any",
    copied: false,
    means: done.step.means,
    ...stated,
    ...(declared?.within !== undefined && { within: declared.within }),
    ...(done.step.options !== undefined && { options: done.step.options }),
  };
}

/** The value the maker adopted, against the part's. */
export function adoptedPair(computed: Done, sheet: BookRecord): Pair | null {
  const symbol = computed.calculation.adopted;
  const text = sheet.value["adopted"];
  if (symbol === undefined || typeof text !== "string") return null;
  const pair = inputPair(computed, { list: "results", symbol, text, pointer: "/adopted" });
  return pair === null ? null : { ...pair, sort: "adopted" };
}

import type { Calculation, Comparison } from "../model/calculation.ts";
import type { BookRecord } from "../model/record.ts";
import type { Hit } from "../reading/hit.ts";
import type { BoundCalculation } from "./inputs.ts";
import { symbolsBehind } from "../model/rests.ts";
import type { Comparative, Run } from "./run.ts";

/** A value in a record. */
export interface Place {
  readonly record: BookRecord;
  readonly pointer: string;
}

const placeOf = (hit: Hit | undefined): readonly Place[] =>
  hit?.record == null ? [] : [{ record: hit.record, pointer: hit.pointer }];

/**
 * Values of records that formulas rest on, through all steps before. Of values in several records those of the subject
 * count, for it is the subject that does not fit; a value that only another record states is that record's fault.
 */
export function groundsOf(
  calculation: Calculation,
  { hits }: BoundCalculation,
  subject: BookRecord,
  formulas: readonly string[],
): readonly Place[] {
  const found = symbolsBehind(calculation, formulas).flatMap((symbol) => placeOf(hits.get(symbol)));
  const own = found.filter(({ record }) => record === subject);
  return own.length > 0 ? own : found;
}

/**
 * Comparisons that failed, together where they rest on a common value: one that is stated in a record or comes from
 * another calculation. One wrong value is then one finding, whatever it fails.
 */
export function inCommon<C extends Comparison & { readonly accuses?: string }>(
  calculation: Calculation,
  { inputs }: BoundCalculation,
  failed: readonly Comparative<C>[],
): readonly (readonly Comparative<C>[])[] {
  const isStated = (symbol: string) => {
    const input = inputs.get(symbol);
    return input?.rows !== undefined || input?.origin?.type === "record" || input?.origin?.type === "calculation";
  };
  let groups: { readonly symbols: ReadonlySet<string>; readonly failed: readonly Comparative<C>[] }[] = [];
  for (const one of failed) {
    const { left, right, accuses } = one.of;
    const formulas = accuses === undefined ? [left, right] : [left, right, accuses];
    const symbols = symbolsBehind(calculation, formulas).filter(isStated);
    const touches = (group: (typeof groups)[number]) => symbols.some((symbol) => group.symbols.has(symbol));
    const common = groups.filter(touches);
    const whole = {
      symbols: new Set([...common.flatMap((group) => [...group.symbols]), ...symbols]),
      failed: [...common.flatMap((group) => group.failed), one],
    };
    groups = [...groups.filter((group) => !touches(group)), whole];
  }
  return groups.map((group) => group.failed);
}

/** The value an acceptance accuses: of a list, the row that decided the compared step. */
export function accusedBy(
  bound: BoundCalculation,
  { decisive }: Run,
  { left, right, accuses }: Comparison & { readonly accuses: string },
): Place | undefined {
  const [row] = [left, right].flatMap((symbol) => decisive.get(symbol) ?? []);
  const hit = bound.hits.get(accuses) ?? (row === undefined ? undefined : bound.placeOf(row));
  return placeOf(hit)[0];
}

import type { Calculation, Comparison } from "../model/calculation.ts";
import { formulaSymbols } from "../model/formula/ast.ts";
import type { BookRecord } from "../model/record.ts";
import type { Hit } from "../judge/follow.ts";
import { formulaOf } from "./formula-of.ts";
import type { BoundCalculation } from "./inputs.ts";
import type { Run } from "./run.ts";

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
  const seen = new Set<string>();
  const found: Place[] = [];
  const visit = (symbol: string): void => {
    if (seen.has(symbol)) return;
    seen.add(symbol);
    found.push(...placeOf(hits.get(symbol)));
    const step = calculation.steps.find((one) => one.symbol === symbol);
    if (step !== undefined) formulaSymbols(formulaOf(step.formula)).forEach(visit);
  };
  formulas.flatMap((formula) => formulaSymbols(formulaOf(formula))).forEach(visit);
  const own = found.filter(({ record }) => record === subject);
  return own.length > 0 ? own : found;
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

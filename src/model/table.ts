import type { Basis } from "./basis.ts";

/** An interval with open or closed ends; a missing end is unbounded. Anything else is refused when the table loads. */
export interface Interval {
  readonly over?: number;
  readonly from?: number;
  readonly upTo?: number;
  readonly below?: number;
}

/** A table of a standard as data. A key without a row is *not judged*: no row is no pass. */
export interface Table {
  readonly id: string;
  readonly title: string;
  readonly keys: readonly TableKey[];
  /** Columns: quantity text values, or lists of points. */
  readonly columns: Readonly<
    Record<string, { readonly unit?: string; readonly means: string; readonly points?: readonly string[] }>
  >;
  readonly rows: readonly TableRow[];
  /** Standard and edition that the table renders; a `reference-table` record replaces it whole. */
  readonly standard: string;
  readonly edition?: string;
}

export interface TableKey {
  readonly name: string;
  readonly match: "equal" | "interval";
  /** Unit an interval is stated in. */
  readonly unit?: string;
}

export interface TableRow {
  readonly keys: Readonly<Record<string, string | Interval>>;
  /** Quantity text ("265 MPa"), or points: rows of named quantity texts. */
  readonly values: Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>;
  readonly basis: Basis;
}

export function inInterval(value: number, interval: Interval): boolean {
  return (
    (interval.over === undefined || value > interval.over) &&
    (interval.from === undefined || value >= interval.from) &&
    (interval.upTo === undefined || value <= interval.upTo) &&
    (interval.below === undefined || value < interval.below)
  );
}

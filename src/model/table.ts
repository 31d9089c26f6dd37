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
  readonly columns: Readonly<Record<string, TableColumn>>;
  readonly rows: readonly TableRow[];
  /** Standard and edition that the table renders; a `reference-table` record replaces it whole. */
  readonly standard: string;
  readonly edition?: string;
}

/** What a column holds: a text, or a quantity if it has a unit; several texts (`list`); or points of named coordinates. */
export interface TableColumn {
  readonly unit?: string;
  readonly means: string;
  readonly list?: true;
  /** A row may state nothing there, as where a range has no upper end. */
  readonly optional?: true;
  readonly points?: readonly string[];
}

export interface TableKey {
  readonly name: string;
  readonly match: "equal" | "interval";
  /** Unit an interval is stated in. */
  readonly unit?: string;
}

export type Points = readonly Readonly<Record<string, string>>[];

/** Quantity text ("265 MPa"), a formula of it ("= 2*thickness"), texts, or points: rows of named quantity texts. */
export type Cell = string | readonly string[] | Points;

export interface TableRow {
  /** A text, an interval, or `anyOther`. */
  readonly keys: Readonly<Record<string, string | Interval>>;
  readonly values: Readonly<Record<string, Cell>>;
  readonly basis: Basis;
}

/** As a key: whatever no other row names, under the same keys before it. */
export const anyOther = "any other";

export function inInterval(value: number, interval: Interval): boolean {
  return (
    (interval.over === undefined || value > interval.over) &&
    (interval.from === undefined || value >= interval.from) &&
    (interval.upTo === undefined || value <= interval.upTo) &&
    (interval.below === undefined || value < interval.below)
  );
}

/** Whether some value lies in both intervals. */
export function overlap(a: Interval, b: Interval): boolean {
  const before = (one: Interval, other: Interval): boolean => {
    const [end, start] = [one.upTo ?? one.below ?? Infinity, other.over ?? other.from ?? -Infinity];
    return end < start || (end === start && (one.below !== undefined || other.over !== undefined));
  };
  return !before(a, b) && !before(b, a);
}

/** "over 3 up to 16", "from 0 below 3", "up to 16": the words of the trade; each end is stated, or open. In the key's unit. */
export function parseInterval(text: string): Interval | undefined {
  const match = /^(?:(over|from) (-?\d+(?:\.\d+)?))? ?(?:(up to|below) (-?\d+(?:\.\d+)?))?$/.exec(text.trim());
  if (match === null || text.trim() === "") return undefined;
  const [, low, from, high, to] = match;
  return {
    ...(low === "over" && { over: Number(from) }),
    ...(low === "from" && { from: Number(from) }),
    ...(high === "up to" && { upTo: Number(to) }),
    ...(high === "below" && { below: Number(to) }),
  };
}

/** An interval as it is written; "" for one without ends. */
export function printInterval({ over, from, upTo, below }: Interval): string {
  const low = over !== undefined ? `over ${over}` : from === undefined ? "" : `from ${from}`;
  const high = upTo !== undefined ? `up to ${upTo}` : below === undefined ? "" : `below ${below}`;
  return `${low} ${high}`.trim();
}

import { ProgramError } from "./program-error.ts";
import type { Measure } from "./quantity.ts";

/** Whether a statement holds for the whole interval, for none of it, or for a part. */
export type Answer = "yes" | "no" | "unsure";

export type Relation = "<=" | "<" | ">=" | ">" | "=";

/** Limits are compared unrounded; numbers this close, relative to the larger, are the same number. */
export const guard = 1e-9;

/** Whether two numbers are equal but for the noise of calculation. */
export function near(a: number, b: number): boolean {
  if (a === b) return true;
  const size = Math.max(Math.abs(a), Math.abs(b));
  // Every finite number lies within any share of infinity.
  return Number.isFinite(size) && Math.abs(a - b) <= guard * size;
}

interface Interval {
  readonly low: number;
  readonly high: number;
  readonly openLow: boolean;
  readonly openHigh: boolean;
}

type Value = Measure | number;

const intervalOf = (value: Value): Interval =>
  typeof value === "number" ? { low: value, high: value, openLow: false, openHigh: false } : value;

/**
 * How two values lie: "equal" only for two single values, "open" where the intervals overlap or a number is none. Both in
 * one unit; a plain number is taken in the unit of the other.
 */
export function compare(a: Value, b: Value): "less" | "equal" | "greater" | "open" {
  sameUnit(a, b);
  const [one, other] = [intervalOf(a), intervalOf(b)];
  if (allBelow(one, other)) return "less";
  if (allBelow(other, one)) return "greater";
  return isSingle(one) && isSingle(other) && near(one.low, other.low) ? "equal" : "open";
}

/** Whether a ≥ b. */
export function atLeast(a: Value, b: Value): Answer {
  sameUnit(a, b);
  const [one, other] = [intervalOf(a), intervalOf(b)];
  if (one.low > other.high || near(one.low, other.high)) return "yes";
  return allBelow(one, other) ? "no" : "unsure";
}

/** Whether a ≤ b. */
export function atMost(a: Value, b: Value): Answer {
  return atLeast(b, a);
}

/** Whether low ≤ a ≤ high. */
export function within(a: Value, low: Value, high: Value): Answer {
  const answers = [atLeast(a, low), atMost(a, high)];
  if (answers.includes("no")) return "no";
  return answers.includes("unsure") ? "unsure" : "yes";
}

/** Whether the relation holds; the strict ones are the opposite of their counterparts. */
export function holds(a: Value, relation: Relation, b: Value): Answer {
  switch (relation) {
    case "<=":
      return atMost(a, b);
    case ">=":
      return atLeast(a, b);
    case "<":
      return opposite(atLeast(a, b));
    case ">":
      return opposite(atMost(a, b));
    case "=": {
      const order = compare(a, b);
      return order === "equal" ? "yes" : order === "open" ? "unsure" : "no";
    }
  }
}

const opposite = (answer: Answer): Answer => (answer === "yes" ? "no" : answer === "no" ? "yes" : "unsure");

/** Whether an interval is one value. */
export const isSingle = ({ low, high }: Pick<Interval, "low" | "high">): boolean => low === high;

/** Every value of `a` is less than every value of `b`. */
function allBelow(a: Interval, b: Interval): boolean {
  if (near(a.high, b.low)) return a.openHigh || b.openLow;
  return a.high < b.low;
}

function sameUnit(a: Value, b: Value): void {
  if (typeof a === "number" || typeof b === "number" || a.unit === b.unit) return;
  throw new ProgramError(`a value in ${a.unit} is compared with one in ${b.unit}`);
}

import type { Severity } from "../model/finding.ts";
import { apart } from "../model/apart.ts";
import { near } from "../model/compare.ts";
import { measure, parseQuantity } from "../model/quantity.ts";
import { unitLabel } from "../model/units.ts";
import type { Pair } from "./pairs.ts";

/** How a stated value lies against ours; null: it agrees. `ours` is the value it is compared with, in words. */
export interface Disagreement {
  readonly severity: Extract<Severity, "nonconformity" | "query">;
  readonly ours: string;
  /** What is stated is no value of that sort: nothing could be compared. */
  readonly unread?: true;
}

/** Our value in words: at most nine significant digits, or the name of a class. */
export function oursOf({ ours, options, unit }: Pick<Pair, "ours" | "options" | "unit">): string {
  return options?.[ours] ?? `${Number(ours.toPrecision(9))} ${unitLabel(unit)}`.trim();
}

/** Our value beside the stated one: in its unit, with the digits that show the difference. */
function besideStated({ ours, options, unit, text }: Pair): string {
  return options?.[ours] ?? apart({ value: ours, unit, written: text }, { value: ours, unit })[1];
}

/**
 * A recorded result agrees within half a unit of its last digit on the unsafe side, within one whole unit on the safe
 * side, or within the calculation's own tolerance; beyond that it is a nonconformity on the unsafe side, a query on the
 * safe one. A copied input agrees exactly, or within half a unit where that is at most 0.5 % of it.
 */
export function disagreement(pair: Pair): Disagreement | null {
  const ours = besideStated(pair);
  if (pair.options !== undefined) return pair.text === ours ? null : { severity: "nonconformity", ours };
  const parsed = parseQuantity(pair.text, { unit: pair.unit });
  if (!parsed.ok) return { severity: "nonconformity", ours, unread: true };
  // A bound agrees with nothing and contradicts nothing for certain.
  if (parsed.quantity.sign !== "=") return { severity: "query", ours };
  const { value, halfUnit } = measure(parsed.quantity, pair.unit);
  if (near(value, pair.ours)) return null;
  const off = value - pair.ours;
  const within = (tolerance: number) => Math.abs(off) <= tolerance || near(Math.abs(off), tolerance);
  if (pair.copied)
    return within(halfUnit) && halfUnit <= 0.005 * Math.abs(value) ? null : { severity: "nonconformity", ours };
  const unsafe = pair.unsafe === "any" || (pair.unsafe === "low" ? off < 0 : off > 0);
  if (!within(pair.within ?? (unsafe ? halfUnit : 2 * halfUnit)))
    return { severity: unsafe ? "nonconformity" : "query", ours };
  return null;
}

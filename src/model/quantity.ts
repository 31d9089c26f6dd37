import { quantityProblem, unitProblem, type ValueProblem } from "./quantity-problem.ts";
import { convert, convertDifference, knownUnit, sameDimension, unitOf } from "./units.ts";

export { atLeast, atMost, compare, holds, isSingle, within } from "./compare.ts";
export type { ValueProblem };

/** A value as a record writes it. The digits are evidence: `text` is what is shown. */
export interface Quantity {
  readonly text: string;
  /** "<" and ">" state a bound: the value lies below or above `number`. */
  readonly sign: "=" | "<" | ">";
  readonly number: number;
  /** Digits after the decimal point, as written. */
  readonly decimals: number;
  /** Listed name of the unit, "1" for a pure number, "ΔK" for a temperature difference. */
  readonly unit: string;
}

/** What a field wants: a unit whose dimension the text must have, or "any". */
export interface Expected {
  readonly unit: string;
  /** A temperature difference, which is written in K. */
  readonly difference?: boolean;
}

export type ParsedQuantity =
  { readonly ok: true; readonly quantity: Quantity } | { readonly ok: false; readonly problem: ValueProblem };

const form = /^([<>]?)([+-]?\d+(?:\.(\d+))?)(?: (\S+))?$/;
/** More digits than this a number cannot keep. */
const mostDigits = 15;
const longest = 60;

/** Reads `12.5 bar`, `<0.003 %`, `0.85`. Nothing is guessed: any other form is a problem that says what was expected. */
export function parseQuantity(text: string, expected: Expected): ParsedQuantity {
  const wanted = expected.difference === true && expected.unit === "K" ? "ΔK" : expected.unit;
  const match = text.length > longest ? null : form.exec(text);
  if (match === null) return { ok: false, problem: quantityProblem(text, wanted) };
  const [, bound = "", number = "", fraction = "", name] = match;
  if (number.replace(/\D/g, "").length > mostDigits) return { ok: false, problem: quantityProblem(text, wanted) };
  const unit = unitOf(name === undefined ? "1" : wanted === "ΔK" && name === "K" ? "ΔK" : name);
  if (unit === undefined || name === "1" || !fits(unit.name, wanted, name === undefined))
    return { ok: false, problem: unitProblem(text, name, wanted) };
  const sign = bound === "<" ? "<" : bound === ">" ? ">" : "=";
  return { ok: true, quantity: { text, sign, number: Number(number), decimals: fraction.length, unit: unit.name } };
}

/** A number without unit is a pure number and nothing else: not even a percentage. */
function fits(unit: string, wanted: string, bare: boolean): boolean {
  if (wanted === "any") return true;
  return bare ? knownUnit(wanted).name === "1" : sameDimension(unit, wanted);
}

/** A quantity in one unit, as the interval its text allows; all numbers are in `unit`. */
export interface Measure {
  readonly text: string;
  readonly unit: string;
  /** The number as written: of "<0.003 %" the bound. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** The end itself does not belong to the interval. */
  readonly openLow: boolean;
  readonly openHigh: boolean;
  /** Half a unit of the last digit written. */
  readonly halfUnit: number;
  /** Digits after the decimal point, as written (in the unit of the text). */
  readonly decimals: number;
}

/** The quantity in `unit`. Throws `ProgramError` when the dimensions differ: `parseQuantity` with that unit checks it. */
export function measure(quantity: Quantity, unit: string): Measure {
  const { text, sign, number, decimals } = quantity;
  const value = convert(number, quantity.unit, unit);
  const halfUnit = convertDifference(0.5 * 10 ** -decimals, quantity.unit, unit);
  return {
    text,
    unit,
    value,
    low: sign === "<" ? leastBelow(number, unit) : value,
    high: sign === ">" ? Number.POSITIVE_INFINITY : value,
    openLow: sign === ">" || (sign === "<" && leastBelow(number, unit) !== 0),
    openHigh: sign !== "=",
    halfUnit,
    decimals,
  };
}

const signed: ReadonlySet<string> = new Set([
  "gauge pressure or stress",
  "temperature",
  "temperature difference",
  "voltage",
]);

/** Where "<x" ends below: at nothing, for what has no negative values. */
function leastBelow(number: number, unit: string): number {
  return number <= 0 || signed.has(knownUnit(unit).quantity) ? Number.NEGATIVE_INFINITY : 0;
}

/** A number as a measure without text: what definitions compare with. */
export function exactly(value: number, unit: string): Measure {
  const ends = { value, low: value, high: value, openLow: false, openHigh: false };
  return { text: String(value), unit, ...ends, halfUnit: 0, decimals: 0 };
}

import { knownUnit, unitHint, unitLabel, unitOf, unitsOf } from "./units.ts";

/** Why a text is not the value a field wants, in plain words: `found "8 zoll"; expected …, such as "8.0 mm"`. */
export interface ValueProblem {
  /** The text as written. */
  readonly found: string;
  /** "a number and a unit of length (mm, m, cm, in or µm)" */
  readonly expected: string;
  /** A text that would do; its digits are no guess at the value. */
  readonly example: string;
  /** What to change. */
  readonly hint: string;
}

/** Units a message names at most, beside the one that is wanted. */
const mostNamed = 6;
const number = String.raw`[<>]?[+-]?\d+(?:\.\d+)?`;

/** What each wrong form asks for; the first that fits is said. */
const hints: readonly (readonly [form: RegExp, hint: string])[] = [
  [/^\s|\s$/, "take away the space before or after the value"],
  [/\d,\d/, "a comma may be a decimal point or part the thousands: write the digits with a decimal point only"],
  [/\d[eE][-+]?\d/, "write the number out, without exponent"],
  [/^[≤≥]|^[<>]=|^max|^min/i, 'a bound is written "<" or ">" before the number; limits have their own fields'],
  [/[±~≈]|\+\/?-/, "state the value alone: tolerances have their own fields"],
  [/^[<>]?[−–—]\d/, 'write the minus sign as "-"'],
  [/\d\s*(?:-|–|—|\.{2,3}|…|to|bis)\s*\d/, "state one value, not a range"],
  [/\d[ '’\u00a0\u202f]\d/, "write the digits of the number without spaces or marks between them"],
  [/^[<>]\s/, 'leave no space after "<" or ">"'],
  [/^[<>]?-?\.\d|\d\.(?:\s|$)/, "write a digit on both sides of the decimal point"],
  [new RegExp(`^${number}[^\\s\\d.]`), "leave one space between number and unit"],
  [new RegExp(`^${number}(?:\\s{2,}|[^\\S ])`), "leave exactly one plain space between number and unit"],
  [new RegExp(`^${number} \\S+ `), "write the unit without spaces in it, and nothing after it"],
  [/\d{16}|\d{8,}\.\d{8,}/, "write at most 15 digits"],
  [/^\D*$/, "write the value as a number; what is not known is left out"],
];

/** Problem of a text that does not have the form of a quantity at all. */
export function quantityProblem(text: string, wanted: string): ValueProblem {
  const found = hints.find(([form]) => form.test(text));
  return problem(text, wanted, found?.[1] ?? "write a number of at most 15 digits, one space and the unit");
}

/** Problem of a number whose unit (`name`, undefined if none) is missing, unknown or measures something else. */
export function unitProblem(text: string, name: string | undefined, wanted: string): ValueProblem {
  return problem(text, wanted, unitAdvice(name, wanted));
}

function unitAdvice(name: string | undefined, wanted: string): string {
  if (name === undefined) return "state the unit the document states: a number alone is not taken to be in any unit";
  if (name === "1") return "write a pure number without unit";
  const unit = unitOf(name);
  if (unit === undefined) return unitHint(name) ?? `"${name}" is no unit known here`;
  if (wanted === "1") return `a pure number is expected, and "${name}" is a unit of ${unit.quantity}`;
  const other = wanted === "any" ? "" : knownUnit(wanted).quantity;
  if (other === "temperature difference") return 'a temperature difference is written in "K"';
  return `"${name}" is a unit of ${unit.quantity}, not of ${other}`;
}

function problem(found: string, wanted: string, hint: string): ValueProblem {
  return { found, expected: expectation(wanted), example: exampleOf(wanted), hint };
}

/** What a field of that unit takes: "a number and a unit of length (mm, m, cm, in or µm)". */
export function expectation(wanted: string): string {
  if (wanted === "any") return "a number and its unit (a pure number stands alone)";
  const unit = knownUnit(wanted);
  if (unit.name === "1") return "a number without unit, or in % or ppm";
  const usual = unitsOf(wanted).map(unitLabel).slice(0, mostNamed);
  const names = [...new Set([...usual, unitLabel(unit.name)])].filter((name) => name !== "");
  if (unit.quantity === "pure number") return `a number in ${names.join(" or ")}`;
  if (names.length < 2) return `a number and the unit ${names[0] ?? unitLabel(unit.name)}`;
  return `a number and a unit of ${unit.quantity} (${names.slice(0, -1).join(", ")} or ${names.at(-1) ?? ""})`;
}

/** A text such a field takes: "14.0 mm". */
export function exampleOf(wanted: string): string {
  if (wanted === "any") return "14.0 mm";
  const { name, example } = knownUnit(wanted);
  const label = unitLabel(name);
  return label === "" || example.endsWith(` ${label}`) ? example : `1.0 ${label}`;
}

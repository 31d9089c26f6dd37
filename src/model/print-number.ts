import { near } from "./compare.ts";
import { unitLabel } from "./units.ts";

/** How many digits a computed number shows: after the point, or in all. */
export type Digits = number | { readonly significant: number };

/** More digits than this would differ between machines. */
const mostSignificant = 9;
const noBreakSpace = "\u00a0";
/** Beyond these powers of ten a number is printed as a product with one. */
const ordinary = { least: -9, most: 15 };

type Rounding = (value: number, decimals: number) => number;

/**
 * A computed number for people: rounded to nearest, grouped by threes (five or more digits, decimals beyond three), at most
 * nine significant digits, `−` as minus. What a record says is never printed by this function.
 */
export function printNumber(value: number, digits: Digits): string {
  return print(value, digits, roundNearest);
}

/** As `printNumber`, rounded up: for values that are required. */
export function printRequired(value: number, digits: Digits): string {
  return print(value, digits, roundUp);
}

/** As `printNumber`, rounded down: for values that are allowed. */
export function printAllowed(value: number, digits: Digits): string {
  return print(value, digits, roundDown);
}

/** A computed number with so many significant digits at most; zeros that say nothing are left out. */
export function printFigure(value: number, significant = 6): string {
  const short = Number(value.toPrecision(significant));
  if (!Number.isFinite(short)) return "not defined";
  const decimals = /\.(\d+)$/.exec(short.toFixed(12).replace(/0+$/, ""))?.[1]?.length ?? 0;
  return printNumber(short, Math.min(decimals, 9));
}

/** A printed number with its unit, not to be parted: `14.25 mm`; a pure number stands alone. */
export function withUnit(number: string, unit: string): string {
  const label = unitLabel(unit);
  return label === "" ? number : `${number}${noBreakSpace}${label}`;
}

/** The next multiple of 10^−decimals that is not below the value; noise of 1e-9 does not count as more. */
export function roundUp(value: number, decimals: number): number {
  return rounded(value, decimals, Math.ceil);
}

/** The next multiple of 10^−decimals that is not above the value; noise of 1e-9 does not count as less. */
export function roundDown(value: number, decimals: number): number {
  return rounded(value, decimals, Math.floor);
}

/** The nearest multiple of 10^−decimals, halves away from zero; a half that only noise of calculation misses is a half. */
export function roundNearest(value: number, decimals: number): number {
  return rounded(value, decimals, (scaled) => {
    const size = Math.abs(scaled);
    return Math.sign(scaled) * Math.floor(size + 0.5 + size * Number.EPSILON * 8);
  });
}

function rounded(value: number, decimals: number, round: (scaled: number) => number): number {
  if (!Number.isFinite(value)) return value;
  const power = 10 ** Math.abs(decimals);
  const scaled = decimals < 0 ? value / power : value * power;
  const closest = Math.round(scaled);
  const whole = near(scaled, closest) ? closest : round(scaled);
  return (decimals < 0 ? whole * power : whole / power) + 0;
}

function print(value: number, digits: Digits, round: Rounding): string {
  if (Number.isNaN(value)) return "not defined";
  if (!Number.isFinite(value)) return value < 0 ? "−∞" : "∞";
  const power = powerOf(value);
  const small = typeof digits !== "number" && value !== 0 && power < ordinary.least;
  if (small || power >= ordinary.most) return printPower(value, digits, power, round);
  const decimals = decimalsOf(digits, power);
  const result = round(value, decimals);
  // Rounding may carry into one digit more, which then is one too many.
  const fewer = decimalsOf(digits, powerOf(result));
  return grouped(fewer < decimals ? round(value, fewer) : result, Math.max(0, Math.min(decimals, fewer)));
}

/** Power of ten of the first digit; of zero, of a pure unit. */
function powerOf(value: number): number {
  return value === 0 ? 0 : Number(value.toExponential().split("e")[1]);
}

const mantissaOf = (value: number) => Number(value.toExponential().split("e")[0]);

function decimalsOf(digits: Digits, power: number): number {
  const most = mostSignificant - 1 - power;
  return typeof digits === "number"
    ? Math.min(digits, most)
    : Math.min(digits.significant, mostSignificant) - 1 - power;
}

function printPower(value: number, digits: Digits, power: number, round: Rounding): string {
  const significant = typeof digits === "number" ? mostSignificant : digits.significant;
  const raised = String(power).replace(/[-\d]/g, (sign) => "⁰¹²³⁴⁵⁶⁷⁸⁹⁻"["0123456789-".indexOf(sign)] ?? sign);
  return `${print(mantissaOf(value), { significant }, round)}·10${raised}`;
}

function grouped(value: number, decimals: number): string {
  const [whole = "", fraction = ""] = Math.abs(value).toFixed(decimals).split(".");
  const sign = value < 0 ? "−" : "";
  const before = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, noBreakSpace) : whole;
  const after = fraction.length > 3 ? fraction.replace(/(\d{3})(?=\d)/g, `$1${noBreakSpace}`) : fraction;
  return sign + before + (after === "" ? "" : `.${after}`);
}

/** A number in a sentence, to six figures. */
export const short = (value: number): string => String(Number(value.toPrecision(6)));

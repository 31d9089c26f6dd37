import { ProgramError } from "./program-error.ts";
import { bases, refused, spellings, unitGroups } from "./unit-list.ts";

/** Exponents of the base quantities, in the order of `bases`. */
export type Dimension = readonly number[];

/**
 * A unit: dimension, scale, and whether it is the scale of *points* (absolute pressure, temperature). Gauge pressure is a
 * difference. In definitions "K" is a temperature and "ΔK" a temperature difference, which records write "K".
 */
export interface Unit {
  readonly name: string;
  /** What a message calls what it measures: "length". */
  readonly quantity: string;
  readonly dimension: Dimension;
  /** Size in the coherent SI unit, as an exact ratio and as the nearest number. */
  readonly ratio: Ratio;
  readonly scale: number;
  readonly point: boolean;
  /** Where the zero of the scale lies, in the SI unit. */
  readonly zero: Ratio;
  /** A value as a record would write it. */
  readonly example: string;
}

export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

const dimensionless: Dimension = bases.map(() => 0);
const listed = listUnits();
const composed = new Map<string, Unit | null>();

/** The unit of a name, or undefined. Takes other spellings (`mm2`, `µ` and `μ`) and products and quotients (`W/(m·K)`). */
export function unitOf(name: string): Unit | undefined {
  const known = listed.get(name);
  if (known !== undefined) return known;
  const found = composed.get(name);
  if (found !== undefined) return found ?? undefined;
  const key = keyOf(name);
  const unit = refused.has(key) ? undefined : (listed.get(spellings.get(key) ?? key) ?? compose(key));
  // Text of records ends here: what is remembered of it stays small.
  if (composed.size < 1000) composed.set(name, unit ?? null);
  return unit;
}

/** As `unitOf`, for names in definitions: throws `ProgramError` when there is no such unit. */
export function knownUnit(name: string): Unit {
  const unit = unitOf(name);
  if (unit === undefined) throw new ProgramError(`there is no unit "${name}"`);
  return unit;
}

/** Whether values in the two units can be converted: same dimension, and both points or both not. */
export function sameDimension(a: string, b: string): boolean {
  const [one, other] = [knownUnit(a), knownUnit(b)];
  return one.point === other.point && sameExponents(one.dimension, other.dimension);
}

export function sameExponents(a: Dimension, b: Dimension): boolean {
  return a.every((exponent, at) => Math.abs(exponent - (b[at] ?? 0)) < 1e-9);
}

/** Names of the listed units that measure the same as `name`, the usual ones first. */
export function unitsOf(name: string): readonly string[] {
  const unit = knownUnit(name);
  const own = unitGroups
    .filter((group) => group.quantity === unit.quantity)
    .flatMap((group) => Object.keys(group.units));
  const found = own.length > 0 ? own : [...new Set([...listed.values()].map((other) => other.name))];
  return found.filter((other) => sameDimension(other, name));
}

/** Value in another unit, by exact factors. Throws `ProgramError` when the dimensions differ: callers check before. */
export function convert(value: number, from: string, to: string): number {
  if (from === to) return value;
  const { factor, shift, under } = conversion(from, to);
  return (value * factor + shift) / under;
}

/** As `convert`, for the difference of two values: zeros play no part. */
export function convertDifference(value: number, from: string, to: string): number {
  if (from === to) return value;
  const { factor, under } = conversion(from, to);
  return (value * factor) / under;
}

/** What to write instead of a name that is no unit, if that is known. */
export function unitHint(name: string): string | undefined {
  const key = keyOf(name);
  const hint = refused.get(key);
  if (hint !== undefined) return hint;
  const similar = [...listed.keys()].find((other) => keyOf(other).toLowerCase() === key.toLowerCase());
  return similar === undefined ? undefined : `write "${similar}"`;
}

/** The unit as printed after a number: nothing for a pure number, "K" for a temperature difference. */
export function unitLabel(name: string): string {
  return name === "1" ? "" : name === "ΔK" ? "K" : name;
}

interface Conversion {
  readonly factor: number;
  readonly shift: number;
  readonly under: number;
}

const conversions = new Map<string, Map<string, Conversion>>();

/** (value · factor + shift) / under: whole numbers, so that a decimal value stays the nearest to the exact result. */
function conversion(from: string, to: string): Conversion {
  const known = conversions.get(from)?.get(to);
  if (known !== undefined) return known;
  if (!sameDimension(from, to)) throw new ProgramError(`${from} cannot be converted to ${to}`);
  const [a, b] = [knownUnit(from), knownUnit(to)];
  const factor = divide(a.ratio, b.ratio);
  const shift = divide(subtract(a.zero, b.zero), b.ratio);
  const parts = [factor.over * shift.under, shift.over * factor.under, factor.under * shift.under] as const;
  const common = parts.reduce(divisorOf);
  const made = {
    factor: Number(parts[0] / common),
    shift: Number(parts[1] / common),
    under: Number(parts[2] / common),
  };
  const row = conversions.get(from) ?? new Map<string, Conversion>();
  conversions.set(from, row.set(to, made));
  return made;
}

const divide = (a: Ratio, b: Ratio): Ratio => ({ over: a.over * b.under, under: a.under * b.over });
const multiply = (a: Ratio, b: Ratio): Ratio => ({ over: a.over * b.over, under: a.under * b.under });
const subtract = (a: Ratio, b: Ratio): Ratio => ({
  over: a.over * b.under - b.over * a.under,
  under: a.under * b.under,
});
const divisorOf = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : divisorOf(b, a % b));

/** Unicode's own equivalence: superscripts, both micro signs, ℃; and the two signs it keeps apart. */
function keyOf(name: string): string {
  return name.normalize("NFKC").replaceAll("\u2206", "Δ").replaceAll("⋅", "·");
}

function listUnits(): ReadonlyMap<string, Unit> {
  const units = new Map<string, Unit>();
  for (const { quantity, of, point, example, units: names } of unitGroups)
    for (const [name, [over, under, zeroOver = 0, zeroUnder = 1]] of Object.entries(names)) {
      const ratio = { over: BigInt(over), under: BigInt(under) };
      const zero = { over: BigInt(zeroOver), under: BigInt(zeroUnder) };
      const scale = Number(over) / Number(under);
      const unit = { name, quantity, dimension: dimensionOf(of), ratio, scale, point: point ?? false, zero, example };
      units.set(name, unit).set(keyOf(name), unit);
    }
  return units;
}

function dimensionOf(text: string): Dimension {
  const factors = new Map(
    [...text.matchAll(/(\D+?)(-?\d+)?(?: |$)/g)].map(([, base = "", power = "1"]) => [base, Number(power)]),
  );
  return bases.map((base) => factors.get(base) ?? 0);
}

interface Product {
  readonly dimension: Dimension;
  readonly ratio: Ratio;
}

/** A product or quotient of listed units: `a/b`, `a·b`, `a/(b·c)`, powers 2 to 4. */
function compose(key: string): Unit | undefined {
  if (!/[/·]|[2-4]$/.test(key)) return undefined;
  const tokens = key.match(/[/·()]|[^/·()]+/g) ?? [];
  let next = 0;
  const found = readProduct();
  if (found === undefined || next < tokens.length) return undefined;
  const name = key.replace(/(?<=\p{L})[2-4]/gu, (digit) => "²³⁴"[Number(digit) - 2] ?? digit);
  const scale = Number(found.ratio.over) / Number(found.ratio.under);
  const zero = { over: 0n, under: 1n };
  return { name, quantity: `quantity in ${name}`, ...found, scale, point: false, zero, example: `1.0 ${name}` };

  function readProduct(): Product | undefined {
    let product = readFactor();
    while (product !== undefined && (tokens[next] === "/" || tokens[next] === "·")) {
      const sign = tokens[next++] === "/" ? -1 : 1;
      const factor = readFactor();
      product = factor === undefined ? undefined : joined(product, factor, sign);
    }
    return product;
  }

  function readFactor(): Product | undefined {
    if (tokens[next] !== "(") return factorOf(tokens[next++] ?? "");
    next++;
    const inner = readProduct();
    return tokens[next++] === ")" ? inner : undefined;
  }
}

/** In a product a degree is a difference, and no other scale of points stands there. */
function factorOf(key: string): Product | undefined {
  const unit = key === "K" || key === "°C" ? listed.get("ΔK") : listed.get(spellings.get(key) ?? key);
  if (unit !== undefined) return unit.point ? undefined : unit;
  const [, base = "", power = ""] = /^(.*\D)([2-4])$/.exec(key) ?? [];
  const single = base === "" ? undefined : factorOf(base);
  if (single === undefined) return undefined;
  const others = Array.from({ length: Number(power) - 1 }, () => single);
  return others.reduce<Product>((product, factor) => joined(product, factor, 1), single);
}

function joined(a: Product, b: Product, sign: 1 | -1): Product {
  return {
    dimension: dimensionless.map((_, at) => (a.dimension[at] ?? 0) + sign * (b.dimension[at] ?? 0)),
    ratio: sign === 1 ? multiply(a.ratio, b.ratio) : divide(a.ratio, b.ratio),
  };
}

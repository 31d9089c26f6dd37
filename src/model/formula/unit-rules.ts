import { bases } from "../unit-list.ts";
import { sameExponents, type Dimension, type Unit } from "../units.ts";
import { describeValue, factorBetween, withoutAngle } from "./unit-words.ts";

/**
 * What a formula yields, as far as units tell. A *point* is a temperature or an absolute pressure on its scale, a
 * *difference* any other value; *free* is a product that holds a point and may be either; *nought* is the number 0, which
 * goes with every unit.
 */
export interface UnitValue {
  readonly sort: "difference" | "point" | "free" | "nought";
  readonly dimension: Dimension;
  readonly scale: number;
  /** Of a point: where its scale begins, in the SI unit. */
  readonly zero: number;
}

/** What is judged, as messages show it: set only when there is a message. */
export type Shown = () => string;

/** Units that do not go together, in words. */
export class UnitMismatch extends Error {}

const none: Dimension = bases.map(() => 0);
/** A number without unit. */
export const pure: UnitValue = { sort: "difference", dimension: none, scale: 1, zero: 0 };

/** What a value declared in a unit is to a formula. */
export function valueOfUnit({ dimension, scale, point, zero }: Unit): UnitValue {
  return {
    sort: point ? "point" : "difference",
    dimension: withoutAngle(dimension),
    scale,
    zero: Number(zero.over) / Number(zero.under),
  };
}

/** The product (sign 1) or quotient (−1) of two values that may be factors. */
export function productOf(a: UnitValue, b: UnitValue, sign: 1 | -1): UnitValue {
  return {
    sort: sortOfProduct(a, b, sign),
    dimension: a.dimension.map((exponent, at) => exponent + sign * (b.dimension[at] ?? 0)),
    scale: a.scale * b.scale ** sign,
    zero: 0,
  };
}

/** Of a point times or by a pure number: a point of that scale. Of differences alone: a difference. */
function sortOfProduct(a: UnitValue, b: UnitValue, sign: 1 | -1): UnitValue["sort"] {
  if (a.sort === "point" && isPure(b)) return "point";
  if (b.sort === "point" && isPure(a) && sign === 1) return "point";
  const holdsPoint = [a, b].some(({ sort }) => sort === "point" || sort === "free");
  const cancels = a.dimension.every((exponent, at) => Math.abs(exponent + sign * (b.dimension[at] ?? 0)) < 1e-9);
  return holdsPoint && !cancels ? "free" : "difference";
}

const isPure = ({ dimension, sort }: UnitValue) => sort !== "point" && sameExponents(dimension, none);

/** The sum or difference of two values; `where` names it in messages. */
export function sumOf(a: UnitValue, b: UnitValue, operator: "+" | "-", where: Shown): UnitValue {
  if (a.sort !== "point" || b.sort !== "point") {
    const both = sameScale(a, b, where);
    if (b.sort === "point" && operator === "-" && a.sort !== "free")
      throw new UnitMismatch(`${where()} takes a point from a difference`);
    if (a.sort === "nought" || b.sort === "nought") return both;
    const free = a.sort === "free" || b.sort === "free";
    if (free && (a.zero !== 0 || b.zero !== 0)) throw new UnitMismatch(`${where()} may join points of two scales`);
    const point = operator === "-" && free ? undefined : [a, b].find(({ sort }) => sort === "point");
    return point ?? { ...both, sort: free ? "free" : "difference" };
  }
  sameScale(a, b, where);
  if (operator === "+")
    throw new UnitMismatch(`${where()} adds two points; add a difference: a + (b - a)/2 is their mean`);
  if (a.zero !== b.zero) throw new UnitMismatch(`${where()} subtracts points of two scales`);
  return { ...a, sort: "difference", zero: 0 };
}

/** A value inside a product, power or root: points only where their scale begins at the zero of nature. */
export function afterFactor(value: UnitValue, shown: Shown, what: string, sort: "point" | "free"): UnitValue {
  if (value.sort !== "point") return value.sort === "nought" ? { ...value, sort: "difference" } : value;
  if (value.zero !== 0)
    throw new UnitMismatch(
      `${shown()} in ${describeValue(value)} cannot be ${what}: declare it in K, or take a difference`,
    );
  return { ...value, sort };
}

/** A power of a value. */
export function raised(value: UnitValue, power: number): UnitValue {
  return { ...value, dimension: value.dimension.map((exponent) => exponent * power), scale: value.scale ** power };
}

/** Values side by side, as in `max(a, b)` or `a ≤ b`: one unit, and never a point beside a difference. */
export function alike(a: UnitValue, b: UnitValue, where: Shown): UnitValue {
  const both = sameScale(a, b, where);
  const pointed = [a, b].filter(({ sort }) => sort === "point");
  if (pointed.some(({ zero }) => zero !== pointed[0]?.zero))
    throw new UnitMismatch(`${where()} are points of two scales`);
  if (pointed.length === 1 && [a, b].some(({ sort }) => sort === "difference"))
    throw new UnitMismatch(
      `${where()}: a point stands beside a difference (gauge meets absolute in a named function only)`,
    );
  return pointed[0] ?? both;
}

function sameScale(a: UnitValue, b: UnitValue, where: Shown): UnitValue {
  if (a.sort === "nought" && b.zero === 0) return b;
  if (b.sort === "nought" && a.zero === 0) return a;
  const words = () => `${describeValue(a)} and ${describeValue(b)}`;
  if (!sameExponents(a.dimension, b.dimension)) throw new UnitMismatch(`${where()}: ${words()} do not go together`);
  const factor = factorBetween(a.scale, b.scale);
  if (factor !== undefined)
    throw new UnitMismatch(`${where()}: ${words()} differ by a factor of ${factor}: declare one unit`);
  return a;
}

/** Whether a value may stand where `wanted` is declared. */
export function meets(found: UnitValue, wanted: UnitValue): boolean {
  if (found.sort === "nought" && wanted.zero === 0) return true;
  if (!sameExponents(found.dimension, wanted.dimension) || factorBetween(found.scale, wanted.scale) !== undefined)
    return false;
  if (found.sort === "free") return wanted.zero === 0;
  return found.sort === wanted.sort && found.zero === wanted.zero;
}

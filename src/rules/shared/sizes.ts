import { parseQuantity, type Quantity } from "../../model/quantity.ts";
import { convertDifference, knownUnit, sameExponents } from "../../model/units.ts";

/** A value of any unit as a record writes it; undefined of what is no quantity, which its schema says. */
export function sizeOf(text: string): Quantity | undefined {
  const parsed = parseQuantity(text, { unit: "any" });
  return parsed.ok ? parsed.quantity : undefined;
}

/**
 * One size as a multiple of another; undefined where they do not measure the same. Sizes are differences: an error of
 * 0.3 °C is one of 0.3 K.
 */
export function ratioOf(one: Quantity, other: Quantity): number | undefined {
  const [a, b] = [knownUnit(one.unit), knownUnit(other.unit)];
  if (!sameExponents(a.dimension, b.dimension) || other.number === 0) return undefined;
  const point = a.point || b.point;
  // The units of points and of differences of temperature have one size each.
  return point && a.point !== b.point
    ? (one.number * a.scale) / (other.number * b.scale)
    : convertDifference(one.number, one.unit, other.unit) / other.number;
}

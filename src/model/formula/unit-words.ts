import { bases, unitGroups } from "../unit-list.ts";
import { knownUnit, sameExponents, type Dimension } from "../units.ts";
import type { UnitValue } from "./unit-rules.ts";

/** The factor between two scales as text, or undefined when they are one but for the noise of calculation. */
export function factorBetween(a: number, b: number): string | undefined {
  const ratio = a > b ? a / b : b / a;
  return Math.abs(ratio - 1) < 1e-9 ? undefined : String(Number(ratio.toPrecision(6)));
}

const angle = bases.indexOf("rad");

/** An angle in rad is a pure number in a formula. */
export function withoutAngle(dimension: Dimension): Dimension {
  return dimension.map((exponent, at) => (at === angle ? 0 : exponent));
}

/** A value's unit in words: the listed unit of that dimension and scale, else a product of base units. */
export function describeValue(value: UnitValue): string {
  if (value.sort === "nought") return "any unit";
  const pointed = value.sort === "point";
  const listed = unitGroups
    .flatMap((group) => Object.keys(group.units).map(knownUnit))
    .find(
      (unit) =>
        unit.point === pointed &&
        (!pointed || Number(unit.zero.over) / Number(unit.zero.under) === value.zero) &&
        sameExponents(withoutAngle(unit.dimension), value.dimension) &&
        factorBetween(unit.scale, value.scale) === undefined,
    );
  if (listed !== undefined) return listed.name === "1" ? "no unit" : listed.name;
  const factors = bases.flatMap((base, at) => {
    const exponent = Number((value.dimension[at] ?? 0).toFixed(6));
    return exponent === 0 ? [] : [exponent === 1 ? base : `${base}^${exponent}`];
  });
  const scale = Number(value.scale.toPrecision(6));
  return [...(scale === 1 && factors.length > 0 ? [] : [String(scale)]), ...factors].join("·");
}

/** What makes two units of one dimension different, to follow a message; nothing when the dimensions say it. */
export function reasonOf(found: UnitValue, wanted: UnitValue): string {
  if (!sameExponents(found.dimension, wanted.dimension)) return "";
  const factor = factorBetween(found.scale, wanted.scale);
  return factor === undefined ? ": a point is no difference" : `: a factor of ${factor} lies between`;
}

import { derivedFrom, excerptSeen } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";

/** Patterns of holes; a calculation gives the position in this list. */
export const patterns: readonly string[] = ["triangular", "square"];

/** Area of plate in mm² that belongs to each hole of an endless pattern of pitch `P` in mm. */
export function areaOfPitch(pattern: string, P: number): number {
  return pattern === "square" ? P ** 2 : (Math.sqrt(3) / 2) * P ** 2;
}

/** Named function `plateOfTube(pattern, P, do)` in mm²: plate that presses on one tube, without the tube itself. */
export const plateOfTube: ListFunction = {
  name: "plateOfTube",
  means: "area of plate that pulls on one tube: its share of the pattern less its own outer circle",
  basis: derivedFrom("geometry: a square has P², two equilateral triangles √3/2·P²"),
  parameters: [
    { name: "pattern", unit: "1" },
    { name: "P", unit: "mm" },
    { name: "do", unit: "mm" },
  ],
  unit: "mm²",
  compute: numbers(([position = Number.NaN, P = Number.NaN, outside = Number.NaN]) => {
    const pattern = patterns[position];
    if (pattern === undefined) return { refused: "the pattern of the holes is none that is known" };
    if (!(outside > 0 && P > outside))
      return { refused: `tubes of ${outside} mm overlap at a pitch of ${P} mm, or have no diameter` };
    const [share, circle] = [areaOfPitch(pattern, P), (Math.PI / 4) * outside ** 2];
    return { value: share - circle, lines: [`${pattern}: ${printed(share)} mm² less ${printed(circle)} mm²`] };
  }),
};

/** Named function `circumference(d)` in mm. */
export const circumference: ListFunction = {
  name: "circumference",
  means: "circumference of a circle",
  basis: derivedFrom("geometry: π·d"),
  parameters: [{ name: "d", unit: "mm" }],
  unit: "mm",
  compute: numbers(([d = Number.NaN]) =>
    d > 0 ? { value: Math.PI * d, lines: [] } : { refused: `a diameter of ${d} mm has no circumference` },
  ),
};

const printed = (value: number) => String(Number(value.toPrecision(6)));

/** Named function `leastTubePlate(hole, small, thicknessSmall, thicknessLarge)` in mm: least plate for expanded tubes. */
export const leastTubePlate: ListFunction = {
  name: "leastTubePlate",
  means: "least thickness of a plate into which tubes are expanded, by the diameter of the holes",
  basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 580"),
  parameters: ["hole", "small", "thicknessSmall", "thicknessLarge"].map((name) => ({ name, unit: "mm" })),
  unit: "mm",
  compute: numbers(
    ([hole = Number.NaN, small = Number.NaN, thicknessSmall = Number.NaN, thicknessLarge = Number.NaN]) =>
      hole > 0
        ? hole <= small * (1 + 1e-9)
          ? { value: thicknessSmall, lines: [`holes of at most ${small} mm`] }
          : { value: thicknessLarge, lines: [`holes above ${small} mm`] }
        : { refused: "a tube hole has a diameter" },
  ),
};

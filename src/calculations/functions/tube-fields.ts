import { derivedFrom, excerptSeen } from "../../model/basis.ts";
import type { ListFunction } from "../../model/calculation.ts";
import { numbers } from "./arguments.ts";

/** Patterns of holes; a formula gets the position. */
export const patterns: readonly string[] = ["square", "triangular"];

/** Named function `plateShare(pitch, pattern)` in mm²: the area of plate that belongs to one hole of a regular field. */
export const plateShare: ListFunction = {
  name: "plateShare",
  means: "area of plate that belongs to one tube of the field",
  basis: derivedFrom("area of the plane over the number of points of a square or a triangular lattice"),
  parameters: [
    { name: "pitch", unit: "mm" },
    { name: "pattern", unit: "1" },
  ],
  unit: "mm²",
  compute: numbers(([pitch = Number.NaN, pattern = Number.NaN]) => {
    const named = patterns[pattern];
    if (!(pitch > 0) || named === undefined) return { refused: "a field of tubes has a pitch and a pattern" };
    return named === "square"
      ? { value: pitch ** 2, lines: ["square pattern: P²"] }
      : { value: (Math.sqrt(3) / 2) * pitch ** 2, lines: ["triangular pattern: √3/2·P²"] };
  }),
};

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

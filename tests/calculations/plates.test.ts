import { describe, expect, it } from "vitest";
import { countedWall } from "../../src/calculations/functions/openings.ts";
import {
  fieldOfPlate,
  greatestField,
  greatestRegion,
  plateCoefficient,
  regionOfPlate,
  supportOfPlate,
} from "../../src/calculations/functions/plates.ts";
import { leastTubePlate } from "../../src/calculations/functions/tube-field.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

const coefficients = [0.35, 0.38, 0.4, 0.45, 0.46, 0.49, 0.41] as const;
const touching = (...sorts: readonly string[]) =>
  rows(
    supportOfPlate,
    sorts.map((support) => ({ support })),
  );
const coefficient = (...sorts: readonly string[]) => valueOf(plateCoefficient, touching(...sorts), ...coefficients);

describe("coefficient of the supports of a plate", () => {
  it("is the mean of all that are touched, each as often as it is", () => {
    expect(coefficient("flanged-edge", "welded-edge", "gusset", "bar-stay")).toBeCloseTo(1.58 / 4, 12);
    expect(coefficient("gusset", "bar-stay", "bar-stay")).toBeCloseTo(1.3 / 3, 12);
    expect(coefficient("stay-tube", "access-tube", "bar-stay")).toBeCloseTo(0.45, 12);
    expect(linesOf(plateCoefficient, touching("gusset", "gusset", "bar-stay"), ...coefficients)).toEqual([
      "mean of gusset 0.4, gusset 0.4, bar-stay 0.45",
    ]);
  });

  it("is refused for fewer than three points of support", () => {
    for (const sorts of [[], ["bar-stay"], ["bar-stay", "welded-edge"]])
      expect(coefficient(...sorts)).toMatch(new RegExp(`^the circle touches ${sorts.length} supports; three`));
  });

  it("is that of the doubtful support when one is doubtful", () => {
    expect(coefficient("flanged-edge", "flanged-edge", "doubtful")).toBe(0.49);
    expect(linesOf(plateCoefficient, touching("gusset", "gusset", "doubtful"), ...coefficients)[1]).toMatch(
      /^a support is doubtful/,
    );
  });

  it("is that of an unstayed plate where there are only edges", () => {
    expect(coefficient("flanged-edge", "flanged-edge", "welded-edge")).toBe(0.41);
    expect(coefficient("flanged-edge", "flanged-edge", "gusset")).toBeCloseTo(1.1 / 3, 12);
    const high = [0.45, 0.48, 0.4, 0.45, 0.46, 0.49, 0.41] as const;
    const edges = touching("flanged-edge", "flanged-edge", "flanged-edge");
    expect(valueOf(plateCoefficient, edges, ...high)).toBeCloseTo(0.45, 12);
  });

  it("counts plain smoke tubes inside their nest only", () => {
    expect(coefficient("smoke-tube", "smoke-tube", "stay-tube")).toBeCloseTo(1.37 / 3, 12);
    expect(coefficient("smoke-tube", "smoke-tube", "welded-edge")).toBe(
      "a plain smoke tube supports the plate inside its nest only; this circle touches welded-edge too",
    );
  });

  it("is refused for a support it does not know", () => {
    expect(coefficient("bar-stay", "bar-stay", "hope")).toBe('there is no coefficient for the support "hope"');
  });
});

describe("greatest thickness", () => {
  const thick = (inputs: typeof regionOfPlate, ...values: readonly number[]) =>
    rows(
      inputs,
      values.map((value) => ({ thickness: `${value} mm` })),
    );

  it("is that of the most demanding region or field, and says which", () => {
    expect(valueOf(greatestRegion, thick(regionOfPlate, 9, 17.5, 12))).toBe(17.5);
    expect(linesOf(greatestRegion, thick(regionOfPlate, 9, 17.5))).toEqual([
      "row 1: 9 mm",
      "row 2: 17.5 mm, the greatest",
    ]);
    expect(valueOf(greatestField, thick(fieldOfPlate, 12.7, 14.3))).toBe(14.3);
  });

  it("is refused without regions, and nothing without fields", () => {
    expect(valueOf(greatestRegion, [])).toBe("the plate has no region");
    expect(valueOf(greatestField, [])).toBe(0);
  });
});

describe("fields of tubes", () => {
  it("ask for a thicker plate above the limit of small holes", () => {
    expect(valueOf(leastTubePlate, 50.8, 50.8, 12.7, 14.3)).toBe(12.7);
    expect(valueOf(leastTubePlate, 50.81, 50.8, 12.7, 14.3)).toBe(14.3);
    expect(valueOf(leastTubePlate, 0, 50.8, 12.7, 14.3)).toBe("a tube hole has a diameter");
    expect(valueOf(leastTubePlate, Number.NaN, 50.8, 12.7, 14.3)).toBe("a tube hole has a diameter");
  });
});

describe("wall of a branch that counts", () => {
  const counted = (branch: number, shell: number, bore: number, axial = 0) =>
    valueOf(countedWall, branch, shell, bore, axial, 50, 2, 1, 1.5);

  it("is limited by the wall of the shell: more for a small bore, and for a frame", () => {
    expect(counted(8, 10, 100)).toBe(8);
    expect(counted(10, 10, 100)).toBe(10);
    expect(counted(11, 10, 100)).toBe(10);
    expect(counted(25, 10, 50)).toBe(20);
    expect(counted(25, 10, 50.01)).toBe(10);
    expect(counted(25, 10, 320, 320)).toBe(15);
  });

  it("says what was left out", () => {
    expect(linesOf(countedWall, 25, 10, 100, 0, 50, 2, 1, 1.5)).toEqual([
      "bore above 50 mm: at most 1 times 10 mm counts, of 25 mm",
    ]);
  });

  it("is refused where a wall or the bore is used up", () => {
    for (const [branch, shell, bore] of [
      [0, 10, 100],
      [-1, 10, 100],
      [8, 0, 100],
      [8, 10, 0],
      [8, 10, -3],
    ] as const)
      expect(counted(branch, shell, bore)).toMatch(/^branch and shell must have a wall left/);
  });
});

import { describe, expect, it } from "vitest";
import { knuckleFactor, knuckleThickness, whereThin } from "../../src/calculations/functions/knuckle.ts";
import { linesOf, valueOf } from "./rows.ts";

const thickness = (r: number) => valueOf(knuckleThickness, 1, 1000, 1000, r, 150);

describe("thickness of the knuckle", () => {
  it("satisfies its own equation", () => {
    const found = Number(thickness(100));
    const factor = knuckleFactor(0.1, found / 1000);
    expect(found).toBeCloseTo((factor * 1 * (0.75 * 1000 + 0.2 * 1000)) / 150, 9);
  });

  it("takes a thickness of more than 0.04·R as 0.04·R in the factor", () => {
    const found = Number(valueOf(knuckleThickness, 40, 1000, 1000, 100, 150));
    expect(found / 1000).toBeGreaterThan(0.04);
    expect(found).toBeCloseTo((knuckleFactor(0.1, 0.04) * 40 * 950) / 150, 9);
  });

  it("is the same from both sides at r/Di = 0.1, where the interpolation changes", () => {
    expect(Number(thickness(100 - 1e-7))).toBeCloseTo(Number(thickness(100 + 1e-7)), 6);
  });

  it("falls with a larger knuckle radius", () => {
    const found = [60, 80, 100, 150, 200].map((r) => Number(thickness(r)));
    expect(found).toEqual(found.toSorted((a, b) => b - a));
    expect(new Set(found).size).toBe(5);
  });

  it("is refused far outside the geometry it is known for", () => {
    expect(thickness(40)).toBeTypeOf("number");
    expect(thickness(39)).toMatch(/^the knuckle radius is 0\.039 of the inside diameter/);
    expect(thickness(250)).toBeTypeOf("number");
    expect(thickness(251)).toMatch(/^the knuckle radius is 0\.251 of the inside diameter/);
  });

  it("is refused for values that are no numbers or not positive", () => {
    expect(valueOf(knuckleThickness, Number.NaN, 1000, 1000, 100, 150)).not.toBeTypeOf("number");
    expect(valueOf(knuckleThickness, -1, 1000, 1000, 100, 150)).toBe(
      "the factor β of the knuckle comes out negative for these values",
    );
  });

  it("says its factor and how often it was put in again", () => {
    expect(linesOf(knuckleThickness, 1, 1000, 1000, 100, 150)[0]).toMatch(
      /^β = 0\.91826 at r\/Di = 0\.1, e\/R = 0\.0058157, after \d+ rounds$/,
    );
  });
});

describe("buckling of the knuckle", () => {
  it("is asked for up to the limit, and not above it", () => {
    expect(valueOf(whereThin, 5.2, 5, 5)).toBe(5.2);
    expect(valueOf(whereThin, 5.2, 5.001, 5)).toBe(0);
  });

  it("says which", () => {
    expect(linesOf(whereThin, 5.2, 4, 5)).toEqual(["ey is at most 5 mm: buckling of the knuckle is judged"]);
    expect(linesOf(whereThin, 5.2, 6, 5)).toEqual(["ey exceeds 5 mm: buckling of the knuckle is not asked for"]);
  });
});

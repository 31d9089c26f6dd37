import { describe, expect, it } from "vitest";
import { steelModulus } from "../../src/calculations/functions/modulus.ts";
import { linesOf, valueOf } from "./rows.ts";

describe("Young's modulus of steel", () => {
  it("is linear between the points, worked by hand: 199 − 7·0.9 GPa at 290 °C", () => {
    expect(valueOf(steelModulus, 290)).toBeCloseTo(192_700, 6);
    expect(linesOf(steelModulus, 290)).toEqual(["linear in the table of ferritic steel, at 290 °C"]);
  });

  it("is tabulated at both ends, and refused beyond them", () => {
    expect([20, 100, 200, 300, 400].map((t) => valueOf(steelModulus, t))).toEqual([
      212_000, 207_000, 199_000, 192_000, 184_000,
    ]);
    expect(valueOf(steelModulus, 19.9)).toBe("Young's modulus is known from 20 °C to 400 °C, not at 19.9 °C");
    expect(valueOf(steelModulus, 400.1)).toBe("Young's modulus is known from 20 °C to 400 °C, not at 400.1 °C");
    expect(valueOf(steelModulus, Number.NaN)).toBeTypeOf("string");
  });

  it("falls with temperature, within a hundredth of EN 1993-1-1's 210 GPa at 20 °C (from memory)", () => {
    const found = Array.from({ length: 39 }, (_, index) => Number(valueOf(steelModulus, 20 + 10 * index)));
    expect(found).toEqual(found.toSorted((a, b) => b - a));
    expect(Math.abs((found[0] ?? 0) / 210_000 - 1)).toBeLessThan(0.01);
  });
});

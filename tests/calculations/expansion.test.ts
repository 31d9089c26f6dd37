import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wallReduction } from "../../src/calculations/functions/expansion.ts";
import { linesOf, valueOf } from "./rows.ts";

describe("reduction of the wall by expanding", () => {
  it("is worked by hand: hole 51.5, tube 51 × 3.6, rolled to 45.016: (45.016 − 43.8 − 0.5)/7.2", () => {
    expect(valueOf(wallReduction, 51.5, 51, 43.8, 45.016)).toBeCloseTo(100 * (0.716 / 7.2), 9);
    expect(linesOf(wallReduction, 51.5, 51, 43.8, 45.016)).toEqual([
      "the tube touches its hole from a bore of 44.3 mm on",
    ]);
  });

  it("is nothing at the first touch", () => {
    expect(valueOf(wallReduction, 51.5, 51, 43.8, 44.3)).toBeCloseTo(0, 9);
  });

  it("is the thinning of a wall pressed against a hole that does not yield (second method)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 90, noNaN: true }),
        fc.double({ min: 1.5, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        (outside, wall, clearance, share) => {
          const hole = outside + clearance;
          const left = wall * (1 - share);
          const found = valueOf(wallReduction, hole, outside, outside - 2 * wall, hole - 2 * left);
          expect(Number(found)).toBeCloseTo(100 * share, 6);
        },
      ),
    );
  });

  it("is refused where the sizes contradict each other", () => {
    expect(valueOf(wallReduction, 51.5, 51, 51, 52)).toBe(
      "a tube of 51 mm outside and 51 mm inside diameter has no wall",
    );
    expect(valueOf(wallReduction, 50.9, 51, 43.8, 45)).toBe("a tube of 51 mm does not pass through a hole of 50.9 mm");
    expect(valueOf(wallReduction, 51.5, 51, 43.8, 44.2)).toBe(
      "rolled to 44.2 mm the tube does not touch its hole, which it does from 44.3 mm on",
    );
    expect(valueOf(wallReduction, 51.5, 51, 43.8, 51.5)).toBe("rolled to 51.5 mm no wall is left in a hole of 51.5 mm");
    expect(valueOf(wallReduction, 51.5, 51, Number.NaN, 45)).toBeTypeOf("string");
  });
});

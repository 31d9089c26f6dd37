import { describe, expect, it } from "vitest";
import { circumference, plateOfTube } from "../../src/calculations/functions/tube-field.ts";
import { linesOf, valueOf } from "./rows.ts";

const [triangular, square] = [0, 1];

/** Nodes of an endless pattern in a great square by its area: shares no formula with the product. */
function shareByCounting(pattern: number, pitch: number): number {
  const side = 600 * pitch;
  const rowHeight = pattern === square ? pitch : pitch * Math.sin(Math.PI / 3);
  let nodes = 0;
  for (let row = 0; row * rowHeight < side; row++)
    nodes += Math.floor((side - (pattern === square || row % 2 === 0 ? 0 : pitch / 2)) / pitch);
  return side ** 2 / nodes;
}

describe("plate of one tube", () => {
  it("is its share of the pattern less its circle, nodes counted (second method)", () => {
    for (const pattern of [triangular, square]) {
      const found = Number(valueOf(plateOfTube, pattern, 84, 60.3)) + (Math.PI / 4) * 60.3 ** 2;
      expect(Math.abs(found / shareByCounting(pattern, 84) - 1)).toBeLessThan(0.002);
    }
  });

  it("is said with its parts", () => {
    expect(linesOf(plateOfTube, square, 84, 60.3)).toEqual(["square: 7056 mm² less 2855.78 mm²"]);
  });

  it("is refused for tubes that overlap or are none, and for a pattern that is not known", () => {
    expect(valueOf(plateOfTube, square, 60, 60.3)).toBe(
      "tubes of 60.3 mm overlap at a pitch of 60 mm, or have no diameter",
    );
    expect(valueOf(plateOfTube, square, 84, 0)).toBeTypeOf("string");
    expect(valueOf(plateOfTube, 2, 84, 60.3)).toBe("the pattern of the holes is none that is known");
  });
});

describe("circumference", () => {
  it("is π·d, and refused of nothing", () => {
    expect(valueOf(circumference, 60.3)).toBeCloseTo(189.438, 3);
    expect(valueOf(circumference, 0)).toBeTypeOf("string");
  });
});

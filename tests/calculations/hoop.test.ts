import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  hoopSecondMoment,
  leastSpan,
  meanOfSpans,
  neighbourOfFurnace,
  sectionAtHoop,
} from "../../src/calculations/functions/hoop.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

type Point = readonly [x: number, z: number];

/** Second moment of area about its own neutral axis of polygons side by side, by Green's theorem. */
function momentOfPolygons(polygons: readonly (readonly Point[])[]): number {
  let [area, first, second] = [0, 0, 0];
  for (const corners of polygons)
    for (const [index, [x0, z0]] of corners.entries()) {
      const [x1, z1] = corners[(index + 1) % corners.length] ?? [x0, z0];
      const cross = x0 * z1 - x1 * z0;
      area += cross / 2;
      first += (cross * (z0 + z1)) / 6;
      second += (cross * (z0 * z0 + z0 * z1 + z1 * z1)) / 12;
    }
  return second - first ** 2 / area;
}

const box = (x0: number, x1: number, z0: number, z1: number): readonly Point[] => [
  [x0, z0],
  [x1, z0],
  [x1, z1],
  [x0, z1],
];

/** A wall along a line from the furnace over the hoop and back, cut into short pieces: any bend radius. */
function momentOfBentHoop(h: number, b: number, en: number, t: number, eF: number, d: number, radius: number): number {
  const [depth, half, strip] = [h - en, (b - en) / 2, 0.55 * Math.sqrt(d * eF)];
  const r = Math.min(radius, half, depth);
  const pieces = 400;
  const line: Point[] = [[-half, 0]];
  for (let piece = 0; piece <= pieces; piece++) {
    const angle = (Math.PI / 2) * (piece / pieces);
    line.push([-(half - r) - r * Math.cos(angle), depth - r + r * Math.sin(angle)]);
  }
  let [area, first, second] = [2 * strip * eF, 0, (2 * strip * eF ** 3) / 12];
  const add = (length: number, z: number, rise: number) => {
    area += length * t;
    first += length * t * z;
    second += length * t * (z ** 2 + rise ** 2 / 12);
  };
  for (const [index, [x, z]] of line.slice(1).entries()) {
    const [x0, z0] = line[index] ?? [x, z];
    add(2 * Math.hypot(x - x0, z - z0), (z + z0) / 2, z - z0);
  }
  add(2 * (half - r), depth, t);
  return second - first ** 2 / area;
}

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("second moment of area of a hoop", () => {
  it("is that of its rectangles as polygons (second method)", () => {
    fc.assert(
      fc.property(
        size(60, 200),
        size(60, 400),
        size(8, 22),
        size(0.7, 1),
        size(6, 22),
        size(300, 1800),
        (...values) => {
          const [h, b, en, share, eF, d] = values;
          const [t, depth, half, strip] = [en * share, h - en, (b - en) / 2, 0.55 * Math.sqrt(d * eF)];
          const expected = momentOfPolygons([
            box(-half - strip, -half, -eF / 2, eF / 2),
            box(half, half + strip, -eF / 2, eF / 2),
            box(-half - t / 2, -half + t / 2, 0, depth),
            box(half - t / 2, half + t / 2, 0, depth),
            box(-half / 4, half / 4, depth - t / 2, depth + t / 2),
          ]);
          expect(Number(valueOf(hoopSecondMoment, h, b, en, t, eF, d)) / expected).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("is less than that of a hoop bent with any radius (integrated along the wall, second method)", () => {
    fc.assert(
      fc.property(size(50, 300), size(50, 500), size(8, 22), size(0.6, 1), size(6, 22), size(4, 300), (...values) => {
        const [h, b, en, share, eF, radius] = values;
        const found = Number(valueOf(hoopSecondMoment, h, b, en, en * share, eF, 834));
        expect(found).toBeLessThan(momentOfBentHoop(h, b, en, en * share, eF, 834, radius));
      }),
    );
  });

  it("shows its pieces and its neutral axis", () => {
    expect(linesOf(hoopSecondMoment, 100, 200, 16, 14.95, 14.95, 834)).toEqual([
      "furnace: 2 × 61.414 mm × 14.95 mm",
      "legs: 2 × 84 mm × 14.95 mm; crown: 46 mm × 14.95 mm",
      "neutral axis 32.42 mm outside the middle of the furnace wall",
    ]);
  });

  it("is refused without room or without a wall", () => {
    expect(valueOf(hoopSecondMoment, 31, 200, 16, 15, 15, 834)).toBe(
      "a hoop 31 mm deep and 200 mm wide has no room for two walls",
    );
    expect(valueOf(hoopSecondMoment, 100, 31, 16, 15, 15, 834)).toBe(
      "a hoop 100 mm deep and 31 mm wide has no room for two walls",
    );
    for (const [t, eF] of [
      [0, 15],
      [15, 0],
      [-1, 15],
    ] as const)
      expect(valueOf(hoopSecondMoment, 100, 200, 16, t, eF, 834)).toBe(
        "allowances leave no wall of the hoop or of the furnace",
      );
    expect(valueOf(hoopSecondMoment, Number.NaN, 200, 16, 15, 15, 834)).toBeTypeOf("string");
  });
});

describe("length between supports of a furnace section", () => {
  const joined = (...parts: readonly (readonly [string, string, string])[]) =>
    rows(
      neighbourOfFurnace,
      parts.map(([$, role, size]) => ({
        $,
        role,
        ...(role === "furnace-hoop" ? { width: size } : { thickness: size }),
      })),
    );

  it("is its own with half of each hoop, less what may lie in a plate", () => {
    expect(valueOf(leastSpan, [], 3000)).toBe(3000);
    expect(valueOf(leastSpan, joined(["P05", "furnace", "16 mm"], ["P07", "furnace-hoop", "200 mm"]), 1450)).toBe(1550);
    const ends = joined(["P03", "tube-plate", "20 mm"], ["P07", "furnace-hoop", "200 mm"]);
    expect(valueOf(leastSpan, ends, 1480)).toBe(1540);
    expect(linesOf(leastSpan, ends, 1480)).toEqual(["hoops joined to it: P07; plates: P03"]);
  });

  it("counts a part once, however many seams tie it", () => {
    const twice = joined(["P07", "furnace-hoop", "200 mm"], ["P07", "furnace-hoop", "200 mm"]);
    expect(valueOf(leastSpan, twice, 1000)).toBe(1100);
  });

  it("is refused where a size is no more than a bound", () => {
    expect(valueOf(leastSpan, joined(["P07", "furnace-hoop", ">200 mm"]), 1000)).toMatch(/is a bound, not a value$/);
  });
});

describe("length that a hoop supports", () => {
  const at = (...spans: readonly (readonly [string, string])[]) =>
    rows(sectionAtHoop, [
      { $: "P07", role: "furnace-hoop" },
      ...spans.map(([$, span]) => ({ $, role: "furnace", span })),
    ]);

  it("is the mean of the sections beside it, each once", () => {
    expect(valueOf(meanOfSpans, at(["P05", "1500 mm"], ["P06", "1600 mm"], ["P05", "1500 mm"]))).toBe(1550);
    expect(linesOf(meanOfSpans, at(["P05", "1500 mm"]))).toEqual(["P05: 1500 mm"]);
  });

  it("is refused where no section is tied to it", () => {
    expect(valueOf(meanOfSpans, at())).toMatch(/^no joint ties the hoop to a section of furnace/);
  });
});

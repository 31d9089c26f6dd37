import { describe, expect, it } from "vitest";
import { leastClear, openingOfShell } from "../../src/calculations/functions/opening-spacing.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

const at = (opening: string, along: number, around: number, outside: number, width = 0) => ({
  opening,
  along: `${along} mm`,
  around: `${around} mm`,
  outside: `${outside} mm`,
  width: `${width} mm`,
});
const among = (...openings: readonly ReturnType<typeof at>[]) => rows(openingOfShell, openings);

describe("least clear distance of openings", () => {
  it("geometry (second method): along the shell, round it, and slantwise on the unrolled shell", () => {
    expect(valueOf(leastClear, among(at("A", 0, 0, 100), at("B", 400, 0, 60)), 1000)).toBe(320);
    expect(valueOf(leastClear, among(at("A", 0, 0, 100), at("B", 0, 400, 60)), 1000)).toBe(320);
    expect(valueOf(leastClear, among(at("A", 0, 0, 100), at("B", 300, 400, 60)), 1000)).toBe(420);
  });

  it("geometry (second method): the short way round, whichever of the two is named first", () => {
    const round = Math.PI * 1000;
    for (const pair of [among(at("A", 0, 0, 10), at("B", 0, 3000, 10)), among(at("A", 0, 3000, 10), at("B", 0, 0, 10))])
      expect(valueOf(leastClear, pair, 1000)).toBeCloseTo(round - 3000 - 10, 9);
  });

  it("takes the nearest of all pairs, and says which", () => {
    const all = among(at("A", 0, 0, 100), at("B", 900, 0, 100), at("C", 700, 0, 20, 80));
    expect(valueOf(leastClear, all, 1000)).toBe(110);
    expect(linesOf(leastClear, all, 1000)).toEqual(["B and C are the nearest: 110 mm between them"]);
  });

  it("finds a single opening once round the shell from itself", () => {
    expect(valueOf(leastClear, among(at("A", 0, 0, 100)), 1000)).toBeCloseTo(Math.PI * 1000 - 100, 9);
    expect(linesOf(leastClear, among(at("A", 0, 0, 100)), 1000)[0]).toMatch(/^A is alone/);
  });

  it("is refused without an opening, without a shell, and for an opening without a size", () => {
    const words = "the shell must have a diameter, and an opening";
    expect(valueOf(leastClear, [], 1000)).toBe(words);
    expect(valueOf(leastClear, among(at("A", 0, 0, 100)), 0)).toBe(words);
    expect(valueOf(leastClear, among(at("A", 0, 0, 0)), 1000)).toMatch(/^opening A has neither/);
  });
});

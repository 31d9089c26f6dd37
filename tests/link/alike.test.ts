import { describe, expect, test } from "vitest";
import { editDistance, foldAlike, nearestIds } from "../../src/link/alike.ts";

describe("ids that people and scanners confuse fold to one form", () => {
  test.each([
    ["J-12", "J12"],
    ["J012", "J12"],
    ["J-012", "J12"],
    ["NO6", "N06"],
    ["N06", "N6"],
    ["j12", "J12"],
    ["W.07", "W07"],
    ["CRT-O12", "CRT-012"],
    ["S17", "517"],
    ["L1", "I1"],
  ])("%s and %s", (a, b) => expect(foldAlike(a)).toBe(foldAlike(b)));
  test.each([
    ["R1-12", "R11-2"],
    ["1-1", "11"],
    ["J10", "J1"],
    ["J100", "J10"],
    ["C1", "C2"],
    ["CRT-1-2", "CRT-12"],
    ["WPS-03", "WPQ-03"],
  ])("%s and %s stay apart", (a, b) => expect(foldAlike(a)).not.toBe(foldAlike(b)));
});

test.each([
  ["ABC", "ABC", 0],
  ["ABC", "ABD", 1],
  ["ABC", "ACB", 1],
  ["ABC", "AB", 1],
  ["", "ABC", 3],
  ["KITTEN", "SITTING", 3],
])("edits from %s to %s: %i", (a, b, distance) => {
  expect(editDistance(a, b)).toBe(distance);
  expect(editDistance(b, a)).toBe(distance);
});

test("the nearest ids, the nearest first, none from far away", () => {
  expect(nearestIds("WPS-03", ["WPS-30", "WPS-02", "WPQR-7", "X"])).toEqual(["WPS-02", "WPS-30"]);
  expect(nearestIds("A", ["B", "C", "D", "E"])).toEqual(["B", "C", "D"]);
  expect(nearestIds("ABCDEF", ["UVWXYZ"])).toEqual([]);
});

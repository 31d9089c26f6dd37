import { describe, expect, test } from "vitest";
import { factsOf } from "../../demo-data/book/facts.ts";
import {
  backStays,
  geometryOf,
  secondPass,
  steamStays,
  thirdPass,
  type Point,
} from "../../demo-data/boiler/drawings/geometry.ts";
import { developed } from "../../demo-data/boiler/drawings/details.ts";
import { staysIn } from "../../demo-data/boiler/drawings/section.ts";
import { recordFiles } from "../../demo-data/boiler/records.ts";

/**
 * The parts must fit each other as drawn. Expected figures are worked by hand from the parts list: shell Ø 1900 inside,
 * furnace Ø 850, chamber Ø 1300 × 16, tubes Ø 51 at 72 mm, 50 + 16 of the second pass and 88 + 24 of the third.
 */
const geometry = geometryOf(factsOf(recordFiles));
const apart = (points: readonly Point[]) =>
  Math.min(...points.flatMap(([x, y], at) => points.slice(at + 1).map(([u, v]) => Math.hypot(x - u, y - v))));
const from = ([x, y]: Point, height: number) => Math.hypot(x, y - height);

describe("the boiler of the drawings holds its parts", () => {
  const second = secondPass(geometry);
  const third = thirdPass(geometry);

  test("lengths add up: furnace, hoop, chamber and access tube end at the rear plate", () => {
    expect(geometry.furnace.end).toBe(1450 + 200 + 1450);
    expect(geometry.chamber.to + 20 + 230).toBe(geometry.shell.length + 20);
    expect(geometry.chamber.centre).toBe(1360 - 650);
  });

  test("the furnace lies within the chamber, the chamber within the shell", () => {
    const offset = Math.abs(geometry.furnace.centre - geometry.chamber.centre);
    expect(offset + 850 / 2).toBeLessThan(1300 / 2 - 16);
    expect(Math.abs(geometry.chamber.centre - 950) + 650).toBeLessThan(950);
  });

  test("the tubes of each pass are as many as the plates state, a pitch apart, in the space that is theirs", () => {
    expect([second.length, third.length]).toEqual([66, 112]);
    expect(apart(second)).toBeCloseTo(72, 6);
    expect(apart(third)).toBeCloseTo(72, 6);
    const half = 51 / 2;
    for (const point of second) {
      expect(from(point, geometry.chamber.centre) + half).toBeLessThan(650 - 16);
      expect(from(point, geometry.furnace.centre) - half).toBeGreaterThan(425);
    }
    for (const point of third) {
      expect(from(point, 950) + half).toBeLessThan(950);
      expect(from(point, geometry.chamber.centre) - half).toBeGreaterThan(650);
      expect(point[1] + half).toBeLessThanOrEqual(1360);
    }
  });

  test("the end plates breathe at least as widely as their parts state", () => {
    const half = 51 / 2;
    const least = (points: readonly Point[], away: (point: Point) => number) => Math.min(...points.map(away)) - half;
    const found = {
      "front, below the furnace": geometry.furnace.centre - 425,
      "front, above the furnace": least([...second, ...third], (point) => from(point, geometry.furnace.centre) - 425),
      "front, round pass 3": least(third, (point) => 950 - from(point, 950)),
      "front, below the bar stays": least([...second, ...third], ([x, y]) =>
        Math.min(...steamStays.map((stay) => Math.hypot(x - stay[0], y - stay[1]) - 22.5)),
      ),
      "rear, round pass 3": least(third, (point) => 950 - from(point, 950)),
      "rear, round the access tube": Math.min(
        least(third, (point) => from(point, geometry.chamber.centre) - 406.4 / 2),
        ...backStays(geometry).map((stay) => from(stay, geometry.chamber.centre) - 406.4 / 2 - 22.5),
      ),
    };
    const stated = ["P03", "P04"].flatMap((id) => geometry.part(id).breathingSpaces ?? []);
    expect(stated.map(({ space }) => space)).toEqual(Object.keys(found));
    for (const [index, width] of Object.values(found).entries())
      expect(width, stated[index]?.space).toBeGreaterThanOrEqual(Number.parseFloat(stated[index]?.width ?? ""));
  });

  test("stay tubes are as many as the plates state", () => {
    const stays = (index: number) => staysIn(geometry, "P03", index).filter((one) => one).length;
    expect([stays(0), stays(1)]).toEqual([16, 24]);
  });

  test("bar stays clear the tubes, the chamber's edge and the access tube", () => {
    expect(steamStays.length).toBe(6);
    for (const stay of steamStays) {
      expect(from(stay, 950)).toBeLessThan(950 - 45);
      expect(Math.min(...third.map(([x, y]) => Math.hypot(x - stay[0], y - stay[1])))).toBeGreaterThan(45);
    }
    for (const stay of backStays(geometry)) {
      expect(from(stay, geometry.chamber.centre) + 22.5).toBeLessThan(634);
      expect(from(stay, geometry.chamber.centre) - 22.5).toBeGreaterThan(406.4 / 2);
    }
  });

  test("a course is rolled from a plate as long as its mean circumference", () => {
    // π · 1912 = 6006.7
    expect(developed(geometry.part("P01"))).toBe(6007);
  });
});

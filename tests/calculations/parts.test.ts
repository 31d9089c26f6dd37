import { describe, expect, it } from "vitest";
import {
  capacityOfValve,
  least,
  lowestRatio,
  slenderness,
  stressOfPart,
  thicknessReading,
  totalCapacity,
  wallOfCourse,
} from "../../src/calculations/functions/parts.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

describe("least measured thickness", () => {
  it("is the least reading", () => {
    expect(valueOf(least, rows(thicknessReading, [{ value: "8.2 mm" }, { value: "8.05 mm" }]))).toBe(8.05);
  });

  it("is refused without readings, and takes a bound at its lower end", () => {
    expect(valueOf(least, [])).toBe("no thickness was measured");
    expect(valueOf(least, rows(thicknessReading, [{ value: "<8 mm" }]))).toBe(0);
  });
});

describe("lowest stress ratio", () => {
  const parts = (...pairs: readonly (readonly [number, number])[]) =>
    rows(
      stressOfPart,
      pairs.map(([f20, f]) => ({ f20: `${f20} MPa`, f: `${f} MPa` })),
    );

  it("is the lowest of courses and ends", () => {
    expect(valueOf(lowestRatio, parts([170, 136]), parts([170, 160]))).toBeCloseTo(1.0625, 9);
    expect(valueOf(lowestRatio, parts([170, 136], [150, 150]), parts([170, 160]))).toBe(1);
  });

  it("shows every part and which is lowest", () => {
    expect(linesOf(lowestRatio, parts([170, 136]), parts([170, 160]))).toEqual([
      "row 1: 1.25",
      "row 1: 1.0625, the lowest",
    ]);
  });

  it("is refused without parts", () => {
    expect(valueOf(lowestRatio, [], [])).toBe("there is no main pressure part with a design stress");
  });
});

describe("slenderness of the shell", () => {
  const course = (inside: number, nominal: number, under: number) => ({
    insideDiameter: `${inside} mm`,
    nominalThickness: `${nominal} mm`,
    undertolerance: `${under} mm`,
  });

  it("is that of the most slender course, without its undertolerance", () => {
    expect(valueOf(slenderness, rows(wallOfCourse, [course(1200, 8.3, 0.3), course(1200, 10, 0)]))).toBeCloseTo(150, 9);
  });

  it("is refused without courses, and where nothing is left of one", () => {
    expect(valueOf(slenderness, [])).toBe("there is no shell course");
    expect(valueOf(slenderness, rows(wallOfCourse, [course(1200, 0.3, 0.3), course(1200, 10, 0)]))).toBe(
      "a shell course has no thickness left after its undertolerance",
    );
  });
});

describe("capacity of all valves", () => {
  const valve = (certified: number, recomputed: number) => ({
    certified: `${certified} kg/h`,
    recomputed: `${recomputed} kg/h`,
  });

  it("takes the lower of certified and recomputed of each", () => {
    const valves = rows(capacityOfValve, [valve(1980, 1981), valve(1990, 1950)]);
    expect(valueOf(totalCapacity, valves)).toBe(3930);
    expect(linesOf(totalCapacity, valves)).toEqual(["row 1: 1980 kg/h", "row 2: 1950 kg/h"]);
  });

  it("is refused without valves", () => {
    expect(valueOf(totalCapacity, [])).toBe("there is no safety valve");
  });
});

import { describe, expect, it } from "vitest";
import { carbonEquivalent } from "../../src/calculations/carbon-equivalent.ts";
import { heatInput } from "../../src/calculations/heat-input.ts";
import { run } from "../../src/compute/run.ts";

const equivalent = (values: Readonly<Record<string, number>>) =>
  run(
    carbonEquivalent,
    new Map(Object.entries({ C: 0, Mn: 0, Cr: 0, Mo: 0, V: 0, Ni: 0, Cu: 0, tol: 0.01, ...values })),
  ).values.get("CE") ?? Number.NaN;

describe("carbon equivalent", () => {
  it.each([
    ["C", 1],
    ["Mn", 6],
    ["Cr", 5],
    ["Mo", 5],
    ["V", 5],
    ["Ni", 15],
    ["Cu", 15],
  ] as const)(
    "International Institute of Welding (from memory): %s counts with a divisor of %s",
    (element, divisor) => {
      expect(equivalent({ [element]: 0.3 })).toBeCloseTo(0.3 / divisor, 12);
    },
  );

  it("International Institute of Welding (from memory): a pipeline steel differs from the pipeline codes' own sum", () => {
    // C, Mn, Cu, Ni, Cr, Mo, V of a sheet whose own formula, with Si/24 and Ni/20 in it, gives 0.5078.
    const own = equivalent({ C: 0.25, Mn: 1.28, Cu: 0.109, Ni: 0.06, Cr: 0.05, Mo: 0.034, V: 0.004 });
    expect(own).toBeCloseTo(0.4922, 4);
  });

  it("own choice: vanadium that is not reported counts as 0.02 %, never as nothing", () => {
    const given = new Map(Object.entries({ C: 0.15, Mn: 1.2, Cr: 0.1, Mo: 0.05, Ni: 0.5, Cu: 0.2, tol: 0.01 }));
    expect(run(carbonEquivalent, given).values.get("CE")).toBeCloseTo(0.15 + 0.2 + 0.17 / 5 + 0.7 / 15, 9);
  });
});

describe("heat input", () => {
  const input = (k: number, U: number, I: number, v: number) =>
    run(heatInput, new Map(Object.entries({ k, U, I, v, tol: 0.05 }))).values.get("Q") ?? Number.NaN;

  it("EN 1011-1 (formula, excerpt seen), by energy over length (second method): 24 V, 180 A, 300 mm/min", () => {
    const seconds = 60;
    expect(input(0.8, 24, 180, 300)).toBeCloseTo((0.8 * 24 * 180 * seconds) / 300 / 1000, 12);
    expect(input(0.8, 24, 180, 300)).toBeCloseTo(0.6912, 9);
  });

  it("EN 1011-1 (formula, excerpt seen), by energy over length (second method): 39 V, 425 A, 35 in in 4 min", () => {
    const joulePerInch = (39 * 425 * 4 * 60) / 35;
    expect(joulePerInch / 1000).toBeCloseTo(113.657, 3);
    expect(input(1, 39, 425, (35 * 25.4) / 4)).toBeCloseTo(joulePerInch / 1000 / 25.4, 9);
  });
});

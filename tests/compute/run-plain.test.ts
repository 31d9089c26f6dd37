import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { run, type PlainValues } from "../../src/index.ts";

const named = (id: string) => {
  const found = calculations.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const shell = named("cylindrical-shell");
const plain = { p: 1, Di: 2000, f: 150, z: 0.85, c: 1, δ: 0.3, en: 10 };

describe("a calculation on plain values", () => {
  test("numbers are in the declared unit, texts are as records write them", () => {
    const done = run(shell, plain);
    expect(done.refused).toBeUndefined();
    expect(run(shell, { ...plain, p: "10 bar", Di: "2.0 m" }).values.get("e")).toBeCloseTo(
      done.values.get("e") ?? Number.NaN,
      12,
    );
  });
  test("rows are objects of either", () => {
    for (const measured of [
      [{ value: "9.1 mm" }, { value: "9.0 mm" }],
      [{ value: 9.1 }, { value: 9 }],
    ])
      expect(run(shell, { ...plain, measured }).values.get("em")).toBe(9);
    expect(run(shell, { ...plain, measured: [] }).values.has("em")).toBe(false);
  });
  test("of a bound the unsafe side counts, or nothing does", () => {
    expect(run(shell, { ...plain, c: "<2 mm" }).values.get("ea")).toBeCloseTo(7.7);
    expect(run(shell, { ...plain, c: ">2 mm" }).refused).toBe(
      "c, corrosion allowance: a bound leaves the unsafe side open; expected a value",
    );
  });
  test.each([
    [{ ...plain, en: undefined }, "en, nominal thickness: nothing is given"],
    [{ ...plain, D: 1 }, '"D" is not read; what is read is p, Di, f, z, c, δ, en, measured'],
    [{ ...plain, toString: 1 }, '"toString" is not read; what is read is p, Di, f, z, c, δ, en, measured'],
    [{ ...plain, p: Number.NaN }, "p, calculation pressure: NaN is no number"],
    [{ ...plain, p: "1" }, /^p, calculation pressure: "1" is not a number and a unit of /],
    [{ ...plain, p: [] }, "p, calculation pressure: a value of type object is no quantity in MPa"],
    [{ ...plain, measured: 9 }, "measured, measured thicknesses: 9 is no list of rows"],
    [{ ...plain, measured: [{}] }, "measured, measured thicknesses: row 1, value: nothing is stated"],
    [
      { ...plain, measured: [{ value: 9 }, { thickness: 9 }] },
      'measured, measured thicknesses: row 2 states "thickness"; what is read of a row is value',
    ],
  ] as const)("what cannot be read is refused: %j", (values, refused) => {
    const done = run(shell, values);
    expect(done.refused).toMatch(refused);
    expect([done.values.size, done.accept.length]).toEqual([0, 0]);
  });
  test("a required list without a row is refused", () => {
    expect(run(named("relief-capacity"), { valves: [], Q: 1 }).refused).toMatch(/: no row is given$/);
  });
});

test("no value whatever makes it throw", () => {
  const value = fc.oneof(
    fc.double(),
    fc.string(),
    fc.constantFrom(0, -1, 1e300, "0 mm", "1 bar", "20 °C", "<1 mm", "2026-01-01T10:00Z"),
    fc.array(
      fc.dictionary(fc.constantFrom("value", "time", "gaugeA", "diameter", "$"), fc.oneof(fc.double(), fc.string())),
    ),
    fc.anything(),
  );
  for (const one of calculations) {
    const symbols = Object.keys(one.inputs);
    const start = one.examples[0]?.given ?? {};
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...symbols), value, { maxKeys: 2 }), (changes) => {
        run(one, { ...start, ...changes } as PlainValues);
      }),
      { numRuns: 40 },
    );
  }
});

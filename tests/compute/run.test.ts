import { describe, expect, test } from "vitest";
import { checkSymbols } from "../../src/compute/check.ts";
import { run } from "../../src/compute/run.ts";
import { calculation, type Calculation } from "../../src/model/calculation.ts";
import { ownChoice } from "../../src/model/basis.ts";

const basis = ownChoice("invented for a test");
const made = (more: Partial<Calculation>): Calculation =>
  calculation({
    id: "c",
    title: "c",
    basis,
    covers: "s",
    appliesTo: { kind: "part" },
    inputs: {
      a: { path: "a", unit: "mm", means: "a" },
      b: { path: "b", unit: "mm", means: "b", need: "optional" },
      c: { path: "c", unit: "mm", means: "c", need: "optional", otherwise: 2 },
    },
    steps: [
      { symbol: "x", unit: "mm", means: "x", formula: "max(a, c, '1 mm')" },
      { symbol: "y", unit: "mm", means: "y", formula: "x + b" },
    ],
    limits: [],
    accept: [],
    compared: [],
    examples: [],
    ...more,
  });
const of = (values: Readonly<Record<string, number>>) => new Map(Object.entries(values));

describe("steps", () => {
  test("the greater of several: which governs is said", () => {
    const [x] = run(made({}), of({ a: 5 })).steps;
    expect(x).toMatchObject({ value: 5, governing: { index: 0, values: [5, 2, 1] } });
    expect(run(made({}), of({ a: 1 })).steps[0]).toMatchObject({ value: 2, governing: { index: 1 } });
  });
  test("one that needs an absent input is left out", () => {
    expect(run(made({}), of({ a: 5 })).steps.map(({ step }) => step.symbol)).toEqual(["x"]);
    expect(run(made({}), of({ a: 5, b: 1 })).values.get("y")).toBe(6);
  });
  test("a default is taken, and gives way", () => {
    expect(run(made({}), of({ a: 1 })).values.get("c")).toBe(2);
    expect(run(made({}), of({ a: 1, c: 9 })).values.get("x")).toBe(9);
  });
  test("one under a condition", () => {
    const when = { left: "a", relation: ">", right: "'3 mm'" } as const;
    const one = made({ steps: [{ symbol: "x", unit: "mm", means: "x", formula: "2*a", when }] });
    expect(run(one, of({ a: 3 })).steps).toEqual([]);
    expect(run(one, of({ a: 3.1 })).values.get("x")).toBeCloseTo(6.2);
  });
  test("one under a condition on an absent input is left out", () => {
    const when = { left: "b", relation: ">", right: "'3 mm'" } as const;
    expect(
      run(made({ steps: [{ symbol: "x", unit: "mm", means: "x", formula: "a", when }] }), of({ a: 1 })).steps,
    ).toEqual([]);
  });
  test("no value: refused, with what was tried", () => {
    expect(
      run(made({ steps: [{ symbol: "x", unit: "1", means: "ratio", formula: "a/(a - a)" }] }), of({ a: 1 })).refused,
    ).toBe("the ratio has no value for these inputs");
  });
});

describe("limits compare unrounded, with a relative guard of 1e-9", () => {
  const limit = (relation: "<=" | "<" | ">=" | ">" | "=") =>
    made({ limits: [{ left: "a", relation, right: "'3 mm'", means: "m" }] });
  test.each([
    ["<=", 3, true],
    ["<=", 3 + 1e-10, true],
    ["<=", 3 + 1e-7, false],
    [">=", 3, true],
    [">=", 3 - 1e-10, true],
    [">=", 3 - 1e-7, false],
    ["<", 3, false],
    ["<", 3 - 1e-7, true],
    [">", 3, false],
    [">", 3 + 1e-7, true],
    ["=", 3 + 1e-10, true],
    ["=", 3 + 1e-7, false],
  ] as const)("a %s 3 at %d: %s", (relation, a, holds) =>
    expect(run(limit(relation), of({ a })).limits[0]?.holds).toBe(holds),
  );
  test("one about an absent input is left out", () => {
    expect(run(made({ limits: [{ left: "b", relation: "<=", right: "a", means: "m" }] }), of({ a: 1 })).limits).toEqual(
      [],
    );
  });
});

test("an acceptance that needs an absent optional input is skipped, default or not", () => {
  const accept = [{ left: "c", relation: ">=", right: "'9 mm'", means: "m", accuses: "c", needs: "c" }] as const;
  expect(run(made({ accept }), of({ a: 1 })).accept).toEqual([]);
  expect(run(made({ accept }), of({ a: 1, c: 8 })).accept).toMatchObject([{ holds: false }]);
});

test("a second method agrees within its tolerance", () => {
  const crossCheck = {
    means: "m",
    symbol: "x",
    formula: "a + '0.1 mm'",
    unit: "mm",
    within: "'0.1 mm'",
    basis,
  } as const;
  expect(run(made({ crossCheck }), of({ a: 5 })).crossCheck?.agrees).toBe(true);
  expect(run(made({ crossCheck: { ...crossCheck, within: "'0.09 mm'" } }), of({ a: 5 })).crossCheck?.agrees).toBe(
    false,
  );
});

test("a faulty calculation is an error of the program, with its name", () => {
  expect(() => checkSymbols(made({}))).not.toThrow();
  expect(() => checkSymbols(made({ steps: [{ symbol: "x", unit: "mm", means: "x", formula: "q" }] }))).toThrow(
    'calculation c: step x: "q" is neither an input nor an earlier step',
  );
});

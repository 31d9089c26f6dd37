import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { atLeast, atMost, compare, holds, near, within, type Relation } from "../../src/model/compare.ts";
import { exactly, measure, parseQuantity, type Measure } from "../../src/model/quantity.ts";

function mm(text: string): Measure {
  const parsed = parseQuantity(`${text} mm`, { unit: "mm" });
  if (!parsed.ok) throw new Error(parsed.problem.hint);
  return measure(parsed.quantity, "mm");
}

describe("compare", () => {
  test("single values", () => {
    expect(compare(mm("7.99"), 8)).toBe("less");
    expect(compare(mm("8.0"), 8)).toBe("equal");
    expect(compare(mm("8.01"), mm("8.0"))).toBe("greater");
  });

  test("noise of calculation is no difference, a millionth is one", () => {
    expect(compare(8.000000000001, 8)).toBe("equal");
    expect(compare(8.000008, 8)).toBe("greater");
    expect(near(0, 1e-300)).toBe(false);
    expect(near(Infinity, Infinity)).toBe(true);
    expect(near(8, Infinity)).toBe(false);
  });

  test("a bound at its own end", () => {
    expect(compare(mm("<3"), 3)).toBe("less");
    expect(compare(mm(">3"), 3)).toBe("greater");
    expect(compare(mm("<3"), mm(">3"))).toBe("less");
    expect(compare(3.0000000000001, mm("<3"))).toBe("greater");
  });

  test("overlapping intervals, and what is no number, stay open", () => {
    expect(compare(mm("<3"), 2)).toBe("open");
    expect(compare(mm("<3"), mm("<3"))).toBe("open");
    expect(compare(mm(">3"), mm("<4"))).toBe("open");
    expect(compare(Number.NaN, 2)).toBe("open");
  });

  test("of two units is a mistake in the program", () => {
    expect(() => compare(exactly(1, "mm"), exactly(1, "m"))).toThrow("a value in mm is compared with one in m");
  });
});

describe("statements", () => {
  const table: readonly (readonly [a: string, relation: Relation, b: number, answer: string])[] = [
    ["8.0", ">=", 8, "yes"],
    ["7.9", ">=", 8, "no"],
    ["8.0", ">", 8, "no"],
    ["8.1", ">", 8, "yes"],
    ["8.0", "<=", 8, "yes"],
    ["8.1", "<=", 8, "no"],
    ["8.0", "<", 8, "no"],
    ["7.9", "<", 8, "yes"],
    ["8.0", "=", 8, "yes"],
    ["8.1", "=", 8, "no"],
    ["<8", "<", 8, "yes"],
    ["<8", "<=", 8, "yes"],
    ["<8", ">=", 8, "no"],
    ["<8", ">", 8, "no"],
    ["<8", "<=", 7, "unsure"],
    ["<8", ">=", 7, "unsure"],
    ["<8", ">=", 0, "yes"],
    ["<8", "=", 7, "unsure"],
    ["<8", "=", 8, "no"],
    [">8", ">", 8, "yes"],
    [">8", ">=", 8, "yes"],
    [">8", "<=", 8, "no"],
    [">8", "<=", 9, "unsure"],
  ];
  for (const [a, relation, b, answer] of table)
    test(`${a} mm ${relation} ${b}: ${answer}`, () => expect(holds(mm(a), relation, b)).toBe(answer));

  test("limits are compared with a relative guard, on both sides of it", () => {
    expect(atLeast(8 * (1 - 1e-10), 8)).toBe("yes");
    expect(atLeast(8 * (1 - 1e-8), 8)).toBe("no");
    expect(atMost(8 * (1 + 1e-10), 8)).toBe("yes");
    expect(atMost(8 * (1 + 1e-8), 8)).toBe("no");
  });

  test("within: no beats unsure, unsure beats yes", () => {
    expect(within(5, 5, 10)).toBe("yes");
    expect(within(10, 5, 10)).toBe("yes");
    expect(within(4.9, 5, 10)).toBe("no");
    expect(within(10.1, 5, 10)).toBe("no");
    expect(within(mm("<6"), 0, 10)).toBe("yes");
    expect(within(mm("<6"), 5, 10)).toBe("unsure");
    expect(within(mm("<5"), 5, 10)).toBe("no");
    expect(within(mm(">6"), mm(">10"), mm("<5"))).toBe("no");
    expect(within(Number.NaN, 5, 10)).toBe("unsure");
  });

  test("a yes or no about an interval holds for every value in it", () => {
    const relations: readonly Relation[] = ["<=", "<", ">=", ">", "="];
    const sample = fc.tuple(fc.constantFrom("<", ">"), fc.integer({ min: 1, max: 20 }), fc.constantFrom(...relations));
    fc.assert(
      fc.property(sample, fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 400 }), (bound, limit, tenths) => {
        const [sign, end, relation] = bound;
        const value = tenths / 10;
        fc.pre(sign === "<" ? value < end : value > end);
        const answer = holds(mm(`${sign}${end}`), relation, limit);
        if (answer !== "unsure") expect(holds(value, relation, limit)).toBe(answer);
      }),
    );
  });
});

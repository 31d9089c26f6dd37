import { describe, expect, test } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { rules } from "../../src/rules/index.ts";
import { endBeyond, spanOf } from "../../src/rules/welding-range/range.ts";
import { isMade, madeRule, pairs } from "../../src/rules/welding-range/variable.ts";
import { variables } from "../../src/rules/welding-range/variables.ts";
import { exactly } from "../../src/model/quantity.ts";

const ids = new Set([...rules, ...calculations].map(({ id }) => id));
const cells = variables.flatMap((variable) =>
  pairs.map((pair) => ({ variable, pair, name: `${variable.id}, ${pair}` })),
);

describe("variables of a weld between neighbours", () => {
  test.each(cells)("$name: a rule, or why there is no method here", ({ variable, pair }) => {
    const cell = variable.cells?.[pair];
    if (cell === undefined) {
      expect(isMade(variable, pair)).toBe(true);
      expect(ids).toContain(madeRule(variable, pair));
    } else if ("rule" in cell) expect(ids).toContain(cell.rule);
    else expect(cell.none).toMatch(/^[a-z].{10,}[^.]$/);
  });

  test("as many of each as were counted: a cell that loses its rule is noticed", () => {
    const made = cells.filter(({ variable, pair }) => isMade(variable, pair)).length;
    const named = cells.filter(({ variable, pair }) => "rule" in (variable.cells?.[pair] ?? {})).length;
    const none = cells.filter(({ variable, pair }) => "none" in (variable.cells?.[pair] ?? {})).length;
    expect({ made, named, none, all: variables.length * pairs.length }).toEqual({
      made: 34,
      named: 19,
      none: 55,
      all: 108,
    });
  });

  test("no rule is made beside those of the cells", () => {
    const wanted = cells
      .filter(({ variable, pair }) => isMade(variable, pair))
      .map((one) => madeRule(one.variable, one.pair));
    expect(new Set(wanted).size).toBe(wanted.length);
  });
});

const mm = (value: number) => exactly(value, "mm");
const span = (from?: number, to?: number) =>
  spanOf(from === undefined ? undefined : mm(from), to === undefined ? undefined : mm(to)) ?? { sort: "span" as const };

describe("spans that several tests cover together", () => {
  test.each([
    ["one wide enough", [[3, 16]], [5, 16], undefined],
    [
      "one after the other",
      [
        [10.7, 42.6],
        [30.2, undefined],
      ],
      [20, 60],
      undefined,
    ],
    [
      "a gap between",
      [
        [3, 6],
        [8, 12],
      ],
      [3, 10],
      "to",
    ],
    ["too low", [[3, 6]], [2, 5], "from"],
    ["open where none is", [[3, 6]], [3, undefined], "to"],
    ["ends swapped", [[16, 3]], [5, 10], "from"],
    ["nothing held", [], [5, 10], "from"],
    ["one value", [[5, 5]], [5, 5], undefined],
  ] as const)("%s", (_name, held, asked, expected) => {
    expect(
      endBeyond(
        held.map(([from, to]) => span(from, to)),
        span(asked[0], asked[1]),
      ),
    ).toBe(expected);
  });
});

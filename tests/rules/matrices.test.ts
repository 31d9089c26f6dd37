import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { closers } from "../../src/closers/index.ts";
import { facts } from "../../src/facts/index.ts";
import { builtInRules } from "../../src/judge/built-in.ts";
import { registers } from "../../src/requirements/index.ts";
import { rules } from "../../src/rules/index.ts";

/** What is held against a neighbour by something of that name, or why there is no method here. */
interface Matrix {
  readonly pairs: readonly string[];
  readonly cells: readonly {
    readonly variable: string;
    readonly pair: string;
    readonly rule?: string;
    readonly none?: string;
  }[];
}

const rows = registers.flatMap(({ requirements }) => requirements);
const ids = new Set([...rules, ...calculations, ...facts, ...closers, ...builtInRules, ...rows].map(({ id }) => id));

describe.each([
  ["fittings", { judged: 48, none: 57 }],
  ["openings", { judged: 30, none: 30 }],
  ["consumables", { judged: 15, none: 13 }],
  ["welders", { judged: 34, none: 14 }],
  ["testing", { judged: 46, none: 14 }],
  ["heat-treatment", { judged: 20, none: 8 }],
  ["materials", { judged: 41, none: 27 }],
  ["making", { judged: 43, none: 5 }],
  ["papers", { judged: 40, none: 8 }],
])("matrix of %s", (name, counted) => {
  const { pairs, cells } = JSON.parse(
    readFileSync(join(import.meta.dirname, "matrices", `${name}.json`), "utf8"),
  ) as Matrix;

  test.each(cells)("$variable, $pair: something judges it, or why there is no method here", ({ rule, none }) => {
    // There is no third state, and none of both.
    expect((rule === undefined) !== (none === undefined)).toBe(true);
    if (rule !== undefined) expect(ids).toContain(rule);
    else expect(none).toMatch(/^[a-z].{10,}[^.]$/);
  });

  test("each variable has a cell for each neighbour, once", () => {
    const variables = new Set(cells.map(({ variable }) => variable));
    const wanted = [...variables].flatMap((variable) => pairs.map((pair) => `${variable}, ${pair}`));
    expect(cells.map(({ variable, pair }) => `${variable}, ${pair}`)).toEqual(wanted);
  });

  test("as many of each as were counted: a cell that loses its rule is noticed", () => {
    const judged = cells.filter(({ rule }) => rule !== undefined).length;
    expect({ judged, none: cells.length - judged }).toEqual(counted);
  });
});

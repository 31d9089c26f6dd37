import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { closers } from "../../src/closers/index.ts";
import { facts } from "../../src/facts/index.ts";
import { builtInRules } from "../../src/judge/built-in.ts";
import { registers } from "../../src/requirements/index.ts";
import { shippedDefinitions } from "../../src/definitions.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { fieldAt, type Field } from "../../src/model/kind.ts";
import type { Rule } from "../../src/model/rule.ts";
import { readsOf } from "../../src/plan/reads.ts";
import { rules } from "../../src/rules/index.ts";

/** What is held against a neighbour by something of that name, or why there is no method here. */
interface Matrix {
  readonly pairs: readonly string[];
  /** Fields a variable stands in, "kind path": what judges it reads one of them. */
  readonly reads?: Readonly<Record<string, readonly string[]>>;
  readonly cells: readonly {
    readonly variable: string;
    readonly pair: string;
    readonly rule?: string;
    readonly none?: string;
  }[];
}

const kinds = loadKinds(["schemas"]);
const definitions = shippedDefinitions(kinds);

/** Fields whose values a rule reads by itself. */
function fieldsReadBy(rule: Rule): ReadonlySet<Field> {
  const alone = { ...definitions, rules: [rule], calculations: [], registers: [], closers: [], facts: [] };
  return new Set(readsOf(alone).flatMap(({ field, value }) => (value ? [field] : [])));
}

/** A field and, of a list of values, what it lists: either may be what is read. */
function fieldsAt(name: string): readonly Field[] {
  const [kind = "", path = ""] = name.split(" ");
  const owner = kinds.get(kind);
  const field = owner === undefined ? undefined : fieldAt(owner, path.replace(/\[\]$/, ""));
  if (field === undefined) throw new Error(`there is no field ${name}`);
  return field.item === undefined ? [field] : [field, field.item];
}

const rows = registers.flatMap(({ requirements }) => requirements);
const ids = new Set([...rules, ...calculations, ...facts, ...closers, ...builtInRules, ...rows].map(({ id }) => id));

describe.each([
  ["fittings", { judged: 48, none: 57 }],
  ["openings", { judged: 30, none: 30 }],
  ["consumables", { judged: 15, none: 21 }],
  ["welders", { judged: 29, none: 19 }],
  ["testing", { judged: 43, none: 21 }],
  ["heat-treatment", { judged: 19, none: 13 }],
  ["materials", { judged: 41, none: 43 }],
  ["making", { judged: 37, none: 15 }],
  ["papers", { judged: 33, none: 15 }],
])("matrix of %s", (name, counted) => {
  const {
    pairs,
    reads = {},
    cells,
  } = JSON.parse(readFileSync(join(import.meta.dirname, "matrices", `${name}.json`), "utf8")) as Matrix;

  test.each(cells)("$variable, $pair: something judges it, or why there is no method here", ({ rule, none }) => {
    // There is no third state, and none of both.
    expect((rule === undefined) !== (none === undefined)).toBe(true);
    if (rule !== undefined) expect(ids).toContain(rule);
    else expect(none).toMatch(/^[a-z].{10,}[^.]$/);
  });

  test("what judges a variable reads one of the fields it stands in", () => {
    const strange = cells.flatMap(({ variable, pair, rule: id }) => {
      const rule = rules.find((one) => one.id === id);
      const fields = reads[variable]?.flatMap(fieldsAt);
      if (rule === undefined || fields === undefined) return [];
      const read = fieldsReadBy(rule);
      return fields.some((field) => read.has(field)) ? [] : [`${variable}, ${pair}: ${rule.id}`];
    });
    expect(strange).toEqual([]);
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

import { describe, expect, test } from "vitest";
import { anyOf, list as listOf, optional, text as textOf, thing, things } from "../../src/model/input.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { owedBy, type Owes } from "../../src/model/owes.ts";
import { rule, type Rule } from "../../src/model/rule.ts";
import { planOf } from "../../src/plan/plan.ts";
import { basis, define, judged, milestones, open, owes, type Records } from "../support/small-book.ts";
import { flag, link, list, object, oneOf, text } from "../support/small-kinds.ts";

const kinds = {
  part: {
    role: oneOf(["shell", "end"], { required: true }),
    bearing: flag({ due: "now" }),
    note: text(),
    stamp: text({ due: "welding", owner: "shop" }),
    plate: link("plate"),
    rows: list(object({ row: text({ required: true }), value: text() })),
  },
  plate: { grade: text() },
  fitting: {
    part: link("part", { required: true }),
    sort: oneOf(["gauge", "valve"], { required: true }),
    mark: text(),
  },
};

const reader = (id: string, more: Partial<Rule> & { readonly owes?: readonly Owes[] }): Rule =>
  rule({
    id,
    title: `Rule ${id}`,
    basis,
    kind: "part",
    owner: "design",
    severity: "nonconformity",
    inputs: {},
    examples: [],
    *check(values) {
      Object.values(values);
      yield* [];
    },
    ...more,
  });

const note = { note: textOf("note") };
const notes = (id: string, ...owed: readonly Owes[]) => reader(id, { inputs: note, owes: owed });
const shells = { when: [{ path: "role", equals: "shell" }] } as const;
const ends = { when: [{ path: "role", equals: "end" }] } as const;
const part = (value: object = {}): Records => ({
  part: { P1: { role: "shell", bearing: true, stamp: "S", ...value } },
});
const run = (rules: readonly Rule[], records: Records, issue: JsonObject = {}) =>
  judged(define({ kinds, rules }), { records, issue });
const faults = (rules: readonly Rule[], more: object = {}) => {
  try {
    planOf(define({ kinds, rules, ...more }));
    return [];
  } catch (error) {
    return String(error).split("\n  ").slice(1);
  }
};
const interim = (...reached: readonly string[]): JsonObject => ({
  state: "interim",
  ...milestones(
    reached,
    ["order", "welding"].filter((name) => !reached.includes(name)),
  ),
});

describe("what a definition reads", () => {
  const one = [notes("r", owedBy("quality", "welding", "note"))];

  test("is owed for its sake: by whom it says, on its own basis, when it is due", () => {
    const book = run(one, part());
    expect(open(book)).toEqual(["gap missing|part:P1|note"]);
    const [gap] = book.findings;
    expect(gap).toMatchObject({ owner: "quality", basis, due: "welding", message: "part P1 has no note" });
    expect(gap?.why).toBe('"Rule r" reads it; due at milestone "welding"');
    expect(book.missing).toMatchObject([{ owner: "quality", due: "welding", readers: ["Rule r"], register: [] }]);
    expect(book.owing).toMatchObject([{ path: "note", what: "note", state: "missing", by: [{ id: "r" }] }]);
  });
  test("is not due before its milestone, and is listed", () => {
    const book = run(one, part(), interim("order"));
    expect(open(book)).toEqual([]);
    expect(book.missing).toMatchObject([{ key: "missing|part:P1|note", became: { notDue: "welding" } }]);
    expect(book.owing.map(({ state }) => state)).toEqual(["not due"]);
    expect(book.outcomes.find(({ definition }) => definition === "r")?.because).toEqual({
      type: "not due",
      milestone: "welding",
    });
  });
  test("is there", () => {
    const book = run(one, part({ note: "n" }));
    expect([open(book), book.owing.map(({ state }) => state)]).toEqual([[], ["met"]]);
  });
  test("is owed of those it applies to", () => {
    const book = run([reader("r", { inputs: note, ...ends, owes: [owedBy("shop", "order", "note")] })], part());
    expect([open(book), book.owing]).toEqual([[], []]);
  });
  test("has one gap, whoever else reads it; the earliest due wins, with the basis of who makes it due", () => {
    const late = notes("late", owedBy("quality", "welding", "note"));
    const early = notes("soon", owedBy("quality", "order", "note"));
    const book = run([late, early], part(), interim("order"));
    expect(open(book)).toEqual(["gap missing|part:P1|note"]);
    expect(book.findings[0]?.why).toBe('"Rule late" and 1 more read it; due at milestone "order"');
    expect(book.owing).toMatchObject([{ by: [{ id: "soon" }, { id: "late" }], state: "missing" }]);
  });
  test("may be optional and owed", () => {
    const one = reader("r", { inputs: { note: optional(textOf("note")) }, owes: [owedBy("shop", "order", "note")] });
    expect(open(run([one], part()))).toEqual(["gap missing|part:P1|note"]);
  });
  test("may stand behind a link, in rows, or in what a condition reads", () => {
    const grade = reader("g", {
      inputs: { plate: thing("plate", { grade: textOf("grade") }) },
      owes: [owedBy("purchasing", "order", "plate.grade")],
    });
    expect(open(run([grade], part()))).toEqual(["gap missing|part:P1|plate"]);
    const named = { ...part({ plate: "PL1" }), plate: { PL1: {} } };
    expect(open(run([grade], named))).toEqual(["gap missing|plate:PL1|grade"]);
    const values = reader("v", {
      inputs: { rows: listOf(thing("rows[]", { value: textOf("value") })) },
      owes: [owedBy("shop", "order", "rows.value")],
    });
    expect(open(run([values], part({ rows: [{ row: "A", value: "1" }, { row: "B" }] })))).toHaveLength(1);
    const asked = reader("c", { when: [{ path: "note", equals: "yes" }], owes: [owedBy("shop", "order", "note")] });
    expect(open(run([asked], part()))).toEqual(["gap missing|part:P1|note"]);
  });
  test("of records of which none is fine is owed of those there are, and of each for itself", () => {
    const gauges = reader("m", {
      ...shells,
      inputs: { gauges: anyOf(things('<fitting:part>[sort="gauge"]', { mark: textOf("mark") })) },
      owes: [owedBy("shop", "order", "gauges.mark")],
    });
    expect(open(run([gauges], part()))).toEqual([]);
    const fitting = { F1: { part: "P1", sort: "gauge" }, F2: { part: "P1", sort: "valve" } };
    expect(open(run([gauges], { ...part(), fitting }))).toEqual(["gap missing|fitting:F1|mark"]);
  });
});

test("a field of the record itself is owed by its schema, and by whom that says", () => {
  const book = run([], { part: { P1: { role: "shell", bearing: true } } });
  expect(book.findings[0]).toMatchObject({ key: "missing|part:P1|stamp", owner: "shop", due: "welding" });
});

describe("one way, one owner: else the definitions do not load", () => {
  test("what a definition reads and nobody owes", () => {
    expect(faults([notes("r")])).toHaveLength(1);
    expect(faults([notes("r", owedBy("shop", "order", "note"))])).toEqual([]);
  });
  test("two owners of one absence", () => {
    const [a, b] = [notes("a", owedBy("shop", "order", "note")), notes("b", owedBy("design", "order", "note"))];
    expect(faults([a, b])).toEqual([
      'rule b: design owes "note" of part, but rule a has shop owe "note" of part, which may be the same; one absence has one owner',
    ]);
  });
  test("but each its own where no part is both", () => {
    const a = reader("a", { inputs: note, ...shells, owes: [owedBy("shop", "order", "note")] });
    const b = reader("b", { inputs: note, ...ends, owes: [owedBy("design", "order", "note")] });
    expect(faults([a, b])).toEqual([]);
  });
  test("what the schema owes already", () => {
    const one = reader("r", { inputs: { stamp: textOf("stamp") }, owes: [owedBy("shop", "order", "stamp")] });
    expect(faults([one])).toEqual([
      'rule r: owes "stamp", which the schema owes already; take it out of one of the two',
    ]);
  });
  test("a row that restates it; a wider one stands alone", () => {
    const one = reader("r", { inputs: note, ...shells, owes: [owedBy("shop", "order", "note")] });
    const row = (when?: typeof shells.when) => ({
      owed: [owes("row", "part", "note", "order", { each: { kind: "part", ...(when !== undefined && { when }) } })],
    });
    expect(faults([one], row(shells.when))).toEqual([
      'rule r: owes "note", which requirement row owes already; take it out of one of the two',
      'requirement row: rule r reads "note" of part and owes it; take the row out of the register',
    ]);
    expect(faults([reader("r", { inputs: note, ...shells })], row())).toEqual([]);
  });
  test("a name that stands for nothing, with the nearest", () => {
    expect(faults([notes("r", owedBy("shop", "order", "note", "notee"))])).toEqual([
      'rule r: owes "notee", which is neither an input nor the path of a condition; nearest: "note"',
    ]);
  });
  test("what nobody can enter in a record", () => {
    const one = reader("r", {
      inputs: { all: listOf(thing("book.plate", {})) },
      owes: [owedBy("shop", "order", "all")],
    });
    expect(faults([one], { owed: [owes("plates", "book", "book.plate")] })).toEqual([
      'rule r: owes "all", which is read from the book: a row of the register asks the book for it',
    ]);
  });
});

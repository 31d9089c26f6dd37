import { describe, expect, test } from "vitest";
import { calculation } from "../../src/model/calculation.ts";
import type { Fact } from "../../src/model/fact.ts";
import { quantity as quantityOf } from "../../src/model/input.ts";
import { rule } from "../../src/model/rule.ts";
import { basis, define, judged, open, verdicts } from "../support/small-book.ts";
import { link, quantity } from "../support/small-kinds.ts";

const due = { due: "now" } as const;
const kinds = {
  item: { pressure: quantity("MPa", due), hot: quantity("°C", due), cold: quantity("°C", due) },
  label: { item: link("item", { required: true }), hot: quantity("°C", due) },
  paper: { hot: quantity("°C", due) },
};
const made = { covers: "a test", examples: [], basis, limits: [], accept: [], compared: [] } as const;
/** Boiling rests on the pressure alone, the margin on both temperatures. */
const boiling = calculation({
  ...made,
  id: "boiling",
  title: "Boiling",
  appliesTo: { kind: "item" },
  inputs: {
    p: { path: "pressure", unit: "MPa", means: "pressure" },
    th: { path: "hot", unit: "°C", means: "hot" },
    tc: { path: "cold", unit: "°C", means: "cold" },
  },
  steps: [
    { symbol: "ts", unit: "°C", means: "boiling", formula: "100*p", empirical: true },
    { symbol: "tm", unit: "°C", means: "margin", formula: "th + tc - ts", empirical: true },
  ],
  accept: [
    { left: "th", relation: ">=", right: "ts", means: "hot enough", accuses: "th" },
    { left: "tc", relation: "<=", right: "ts", means: "cold enough", accuses: "tc" },
  ],
});
const after = calculation({
  ...made,
  id: "after",
  title: "After",
  appliesTo: { kind: "item" },
  inputs: { ts: { path: "calculation(boiling).ts", unit: "°C", means: "boiling" } },
  steps: [{ symbol: "t", unit: "°C", means: "metal", formula: "ts" }],
});
const reader = (symbol: string) =>
  rule({
    id: `reads-${symbol}`,
    title: symbol,
    basis,
    owner: "shop",
    severity: "nonconformity",
    kind: "item",
    inputs: { value: quantityOf(`calculation(boiling).${symbol}`, "°C") },
    *check({ value }) {
      if (value.value > 500) yield { at: "subject", message: `${symbol} too hot`, why: "w", hint: "h" };
    },
    examples: [],
  });
const hot: Fact = {
  id: "hot-agrees",
  title: "the hot end",
  basis,
  owner: "shop",
  reading: { type: "quantity", unit: "°C" },
  statements: ["book.item.hot", "book.label.hot", "book.paper.hot"],
};
const rules = [reader("ts"), reader("tm")];
const run = (item: object, more: object = {}, facts: readonly Fact[] = []) =>
  judged(define({ kinds, calculations: [boiling, after], rules, facts }), {
    records: { item: { V: { pressure: "2 MPa", hot: "250 °C", cold: "20 °C", ...item } }, ...more },
  });

describe("what does not rest on a value is judged", () => {
  test("a value that is doubted keeps back the results made of it, and no others", () => {
    const book = run({ hot: "250" });
    const key = "quantity-form|item:V|hot";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(verdicts(book)).toEqual({
      "after|item:V": "computed",
      "boiling|item:V": `not judged: ${key}`,
      "reads-tm|item:V": `not judged: ${key}`,
      "reads-ts|item:V": "passed",
    });
  });
  test("nor does one that is absent", () => {
    const { hot: _, ...rest } = { pressure: "2 MPa", hot: "250 °C", cold: "20 °C" };
    const book = judged(define({ kinds, calculations: [boiling, after], rules }), { records: { item: { V: rest } } });
    expect(open(book)).toEqual(["gap missing|item:V|hot"]);
    expect(verdicts(book)).toMatchObject({
      "after|item:V": "computed",
      "reads-ts|item:V": "passed",
      "reads-tm|item:V": "not judged: missing|item:V|hot",
    });
  });
  test("a value that is refused keeps back what rests on it, and no others", () => {
    const book = run({ hot: "150 °C" });
    const key = "boiling|item:V|th too low";
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    expect(verdicts(book)).toEqual({
      "after|item:V": "computed",
      "boiling|item:V": "failed",
      "reads-tm|item:V": `not judged: ${key}`,
      "reads-ts|item:V": "passed",
    });
  });
  test("an acceptance that does not rest on it is said beside it", () => {
    expect(open(run({ hot: "250", cold: "300 °C" }))).toEqual([
      "nonconformity boiling|item:V|tc too high",
      "nonconformity quantity-form|item:V|hot",
    ]);
  });
});

describe("a fact is judged among the statements that are there", () => {
  const more = { label: { L: { item: "V", hot: "250 °C" } } };
  test("one that cannot be read hides no contradiction among the others", () => {
    const book = run({}, { label: { L: { item: "V", hot: "260 °C" } }, paper: { A: { hot: "250" } } }, [hot]);
    expect(open(book)).toEqual(["nonconformity hot-agrees|book|", "nonconformity quantity-form|paper:A|hot"]);
  });
  test("but it keeps them from agreeing for certain", () => {
    const book = run({}, { ...more, paper: { A: { hot: "250" } } }, [hot]);
    expect(open(book)).toEqual(["nonconformity quantity-form|paper:A|hot"]);
    expect(verdicts(book)["hot-agrees"]).toBe("not judged: quantity-form|paper:A|hot");
  });
});

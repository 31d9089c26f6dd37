import { describe, expect, test } from "vitest";
import { optional, quantity as quantityOf } from "../../src/model/input.ts";
import type { JsonObject } from "../../src/model/json.ts";
import type { Profile } from "../../src/model/profile.ts";
import { rule } from "../../src/model/rule.ts";
import { parseInterval, type Table } from "../../src/model/table.ts";
import { fromMemory, published } from "../../src/model/basis.ts";
import {
  answering,
  basis,
  define,
  finding,
  judged,
  open,
  owes,
  verdicts,
  type SmallBook,
} from "../support/small-book.ts";
import { quantity, text } from "../support/small-kinds.ts";

const kinds = { part: { thickness: quantity("mm", { due: "now" }), grade: text({ due: "now" }) } };
const cautious: Profile = {
  id: "cautious",
  title: "Cautious",
  parameters: {
    least: { value: "8 mm", means: "least thickness", cautious: "high", basis: fromMemory("S 1") },
    most: { value: "30 mm", means: "greatest thickness", cautious: "low", basis },
    model: { value: "linear", means: "model", cautious: "none", basis },
  },
};
const table: Table = {
  id: "grades",
  title: "Grades",
  standard: "S 2",
  edition: "2019",
  keys: [
    { name: "grade", match: "equal" },
    { name: "thickness", match: "interval", unit: "mm" },
  ],
  columns: { limit: { unit: "mm", means: "limit" }, curve: { means: "curve", points: ["t", "v"] } },
  rows: [
    {
      keys: { grade: "A", thickness: { upTo: 50 } },
      values: { limit: "5 mm" },
      basis: published("S 2", "2019", "table 1"),
    },
  ],
};
const frame = { basis, owner: "design", severity: "nonconformity", kind: "part", examples: [] } as const;
const byProfile = rule({
  ...frame,
  id: "by-profile",
  title: "by profile",
  inputs: { thickness: quantityOf("thickness", "mm"), least: quantityOf("profile.least", "mm") },
  *check({ thickness, least }) {
    if (thickness.value < least.value) yield { at: "thickness", message: "thin", why: "w", hint: "h" };
  },
});
const byTable = rule({
  ...frame,
  id: "by-table",
  title: "by table",
  inputs: {
    thickness: quantityOf("thickness", "mm"),
    limit: quantityOf("table(grades, grade, thickness).limit", "mm"),
    most: optional(quantityOf("profile.most", "mm")),
  },
  *check({ thickness, limit }) {
    if (thickness.value < limit.value) yield { at: "thickness", message: "below the table", why: "w", hint: "h" };
  },
});
const definitions = define({ kinds, rules: [byProfile, byTable], profiles: [cautious], tables: [table] });
const run = (book: JsonObject, more: SmallBook["records"] = {}, thickness = "8 mm") =>
  judged(definitions, { records: { part: { P1: { thickness, grade: "A" } }, ...more }, book });
const override = (parameter: string, value: string) => ({
  profile: "cautious",
  overrides: [
    {
      parameter,
      value,
      basis: "order 7, clause 6.2",
      by: "DC",
      authority: "order 7",
      date: "2026-01-02",
    },
  ],
});

describe("the profile", () => {
  test("gives the value", () => {
    expect(open(run({ profile: "cautious" }))).toEqual([]);
    expect(open(run({ profile: "cautious" }, {}, "7 mm"))).toEqual(["nonconformity by-profile|part:P1|"]);
  });
  test("an unknown one: what reads it waits", () => {
    const book = run({ profile: "bold" });
    expect(open(book)).toEqual(["nonconformity profile-known|book:BOOK|bold"]);
    expect(verdicts(book)["by-profile|part:P1"]).toBe("not judged: profile-known|book:BOOK|bold");
  });
  test("an override more cautious than the default", () => {
    const book = run(override("least", "9 mm"));
    expect(open(book)).toEqual(["nonconformity by-profile|part:P1|"]);
    expect(book.parameters.get("least")).toMatchObject({
      value: "9 mm",
      overridden: true,
      basis: { class: "contract", reference: "order 7, clause 6.2, order 7, DC, 2026-01-02" },
    });
  });
  test("in another unit", () =>
    expect(open(run(override("least", "0.9 cm")))).toEqual(["nonconformity by-profile|part:P1|"]));
  test("one less cautious is a query, on either side", () => {
    expect(open(run(override("least", "7 mm"), {}, "7.5 mm"))).toEqual(["query profile-cautious|book:BOOK|least"]);
    expect(open(run(override("most", "31 mm")))).toEqual(["query profile-cautious|book:BOOK|most"]);
    expect(open(run(override("most", "29 mm")))).toEqual([]);
    expect(open(run(override("model", "cubic")))).toEqual([]);
  });
  test("that query can be answered", () => {
    const before = run(override("least", "7 mm"), {}, "7.5 mm");
    const answer = answering(before, ["profile-cautious|book:BOOK|least"]);
    expect(open(run(override("least", "7 mm"), { "answered-query": { Q1: answer } }, "7.5 mm"))).toEqual([]);
  });
  test("a value of another sort: nothing is judged by it", () => {
    const book = run(override("least", "9 bar"));
    expect(open(book)).toEqual(["nonconformity profile-known|book:BOOK|least"]);
    expect(verdicts(book)["by-profile|part:P1"]).toBe("not judged: profile-known|book:BOOK|least");
  });
  test("a parameter there is not", () =>
    expect(open(run(override("lest", "9 mm")))).toEqual(["nonconformity profile-known|book:BOOK|lest"]));
});

const cell = (name: string, value: string) => ({ name, value });
const own = (rows: readonly JsonObject[], more: JsonObject = {}): JsonObject => ({
  table: "grades",
  standard: "S 2",
  edition: "2021",
  checkedBy: "MT",
  date: "2026-01-05",
  rows,
  ...more,
});
const row = (name: string, ...cells: readonly JsonObject[]) => ({ row: name, cells });
const limit9 = own([row("1", cell("grade", "A"), cell("thickness", "over 3 up to 16"), cell("limit", "9 mm"))]);

describe("a table of the book's own", () => {
  test("replaces the shipped one whole", () => {
    const book = run({}, { "reference-table": { T1: limit9 } });
    expect(open(book)).toEqual(["nonconformity by-table|part:P1|"]);
    expect(book.tables.get("grades")).toMatchObject({
      edition: "2021",
      rows: [{ basis: { class: "user table", checkedBy: "MT" } }],
    });
    expect(open(run({}, { "reference-table": { T1: limit9 } }, "20 mm"))).toEqual([
      "query table-row|grade A, thickness 20 mm",
    ]);
  });
  test.each([
    ["an unknown table", own([], { table: "grade" }), "table"],
    ["no rows", own([]), "rows"],
    ["a key left out", own([row("1", cell("grade", "A"), cell("limit", "9 mm"))]), "rows"],
    [
      "an interval in other words",
      own([row("1", cell("grade", "A"), cell("thickness", "3-16"), cell("limit", "9 mm"))]),
      "rows",
    ],
    [
      "an unknown column",
      own([row("1", cell("grade", "A"), cell("thickness", "up to 16"), cell("limt", "9 mm"))]),
      "rows",
    ],
    [
      "a value of another dimension",
      own([row("1", cell("grade", "A"), cell("thickness", "up to 16"), cell("limit", "9 bar"))]),
      "rows",
    ],
    [
      "a curve without points",
      own([row("1", cell("grade", "A"), cell("thickness", "up to 16"), cell("curve", "9"))]),
      "rows",
    ],
  ])("%s: a finding, and what asks the table waits", (_, record, where) => {
    const book = run({}, { "reference-table": { T1: record } });
    const key = `reference-table-form|reference-table:T1|${where}`;
    expect(open(book)).toEqual([`nonconformity ${key}`]);
    if (where === "rows") expect(verdicts(book)["by-table|part:P1"]).toBe(`not judged: ${key}`);
  });
  test("points of a curve", () => {
    const points = [{ values: [cell("t", "20 °C"), cell("v", "5 mm")] }];
    const curve = own([
      row("1", cell("grade", "A"), cell("thickness", "up to 16"), cell("limit", "9 mm"), { name: "curve", points }),
    ]);
    expect(run({}, { "reference-table": { T1: curve } }).tables.get("grades")?.rows[0]?.values["curve"]).toEqual([
      { t: "20 °C", v: "5 mm" },
    ]);
  });
  test("entered twice, in whatever edition: nobody can say which counts", () => {
    const book = run({}, { "reference-table": { T1: limit9, T2: { ...limit9, edition: "2022" } } });
    expect(open(book)).toEqual(["nonconformity reference-table-single|reference-table:T2|table"]);
    expect(verdicts(book)["by-table|part:P1"]).toBe("not judged: reference-table-single|reference-table:T2|table");
  });
});

describe("intervals as they are written", () => {
  test.each([
    ["over 3 up to 16", { over: 3, upTo: 16 }],
    ["from 0 below 3", { from: 0, below: 3 }],
    ["up to 16", { upTo: 16 }],
    ["over 40", { over: 40 }],
    ["below -10.5", { below: -10.5 }],
  ])("%s", (words, interval) => expect(parseInterval(words)).toEqual(interval));
  test.each(["", "3 to 16", "over", "over three", "> 3", "up to 16 over 3"])("no interval: %s", (words) =>
    expect(parseInterval(words)).toBeUndefined(),
  );
});

describe("a book that asks for verified bases", () => {
  const owed = [owes("row", "part", "grade", "now", { basis: published("S 3") })];
  const all = define({ kinds, rules: [byProfile, byTable], profiles: [cautious], tables: [table], owed });
  const asks = (book: JsonObject, records: SmallBook["records"] = {}) =>
    judged(all, {
      records: { part: { P1: { thickness: "8 mm", grade: "A" } }, ...records },
      book: { requireVerifiedBasis: true, ...book },
    });
  test("each definition, and each value that was read, that rests on less is a gap", () => {
    expect(open(asks({}))).toEqual([
      "gap basis-verified|book:BOOK|parameter least of the profile",
      "gap basis-verified|book:BOOK|rule by-profile",
      "gap basis-verified|book:BOOK|rule by-table",
    ]);
    expect(finding(asks({}), "basis-verified|book:BOOK|parameter least of the profile").message).toBe(
      '"parameter least of the profile" rests on S 1 (from memory)',
    );
  });
  test("what gave no verdict is not asked for", () => {
    expect(open(judged(all, { records: {}, book: { requireVerifiedBasis: true } }))).toEqual([]);
  });
  test("an override from the contract is verified", () => {
    expect(open(asks(override("least", "8 mm")))).not.toContain(
      "gap basis-verified|book:BOOK|parameter least of the profile",
    );
  });
  test("a waiver answers one, and one only", () => {
    const key = "basis-verified|book:BOOK|rule by-table";
    expect(open(asks({}, { waiver: { V1: answering(asks({}), [key]) } }))).toHaveLength(2);
  });
  test("a book that does not ask is not asked", () => expect(open(run({ profile: "cautious" }))).toEqual([]));
});

import { describe, expect, test } from "vitest";
import { adoptedIn, adoptedSentence } from "../../src/model/adopted.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { figuresOf } from "../../src/model/figures.ts";
import type { Calculation } from "../../src/model/calculation.ts";
import { fromMemory, published } from "../../src/model/basis.ts";
import { define, finding, judged, open, owes, verdicts } from "../support/small-book.ts";
import { quantity } from "../support/small-kinds.ts";
import { kinds, part, sheet, stress, wall } from "./wall-sheets.ts";

const owed = owes("adoption-signed", "calculation-sheet", 'signatures[role="design"].date', "now", {
  each: { kind: "calculation-sheet", when: [{ path: "adopts", exists: true }] },
});
const definitions = (calculations: readonly Calculation[] = [wall, stress]) =>
  define({ kinds, calculations, owed: [owed] });
const signatures = [{ role: "design", person: "R1", date: "2026-01-10" }];
const adopting = (adopts: string, more: object = {}) => ({
  calculation: "wall",
  subject: "part:P1",
  adopts,
  signatures,
  ...more,
});
const parts = { P1: part };

const digestIn = ({ computed, definitions: { kinds } }: JudgedBook, id = "wall", of = "P1"): string => {
  const found = computed.find(({ calculation, subject }) => calculation.id === id && subject.id === of);
  if (found?.state !== "done") throw new Error(`${id} of ${of} has no result`);
  return figuresOf(kinds, found);
};
const digest = (more: object = {}, calculations?: readonly Calculation[]) =>
  digestIn(judged(definitions(calculations), { records: { part: { P1: { ...part, ...more } } } }));
const signed = digest();
const book = (sheets: Readonly<Record<string, object>>, more: object = {}) =>
  judged(definitions(), {
    records: { part: { ...parts, P1: { ...part, ...more } }, "calculation-sheet": sheets as Record<string, never> },
  });

describe("the digest of figures", () => {
  test.each([
    ["the same value in other digits", { pressure: "1.000 MPa" }, true],
    ["the same value in another unit", { pressure: "10 bar" }, true],
    ["a remark", { thickness: "10 mm" }, true],
    ["another input", { pressure: "1.01 MPa" }, false],
    ["an input nothing is compared for", { thickness: "10.1 mm" }, false],
    ["one more input", { allowance: "1 mm" }, false],
    ["another result of an earlier calculation", { class: "II" }, false],
  ])("%s", (_, more, same) => {
    expect(digest(more) === signed).toBe(same);
  });
  test("what is said about it, and how well its source is known, is no part of it; its edition and its verdict are", () => {
    const basis = published("EN 1", "2020", "7.1");
    const own = digest({}, [{ ...wall, basis }, stress]);
    expect(
      digest({}, [{ ...wall, basis: fromMemory("EN 1", "2020"), title: "Thickness", covers: "walls" }, stress]),
    ).toBe(own);
    expect(digest({}, [{ ...wall, basis: published("EN 1", "2021", "7.1") }, stress])).not.toBe(own);
    const strict = {
      ...wall,
      accept: wall.accept.map((one) => ({ ...one, relation: "<=" as const, name: "e too low" })),
    };
    expect(digest({}, [strict, stress])).not.toBe(
      digest({}, [{ ...wall, accept: [{ ...wall.accept[0], name: "e too low" } as never] }, stress]),
    );
  });
  test("two parts alike have each their own", () => {
    const two = judged(definitions(), { records: { part: { P1: part, P2: part } } });
    expect(digestIn(two)).toBe(signed);
    expect(digestIn(two, "wall", "P2")).not.toBe(signed);
  });
});

test("a sheet that adopts is compared with nothing, and signed for what is computed", () => {
  const one = book({ S1: adopting(signed) });
  expect(open(one)).toEqual([]);
  expect(verdicts(one)).toMatchObject({
    "figures-adopted|calculation-sheet:S1": "passed",
    "wall/results|calculation-sheet:S1": "not applicable",
  });
  expect(verdicts(one)["wall/inputs|calculation-sheet:S1"]).toBeUndefined();
  expect(adoptedIn(one)).toEqual({ calculations: 1, unsigned: 0 });
  expect(adoptedSentence(adoptedIn(one))).toBe("1 calculation adopted: nothing independent stands beside it");
  const waiting = one.computed.find(({ calculation }) => calculation.id === "wall");
  expect(waiting?.sheets.map(({ adopts, values }) => [adopts, values])).toEqual([[signed, []]]);
});

test("an input changed after the signature is one gap, whatever rests on it", () => {
  const all = judged(definitions(), { records: { part: parts } });
  const sheets = {
    S1: adopting(signed),
    S2: adopting(digestIn(all, "stress"), { calculation: "stress" }),
  };
  expect(open(book(sheets))).toEqual([]);
  const changed = book(sheets, { class: "II" });
  expect(open(changed)).toEqual(["gap figures-adopted|book|other figures"]);
  const { message, related, why } = finding(changed, "figures-adopted|book|other figures");
  expect(message).toMatch(
    /^sheet S[12] is signed for other figures of ".*" of part P1: for .*; now it is .*, with .* \(first: .*; 1 more\)$/,
  );
  expect(related).toHaveLength(1);
  expect(why).toContain("does not tell which of them changed");
  expect(adoptedSentence(adoptedIn(changed))).toBe(
    "2 calculations adopted: nothing independent stands beside them; nobody has signed for the figures of 2 as they are",
  );
});

test("a slip and the digest of another calculation are told apart from other figures", () => {
  const own = signed.startsWith("7") ? `8${signed.slice(1)}` : `7${signed.slice(1)}`;
  const key = "figures-adopted|calculation-sheet:S1|digest";
  expect(finding(book({ S1: adopting(own) }), key).message).toBe(
    `sheet S1 adopts "${own}", which is mistyped: its last sign does not belong to the others`,
  );
  const other = digestIn(book({}), "stress");
  expect(finding(book({ S1: adopting(other) }), key).message).toBe(
    'sheet S1 is signed for the figures of "Stress" of part P1, not of "Wall" of part P1',
  );
});

describe("who signs", () => {
  test.each([
    ["nobody", undefined, "missing|calculation-sheet:S1|signatures design"],
    ["another role", [{ role: "checker", date: "2026-01-10" }], "missing|calculation-sheet:S1|signatures design"],
    ["no day", [{ role: "design" }], "missing|calculation-sheet:S1|signatures (design) date"],
  ])("%s: one gap, and the sheet stands for nothing", (_, own, key) => {
    const one = book({ S1: adopting(signed, { signatures: own }) });
    expect(open(one)).toEqual([`gap ${key}`]);
    expect(verdicts(one)["figures-adopted|calculation-sheet:S1"]).toBe(`not judged: ${key}`);
    expect(adoptedIn(one)).toEqual({ calculations: 1, unsigned: 1 });
  });
});

test("a sheet whose calculation waits, waits with it; one that fails is not adopted into a pass", () => {
  const absent = book({ S1: adopting(signed) }, { diameter: undefined });
  expect(open(absent)).toEqual(["gap missing|part:P1|diameter"]);
  expect(verdicts(absent)["figures-adopted|calculation-sheet:S1"]).toBe("not judged: missing|part:P1|diameter");
  const thin = { thickness: "5 mm" };
  const failed = book({ S1: adopting(digest(thin)) }, thin);
  expect(open(failed)).toHaveLength(1);
  expect(open(failed)[0]).toMatch(/^nonconformity wall\|part:P1/);
  expect(verdicts(failed)["figures-adopted|calculation-sheet:S1"]).toMatch(/^not judged: wall\|part:P1/);
});

test("it votes for nothing: a sheet with figures of its own stands alone against the record", () => {
  const against = sheet({ inputs: { p: "2 MPa", D: "1000 mm", f: "90 MPa", e: "10 mm" } });
  const key = "nonconformity wall/inputs|calculation-sheet:S2|input p";
  expect(open(book({ S2: against }))).toEqual([key]);
  const both = book({ S1: adopting(signed), S2: against });
  expect(open(both)).toEqual([key]);
  // Beside an own sheet something independent stands.
  expect(adoptedIn(both)).toEqual({ calculations: 0, unsigned: 0 });
});

test("where a sheet is missing, the gap says what may be adopted", () => {
  const asks = owes("sheets", "part", '<calculation-sheet:subject>[calculation="wall"]');
  const bare = judged(
    define({ kinds: { ...kinds, extra: { size: quantity("mm") } }, calculations: [wall, stress], owed: [asks] }),
    {
      records: { part: parts, "calculation-sheet": { S2: { calculation: "stress", subject: "part:P1" } } },
    },
  );
  const [gap] = bare.findings.filter(({ rule }) => rule === "missing");
  expect(gap?.hint).toContain(
    `to look at the recomputed figures (required thickness 5.5556 mm), and to adopt them by a signature for ${signed}`,
  );
  expect(bare.missing.find(({ adoptable }) => adoptable !== undefined)?.adoptable?.fields).toEqual({
    adopts: signed,
    signatures: [{ role: "design" }],
  });
  const none = judged(define({ kinds, calculations: [wall, stress], owed: [asks] }), {
    records: { part: { P1: part, P2: part } },
  });
  expect(
    none.missing
      .filter(({ kind }) => kind === "calculation-sheet")
      .map(({ parts: all }) => all?.map(({ at, adoptable }) => [at?.record.id, adoptable?.digest])),
  ).toEqual([
    [
      ["P1", signed],
      ["P2", digestIn(none, "wall", "P2")],
    ],
  ]);
});

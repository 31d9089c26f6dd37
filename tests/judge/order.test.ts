import { describe, expect, test } from "vitest";
import { judge } from "../../src/judge/judge.ts";
import type { LoadedBook } from "../../src/model/book.ts";
import { isList } from "../../src/model/json.ts";
import { smallBook } from "../support/small-book.ts";
import { definitions, faults, plant, type Planted } from "./sound-book.ts";

/** Numbers that look random and are the same on every run. */
function* numbers(seed: number): Generator<number> {
  for (let state = seed; ;) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield state / 2 ** 32;
  }
}

function shuffled<T>(list: readonly T[], seed: number): readonly T[] {
  const random = numbers(seed);
  return list
    .map((one) => [random.next().value as number, one] as const)
    .sort(([a], [b]) => a - b)
    .map(([, one]) => one);
}

const said = (book: LoadedBook) => {
  const { findings, counts, owed, outcomes, computed } = judge(book, definitions);
  return JSON.stringify({
    findings,
    counts,
    owed: owed.map(({ requirement, subject, state }) => [requirement.id, subject?.id, state]),
    outcomes,
    computed: computed.map(({ calculation, subject, sheets, ...one }) => [
      calculation.id,
      subject.id,
      one.state === "done" ? one.steps.map(({ value }) => value) : one.outcome.because,
      sheets.map(({ record }) => record.id),
    ]),
  });
};

const some = (start: number): readonly Planted[] => faults.filter((_, index) => index % 7 === start);

describe("the order of files and of records in them plays no part", () => {
  test.each([0, 1, 2, 3, 4, 5, 6])("with every seventh fault planted, from fault %i", (start) => {
    const book = smallBook({ records: plant(some(start)) });
    const first = said(book);
    expect(JSON.parse(first)).toHaveProperty("findings.length");
    for (let seed = 1; seed <= 20; seed++) expect(said({ ...book, records: shuffled(book.records, seed) })).toBe(first);
  });
});

describe("keys and digests stay when something is put in between", () => {
  const keysOf = (book: LoadedBook) =>
    new Map(judge(book, definitions).findings.map(({ key, digest }) => [key, digest]));
  test.each(faults.map((fault) => [`${fault.at.join("/")} → ${fault.root}`, fault] as const))("%s", (_, fault) => {
    const book = smallBook({ records: plant([fault]) });
    const before = keysOf(book);
    const after = keysOf({
      ...book,
      records: book.records.map((record) => ({ ...record, value: withFirstRows(record.kind, record.value) })),
    });
    for (const [key, digest] of before) {
      // Rows of a report have no name of their own; what they say is found by its place.
      if (key.includes("rows[0]") || key.includes("rows[1]") || key.includes("rows[2]")) continue;
      expect(after.get(key), key).toBe(digest);
    }
  });

  function withFirstRows(kind: string, value: LoadedBook["records"][number]["value"]) {
    const { rows } = value;
    if (kind !== "certificate" || !isList(rows)) return value;
    return { ...value, rows: [{ heat: "H0", strength: "260 MPa", thickness: "8 mm" }, ...rows] };
  }
});

test("lines say where things stand now: a place follows its row, the key does not", () => {
  const fault = faults.find(({ root }) => root.startsWith("row-strong"));
  const find = (records: ReturnType<typeof plant>) =>
    judge(smallBook({ records }), definitions).findings.find(({ rule }) => rule === "row-strong");
  const planted = plant(fault === undefined ? [] : [fault]);
  const moved = structuredClone(planted) as unknown as { certificate: { CRT: { rows: unknown[] } } };
  moved.certificate.CRT.rows.unshift({ heat: "H0", strength: "260 MPa", thickness: "8 mm" });
  expect(find(planted)?.place.pointer).toBe("/rows/0/strength");
  expect(find(moved as unknown as typeof planted)?.place.pointer).toBe("/rows/1/strength");
  expect(find(moved as unknown as typeof planted)?.key).toBe(find(planted)?.key);
});

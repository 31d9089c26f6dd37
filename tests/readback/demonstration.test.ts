import { describe, expect, test } from "vitest";
import { grouped } from "../../src/model/grouped.ts";
import { atPointer, isList, isObject, type Json, type JsonObject } from "../../src/model/json.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import type { TextsByPath } from "../../src/model/page-text.ts";
import type { BookRecord } from "../../src/model/record.ts";
import { pathNamedBy } from "../../src/model/shelf.ts";
import { pagesOf, stands, type Pages } from "../../src/readback/search.ts";
import { citedBy, readRecords, tasksIn, type Reading } from "../../src/readback/record.ts";
import { sheetOf } from "../../src/readback/sheet.ts";
import { partsOf, transcribedValues, type Transcribed } from "../../src/readback/values.ts";
import { judgedOnce, sound, soundBoiler, vesselBook } from "../support/demo-book.ts";

/** The value with two neighbouring digits in each other's place, for each pair of different ones. The zone of a time is ours. */
function swapped(text: string, isDate: boolean): string[] {
  const end = isDate ? text.replace(/[+-]\d\d:\d\d$/, "").length : text.length;
  const digits = [...text.slice(0, end).matchAll(/\d/g)].map(({ index }) => index);
  return digits.flatMap((at, order) => {
    const next = digits[order + 1];
    if (next === undefined || next - at > 2 || text[at] === text[next]) return [];
    return [text.slice(0, at) + text.charAt(next) + text.slice(at + 1, next) + text.charAt(at) + text.slice(next + 1)];
  });
}

interface Figures {
  values: number;
  readonly notFound: string[];
  slips: number;
  /** Slips that stand nowhere on the pages. */
  absent: number;
  /** Slips that stand there in the places of other values. */
  misplaced: number;
  /** Honest values that a slip elsewhere accuses. */
  readonly accused: string[];
}

/** Every value of a book with each of its slips, looked for as judging looks for it. */
function figuresOf({ graph, loaded, definitions: { kinds } }: JudgedBook): Figures {
  const texts: TextsByPath = loaded.texts?.() ?? new Map<string, never>();
  const textOf = (original: BookRecord) => {
    const { path } = original.value;
    return typeof path === "string" ? texts.get(pathNamedBy(original, path)) : undefined;
  };
  const names = { graph, kinds };
  const read = readRecords(graph.records, { names, textOf, passed: () => false });
  const citing = grouped(
    [...read].flatMap(([record, readings]) => readings.map(({ cited }) => ({ original: cited.original, record }))),
    ({ original }) => original,
  );
  const figures: Figures = { values: 0, notFound: [], slips: 0, absent: 0, misplaced: 0, accused: [] };
  const placeOf = (record: BookRecord, pointer: string) => `${record.kind}:${record.id}${pointer}`;
  /** Whether a slip that stands on the pages is found by its place; all that was read from the original is read again. */
  const isMisplaced = (record: BookRecord, { pointer }: Transcribed, slip: string | number, { cited }: Reading) => {
    const slipped: BookRecord = { ...record, value: changedAt(record.value, pointer, slip) };
    const own = new Set(citing.get(cited.original)?.map((one) => one.record));
    const out = new Map(graph.out).set(slipped, graph.out.get(record) ?? new Map());
    const again = readRecords(
      [...own].map((one) => (one === record ? slipped : one)),
      {
        names: { graph: { ...graph, out }, kinds },
        textOf: (original) => (original === cited.original ? textOf(original) : undefined),
        passed: () => false,
      },
    );
    const accused = [...again].flatMap(([one, readings]) =>
      readings.flatMap(({ absent }) => absent.map(({ value }) => placeOf(one, value.pointer))),
    );
    figures.accused.push(...accused.filter((place) => place !== placeOf(record, pointer)));
    return accused.includes(placeOf(record, pointer));
  };
  const one = (record: BookRecord, reading: Reading, on: Pages, value: Transcribed): void => {
    // A link to nothing is found by links, a choice that is none by the schema, a day that is none by its form.
    if (value.field.type === "link") return;
    for (const text of swapped(String(value.value), value.field.type === "date")) {
      const slip = typeof value.value === "number" ? Number(text) : text;
      const wrong = partsOf(record, value.pointer, value.field, slip, names);
      if (wrong.length === 0 || value.field.options?.includes(text) === false) continue;
      figures.slips++;
      if (!wrong.every((part) => stands(part, on))) figures.absent++;
      else if (isMisplaced(record, value, slip, reading)) figures.misplaced++;
    }
  };
  for (const [record, readings] of read)
    for (const reading of readings) {
      const text = textOf(reading.cited.original);
      if (text === undefined || "none" in text) continue;
      figures.values += reading.values;
      figures.notFound.push(...reading.absent.map(({ value }) => placeOf(record, value.pointer)));
      const on = pagesOf(text.pages.slice(reading.cited.from - 1, reading.cited.to).map(sheetOf));
      for (const { cited, values } of tasksIn(record, citedBy(record, names), { names, passed: () => false }))
        if (cited.pointer === reading.cited.pointer) for (const value of values) one(record, reading, on, value);
    }
  return figures;
}

/** A record's value with another at a place. */
function changedAt(value: JsonObject, pointer: string, to: Json): JsonObject {
  const steps = pointer.slice(1).split("/");
  const change = (at: Json | undefined, index: number): Json => {
    const [step] = steps.slice(index);
    if (step === undefined) return to;
    if (isList(at)) return at.map((item, place) => (place === Number(step) ? change(item, index + 1) : item));
    return isObject(at) ? { ...at, [step]: change(at[step], index + 1) } : to;
  };
  const changed = change(value, 0);
  return isObject(changed) ? changed : value;
}

describe.each([
  ["the receiver's book", () => sound, 3600, 4400, 0.99],
  ["the second vessel's book", () => judgedOnce(vesselBook), 2700, 3400, 0.985],
  ["the boiler's book", soundBoiler, 14_000, 17_000, 0.99],
] as const)("%s", (_, book, values, slips, share) => {
  const figures = figuresOf(book());

  test("every honest value is found on the page it cites", () => {
    expect(figures.notFound).toEqual([]);
    expect(figures.values).toBeGreaterThan(values);
  });

  test("nearly all values with two digits swapped are not, or not in their places", () => {
    expect(figures.slips).toBeGreaterThan(slips);
    expect((figures.absent + figures.misplaced) / figures.slips).toBeGreaterThan(share);
    expect(figures.misplaced).toBeGreaterThan(0);
  });

  test("a slip accuses no other value", () => expect(figures.accused).toEqual([]));

  test("what is tested is in its records as it was looked for", () => {
    const { graph, definitions } = book();
    const [record] = graph.byKind.get("material-certificate")?.values() ?? [];
    if (record === undefined) throw new Error("the book has no certificate");
    const found = transcribedValues(record, { graph, kinds: definitions.kinds });
    expect(found.length).toBeGreaterThan(30);
    for (const { pointer, value } of found) expect(atPointer(record.value, pointer)).toBe(value);
  });
});

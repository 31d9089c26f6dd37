import { describe, expect, test } from "vitest";
import { atPointer } from "../../src/model/json.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import type { TextsByPath } from "../../src/model/page-text.ts";
import type { BookRecord } from "../../src/model/record.ts";
import { pathNamedBy } from "../../src/model/shelf.ts";
import { pagesOf, stands } from "../../src/readback/search.ts";
import { citedBy } from "../../src/readback/record.ts";
import { sheetOf } from "../../src/readback/sheet.ts";
import { partsOf, transcribedValues, type Transcribed } from "../../src/readback/values.ts";
import { sound, soundBoiler } from "../support/demo-book.ts";

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
  caught: number;
}

/** Every value of a book with each of its slips, looked for as judging looks for it. */
function figuresOf({ graph, loaded, definitions: { kinds } }: JudgedBook): Figures {
  const names = { graph, kinds };
  const texts: TextsByPath = loaded.texts?.() ?? new Map<string, never>();
  const figures: Figures = { values: 0, notFound: [], slips: 0, caught: 0 };
  const one = (record: BookRecord, { pointer, field, value, parts }: Transcribed): void => {
    const [cited] = citedBy(record, names);
    const path = cited?.original.value["path"];
    const text =
      cited !== undefined && typeof path === "string" ? texts.get(pathNamedBy(cited.original, path)) : undefined;
    if (cited === undefined || text === undefined || "none" in text) return;
    const key = `${cited.original.id} ${cited.from} ${cited.to}`;
    const on = pages.get(key) ?? pagesOf(text.pages.slice(cited.from - 1, cited.to).map(sheetOf));
    pages.set(key, on);
    figures.values++;
    if (!parts.every((part) => stands(part, on))) figures.notFound.push(`${record.kind}:${record.id}${pointer}`);
    // A link to nothing is found by links, a choice that is none by the schema, a day that is none by its form.
    if (field.type === "link") return;
    for (const slip of swapped(String(value), field.type === "date")) {
      const wrong = partsOf(record, pointer, field, typeof value === "number" ? Number(slip) : slip, names);
      if (wrong.length === 0 || field.options?.includes(slip) === false) continue;
      figures.slips++;
      if (!wrong.every((part) => stands(part, on))) figures.caught++;
    }
  };
  const pages = new Map<string, ReturnType<typeof pagesOf>>();
  for (const record of graph.records) for (const value of transcribedValues(record, names)) one(record, value);
  return figures;
}

describe.each([
  ["the receiver's book", () => sound, 3600, 4400],
  ["the boiler's book", soundBoiler, 14_000, 17_000],
] as const)("%s", (_, book, values, slips) => {
  const figures = figuresOf(book());

  test("every honest value is found on the page it cites", () => {
    expect(figures.notFound).toEqual([]);
    expect(figures.values).toBeGreaterThan(values);
  });

  test("98 of 100 values with two digits swapped are not", () => {
    expect(figures.slips).toBeGreaterThan(slips);
    expect(figures.caught / figures.slips).toBeGreaterThan(0.98);
  });

  test("what is tested is in its records as it was looked for", () => {
    const { graph, definitions } = book();
    const [record] = graph.byKind.get("material-certificate")?.values() ?? [];
    if (record === undefined) throw new Error("the book has no certificate");
    const found = transcribedValues(record, { graph, kinds: definitions.kinds });
    expect(found.length).toBeGreaterThan(30);
    for (const { pointer, value } of found) expect(atPointer(record.value, pointer)).toBe(value);
  });
});

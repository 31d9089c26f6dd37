import { afterEach, describe, expect, test, vi } from "vitest";
import { shippedDefinitions } from "../../src/definitions.ts";
import { judge } from "../../src/judge/judge.ts";
import type { LoadedBook } from "../../src/model/book.ts";
import { readBook } from "../../src/pipeline.ts";
import type * as Notes from "../../src/reading/notes.ts";
import { demoBook } from "../support/demo-book.ts";
import { editBook } from "../support/edits.ts";
import { differing } from "../support/judged-text.ts";

const { kinds, texts: _texts, ...read } = readBook(demoBook);
const definitions = shippedDefinitions(kinds);

const byChance = (seed: number) => (book: LoadedBook) => editBook(book, kinds, seed).loaded;

/** A thinner shell course, which calculations read that read the part by no other way. */
const thinner = (book: LoadedBook): LoadedBook => ({
  ...book,
  records: book.records.map((record) =>
    record.kind === "part" && record.id === "P01"
      ? { ...record, value: { ...record.value, nominalThickness: "7.0 mm" } }
      : record,
  ),
});

/** A piece becomes another part, which the part it was finds by the link alone. */
const otherPart = (book: LoadedBook): LoadedBook => ({
  ...book,
  records: book.records.map((record) =>
    record.kind === "piece-mark" && record.value["part"] === "P01"
      ? { ...record, value: { ...record.value, part: "P02" } }
      : record,
  ),
});

/** What may be left out of the notes, and an edit that then goes unnoticed somewhere. */
const damages: readonly {
  readonly left: string;
  readonly without: Partial<typeof Notes>;
  readonly edit: (book: LoadedBook) => LoadedBook;
}[] = [
  { left: "places", without: { notePlace: () => undefined }, edit: byChance(2) },
  { left: "kinds", without: { noteKind: () => undefined }, edit: byChance(148) },
  { left: "links back", without: { noteBack: () => undefined }, edit: otherPart },
  // A result is noted with the places it rests on, and either note mostly does for both.
  { left: "results", without: { noteResult: () => undefined, notePlaceAt: () => undefined }, edit: thinner },
  { left: "doubts", without: { doubtsAt: () => "" }, edit: byChance(105) },
];

/** The proof of judging again proves something: with notes left out, books come out otherwise. */
describe("a memory that lacks one kind of note is found out", () => {
  afterEach(() => {
    vi.doUnmock("../../src/reading/notes.ts");
    vi.resetModules();
  });

  test.each(damages)("$left", async ({ without, edit }) => {
    vi.resetModules();
    vi.doMock("../../src/reading/notes.ts", async (original) => ({ ...(await original<typeof Notes>()), ...without }));
    const damaged = await import("../../src/judge/judge.ts");
    const { memory } = damaged.judgeRemembering(read, definitions);
    const isFound = (change: typeof edit) => {
      const loaded = change(read);
      return differing(judge(loaded, definitions), damaged.judgeAgain(memory, loaded, false).judged).length > 0;
    };
    // Another demonstration may need another edit: some of the first two hundred shows it.
    expect([edit, ...Array.from({ length: 200 }, (_, seed) => byChance(seed))].some(isFound)).toBe(true);
  });
});

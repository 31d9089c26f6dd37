import { describe, expect, test } from "vitest";
import { judge, judgeAgain, judgeRemembering } from "../../src/judge/judge.ts";
import type { Remembered } from "../../src/judge/again.ts";
import { readBook } from "../../src/pipeline.ts";
import { shippedDefinitions } from "../../src/definitions.ts";
import { boilerBook, demoBook, interimBook } from "../support/demo-book.ts";
import { editBook } from "../support/edits.ts";
import { differing } from "../support/judged-text.ts";

/** How many edits are tried, of all books together; more on demand. */
const edits = Number(process.env["DATABOOK_EDITS"] ?? 48);

const books = [
  { name: "receiver", dir: demoBook, share: 0.5, withPapers: true },
  { name: "interim receiver", dir: interimBook, share: 0.25, withPapers: true },
  // Reading back what so many papers say takes longer than all else.
  { name: "boiler", dir: boilerBook, share: 0.25, withPapers: false },
].map((book) => {
  const { kinds, ...loaded } = readBook(book.dir);
  const { texts, ...bare } = loaded;
  const read = { ...bare, ...(book.withPapers && texts !== undefined && { texts }) };
  const definitions = shippedDefinitions(kinds);
  let sound: Remembered | undefined;
  return { ...book, read, definitions, sound: () => (sound ??= judgeRemembering(read, definitions)) };
});

describe.each(books)("the $name judged again is judged alike", ({ share, read, definitions, sound }) => {
  const seeds = Array.from({ length: Math.ceil(edits * share) }, (_, seed) => seed);

  test("unchanged", () => {
    const { judged } = judgeAgain(sound().memory, read);
    expect(differing(judge(read, definitions), judged)).toEqual([]);
  });

  test.each(seeds)("after edit %i", (seed) => {
    const { loaded, done } = editBook(read, definitions.kinds, seed);
    const { judged } = judgeAgain(sound().memory, loaded, false);
    expect({ done, differing: differing(judge(loaded, definitions), judged) }).toEqual({ done, differing: [] });
  });

  test("after one edit upon another, each time from what was remembered last", () => {
    let before = sound();
    let loaded = read;
    for (const seed of seeds.slice(0, 6)) {
      loaded = { ...loaded, ...editBook(loaded, definitions.kinds, 1000 + seed).loaded };
      before = judgeAgain(before.memory, loaded);
    }
    expect(differing(judge(loaded, definitions), before.judged)).toEqual([]);
    // And back: what was remembered on the way speaks of the book as it was.
    expect(differing(judge(read, definitions), judgeAgain(before.memory, read).judged)).toEqual([]);
  });
});

import type { PlacedWord } from "../../src/model/page-text.ts";
import { pagesOf, type Pages } from "../../src/readback/search.ts";
import { sheetOf } from "../../src/readback/sheet.ts";

/** A page of lines; two blanks part cells, as columns of a table do. */
export function page(...lines: readonly string[]): Pages {
  const words: PlacedWord[] = lines.flatMap((line, row) =>
    [...line.matchAll(/\S+/g)].map((match): PlacedWord => [
      match[0],
      match.index * 5,
      row * 14,
      match[0].length * 5,
      8,
    ]),
  );
  return pagesOf([sheetOf({ words, unseen: false })]);
}

import type { Pages } from "./search.ts";
import type { Part } from "./wanted.ts";

const wordPattern = /[<>]?[-\u2013]?[\p{L}\p{N}][\p{L}\p{N}.,/:-]*/gu;

/**
 * The word of the pages that is most like what was looked for: digits changed places, one is another, one is missing. Words
 * that the record's other values account for come last. Undefined where nothing is near.
 */
export function nearestTo(part: Part, { sheets }: Pages, claimed: ReadonlySet<string>): string | undefined {
  const wanted = part.first;
  const most = wanted.length < 3 ? 1 : 2;
  let best: { readonly word: string; readonly distance: number } | undefined;
  const seen = new Set<string>();
  for (const { cells } of sheets)
    for (const { text } of cells)
      for (const [found] of text.matchAll(wordPattern)) {
        const word = found.replace(/[.,:]$/, "");
        if (seen.has(word) || Math.abs(word.length - wanted.length) > 1) continue;
        seen.add(word);
        const distance =
          unlikeness(word.toUpperCase().replace(",", "."), wanted) + (claimed.has(word.toUpperCase()) ? 0.5 : 0);
        if (distance > 0 && distance <= most && distance < (best?.distance ?? Infinity)) best = { word, distance };
      }
  return best?.word;
}

/** Signs to change, leave out, put in or let change places (optimal string alignment). */
function unlikeness(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, index) => index)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      const at = (r: number, c: number) => rows[r]?.[c] ?? Infinity;
      let least = Math.min(at(i - 1, j) + 1, (row[j - 1] ?? Infinity) + 1, at(i - 1, j - 1) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, at(i - 2, j - 2) + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length]?.[b.length] ?? Infinity;
}

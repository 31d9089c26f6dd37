import type { Pages } from "./search.ts";
import type { Part } from "./wanted.ts";

const wordPattern = /[<>]?[-\u2013]?[\p{L}\p{N}][\p{L}\p{N}.,/:-]*/gu;

/** Of words shorter than this another is always near, and says nothing. */
const leastSigns = 3;

/**
 * The word of the pages that is most like what was looked for: digits changed places, one is another, one is missing; of a long
 * word two. A word that the record's other values account for is none, and where several are as near nobody can say which is
 * meant. Undefined then, and where nothing is near.
 */
export function nearestTo(part: Part, { sheets }: Pages, claimed: ReadonlySet<string>): string | undefined {
  const wanted = part.first;
  if (wanted.length < leastSigns) return undefined;
  const most = wanted.length < 6 ? 1 : 2;
  let least = most + 1;
  const words = new Map<string, number>();
  for (const { cells } of sheets)
    for (const { text } of cells)
      for (const [found] of text.matchAll(wordPattern)) {
        const word = found.replace(/[.,:]$/, "");
        if (words.has(word) || claimed.has(word.toUpperCase()) || Math.abs(word.length - wanted.length) > 1) continue;
        const spelled = word.toUpperCase().replace(",", ".");
        // A wire W12 is not the number 112: beside digits the other signs are the same.
        if (/\d/.test(wanted) && besideDigits(spelled) !== besideDigits(wanted)) continue;
        const distance = unlikeness(spelled, wanted);
        words.set(word, distance);
        if (distance > 0) least = Math.min(least, distance);
      }
  const [only, ...more] = [...words].filter(([, distance]) => distance === least);
  return only === undefined || more.length > 0 || least > most ? undefined : only[0];
}

const besideDigits = (word: string) => Array.from(word.replaceAll(/\d/g, "")).sort().join("");

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

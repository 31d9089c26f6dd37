import type { PlacedWord } from "../../model/page-text.ts";

/** A run of text as the PDF library gives it: what it says, where it begins and how it is turned, how long it is. */
export interface TextRun {
  readonly str: string;
  readonly transform: readonly unknown[];
  readonly width: number;
  readonly height: number;
}

const tenth = (value: number) => Math.round(value * 10) / 10;

/**
 * Words of a page from its runs. A run that is turned is read along its own direction, so that lines of a page that lies on
 * its side are lines too. A word's part of a run is taken by its share of the signs: near enough to tell columns.
 */
export function wordsOf(runs: readonly TextRun[]): PlacedWord[] {
  const words: PlacedWord[] = [];
  for (const { str, transform, width, height } of runs) {
    const [a = 1, b = 0, , , e = 0, f = 0] = transform.map((one) => (typeof one === "number" ? one : 0));
    const size = Math.hypot(a, b);
    const [across, up] = size === 0 ? [1, 0] : [a / size, b / size];
    const x = e * across + f * up;
    const y = e * up - f * across;
    const each = str.length === 0 ? 0 : width / str.length;
    for (const match of str.matchAll(/[^\s\u00a0\u2000-\u200a\u202f]+/g))
      words.push([match[0], tenth(x + each * match.index), tenth(y), tenth(each * match[0].length), tenth(height)]);
  }
  return words;
}

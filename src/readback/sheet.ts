import type { PageText, PlacedWord } from "../model/page-text.ts";

/** A run of words that stand together on one line: what a column of a table or a field of a form holds. */
export interface Cell {
  /** Words as they stand, with single blanks. */
  readonly text: string;
  readonly x: number;
  readonly end: number;
  readonly y: number;
  readonly height: number;
  readonly words: readonly Word[];
}

/** A word of a cell, as it is compared, and where it stands. */
export interface Word {
  readonly folded: string;
  readonly x: number;
  readonly end: number;
  /** Painted on to the word before it, without a blank. */
  readonly goesOn: boolean;
}

/**
 * The text of a page as it is searched: all cells one after the other without blanks, in capitals, with dashes and signs in
 * one form; and where a word of it may begin or end.
 */
export interface Sheet {
  readonly cells: readonly Cell[];
  readonly text: string;
  /** Before the sign of that index: 2 after a blank, 1 where a whole word may begin or end without one, else 0. */
  readonly edges: Uint8Array;
  /** Index of the first sign of each cell. */
  readonly firstOf: readonly number[];
}

const between = "\u0001";

/** Lays out the words of a page in cells, and makes them searchable. */
export function sheetOf(page: PageText): Sheet {
  return searchable(cellsOf(page.words));
}

/** Words of one line less than this share of their height apart belong together. */
const nextWord = 0.75;

function cellsOf(words: readonly PlacedWord[]): Cell[] {
  const lines: PlacedWord[][] = [];
  for (const word of [...words].sort((a, b) => a[2] - b[2])) {
    const line = lines.at(-1);
    const [first] = line ?? [];
    if (line !== undefined && first !== undefined && Math.abs(word[2] - first[2]) <= Math.max(1, first[4] * 0.25))
      line.push(word);
    else lines.push([word]);
  }
  return lines.flatMap((line) => {
    const cells: { text: string; x: number; end: number; y: number; height: number; words: Word[] }[] = [];
    for (const [text, x, y, width, height] of line.sort((a, b) => a[1] - b[1])) {
      const cell = cells.at(-1);
      const gap = cell === undefined ? Infinity : x - cell.end;
      if (cell !== undefined && gap < nextWord * Math.max(height, 4) && gap > -height) {
        // A word that was painted in pieces is one word.
        const goesOn = gap < 0.1 * height;
        cell.text += goesOn ? text : ` ${text}`;
        cell.end = x + width;
        cell.words.push({ folded: folded(text), x, end: x + width, goesOn });
      } else {
        const words = [{ folded: folded(text), x, end: x + width, goesOn: false }];
        cells.push({ text, x, end: x + width, y, height, words });
      }
    }
    return cells;
  });
}

function searchable(cells: readonly Cell[]): Sheet {
  const lines = cells.map(({ words }) => words.map(({ folded, goesOn }) => (goesOn ? folded : ` ${folded}`)).join(""));
  const edges = new Uint8Array(lines.reduce((sum, { length }) => sum + length + 1, 1));
  const firstOf: number[] = [];
  let signs = 0;
  for (const line of lines) {
    firstOf.push(signs);
    let blank = true;
    for (let at = 0; at < line.length; at++) {
      if (line.charCodeAt(at) === 32) {
        blank = true;
        continue;
      }
      edges[signs++] = blank ? 2 : isEdge(line, at) ? 1 : 0;
      blank = false;
    }
    edges[signs++] = 2;
  }
  edges[signs++] = 2;
  const text = lines.map((line) => line.replaceAll(" ", "") + between).join("");
  return { cells, text, edges: edges.subarray(0, signs), firstOf };
}

/** The cell in which the sign at an index of a sheet stands: its index. */
export function cellAt({ firstOf }: Sheet, at: number): number {
  let [low, high] = [0, firstOf.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((firstOf[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Text in the one form it is compared in: capitals, hyphens and minus signs alike, full-width and small signs plain. */
export const folded = (text: string): string => (isPlain(text) ? text.toUpperCase() : foldedSigns(text));

const foldedSigns = (text: string): string =>
  text
    .normalize("NFKC")
    .toUpperCase()
    .replaceAll(/[\u2010-\u2015\u2212]/g, (dash) => (dash === "\u2013" || dash === "\u2014" ? "\u2013" : "-"))
    .replaceAll("\u03bc", "\u00b5")
    .replaceAll("\u039c", "\u00b5");

/** Only ASCII: most of every paper. */
function isPlain(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) > 126) return false;
  return true;
}

// Of an ASCII sign: 1 a figure, 2 a capital letter, 0 anything else. Texts are folded before they are looked at.
const sortOf = (code: number): 0 | 1 | 2 => (code >= 48 && code <= 57 ? 1 : code >= 65 && code <= 90 ? 2 : 0);

/** Whether a word may end before the sign at `at` of a text and another begin there, though no blank parts them. */
function isEdge(text: string, at: number): boolean {
  const [left, right] = [sortOf(text.charCodeAt(at - 1)), sortOf(text.charCodeAt(at))];
  // Between two of these only what follows a number begins anew; the rest is about other signs.
  if (left !== 0 && right !== 0) return left === 1 && right === 2;
  const before = text.charAt(at - 1);
  const sign = text.charAt(at);
  // A standard and its edition; hours and minutes stay one word.
  if (sign === ":" || before === ":") {
    const clock = /(?:^|\D)\d{1,2}:\d{2}(?!\d)/.test(text.slice(Math.max(0, at - 4), at + 4));
    return !clock;
  }
  if (/[.,:]/.test(sign)) return !/\d/.test(text.charAt(at + 1)) || !/\d/.test(before);
  if (/[.,:]/.test(before)) return !/\d/.test(sign) || !/\d/.test(text.charAt(at - 2));
  if (sign === "\u2013" || before === "\u2013") return true;
  // A number and what it is multiplied or followed by: 12MM, Ø12, 2×M16.
  if (/[^\p{L}\p{N}.,:-]/u.test(sign) || /[^\p{L}\p{N}.,:<>-]/u.test(before)) return true;
  return /\d/.test(before) && /[\p{L}]/u.test(sign);
}

/** Places of a text on a sheet where it stands as whole words: indexes into `text` of the sheet. */
export function placesOf({ text, edges }: Sheet, wanted: string): number[] {
  const found: number[] = [];
  if (wanted === "") return found;
  for (let at = text.indexOf(wanted); at >= 0; at = text.indexOf(wanted, at + 1))
    if (edges[at] !== 0 && edges[at + wanted.length] !== 0) found.push(at);
  return found;
}

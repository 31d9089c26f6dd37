import { refuse, type Unreadable } from "./unreadable.ts";

const MB = 1024 * 1024;

/** What is read of one sheet file, at most. Counts only: they are the same on every machine. */
export interface SheetLimits {
  readonly bytes: number;
  /** Parts of the archive. */
  readonly parts: number;
  /** Bytes that one part may unpack to, and all of them together. */
  readonly part: number;
  readonly expanded: number;
  /** Elements of XML inside each other. */
  readonly depth: number;
  readonly sheets: number;
  readonly rows: number;
  /** Cells of all sheets, those covered by merged ranges among them. */
  readonly cells: number;
  /** Texts that cells share. */
  readonly strings: number;
  /** Signs of one text. */
  readonly text: number;
  /** Signs of all texts. */
  readonly signs: number;
  /** Merged ranges and ranges of formulas. */
  readonly ranges: number;
  readonly styles: number;
  /** Signs of one number format. */
  readonly format: number;
}

export const usualSheetLimits: SheetLimits = {
  bytes: 64 * MB,
  parts: 2000,
  part: 256 * MB,
  expanded: 512 * MB,
  depth: 64,
  sheets: 256,
  rows: 1_048_576,
  cells: 2_500_000,
  strings: 1_000_000,
  text: 32_767,
  signs: 128 * MB,
  ranges: 100_000,
  styles: 65_536,
  format: 255,
};

const counted = (count: number) => String(count).replace(/\B(?=(\d{3})+$)/g, "\u00a0");
const megabytes = (bytes: number) => `${counted(Math.round(bytes / MB))} MB`;

export type Counted = "parts" | "sheets" | "rows" | "cells" | "strings" | "ranges" | "styles" | "signs";

const words: Readonly<Record<Counted, string>> = {
  parts: "parts",
  sheets: "sheets",
  rows: "rows",
  cells: "cells",
  strings: "texts",
  ranges: "ranges",
  styles: "cell styles",
  signs: "signs of text",
};

/** Counts what the reading of one file has used, and refuses the file when it is too much. */
export interface SheetBudget {
  readonly limits: SheetLimits;
  spend(what: Counted, count?: number): void;
  /** Refuses a text of more signs than a cell holds. */
  text(length: number, place: string): void;
}

export function newSheetBudget(limits: SheetLimits = usualSheetLimits): SheetBudget {
  const used: Record<Counted, number> = {
    parts: 0,
    sheets: 0,
    rows: 0,
    cells: 0,
    strings: 0,
    ranges: 0,
    styles: 0,
    signs: 0,
  };
  return {
    limits,
    spend(what, count = 1) {
      used[what] += count;
      if (used[what] > limits[what])
        throw tooMuch(`holds more than ${counted(limits[what])} ${words[what]}`, "divide it into several files");
    },
    text(length, place) {
      if (length > limits.text)
        throw tooMuch(`holds a text of more than ${counted(limits.text)} signs`, "shorten the text", place);
    },
  };
}

/** The refusal of a file that asks for more than is read of any. */
export const tooMuch = (what: string, hint: string, place?: string): Unreadable =>
  refuse(`the file ${what}`, "no sheet of a shop needs so much, and a hostile file would", hint, place);

export const tooLarge = (limit: number, what = "is larger than"): Unreadable =>
  tooMuch(`${what} ${megabytes(limit)}`, "save the sheet that is wanted alone, or divide it into several files");

/**
 * A spreadsheet as a person sees it: cells by row, each with the text it shows. Nothing of it is interpreted here; what
 * cannot be taken without a guess says so in words, as a fault of its cell, and the rest of the file is read all the same.
 *
 * - **Blank** cells (without value, or with an empty text that no formula gave) are not listed.
 * - **Merged**: the value belongs to the first cell of the range, for its own row and column alone; that cell has a note.
 *   The others are listed as `covered`, with a fault, wherever their row holds anything: a blank would be a guess, and so
 *   would be the value repeated.
 * - **Hidden** rows, columns and sheets are read like all others, and marked: a filter left on takes nothing away.
 * - **Errors** (`#N/A`) and cells that show `#####` have a fault, and so has a formula without a stored value.
 * - A **formula** is taken by the value stored with it, with a note. Nothing is calculated here.
 * - A **number** is read as it is displayed: see `Cell.figure`.
 */
export interface Workbook {
  readonly form: "xlsx" | "csv";
  /** In the order of the tabs; a CSV file is one sheet, named like the file. */
  readonly sheets: readonly Sheet[];
  /** What the file holds and is left unread, in words: "links to other workbooks". */
  readonly leftOut: readonly string[];
}

export interface Sheet {
  readonly name: string;
  readonly hidden: boolean;
  /** Rows that hold anything, from the top. */
  readonly rows: readonly Row[];
  readonly merges: readonly Range[];
  /** Numbers of hidden rows that hold anything, and of hidden columns up to the last that is used. */
  readonly hiddenRows: readonly number[];
  readonly hiddenColumns: readonly number[];
}

/** Its cells are made anew whenever they are read: a large sheet would not find room as objects. */
export interface Row {
  /** Counted from 1, as the program shows it; of a CSV file the number of the record, blank ones counted. */
  readonly row: number;
  /** Of a CSV file: the line of the file where the record begins, which is what an editor shows. */
  readonly line?: number;
  readonly hidden: boolean;
  /** From the left; blank cells are not among them. */
  readonly cells: readonly Cell[];
}

/** Rows and columns of a range, both ends included, counted from 1; `text` as a program writes it: `B2:B4`. */
export interface Range {
  readonly text: string;
  readonly rows: readonly [first: number, last: number];
  readonly columns: readonly [first: number, last: number];
}

/** `covered`: no cell of its own, but a part of a merged range. Cells of a CSV file are all `text`. */
export type CellType = "text" | "number" | "date" | "boolean" | "error" | "covered";

export interface Cell {
  readonly row: number;
  /** Counted from 1. */
  readonly column: number;
  readonly type: CellType;
  /**
   * What the cell shows, in the neutral form that files store (point as decimal sign, comma between thousands, `TRUE`,
   * English names of months); null where that cannot be told: then `fault` says why.
   */
  readonly shown: string | null;
  /** What is stored: digits of a number or of a day's serial number as they stand in the file, text as it is. */
  readonly raw: string | null;
  /** The number format: `General`, `0.0`, `@`; of a CSV file always `@`. */
  readonly format: string;
  /**
   * Of a number: the digits it shows as a quantity is written, without thousands' signs, the decimal sign a point, `%`
   * after a blank: `1234.50`, `14.1 %`. Never subject to how the sheet's people write decimals. Absent beside a fault.
   */
  readonly figure?: string;
  /** Of a true date cell: its calendar day, `2026-03-09`. Absent beside a fault. */
  readonly day?: string;
  /** The formula as stored; empty where the file shares it with a neighbour. */
  readonly formula?: string;
  /** Why the cell cannot be taken, and what to do, in words: "shows the error #N/A: …". */
  readonly fault?: string;
  /** What a reader is told of a cell that is taken: a formula, digits behind those shown, a merged range. */
  readonly note?: string;
}

/** Why a file cannot be read, or a sheet not be written, at all. */
export interface SheetFault {
  /** "the file is under a password". */
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  /** Where in the file: "sheet Shell, row 14"; "line 7". */
  readonly place?: string;
}

export type Delimiter = "," | ";" | "\t";

export interface ReadOptions {
  /**
   * Of a CSV file, where the file leaves a doubt: without it the delimiter is the one of the three that alone divides all
   * records into as many fields.
   */
  readonly delimiter?: Delimiter;
}

/** A sheet to write: a row of headings that stays in sight, and texts below it. */
export interface SheetToWrite {
  /** Of the tab: at most 31 signs, none of `[]:*?/\`. */
  readonly name: string;
  readonly columns: readonly ColumnToWrite[];
  /** As many cells as columns, or fewer; an empty text is a blank cell. */
  readonly rows: readonly (readonly (string | CellToWrite)[])[];
}

export interface ColumnToWrite {
  readonly heading: string;
  /** What the field means, shown when the pointer rests on the heading. */
  readonly note?: string;
  /** Signs that find room; without it as wide as what the column holds, within reason. */
  readonly width?: number;
  /** A list to choose from; other texts are still accepted after a warning, since the import judges them. */
  readonly choices?: readonly string[];
}

export interface CellToWrite {
  readonly text: string;
  /** Known already and filled in: shaded. */
  readonly known?: boolean;
}

/** Whether reading or writing came to nothing. */
export const isSheetFault = (result: Workbook | Uint8Array | SheetFault): result is SheetFault => "hint" in result;

import type { Range } from "./cells.ts";

/** The last row and column a spreadsheet program has. */
export const lastRow = 1_048_576;
export const lastColumn = 16_384;

/** The letters of a column counted from 1: 1 is `A`, 28 is `AB`. */
export function columnName(column: number): string {
  let name = "";
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26))
    name = String.fromCharCode(65 + ((left - 1) % 26)) + name;
  return name;
}

/** The address of a cell, both counted from 1: `B7`. */
export const cellName = (row: number, column: number): string => `${columnName(column)}${row}`;

/** Row and column of an address such as `B7` or `$B$7`; undefined for anything a program would not write. */
export function cellAt(address: string): { readonly row: number; readonly column: number } | undefined {
  const match = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/.exec(address);
  if (match === null) return undefined;
  let column = 0;
  for (const letter of match[1] ?? "") column = column * 26 + letter.charCodeAt(0) - 64;
  const row = Number(match[2]);
  return row <= lastRow && column <= lastColumn ? { row, column } : undefined;
}

/** A range such as `B2:B4`, or of one cell; undefined for anything else. */
export function rangeAt(text: string): Range | undefined {
  const [from = "", to = from, ...more] = text.split(":");
  const [first, last] = [cellAt(from), cellAt(to)];
  if (first === undefined || last === undefined || more.length > 0) return undefined;
  if (last.row < first.row || last.column < first.column) return undefined;
  return { text, rows: [first.row, last.row], columns: [first.column, last.column] };
}

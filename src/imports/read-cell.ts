import type { Json } from "../model/json.ts";
import type { Reading } from "./map.ts";
import type { Template } from "./template.ts";

/** The kinds under which the book, or a row of the workbook, has an id; and those that are meant where it stands alone. */
export type KindsOf = (id: string) => { readonly all: ReadonlySet<string>; readonly meant: ReadonlySet<string> };

/** How the cells of one column are read. */
export interface ColumnReading extends Reading {
  /** Of the map or the heading. */
  readonly unit?: string;
  readonly form?: Template;
  readonly columnWords: ReadonlyMap<string, string>;
  readonly asShown: boolean;
  /** Every cell is text: what a spreadsheet made of it before it was saved cannot be told from its type. */
  readonly csv: boolean;
  readonly kindsOf: KindsOf;
}

/** What came of reading a cell in a field. */
export type CellValue =
  | { readonly type: "value"; readonly value: Json }
  | { readonly type: "blank" }
  | { readonly type: "fault"; readonly fault: string; readonly hint: string };

export const blank: CellValue = { type: "blank" };
export const fault = (said: string, hint: string): CellValue => ({ type: "fault", fault: said, hint });
export const value = (one: Json): CellValue => ({ type: "value", value: one });

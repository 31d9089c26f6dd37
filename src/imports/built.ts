import type { Json } from "../model/json.ts";
import type { Field } from "../model/kind.ts";
import type { CellAt } from "./faults.ts";

/** What a sheet says of one record, before it is laid over what the book holds: a tree in the shape of the record. */
export type Built = BuiltObject | BuiltRows | BuiltItems | BuiltValue;

export interface BuiltObject {
  readonly type: "object";
  readonly members: Map<string, Built>;
}

export interface BuiltRows {
  readonly type: "rows";
  readonly field: Field;
  readonly rows: Map<string, BuiltRow>;
}

export interface BuiltRow {
  /** How the row is found in the record: by its name, by fields, or by where it stands (counted from 0). */
  readonly by: RowMark;
  readonly object: BuiltObject;
  readonly at: CellAt;
}

export type RowMark =
  | { readonly type: "name"; readonly name: string }
  | { readonly type: "fields"; readonly equals: readonly (readonly [name: string, value: string])[] }
  | { readonly type: "position"; readonly index: number };

export interface BuiltItems {
  readonly type: "items";
  /** By the row of the sheet they stand in. */
  readonly byRow: Map<string, { readonly value: Json; readonly at: CellAt }[]>;
  /** One list over all rows of the sheet; else each row says the whole list. */
  readonly grows: boolean;
}

export interface BuiltValue {
  readonly type: "value";
  readonly value: Json;
  readonly at: CellAt;
}

export const emptyObject = (): BuiltObject => ({ type: "object", members: new Map() });

/** A place of a cell in words: "row 14, Thickness". */
export const atWords = ({ row, heading }: CellAt): string =>
  `row ${row}${heading === undefined ? "" : `, "${heading}"`}`;

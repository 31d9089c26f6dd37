import type { FieldPath } from "./field-path.ts";
import type { Template } from "./template.ts";
import type { Kind } from "../model/kind.ts";
import type { Field } from "../model/kind.ts";

/** What a shop calls things: one sheet of a workbook, one kind. Read from `imports/<name>.json`, checked against the kind. */
export interface SheetMap {
  readonly kind: Kind;
  /** Fields as sheets show them. */
  readonly fields: ReadonlyMap<string, Field>;
  readonly sheet?: string;
  /** Row of the headings. */
  readonly head: number;
  readonly id?: Template;
  /** Paths of lists that take one item from each row of the sheet. */
  readonly group: ReadonlySet<string>;
  readonly reading: Reading;
  readonly columns: ReadonlyMap<string, ColumnMap>;
  readonly set: readonly SetValue[];
  readonly ignore: ReadonlySet<string>;
  readonly skip: ReadonlyMap<string, ReadonlySet<string>>;
}

/** How texts of a sheet are read. */
export interface Reading {
  readonly decimal?: string;
  readonly grouping?: string;
  readonly dates?: DateOrder;
  readonly offset?: string;
  readonly words: ReadonlyMap<string, string>;
}

export type DateOrder = "day-month-year" | "month-day-year" | "year-month-day";

export interface ColumnMap {
  /** Undefined: the map does not say yet. */
  readonly to?: FieldPath;
  readonly unit?: string;
  readonly form?: Template;
  readonly split?: string;
  readonly words: ReadonlyMap<string, string>;
  /** Numbers for a field of text are complete as they are shown. */
  readonly asShown: boolean;
}

export interface SetValue {
  readonly to: FieldPath;
  readonly value: Template;
}

/** What is wrong with a map, at a place in its file. */
export interface MapFault {
  readonly pointer: string;
  readonly message: string;
  readonly hint: string;
}

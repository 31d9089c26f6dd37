import { atPointer, isList, isObject, pointerStep, type Json, type JsonObject } from "../../model/json.ts";
import { fieldAt, type Field, type Kind } from "../../model/kind.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Cell, Inline, Text } from "../blocks.ts";
import type { Context } from "./context.ts";
import { listed } from "./listed.ts";
import { termOf, textOf } from "./values.ts";

/** A column of a table of records: a path, and of a list that is told apart by a term ("party") one of its rows. */
export interface ListColumn {
  readonly path: string;
  readonly field: Field;
  readonly row?: { readonly key: string; readonly name: string };
}

/**
 * Columns a path makes: one; but a list whose rows are named by a term from a list becomes a column for each row name
 * that occurs, so that a plan shows what each party does beside the others.
 */
export function columnsOf(kind: Kind, path: string, records: readonly BookRecord[]): readonly ListColumn[] {
  const field = fieldAt(kind, path);
  if (field === undefined) return [];
  const [list = "", inner = ""] = path.split("[].");
  const rows = fieldAt(kind, list);
  const key = rows?.rowKey;
  const names = key === undefined ? undefined : rows?.item?.fields?.get(key)?.options;
  if (inner === "" || key === undefined || names === undefined || inner === key) return [{ path, field }];
  const used = new Set(records.flatMap(({ value }) => rowsAt(value, list).map((row) => row[key])));
  return names.filter((name) => used.has(name)).map((name) => ({ path, field, row: { key, name } }));
}

/** Pointers a path leads to, through lists. */
export function pointersAt(value: JsonObject, path: string, row?: ListColumn["row"]): readonly string[] {
  let pointers = [""];
  for (const step of path.split(".")) {
    const name = step.replace(/\[\]$/, "");
    pointers = pointers.map((pointer) => pointer + pointerStep(name));
    if (step.endsWith("[]"))
      pointers = pointers.flatMap((pointer) => {
        const list = atPointer(value, pointer);
        return (isList(list) ? list : []).flatMap((one, index) =>
          row === undefined || (isObject(one) && one[row.key] === row.name) ? [`${pointer}/${index}`] : [],
        );
      });
  }
  return pointers.filter((pointer) => atPointer(value, pointer) !== undefined);
}

const most = 8;

/** What a column says of a record: each value once, and with a row of its own the day beside it. */
export function listCell(context: Context, record: BookRecord, { path, field, row }: ListColumn): Cell {
  const said = new Map<string, Text>();
  for (const pointer of pointersAt(record.value, path, row)) {
    const text = textOf(context, record, field, atPointer(record.value, pointer) ?? null, pointer);
    const full = row === undefined ? text : [...text, ...dayBeside(record.value, pointer)];
    said.set(JSON.stringify(full), full);
  }
  if (said.size === 0) return { type: "empty" };
  return { type: "text", text: listed([...said.values()], most) };
}

function dayBeside(value: JsonObject, pointer: string): Inline[] {
  const holder = atPointer(value, pointer.replace(/\/[^/]+$/, ""));
  const day = isObject(holder) ? holder["date"] : undefined;
  return typeof day === "string" ? [", ", { type: "whole", text: day.slice(0, 10) }] : [];
}

/** "Point, inspection body" for one row of a list. */
export const headOf = (label: string, row: ListColumn["row"]): string =>
  row === undefined ? label : termOf(row.name).replace(/^./, (first) => first.toUpperCase());

const rowsAt = (value: JsonObject, list: string): readonly JsonObject[] => {
  const rows: Json | undefined = value[list];
  return (isList(rows) ? rows : []).filter(isObject);
};

import { fieldSteps, isEachStep, lastName, stepName } from "../../model/field-steps.ts";
import { atPointer, isList, isObject, pointerStep, type Json, type JsonObject, holderOf } from "../../model/json.ts";
import { fieldAt, type Field, type Kind } from "../../model/kind.ts";
import type { BookRecord } from "../../model/record.ts";
import type { Cell, Inline, Text } from "../blocks.ts";
import { grouped } from "../../model/grouped.ts";
import { plain, type Context } from "./context.ts";
import { listed } from "./listed.ts";
import { termOf, textOf } from "./values.ts";

/** A column of a table of records: a path, and of a list that is told apart by a term ("party") one of its rows. */
export interface ListColumn {
  readonly path: string;
  readonly field: Field;
  readonly row?: { readonly key: string; readonly name: string };
  /** Further fields of that row, said in the same cell. */
  readonly also?: readonly Pick<ListColumn, "path" | "field">[];
}

/**
 * Columns the paths of a kind make: one each; but a list whose rows are named by a term from a list becomes a column for each
 * row name that occurs, with all that is asked of the row, so that a plan shows what each party does beside the others.
 */
export function columnsOf(kind: Kind, records: readonly BookRecord[]): readonly ListColumn[] {
  const asked = kind.columns.flatMap((path): readonly Pick<ListColumn, "path" | "field">[] => {
    const field = path === "id" ? undefined : fieldAt(kind, path);
    return field === undefined ? [] : [{ path, field }];
  });
  return [...grouped(asked, ({ path }) => namedList(kind, path) ?? path)].flatMap(([list, own]) => {
    const { key = "", names = [] } = rowNames(kind, list) ?? {};
    const [first, ...also] = own.filter(({ path }) => path !== `${list}[].${key}`);
    if (first === undefined || names.length === 0) return own;
    const used = new Set(records.flatMap(({ value }) => rowsAt(value, list).map((row) => row[key])));
    return names.filter((name) => used.has(name)).map((name) => ({ ...first, row: { key, name }, also }));
  });
}

/** The list a path leads into, where its rows are named by a term. */
function namedList(kind: Kind, path: string): string | undefined {
  const [list = "", inner] = path.split("[].");
  return inner !== undefined && rowNames(kind, list) !== undefined ? list : undefined;
}

function rowNames(kind: Kind, list: string) {
  const rows = fieldAt(kind, list);
  const key = rows?.rowKey;
  const names = key === undefined ? undefined : rows?.item?.fields?.get(key)?.options;
  return key === undefined || names === undefined ? undefined : { key, names };
}

/** Pointers a path leads to, through lists. */
export function pointersAt(value: JsonObject, path: string, row?: ListColumn["row"]): readonly string[] {
  let pointers = [""];
  for (const step of fieldSteps(path)) {
    pointers = pointers.map((pointer) => pointer + pointerStep(stepName(step)));
    if (isEachStep(step))
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
export function listCell(context: Context, record: BookRecord, column: ListColumn): Cell {
  const { path, field, row, also = [] } = column;
  const said = new Map<string, Text>();
  const textAt = (of: Field, pointer: string): Text => {
    const value = atPointer(record.value, pointer) ?? null;
    // Of a row the day is enough; its page has the hour.
    if (row !== undefined && of.type === "date") return [{ type: "whole", text: plain(value).slice(0, 10) }];
    return textOf(context, record, of, value, pointer);
  };
  for (const pointer of pointersAt(record.value, path, row)) {
    const beside = also.flatMap((one) => {
      const at = holderOf(pointer) + pointerStep(lastName(one.path));
      return atPointer(record.value, at) === undefined ? [] : [", ", ...textAt(one.field, at)];
    });
    const day = also.some((one) => one.field.type === "date") ? [] : dayBeside(record.value, pointer);
    const full = row === undefined ? textAt(field, pointer) : [...textAt(field, pointer), ...beside, ...day];
    said.set(JSON.stringify(full), full);
  }
  if (said.size === 0) return { type: "empty" };
  return { type: "text", text: listed([...said.values()], most) };
}

function dayBeside(value: JsonObject, pointer: string): Inline[] {
  const holder = atPointer(value, holderOf(pointer));
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

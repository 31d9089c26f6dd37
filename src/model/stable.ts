import { createHash } from "node:crypto";
import { atPointer, isList, isObject, type Json, type JsonObject, pointerStep, stepsOf } from "./json.ts";
import type { Field, Kind } from "./kind.ts";

/** First 16 hex digits of the SHA-256 of a text: enough to notice that a value changed. */
export function digestOf(text: string): string {
  return createHash("sha256").update(text, "utf8").digest("hex").slice(0, 16);
}

/**
 * A pointer in words that survive an insertion: rows by their key instead of their index, plain list items by their
 * value. `/rows/1/chemistry/0/value` becomes `rows[84613].chemistry[C].value`.
 */
export function stablePath(kind: Pick<Kind, "fields">, value: JsonObject, pointer: string): string {
  return stableSteps(kind, value, pointer)
    .map(({ name, row }, index) => (row ? `[${name}]` : index === 0 ? name : `.${name}`))
    .join("");
}

interface StableStep {
  readonly name: string;
  /** The name is that of a row or item of a list, not of a field. */
  readonly row: boolean;
}

function stableSteps(kind: Pick<Kind, "fields">, value: JsonObject, pointer: string): readonly StableStep[] {
  let fields: ReadonlyMap<string, Field> | undefined = kind.fields;
  let field: Field | undefined;
  let at = "";
  return stepsOf(pointer).map((step) => {
    at += pointerStep(step);
    const list = field?.type === "list" && /^\d+$/.test(step) ? field : undefined;
    field = list === undefined ? fields?.get(step) : list.item;
    fields = field?.fields;
    if (list === undefined) return { name: step, row: false };
    return { name: rowName(list, atPointer(value, at)) ?? step, row: true };
  });
}

/**
 * A pointer as plain words for keys: `rows (84613) chemistry (C) value`. Like `stablePath` it survives an insertion, and
 * holds nothing of the path language.
 */
export function stableName(kind: Pick<Kind, "fields">, value: JsonObject, pointer: string): string {
  return stableSteps(kind, value, pointer)
    .map(({ name, row }) => (row ? `(${name})` : name))
    .join(" ");
}

/** The field a pointer leads to, through objects and lists; undefined where the schema knows none. */
export function fieldOfPointer(
  fields: ReadonlyMap<string, Field> | undefined,
  value: JsonObject,
  pointer: string,
): Field | undefined {
  let field: Field | undefined;
  let inner = fields;
  let here: Json | undefined = value;
  for (const step of stepsOf(pointer)) {
    if (isList(here)) field = field?.item;
    else field = inner?.get(step);
    here = isList(here) ? here[Number(step)] : isObject(here) ? here[step] : undefined;
    inner = field?.fields;
  }
  return field;
}

/** What identifies a row of a list: its `row`, else its row key, else (of plain values) the value itself. */
export function rowName(listField: Field, row: Json | undefined): string | undefined {
  if (isObject(row)) {
    const key = row["row"] ?? (listField.rowKey === undefined ? undefined : row[listField.rowKey]);
    return typeof key === "string" || typeof key === "number" ? String(key) : undefined;
  }
  return typeof row === "string" ? row : undefined;
}

/** Pointer of the row a link names by `#row`, or undefined when no row, "several" when more than one answers to it. */
export function findRow(value: JsonObject, listName: string, listField: Field, name: string): string | undefined {
  const rows = value[listName];
  if (!isList(rows)) return undefined;
  const found = rows.flatMap((row, index) => (rowName(listField, row) === name ? [`/${listName}/${index}`] : []));
  return found.length > 1 ? "several" : found[0];
}

import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";

/**
 * A record as the one record of a file of its own, in the form it has in an issue: its kind first, fields in the order of the
 * schema, what the schema does not know behind them as it was written. Every value stays as it is.
 */
export function canonicalValue(record: Pick<BookRecord, "kind" | "value">, kind: Kind | undefined): JsonObject {
  const { kind: _kind, $schema: _schema, ...value } = record.value;
  return { kind: record.kind, ...inOrder(value, kind?.fields) };
}

/** The text of such a file. */
export const canonicalText = (value: JsonObject): string => `${JSON.stringify(value, null, 2)}\n`;

function inOrder(value: JsonObject, fields: ReadonlyMap<string, Field> | undefined): JsonObject {
  if (fields === undefined) return value;
  const names = [...fields.keys()].filter((name) => Object.hasOwn(value, name));
  const unknown = Object.keys(value).filter((name) => !fields.has(name));
  return Object.fromEntries(
    [...names, ...unknown].flatMap((name) => {
      const member = value[name];
      return member === undefined ? [] : [[name, ordered(member, fields.get(name))] as const];
    }),
  );
}

function ordered(value: Json, field: Field | undefined): Json {
  if (isList(value)) return value.map((item) => ordered(item, field?.item));
  return isObject(value) ? inOrder(value, field?.fields) : value;
}

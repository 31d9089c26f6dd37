import { fieldsOf } from "../load/fields.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import { said } from "./said.ts";

/**
 * The fields of a kind as sheets show them: an object whose names are free (values by their place) is a list of rows, each
 * with its `name`.
 */
export function sheetFields(kind: Kind): ReadonlyMap<string, Field> {
  const known = views.get(kind);
  if (known !== undefined) return known;
  const made = viewOf(kind);
  views.set(kind, made);
  return made;
}

/** A kind is looked at for every record of a sheet. */
const views = new WeakMap<Kind, ReadonlyMap<string, Field>>();

function viewOf(kind: Kind): ReadonlyMap<string, Field> {
  const properties = kind.row["properties"];
  return new Map(
    [...kind.fields].flatMap(([name, field]) => {
      // Written by the import itself.
      if (name === "imported") return [];
      const schema = isObject(properties) ? properties[name] : undefined;
      const free = isObject(schema) ? freeNames(schema) : undefined;
      return [[name, free === undefined ? field : asRows(field, free)] as const];
    }),
  );
}

/** Schema of the values of an object whose names are free. */
function freeNames(schema: JsonObject): JsonObject | undefined {
  const patterns = schema["patternProperties"];
  const [one] = isObject(patterns) ? Object.values(patterns) : [];
  return isObject(one) ? one : undefined;
}

function asRows(field: Field, value: JsonObject): Field {
  const name: Field = {
    name: "name",
    type: "text",
    title: "Name",
    description: "Name of this row.",
    required: true,
  };
  const item: Field = {
    ...field,
    type: "object",
    required: false,
    fields: new Map([["name", name], ...fieldsOf(value)]),
  };
  return { ...field, type: "list", rowKey: "name", item };
}

/** A record as sheets show it. */
export function toView(kind: Kind, value: JsonObject): JsonObject {
  return mapped(kind, value, (one) =>
    isObject(one) ? Object.entries(one).map(([name, inner]) => ({ name, ...(isObject(inner) ? inner : {}) })) : one,
  );
}

/** A record as the book holds it. */
export function fromView(kind: Kind, value: JsonObject): JsonObject {
  return mapped(kind, value, (one) =>
    isList(one)
      ? Object.fromEntries(
          one.flatMap((row) => {
            if (!isObject(row)) return [];
            const { name, ...rest } = row;
            return [[said(name), rest] as const];
          }),
        )
      : one,
  );
}

function mapped(kind: Kind, value: JsonObject, change: (one: Json) => Json): JsonObject {
  const shown = sheetFields(kind);
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [
      name,
      shown.get(name)?.type === "list" && kind.fields.get(name)?.type === "object" ? change(one) : one,
    ]),
  );
}

import { lastName } from "../model/field-steps.ts";
import type { BuiltIn, Definitions } from "../model/definitions.ts";
import { fieldAt, type Field, type Kind } from "../model/kind.ts";
import { readsOf, statedFields } from "../plan/reads.ts";

/** A field that holds a value, at its path from the record (`rows[].joint`). */
export interface ValueField {
  readonly path: string;
  readonly field: Field;
}

/** Every field of a kind that holds a value, or values, and no further fields. */
export function valueFields({ fields }: Pick<Kind, "fields">, before = ""): readonly ValueField[] {
  return [...fields.values()].flatMap((field): readonly ValueField[] => {
    const path = before + field.name;
    const inner = field.fields ?? field.item?.fields;
    if (inner === undefined) return field.type === "object" ? [] : [{ path, field }];
    return valueFields({ fields: inner }, `${path}${field.type === "list" ? "[]" : ""}.`);
  });
}

/**
 * Fields whose values something judges: a rule, a calculation, a fact, a closer, the way or a filter of a row of the register,
 * the sign of a scope, or a check that is built in. That a value is there, has the form of its schema or is not implausible is
 * not read here. `builtIn` are all checks that are built in, those of the loader too.
 */
export function readFields(definitions: Definitions, builtIn: readonly BuiltIn[]): ReadonlySet<Field> {
  const { kinds, scopes = [] } = definitions;
  const read = new Set(readsOf(definitions).flatMap(({ field, value }) => (value ? [field] : [])));
  const at = (kind: string, path: string | undefined) => {
    const owner = kinds.get(kind);
    const field = owner === undefined || path === undefined ? undefined : fieldAt(owner, path);
    if (field !== undefined) read.add(field);
  };
  for (const statements of statedFields(definitions))
    for (const passed of statements) for (const field of passed.slice(-1)) read.add(field);
  for (const { signs } of scopes) for (const { kind, path } of signs) at(kind, path);
  for (const { reads = [] } of builtIn)
    for (const one of reads)
      for (const kind of one.kinds === "any" ? kinds.keys() : one.kinds) for (const path of one.paths) at(kind, path);
  for (const kind of kinds.values()) {
    at(kind.name, kind.number);
    for (const { field } of valueFields(kind)) {
      if (field.closedBy !== undefined) read.add(field);
      if (field.instead !== undefined && read.has(field)) at("equipment", lastName(field.instead));
    }
  }
  return read;
}

/** Fields of a kind that hold values nothing judges. The name of a row tells it from others, and is judged as that. */
export function unreadFields(kind: Kind, read: ReadonlySet<Field>): readonly ValueField[] {
  const rowNames = new Set(rowNamesIn(kind.fields));
  return valueFields(kind).filter(
    ({ field }) => !read.has(field) && (field.item === undefined || !read.has(field.item)) && !rowNames.has(field),
  );
}

const rowNamesIn = (fields: ReadonlyMap<string, Field>): readonly Field[] =>
  [...fields.values()].flatMap(({ rowKey, item, fields: inner }) => {
    const rows = item?.fields;
    const name = rowKey === undefined ? undefined : rows?.get(rowKey);
    // A row named by what is chosen or measured is judged by that.
    const own = name?.type !== "text" || name.options !== undefined ? [] : [name];
    // Rows that share a name are told apart by one of their own.
    const apart = rows?.get("row");
    return [...own, ...(apart === undefined ? [] : [apart]), ...rowNamesIn(rows ?? inner ?? new Map<string, Field>())];
  });

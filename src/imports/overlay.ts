import { isDeepStrictEqual } from "node:util";
import { isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import type { Field } from "../model/kind.ts";
import { rowName } from "../model/stable.ts";
import { itemsOf } from "./build.ts";
import type { Built, BuiltObject, BuiltRow, BuiltRows } from "./built.ts";
import type { CellAt, ImportFault } from "./faults.ts";
import { said } from "./said.ts";

/** A value that a sheet changes in a record. `before` is undefined where there was none. */
export interface Change {
  readonly pointer: string;
  readonly before?: Json;
  readonly after: Json;
  readonly at: CellAt;
}

export interface Laid {
  readonly value: JsonObject;
  readonly changes: readonly Change[];
  /** Where each value that the sheet says was read, by its pointer in the record. */
  readonly from: ReadonlyMap<string, CellAt>;
  /** Rows of lists that the sheet wrote and no longer has. */
  readonly left: readonly string[];
  readonly faults: readonly ImportFault[];
}

type Fields = ReadonlyMap<string, Field> | undefined;

/**
 * Lays what a sheet says over a record (or over nothing): only what it says is changed, rows are met by their name, and
 * nothing is taken away.
 */
export function lay(before: JsonObject, built: BuiltObject, fields: Fields): Laid {
  const changes: Change[] = [];
  const from = new Map<string, CellAt>();
  const left: string[] = [];
  const faults: ImportFault[] = [];

  const object = (old: Json | undefined, one: BuiltObject, inner: Fields, pointer: string): JsonObject => {
    const known = isObject(old) ? old : {};
    const made = new Map<string, Json>(Object.entries(known));
    for (const [name, member] of one.members) {
      const own = Object.hasOwn(known, name) ? known[name] : undefined;
      made.set(name, any(own, member, inner?.get(name), pointer + pointerStep(name)));
    }
    return inOrder(made, inner);
  };

  const any = (old: Json | undefined, one: Built, field: Field | undefined, pointer: string): Json => {
    switch (one.type) {
      case "object":
        return object(old, one, field?.fields, pointer);
      case "rows":
        return rows(old, one, pointer);
      case "items": {
        const { items, fault } = itemsOf(one);
        if (fault !== undefined) faults.push(fault);
        const after = items.map(({ value }) => value);
        const [first] = items;
        if (first === undefined) return old ?? after;
        items.forEach(({ at }, index) => from.set(`${pointer}/${index}`, at));
        from.set(pointer, first.at);
        if (!isDeepStrictEqual(old, after)) note(pointer, old, after, first.at);
        return after;
      }
      case "value":
        from.set(pointer, one.at);
        if (!isDeepStrictEqual(old, one.value)) note(pointer, old, one.value, one.at);
        return one.value;
    }
  };

  const rows = (old: Json | undefined, one: BuiltRows, pointer: string): Json => {
    const list: Json[] = isList(old) ? [...old] : [];
    const met = new Set<number>();
    for (const row of one.rows.values()) {
      const index = find(list, one.field, row);
      const at = index < 0 ? list.length : index;
      met.add(at);
      from.set(`${pointer}/${at}`, row.at);
      const seed = index < 0 ? seedOf(one.field, row) : list[at];
      list[at] = object(seed, row.object, one.field.item?.fields, `${pointer}/${at}`);
      // A row without a value of its own is new all the same.
      if (index < 0 && row.object.members.size === 0) note(`${pointer}/${at}`, undefined, list[at], row.at);
    }
    if ([...one.rows.values()].some(({ by }) => by.type !== "fields"))
      list.forEach((row, index) => {
        if (!met.has(index)) left.push(`${one.field.title} ${rowName(one.field, row) ?? `#${index + 1}`}`);
      });
    return list;
  };

  const note = (pointer: string, old: Json | undefined, after: Json, at: CellAt) =>
    void changes.push({ pointer, ...(old !== undefined && { before: old }), after, at });

  const value = object(before, built, fields, "");
  return { value, changes, from, left, faults };
}

function find(list: readonly Json[], field: Field, { by }: BuiltRow): number {
  switch (by.type) {
    case "name":
      return list.findIndex((row) => nameOf(field, row) === by.name);
    case "fields":
      return list.findIndex((row) => isObject(row) && by.equals.every(([name, value]) => said(row[name]) === value));
    case "position":
      return by.index < list.length ? by.index : -1;
  }
}

/** As links name it: a number as text. */
const nameOf = (field: Field, row: Json): string | undefined => rowName(field, row);

/** What a new row holds before the sheet's values: the fields it is named by. */
function seedOf(field: Field, { by, object }: BuiltRow): JsonObject {
  const typed = (name: string, value: string): Json => {
    const type = field.item?.fields?.get(name)?.type;
    if ((type === "integer" || type === "number") && /^-?\d+(\.\d+)?$/.test(value)) return Number(value);
    return type === "boolean" ? value === "true" : value;
  };
  if (by.type === "fields") return Object.fromEntries(by.equals.map(([name, value]) => [name, typed(name, value)]));
  const named = ["row", ...(field.rowKey === undefined ? [] : [field.rowKey])].some((name) => object.members.has(name));
  if (by.type === "position" || named || field.rowKey === undefined) return {};
  return { [field.rowKey]: typed(field.rowKey, by.name) };
}

/** Members in the order of the schema; what it does not know stands last. */
export function inOrder(members: ReadonlyMap<string, Json>, fields: Fields): JsonObject {
  const ranks = fields === undefined ? undefined : ranksOf(fields);
  const rank = (name: string) => ranks?.get(name) ?? Infinity;
  // A record holds few of the fields there are; the sort keeps those nobody knows as they came.
  return Object.fromEntries([...members].sort(([a], [b]) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b))));
}

const ranked = new WeakMap<ReadonlyMap<string, Field>, ReadonlyMap<string, number>>();

function ranksOf(fields: ReadonlyMap<string, Field>): ReadonlyMap<string, number> {
  let found = ranked.get(fields);
  if (found === undefined) ranked.set(fields, (found = new Map([...fields.keys()].map((name, at) => [name, at]))));
  return found;
}

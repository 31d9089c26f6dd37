import { isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { BookRecord } from "../model/record.ts";

export interface WrittenLink {
  readonly pointer: string;
  readonly path: string;
  readonly text: string;
  readonly field: Field;
}

/** Every link written in a record, in the order of its schema, whatever else is wrong with the record. */
export function* writtenLinks(record: BookRecord, kind: Kind): Generator<WrittenLink> {
  yield* inFields(record.value, kind.fields, "", "");
  yield* inSources(record.value, kind);
}

/** `sources` is keyed by places of the record, so its schema names no field; each entry is a source like `source`. */
function* inSources(value: JsonObject, kind: Kind): Generator<WrittenLink> {
  const sources = value["sources"];
  const fields = kind.fields.get("source")?.fields;
  if (fields === undefined || !isObject(sources)) return;
  for (const [place, source] of Object.entries(sources))
    yield* inFields(source, fields, `/sources${pointerStep(place)}`, "sources[]");
}

function* inFields(
  value: Json,
  fields: ReadonlyMap<string, Field>,
  pointer: string,
  path: string,
): Generator<WrittenLink> {
  if (!isObject(value)) return;
  for (const [name, field] of fields) {
    if (!mayHoldLinks(field) || !Object.hasOwn(value, name)) continue;
    const member = value[name];
    if (member !== undefined)
      yield* inField(member, field, pointer + pointerStep(name), path === "" ? name : joined(path, `.${name}`));
  }
}

function* inField(value: Json, field: Field, pointer: string, path: string): Generator<WrittenLink> {
  if (field.type === "link") {
    if (typeof value === "string") yield { pointer, path, text: value, field };
  } else if (field.type === "list" && field.item !== undefined && isList(value)) {
    for (const [index, item] of value.entries())
      yield* inField(item, field.item, `${pointer}/${index}`, joined(path, "[]"));
  } else if (field.type === "object" && field.fields !== undefined) {
    yield* inFields(value, field.fields, pointer, path);
  }
}

const paths = new Map<string, Map<string, string>>();

/** A path and what follows it, the same text each time: every link bears its path. */
function joined(path: string, step: string): string {
  const below = paths.get(path) ?? new Map<string, string>();
  if (below.size === 0) paths.set(path, below);
  let whole = below.get(step);
  if (whole === undefined) below.set(step, (whole = path + step));
  return whole;
}

const known = new WeakMap<Field, boolean>();

function mayHoldLinks(field: Field): boolean {
  const before = known.get(field);
  if (before !== undefined) return before;
  const inner = [...(field.fields?.values() ?? []), ...(field.item === undefined ? [] : [field.item])];
  const holds = field.type === "link" || inner.some(mayHoldLinks);
  known.set(field, holds);
  return holds;
}

import { fieldPath, fieldSteps, stepName } from "../model/field-steps.ts";
import type { Missing, MissingPart } from "../model/missing.ts";
import { atPointer, isList as isJsonList, isObject, type Json, type JsonObject, stepsOf } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import { parsePath, type Step } from "../model/path.ts";
import { type BookRecord, partsOfAddress } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { foldId, initialsOf } from "./template.ts";
import type { RecordToWrite } from "./to-sheets.ts";
import { kindText } from "../model/kind-text.ts";
import { printTarget } from "../link/target.ts";

/** What a sheet to fill in holds of a kind. */
export interface OwedRows {
  /** Of records that are missing. */
  readonly missing: readonly RecordToWrite[];
  /** Of records that are there and miss something, with all they state. */
  readonly incomplete: readonly RecordToWrite[];
  /** What those miss, each once: "original", "nominal thickness". */
  readonly lacks: readonly string[];
  /** Ids that links name: each is one of the missing rows, but nobody says which. */
  readonly named: readonly string[];
}

/**
 * A row for each thing the book misses of a kind, with what is known of it filled in: the record that asks for it, what it
 * is asked for by, the id by which links name it; and a row for each record that misses a field, with all it states.
 */
export function owedRows(
  kind: Kind,
  missing: readonly Missing[],
  records: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
): OwedRows {
  const taken = new Set(records.filter((record) => record.kind === kind.name).map(({ id }) => id));
  const asked = missing.flatMap(({ parts, ...one }): readonly MissingPart[] =>
    one.kind !== kind.name || ("explained" in one.became && one.target === null) ? [] : (parts ?? [one]),
  );
  const named = new Set(asked.flatMap(({ target }) => (target === null ? [] : [partsOfAddress(target).id])));
  for (const id of taken) named.delete(id);
  const rows: { proposal: string; value: JsonObject }[] = [];
  for (const one of asked) {
    if (one.target !== null) continue;
    const known = knownOf(kind, one, kinds);
    const count = one.short === undefined ? 1 : one.short.atLeast - one.short.found;
    for (let n = 0; n < count; n++)
      rows.push({ proposal: proposedId(kind, one, taken), value: { ...known, ...one.adoptable?.fields } });
  }
  // A record that links name by the very id that would be proposed, or the only one there is, is the one that is missing here.
  const left = [...named].filter((id) => !taken.has(id));
  const others = rows.filter(({ proposal }) => !named.has(proposal));
  const [sure] = left.length === 1 && others.length === 1 ? left : [];
  const unsure = sure === undefined && others.length >= left.length ? left : [];
  const lone = sure === undefined && unsure.length === 0 ? left : [];
  const [incomplete, lacks] = [new Set<BookRecord>(), new Set<string>()];
  for (const { kind: whole, at, became, what } of missing)
    if (whole === null && at !== null && at.record.kind === kind.name && !("explained" in became)) {
      incomplete.add(at.record);
      lacks.add(what);
    }
  return {
    missing: [
      ...lone.map((id) => ({ value: { id }, known: true })),
      ...rows.map(({ proposal, value }): RecordToWrite => {
        const id = named.has(proposal) ? proposal : (sure ?? proposal);
        return { value: { id, ...value }, known: true, proposesId: !named.has(id) };
      }),
    ],
    incomplete: [...incomplete].map(({ value }) => ({ value: withoutHead(value), known: true })),
    lacks: [...lacks].sort(byCodePoint),
    named: unsure,
  };
}

const withoutHead = (value: JsonObject): JsonObject =>
  Object.fromEntries(Object.entries(value).filter(([name]) => name !== "kind" && name !== "$schema"));

/** What is known of a record that is missing: the link it is looked for by, and what it is filtered by. */
function knownOf(kind: Kind, { at, step }: MissingPart, kinds: ReadonlyMap<string, Kind>): JsonObject {
  const known: Record<string, Json> = {};
  const [back, ...filters] = parsePath(step).steps;
  if (back?.type === "back" && at !== null) put(known, kind.fields, back.field, linkTo(kind, back.field, at, kinds));
  const row =
    back?.type === "back" && back.field.includes("[]") ? back.field.slice(0, back.field.lastIndexOf("[]") + 2) : "";
  for (const filter of filters) {
    if (filter.type !== "filter") continue;
    const path = pathOf(filter.path);
    if (path === undefined) continue;
    // Behind a row's link, "record" leads to its record; without the word the row itself is meant.
    const whole = path.startsWith("record.") ? path.slice("record.".length) : row === "" ? path : `${row}.${path}`;
    put(known, kind.fields, whole, filter.equals);
  }
  return known;
}

const pathOf = (steps: readonly Step[]): string | undefined => {
  const names = steps.map((step) =>
    step.type === "field" ? step.name : step.type === "record" ? "record" : undefined,
  );
  return names.includes(undefined) ? undefined : names.join(".");
};

/** The link as the field writes it: with its kind where several are possible, with the row where rows are named. */
function linkTo(
  kind: Kind,
  path: string,
  at: NonNullable<Missing["at"]>,
  kinds: ReadonlyMap<string, Kind>,
): string | undefined {
  const field = leafAt(kind.fields, path);
  const { record, pointer } = at;
  const [list = ""] = stepsOf(pointer);
  const targets = field?.targets ?? [];
  const of = targets.map(kindText).filter((target) => target.kind === record.kind);
  const target = of.find(({ sign, list: rows }) => (pointer === "" ? sign === "" : sign === "#" && rows === list));
  if (target === undefined) return undefined;
  const holder = kinds.get(record.kind)?.fields.get(list);
  const name = pointer === "" ? "" : (rowKeyOf(record, pointer, holder) ?? "");
  if (pointer !== "" && name === "") return undefined;
  return printTarget({ kind: record.kind, id: record.id, ...(pointer !== "" && { row: name }) }, targets.length > 1);
}

function rowKeyOf(record: BookRecord, pointer: string, list: Field | undefined): string | undefined {
  const row = atPointer(record.value, pointer);
  return list === undefined ? undefined : rowName(list, row);
}

function leafAt(fields: ReadonlyMap<string, Field> | undefined, path: string): Field | undefined {
  let inner = fields;
  let field: Field | undefined;
  for (const step of fieldSteps(path)) {
    field = inner?.get(stepName(step));
    if (field?.type === "list") field = field.item;
    inner = field?.fields;
  }
  return field;
}

/** Puts a value at a path of a record, into the first row of each list on the way. */
function put(
  holder: Record<string, Json>,
  fields: ReadonlyMap<string, Field> | undefined,
  path: string,
  value: string | undefined,
): void {
  if (value === undefined) return;
  const [first = "", ...rest] = fieldSteps(path);
  const name = stepName(first);
  const field = fields?.get(name);
  if (field === undefined) return;
  const isList = field.type === "list";
  if (rest.length === 0) {
    const one = typed(isList ? field.item : field, value);
    holder[name] = isList ? [one] : one;
    return;
  }
  const known = holder[name];
  const before = isJsonList(known) ? known[0] : known;
  const inner: Record<string, Json> = isObject(before) ? { ...before } : {};
  put(inner, isList ? field.item?.fields : field.fields, fieldPath(rest), value);
  holder[name] = isList ? [inner] : inner;
}

const typed = (field: Field | undefined, value: string): Json => {
  if (field?.type === "boolean") return value === "true";
  return field?.type === "integer" || field?.type === "number" ? Number(value) : value;
};

/** An id nobody bears: initials of the kind, the thing it is about, and what it is filtered by. */
function proposedId(kind: Kind, { at, step }: MissingPart, taken: Set<string>): string {
  const filters = [...step.matchAll(/="([^"]*)"/g)].flatMap(([, text = ""]) => foldId(text) ?? []);
  const base = [initialsOf(kind.name), ...(at === null ? [] : [at.record.id]), ...filters].join("-").slice(0, 36);
  let id = base;
  for (let n = 2; taken.has(id); n++) id = `${base}-${n}`;
  taken.add(id);
  return id;
}

import { isList, isObject, pointerStep, type Json, type JsonObject } from "./json.ts";
import type { Field, Kind } from "./kind.ts";
import { byCodePoint } from "./order.ts";
import type { BookRecord } from "./record.ts";
import { digestOf, rowName } from "./stable.ts";

/** The originals of a book, as what was read from them names them. */
export interface Originals {
  readonly byId: ReadonlyMap<string, BookRecord>;
  readonly byHash: ReadonlyMap<string, BookRecord>;
}

export function originalsAmong(records: Iterable<BookRecord>): Originals {
  const byId = new Map<string, BookRecord>();
  const byHash = new Map<string, BookRecord>();
  for (const record of records) {
    if (record.kind !== "original") continue;
    byId.set(record.id, record);
    const { sha256 } = record.value;
    if (typeof sha256 === "string" && !byHash.has(sha256)) byHash.set(sha256, record);
  }
  return { byId, byHash };
}

/** What a record takes from one original. */
export interface Taken {
  readonly original: BookRecord;
  /** Its values, each as its place, rows by their name, and its JSON; in code-point order. */
  readonly values: readonly string[];
}

interface Base {
  /** Place in the record that was read from it; "" for the whole record. */
  readonly place: string;
  /** Undefined where the book has no such original: its values are read from no other for that. */
  readonly original: BookRecord | undefined;
}

/**
 * The originals a record was read from, with the values it takes from each: those a source names for the place or around it,
 * else those of the whole record. Where no source stands for the whole record, the sheet it was imported from does, once filed.
 */
export function takenFrom(record: BookRecord, kind: Kind | undefined, originals: Originals): readonly Taken[] {
  return takenBy(record, kind, basesOf(record.value, originals));
}

/** Of which originals a record takes values, each with their digest. */
export interface Digested {
  readonly original: BookRecord;
  readonly digest: string;
}

const digested = new WeakMap<
  BookRecord,
  { readonly kind: Kind | undefined; readonly bases: readonly Base[]; readonly of: readonly Digested[] }
>();

/** As `takenFrom`, the values as their digest: made once of a record that is the same and was read from the same originals. */
export function digestsOf(record: BookRecord, kind: Kind | undefined, originals: Originals): readonly Digested[] {
  const bases = basesOf(record.value, originals);
  if (bases.length === 0) return [];
  const before = digested.get(record);
  if (before !== undefined && before.kind === kind && sameBases(before.bases, bases)) return before.of;
  const of = takenBy(record, kind, bases).map((taken) => ({ original: taken.original, digest: digestOfTaken(taken) }));
  digested.set(record, { kind, bases, of });
  return of;
}

const sameBases = (bases: readonly Base[], others: readonly Base[]): boolean =>
  bases.length === others.length &&
  bases.every(({ place, original }, index) => place === others[index]?.place && original === others[index].original);

/** Digest of the values a record takes from an original: another one says that they were changed. */
export const digestOfTaken = ({ values }: Pick<Taken, "values">): string => digestOf(values.join("\n"));

function takenBy(record: BookRecord, kind: Kind | undefined, bases: readonly Base[]): readonly Taken[] {
  const values = new Map<BookRecord, string[]>();
  for (const { original } of bases) if (original !== undefined) values.set(original, []);
  if (values.size === 0) return [];
  const leaf = (pointer: string, name: string, value: Json) => {
    const base = bases.find(({ place }) => pointer === place || pointer.startsWith(`${place}/`));
    if (base?.original !== undefined) values.get(base.original)?.push(`${name}=${JSON.stringify(value)}`);
  };
  if (kind !== undefined && kind.unprinted === undefined) visit(record.value, "", "", kind.fields, leaf);
  return [...values].map(([original, list]) => ({ original, values: list.sort(byCodePoint) }));
}

/** Gives the original that a value of a record was read from, by its place; none where nobody says. */
export function originalAt(record: BookRecord, originals: Originals): (pointer: string) => BookRecord | undefined {
  const bases = basesOf(record.value, originals);
  return (pointer) => bases.find(({ place }) => pointer === place || pointer.startsWith(`${place}/`))?.original;
}

/** The longest place first. */
function basesOf({ source, sources, imported }: JsonObject, { byId, byHash }: Originals): readonly Base[] {
  const found: Base[] = [];
  const put = (place: string, original: BookRecord | undefined) => void found.push({ place, original });
  if (isObject(sources))
    for (const [place, one] of Object.entries(sources)) if (isObject(one)) put(place, named(one, byId));
  const whole = isObject(source) ? source : {};
  if (typeof whole["original"] === "string") put("", named(whole, byId));
  else if (isObject(imported) && typeof imported["sha256"] === "string") put("", byHash.get(imported["sha256"]));
  return found.sort((a, b) => b.place.length - a.place.length);
}

const named = ({ original }: JsonObject, byId: Originals["byId"]) =>
  typeof original === "string" ? byId.get(original) : undefined;

function visit(
  value: Json | undefined,
  pointer: string,
  trail: string,
  fields: ReadonlyMap<string, Field> | undefined,
  leaf: (pointer: string, name: string, value: Json) => void,
): void {
  if (!isObject(value) || fields === undefined) return;
  for (const [name, field] of fields) {
    // `row` is the name that links use for a row.
    if (field.unprinted !== undefined || name === "row" || !Object.hasOwn(value, name)) continue;
    const member = value[name];
    const [at, called] = [pointer + pointerStep(name), `${trail}/${name}`];
    if (isList(member))
      member.forEach((item, index) => {
        const [one, row] = [`${at}/${index}`, `${called}[${rowName(field, item) ?? index}]`];
        if (isObject(item)) visit(item, one, row, field.item?.fields, leaf);
        else leaf(one, row, item);
      });
    else if (isObject(member)) visit(member, at, called, field.fields, leaf);
    else if (member !== undefined) leaf(at, called, member);
  }
}

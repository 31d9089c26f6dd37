import type { Graph, Link } from "../model/graph.ts";
import { isList, isObject, pointerStep, type Json } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import type { Address, BookRecord } from "../model/record.ts";
import { backName, keptAddress } from "./notes.ts";

/**
 * What became of a record: places where another value stands, one appeared or one is gone; or the whole of it, where
 * anything in it may mean something else: it came, it went, it moved, a list has other rows, a row another name, or a
 * link leads elsewhere.
 */
export type Change = "whole" | readonly string[];

/** How a book differs from one judged before, as far as anybody can note it. */
export interface Changes {
  readonly records: ReadonlyMap<Address, Change>;
  /** Kinds that have other records, or their records in another order. */
  readonly kinds: ReadonlySet<string>;
  /** Links back that are others than before, by `backName`. */
  readonly back: ReadonlySet<string>;
}

/** Compares two books, both linked; records that are one object in both are the same. */
export function changesBetween(before: Graph, now: Graph, kinds: ReadonlyMap<string, Kind>): Changes {
  const records = new Map<Address, Change>();
  const changedKinds = new Set<string>();
  for (const kind of new Set([...before.byKind.keys(), ...now.byKind.keys()])) {
    const [old, fresh] = [before.byKind.get(kind) ?? none, now.byKind.get(kind) ?? none];
    if (!sameOrder(old, fresh)) changedKinds.add(kind);
    for (const [id, record] of fresh) {
      const change = changeOf(before, now, old.get(id), record, kinds.get(kind));
      if (change !== undefined) records.set(keptAddress(record), change);
    }
    for (const [id, record] of old) if (!fresh.has(id)) records.set(keptAddress(record), "whole");
  }
  // Of several records with one id the first stands for it: which of them a note speaks of nobody knows.
  for (const address of [...doubled(before), ...doubled(now)]) records.set(address, "whole");
  return { records, kinds: changedKinds, back: changedBack(before, now) };
}

const none: ReadonlyMap<string, BookRecord> = new Map();

function sameOrder(before: ReadonlyMap<string, unknown>, now: ReadonlyMap<string, unknown>): boolean {
  if (before.size !== now.size) return false;
  const ids = now.keys();
  for (const id of before.keys()) if (id !== ids.next().value) return false;
  return true;
}

function doubled({ records, byKind }: Graph): readonly Address[] {
  return records.flatMap((record) => (byKind.get(record.kind)?.get(record.id) === record ? [] : [keptAddress(record)]));
}

function changeOf(
  before: Graph,
  now: Graph,
  old: BookRecord | undefined,
  fresh: BookRecord,
  kind: Kind | undefined,
): Change | undefined {
  if (old === undefined) return "whole";
  if (!leadsAlike(before.out.get(old), now.out.get(fresh))) return "whole";
  if (old === fresh) return undefined;
  if (old.file !== fresh.file || old.pointer !== fresh.pointer || old.faulty !== fresh.faulty) return "whole";
  const places: string[] = [];
  return differ(old.value, fresh.value, "", undefined, kind?.fields, places) ? places : "whole";
}

/** Whether every link of a record leads where it did. */
function leadsAlike(
  before: ReadonlyMap<string, Link> | undefined,
  now: ReadonlyMap<string, Link> | undefined,
): boolean {
  if (before === now) return true;
  if (before?.size !== now?.size) return false;
  for (const [pointer, link] of now ?? []) {
    const old = before?.get(pointer);
    if (old === undefined || !sameLink(old, link)) return false;
  }
  return true;
}

const sameLink = (a: Link, b: Link): boolean =>
  a.text === b.text &&
  a.state === b.state &&
  a.path === b.path &&
  a.toPointer === b.toPointer &&
  a.to?.kind === b.to?.kind &&
  a.to?.id === b.to?.id;

/** Adds the places where two values differ. False: more is changed than single values. */
function differ(
  old: Json,
  fresh: Json,
  pointer: string,
  field: Field | undefined,
  fields: ReadonlyMap<string, Field> | undefined,
  places: string[],
  names: Named = nothing,
): boolean {
  if (old === fresh) return true;
  if (isList(old) && isList(fresh)) {
    // A row more or less moves its neighbours; plain items are named by what they say.
    if (old.length !== fresh.length) return false;
    const item = field?.item;
    const own = { row: "row", key: field?.rowKey };
    return old.every((value, index) => {
      const other = fresh[index];
      if (value === other) return true;
      return (
        typeof value === "object" &&
        other !== undefined &&
        typeof other === "object" &&
        differ(value, other, `${pointer}/${index}`, item, item?.fields, places, own)
      );
    });
  }
  if (isObject(old) && isObject(fresh)) {
    const common = Object.keys(fresh).filter((name) => Object.hasOwn(old, name));
    const before = Object.keys(old).filter((name) => Object.hasOwn(fresh, name));
    if (common.some((name, index) => name !== before[index])) return false;
    for (const name of new Set([...Object.keys(old), ...Object.keys(fresh)])) {
      const [a, b] = [
        Object.hasOwn(old, name) ? old[name] : undefined,
        Object.hasOwn(fresh, name) ? fresh[name] : undefined,
      ];
      if (a === b) continue;
      if (name === names.row || name === names.key) return false;
      const inner = pointer + pointerStep(name);
      const own = fields?.get(name);
      if (a === undefined || b === undefined) places.push(inner);
      else if (!differ(a, b, inner, own, own?.fields, places)) return false;
    }
    return true;
  }
  places.push(pointer);
  return true;
}

/** Members of a row that it is named by. */
interface Named {
  readonly row?: string;
  readonly key?: string | undefined;
}

const nothing: Named = {};

function changedBack(before: Graph, now: Graph): ReadonlySet<string> {
  const changed = new Set<string>();
  for (const address of new Set([...before.back.keys(), ...now.back.keys()])) {
    const [old, fresh] = [before.back.get(address) ?? [], now.back.get(address) ?? []];
    if (old.length === fresh.length && old.every((link, index) => sameSource(link, fresh[index]))) continue;
    const [was, is] = [byName(address, old), byName(address, fresh)];
    for (const name of new Set([...was.keys(), ...is.keys()]))
      if (was.get(name)?.join("\n") !== is.get(name)?.join("\n")) changed.add(name);
  }
  return changed;
}

const sameSource = (a: Link, b: Link | undefined): boolean =>
  a === b ||
  (b !== undefined &&
    a.pointer === b.pointer &&
    a.from.kind === b.from.kind &&
    a.from.id === b.from.id &&
    a.path === b.path &&
    a.toPointer === b.toPointer);

function byName(address: Address, links: readonly Link[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { from, path, pointer, toPointer = "" } of links) {
    const name = backName(address, from.kind, path);
    const list = found.get(name) ?? [];
    list.push(`${keptAddress(from)}${pointer} ${toPointer}`);
    found.set(name, list);
  }
  return found;
}

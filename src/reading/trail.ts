import type { Basis } from "../model/basis.ts";
import type { Graph } from "../model/graph.ts";
import type { Json } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { addressOf, type Address, type BookRecord, partsOfAddress } from "../model/record.ts";
import { digestOf, stablePath } from "../model/stable.ts";
import { keptAddress, notePlace, notePlaceAt } from "./notes.ts";
import type { Absence, World } from "./world.ts";
import type { FindingKey } from "../model/finding-key.ts";
import type { CalculationKey } from "../model/calculation-key.ts";

/** An own reason for not judging, such as a table without a row for the keys asked: one query, whoever meets it. */
export interface Reason {
  readonly key: FindingKey;
  readonly rule: string;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  /** Where it is shown; null for the book. */
  readonly at: { readonly record: BookRecord; readonly pointer: string } | null;
  readonly accuses: readonly Address[];
}

/** A place that was read, or (without a record) another value by its name. */
export interface Read {
  readonly record: BookRecord | null;
  readonly pointer: string;
  readonly value: string;
  /** Without a record: the name is the address of a place in one. */
  readonly isPlace?: true;
}

/** What one outcome read and missed on its way, as often as it did. There is one for each outcome: it is kept plain. */
export interface Trail {
  readonly reads: Read[];
  readonly doubts: FindingKey[];
  /** Findings that dispute what was read: they stand before any objection. */
  readonly disputes: FindingKey[];
  readonly absences: Absence[];
  readonly reasons: Reason[];
  /** Values of the profile and of tables it rests on. */
  readonly bases: (readonly [name: string, basis: Basis])[];
  /** Kinds of which it read all records that lead here, or all there are. */
  readonly lists: string[];
  /** Recomputed results it rests on, by their `calculationKey`. */
  readonly results: CalculationKey[];
  /** A calculation it needs does not apply. */
  inapplicable: boolean;
}

export function newTrail(): Trail {
  return {
    reads: [],
    doubts: [],
    disputes: [],
    absences: [],
    reasons: [],
    bases: [],
    lists: [],
    results: [],
    inapplicable: false,
  };
}

/** Notes that a place was read, and which findings doubt it. */
export function noteRead(
  world: World,
  trail: Trail,
  record: BookRecord,
  pointer: string,
  value: Json | undefined,
): void {
  trail.reads.push({ record, pointer, value: typeof value === "object" ? "" : String(value) });
  notePlace(world, record, pointer);
  if (!world.ledger.empty) noteDoubts(world, trail, addressOf(record, pointer));
}

/** As `noteRead`, for a place known by its address. */
export function noteAddress(world: World, trail: Trail, address: Address, value: string): void {
  trail.reads.push({ record: null, pointer: address, value, isPlace: true });
  notePlaceAt(world, address);
  noteDoubts(world, trail, address);
}

function noteDoubts({ ledger }: World, trail: Trail, address: Address): void {
  trail.doubts.push(...ledger.doubts(address));
  trail.disputes.push(...ledger.disputes(address));
}

/** Notes a value that stands in no record. */
export function noteValue(trail: Trail, name: string, value: string): void {
  trail.reads.push({ record: null, pointer: name, value });
}

/** Adds what another trail noted. */
export function mergeTrail(into: Trail, own: Trail): void {
  into.reads.push(...own.reads);
  into.doubts.push(...own.doubts);
  into.disputes.push(...own.disputes);
  into.absences.push(...own.absences);
  into.reasons.push(...own.reasons);
  into.bases.push(...own.bases);
  into.lists.push(...own.lists);
  into.results.push(...own.results);
  into.inapplicable ||= own.inapplicable;
}

/** Addresses of what was read, each with the value it was first read with. */
export function readsOf({ reads }: Trail): ReadonlyMap<Address, string> {
  const found = new Map<Address, string>();
  for (const { record, pointer, value } of reads) {
    // The name of a value, `table:…` or `profile:…`, goes where addresses go; it leads to no record.
    const address = record === null ? (pointer as Address) : addressOf(record, pointer);
    if (!found.has(address)) found.set(address, value);
  }
  return found;
}

const none: readonly Address[] = [];

/** Up to so many are looked through faster than hashed. */
const few = 12;

/** Records that were read, each once, in the order they were met. A trail that is remembered may name one as it was before. */
export function recordsRead({ byKind }: Pick<Graph, "byKind">, { reads }: Trail): readonly Address[] {
  const found: Address[] = [];
  let many: Set<Address> | undefined;
  let last: BookRecord | null = null;
  for (const { record, pointer, isPlace } of reads) {
    const read = record ?? (isPlace === true ? recordAt(byKind, pointer) : undefined);
    if (read === undefined || read === last) continue;
    last = read;
    const name = keptAddress(read);
    if (many === undefined && found.length >= few) many = new Set(found);
    if (many?.has(name) ?? found.includes(name)) continue;
    found.push(name);
    many?.add(name);
  }
  return found.length === 0 || last === null ? none : shared(last, found);
}

const lists = new WeakMap<BookRecord, (readonly Address[])[]>();

/** Of so many lists that end with one record the last are looked through. */
const mostLists = 8;

/** The same list for all outcomes that read the same records: what is asked of one subject mostly is read at the same places. */
function shared(last: BookRecord, found: readonly Address[]): readonly Address[] {
  const known = lists.get(last);
  const same = known?.find((list) => list.length === found.length && list.every((name, at) => name === found[at]));
  if (same !== undefined) return same;
  // As long as it is, without the room that a list keeps to grow.
  const list = found.slice();
  if (known === undefined) lists.set(last, [list]);
  else if (known.push(list) > mostLists) known.shift();
  return list;
}

function recordAt(byKind: Graph["byKind"], address: string): BookRecord | undefined {
  const { kind, id } = partsOfAddress(address);
  return byKind.get(kind)?.get(id);
}

/** Digest of every value read, independent of the order of reading and of the rows between. */
export function digestOfReads(
  world: { readonly graph: Graph; readonly kinds: ReadonlyMap<string, Kind> },
  trail: Trail,
): string {
  const lines = [...readsOf(trail)].map(([address, value]) => `${stableAddress(world, address)}=${value}`);
  return digestOf(lines.sort().join("\n"));
}

function stableAddress({ graph, kinds }: Parameters<typeof digestOfReads>[0], address: string): string {
  const { kind: name, id, pointer } = partsOfAddress(address);
  const kind = kinds.get(name);
  const record = graph.byKind.get(name)?.get(id);
  if (pointer === "" || kind === undefined || record === undefined) return address;
  return `${addressOf(record)}/${stablePath(kind, record.value, pointer)}`;
}

/** True when nothing stands in the way of a verdict. */
export function clear(trail: Trail): boolean {
  const { doubts, absences, reasons, inapplicable } = trail;
  return doubts.length === 0 && absences.length === 0 && reasons.length === 0 && !inapplicable;
}

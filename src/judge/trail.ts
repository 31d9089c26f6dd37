import type { Basis } from "../model/basis.ts";
import type { Graph } from "../model/graph.ts";
import type { Json } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { digestOf, stablePath } from "../model/stable.ts";
import type { Absence, World } from "./world.ts";

/** An own reason for not judging, such as a table without a row for the keys asked: one query, whoever meets it. */
export interface Reason {
  readonly key: string;
  readonly rule: string;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  /** Where it is shown; null for the book. */
  readonly at: { readonly record: BookRecord; readonly pointer: string } | null;
  readonly accuses: readonly Address[];
}

/** What one outcome read and missed on its way. */
export interface Trail {
  readonly reads: Map<Address, string>;
  readonly doubts: Set<string>;
  readonly absences: Map<string, Absence>;
  readonly reasons: Map<string, Reason>;
  /** Values of the profile and of tables it rests on. */
  readonly bases: Map<string, Basis>;
  /** Kinds of which it read all records that lead here, or all there are. */
  readonly lists: Set<string>;
  /** A calculation it needs does not apply. */
  inapplicable: boolean;
}

export function newTrail(): Trail {
  return {
    reads: new Map(),
    doubts: new Set(),
    absences: new Map(),
    reasons: new Map(),
    bases: new Map(),
    lists: new Set(),
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
  noteAddress(world, trail, addressOf(record, pointer), typeof value === "object" ? "" : String(value));
}

export function noteAddress(world: World, trail: Trail, address: Address, value: string): void {
  if (trail.reads.has(address)) return;
  trail.reads.set(address, value);
  for (const key of world.ledger.doubts(address)) trail.doubts.add(key);
}

/** Adds what another trail noted. */
export function mergeTrail(into: Trail, own: Trail): void {
  for (const [address, value] of own.reads) into.reads.set(address, value);
  for (const key of own.doubts) into.doubts.add(key);
  for (const [key, absence] of own.absences) into.absences.set(key, absence);
  for (const [key, reason] of own.reasons) into.reasons.set(key, reason);
  for (const [name, basis] of own.bases) into.bases.set(name, basis);
  for (const kind of own.lists) into.lists.add(kind);
  into.inapplicable ||= own.inapplicable;
}

/** Digest of every value read, independent of the order of reading and of the rows between. */
export function digestOfReads(
  world: { readonly graph: Graph; readonly kinds: ReadonlyMap<string, Kind> },
  trail: Trail,
): string {
  const lines = [...trail.reads].map(([address, value]) => `${stableAddress(world, address)}=${value}`);
  return digestOf(lines.sort().join("\n"));
}

function stableAddress({ graph, kinds }: Parameters<typeof digestOfReads>[0], address: Address): string {
  const [name = "", ...steps] = address.split("/");
  const colon = name.indexOf(":");
  const kind = kinds.get(name.slice(0, colon));
  const record = graph.byKind.get(name.slice(0, colon))?.get(name.slice(colon + 1));
  if (steps.length === 0 || kind === undefined || record === undefined) return address;
  return `${name}/${stablePath(kind, record.value, `/${steps.join("/")}`)}`;
}

/** True when nothing stands in the way of a verdict. */
export function clear(trail: Trail): boolean {
  return trail.doubts.size === 0 && trail.absences.size === 0 && trail.reasons.size === 0 && !trail.inapplicable;
}

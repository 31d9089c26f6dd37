import type { Finding } from "../model/finding.ts";
import type { Graph, Link, LinkTarget } from "../model/graph.ts";
import { fieldAt, type Field, type Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { aimedLinks, forgetAimed } from "./aimed-links.ts";
import { foldAlike, nearestIds } from "./alike.ts";
import { alikeHeats, alikeIds, duplicateId, duplicateRows } from "./duplicates.ts";
import { followLink, type Objector, type Targets } from "./follow-link.ts";
import { deriveHeats } from "./heats.ts";

export { linkRules } from "./faults.ts";

interface LinkOptions {
  readonly kept?: ((record: BookRecord) => BookRecord) | undefined;
  readonly again?: boolean;
}

/**
 * Follows every link both ways. Faults come back as findings; a link to an absent record is not one yet (see judge).
 * The order of files and of records in them plays no part. `kept` gives for a derived record the one that stands for it;
 * `again`: the records will be linked again.
 */
export function linkRecords(
  read: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
  { kept = (record) => record, again = false }: LinkOptions = {},
): { readonly graph: Graph; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const written = read.filter(({ kind }) => kinds.has(kind)).sort(inOrder);
  const byKind = new Map<string, Map<string, BookRecord>>();
  const enter = (record: BookRecord) => {
    const ids = byKind.get(record.kind) ?? new Map<string, BookRecord>();
    const first = ids.get(record.id);
    byKind.set(record.kind, ids);
    if (first === undefined) ids.set(record.id, record);
    else findings.push(duplicateId(record, first, kinds));
  };
  written.forEach(enter);

  const links: Link[] = [];
  const out = new Map<BookRecord, ReadonlyMap<string, Link>>();
  const targets = (): Targets => ({
    kinds,
    byKind,
    folded: new Map(
      [...byKind].map(([kind, ids]) => [kind, new Map([...ids.keys()].map((id) => [foldAlike(id), id]))]),
    ),
  });
  const linkAll = (records: readonly BookRecord[], into: Targets, object: Objector) => {
    for (const record of records) {
      const kind = kinds.get(record.kind);
      if (kind === undefined) continue;
      const before = ledTo.get(record);
      if (before !== undefined && before.kind === kind && leadsAsBefore(before.own, byKind)) {
        for (const link of before.own.values()) links.push(link);
        out.set(record, before.own);
        continue;
      }
      const own = new Map<string, Link>();
      for (const one of aimedLinks(record, kind)) {
        const link = followLink(record, kind, one, into, object);
        links.push(link);
        own.set(link.pointer, link);
      }
      out.set(record, own);
      ledTo.set(record, { kind, own });
      if (!again) forgetAimed(record);
    }
  };
  const ambiguous = new Map<string, Address[]>();
  linkAll(written, targets(), {
    fault: (fault) => findings.push(fault),
    ambiguous: (row, link) => ambiguous.set(row, [...(ambiguous.get(row) ?? []), link]),
  });
  const named = written.filter((record) => byKind.get(record.kind)?.get(record.id) === record);
  const heats = deriveHeats(named, kinds, out).map((heat) => ({ ...heat, record: kept(heat.record) }));
  const derived = heats.map(({ record }) => record).sort(inOrder);
  derived.forEach(enter);
  // What is wrong with a derived record was said of the records it comes from.
  linkAll(derived, targets(), { fault: () => undefined, ambiguous: () => undefined });
  const records = [...written, ...derived].sort(inOrder);
  for (const [kind, ids] of byKind) findings.push(...alikeIds(kind, ids, kinds));
  for (const heat of heats) findings.push(...alikeHeats(heat, kinds));
  for (const record of written) {
    const kind = kinds.get(record.kind);
    if (kind !== undefined) findings.push(...duplicateRows(record, kind, ambiguous));
  }
  const sorted = new Map([...byKind].sort(([a], [b]) => byCodePoint(a, b)));
  return { graph: { records, byKind: sorted, links, out, ...backwards(links) }, findings };
}

/** Where the links of a record led when it was last linked. */
const ledTo = new WeakMap<BookRecord, { readonly kind: Kind; readonly own: ReadonlyMap<string, Link> }>();

/** Whether every link led somewhere, and leads there still. Of any other something may have to be said again. */
function leadsAsBefore(own: ReadonlyMap<string, Link>, byKind: Targets["byKind"]): boolean {
  for (const { to } of own.values()) if (to === undefined || byKind.get(to.kind)?.get(to.id) !== to) return false;
  return true;
}

function inOrder(a: BookRecord, b: BookRecord): number {
  return (
    byCodePoint(a.kind, b.kind) ||
    byCodePoint(a.id, b.id) ||
    byCodePoint(a.file, b.file) ||
    byCodePoint(a.pointer, b.pointer)
  );
}

function backwards(links: readonly Link[]): Pick<Graph, "back" | "absent"> {
  const back = new Map<Address, Link[]>();
  const absent = new Map<Address, Link[]>();
  const add = (map: Map<Address, Link[]>, address: Address, link: Link) => {
    const list = map.get(address);
    if (list === undefined) map.set(address, [link]);
    else list.push(link);
  };
  for (const link of links) {
    if (link.to !== undefined) {
      add(back, addressOf(link.to), link);
      if (link.toPointer !== undefined && link.toPointer !== "") add(back, addressOf(link.to, link.toPointer), link);
    } else if (link.state === "absent" && link.target !== null) add(absent, addressOf(link.target), link);
  }
  return { back, absent };
}

/** Nearest ids of a kind, for the hint of a link to an absent record. */
export function nearest(graph: Graph, target: LinkTarget): readonly string[] {
  return nearestIds(target.id, graph.byKind.get(target.kind)?.keys() ?? []);
}

/** Field a link was written in. */
export function fieldOfLink(link: Link, kinds: ReadonlyMap<string, Kind>): Field | undefined {
  const kind = kinds.get(link.from.kind);
  return kind === undefined ? undefined : fieldAt(kind, link.path);
}

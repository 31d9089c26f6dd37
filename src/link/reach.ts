import { grouped } from "../model/grouped.ts";
import type { Kind } from "../model/kind.ts";
import { addressOf, type BookRecord, type Address } from "../model/record.ts";
import { aimedLinks, type AimedLink } from "./aimed-links.ts";
import { foldAlike } from "./alike.ts";

/**
 * Which records of shelves a book reaches: those its own records name, and so on; those that belong to a reached one by a field
 * that says so (`x-belongs`); those that bear the id of one that is reached or the book's own, since neither shadows
 * the other; and those that a link names but for look-alike signs, where nothing bears what it names.
 */
export function reachedOn(
  own: readonly BookRecord[],
  shelved: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
): ReadonlySet<BookRecord> {
  if (shelved.length === 0) return new Set();
  const borne = new Set([...own, ...shelved].map((record) => addressOf(record)));
  const byId = groupBy(shelved, (record) => [addressOf(record)]);
  const byFold = groupBy(shelved, (record) => [foldedAddress(record)]);
  const belonging = groupBy(shelved, (record) =>
    targetsOf(record, kinds).flatMap((target) =>
      !target.belongs ? [] : borne.has(target.address) ? [target.address] : [foldedAddress(target)],
    ),
  );
  const reached = new Set<BookRecord>();
  const open = [...own];
  const take = (records: readonly BookRecord[] = []) => {
    for (const record of records) {
      if (reached.has(record)) continue;
      reached.add(record);
      open.push(record);
    }
  };
  for (let record = open.pop(); record !== undefined; record = open.pop()) {
    const address = addressOf(record);
    take(byId.get(address));
    take(belonging.get(address));
    take(belonging.get(foldedAddress(record)));
    for (const target of targetsOf(record, kinds))
      take(borne.has(target.address) ? byId.get(target.address) : byFold.get(foldedAddress(target)));
  }
  return reached;
}

interface Target extends Pick<BookRecord, "kind" | "id"> {
  readonly address: Address;
  /** The record belongs to what it names here. */
  readonly belongs: boolean;
}

/** Marked, so that no id can be taken for a folded one. */
const foldedAddress = ({ kind, id }: Pick<BookRecord, "kind" | "id">): Address =>
  addressOf({ kind: `~${kind}`, id: foldAlike(id) });

const targets = new WeakMap<readonly AimedLink[], readonly Target[]>();

function targetsOf(record: BookRecord, kinds: ReadonlyMap<string, Kind>): readonly Target[] {
  const kind = kinds.get(record.kind);
  if (kind === undefined) return [];
  const links = aimedLinks(record, kind);
  let found = targets.get(links);
  if (found === undefined) targets.set(links, (found = targetsIn(links)));
  return found;
}

const targetsIn = (links: readonly AimedLink[]): readonly Target[] =>
  links.flatMap(({ target, field }) => {
    if ("expected" in target) return [];
    const { kind, id } = target;
    return [{ kind, id, address: addressOf(target), belongs: field.belongs?.includes(kind) === true }];
  });

function groupBy(
  records: readonly BookRecord[],
  keys: (record: BookRecord) => readonly Address[],
): ReadonlyMap<Address, readonly BookRecord[]> {
  const pairs = records.flatMap((record) => keys(record).map((key) => ({ key, record })));
  return new Map([...grouped(pairs, ({ key }) => key)].map(([key, own]) => [key, own.map(({ record }) => record)]));
}

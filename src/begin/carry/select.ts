import type { Graph, Link } from "../../model/graph.ts";
import { fieldAt, type Kind } from "../../model/kind.ts";
import { addressOf, type Address, type BookRecord } from "../../model/record.ts";
import { kept, type Keeping } from "./keep.ts";

/** Links that a record would keep, whatever they lead to. */
export type KeptLinks = (record: BookRecord) => readonly Link[];

/** The links of the fields that come along; asked once for each record. */
export function keptLinks(graph: Graph, kinds: ReadonlyMap<string, Kind>, sameDesign: boolean): KeptLinks {
  const known = new Map<BookRecord, readonly Link[]>();
  return (record) => {
    const before = known.get(record);
    if (before !== undefined) return before;
    const pointers = new Set<string>();
    const all: Keeping = {
      sameDesign,
      serial: "-",
      link: (pointer) => {
        pointers.add(pointer);
        return true;
      },
      named: () => true,
      repeats: () => false,
      left: () => undefined,
    };
    const kind = kinds.get(record.kind);
    if (kind !== undefined) kept(record.value, kind, all);
    const whole = kind?.carry === "always" || kind?.carry === "named";
    // Entries of `sources` are keyed by places, not by fields: they stand or stay with the record.
    const links = [...(graph.out.get(record)?.values() ?? [])].filter(
      ({ pointer }) => pointers.has(pointer) || (whole && pointer.startsWith("/sources/")),
    );
    known.set(record, links);
    return links;
  };
}

/**
 * What that order alone brought into the book: whom the record that is made anew names in fields that stay behind (the client),
 * and who follows them (the client's people), unless anything that comes along names them.
 */
export function ofThatOrder(
  graph: Graph,
  kinds: ReadonlyMap<string, Kind>,
  candidates: ReadonlySet<BookRecord>,
  links: KeptLinks,
): ReadonlySet<BookRecord> {
  const carry = ({ from, path }: Link) => {
    const kind = kinds.get(from.kind);
    return kind === undefined ? undefined : fieldAt(kind, path)?.carry;
  };
  const ordered = graph.links.flatMap((link) =>
    link.to !== undefined && kinds.get(link.from.kind)?.carry === "anew" && carry(link) === undefined ? [link.to] : [],
  );
  let stays = new Set(ordered.filter((record) => candidates.has(record)));
  for (;;) {
    const following = graph.links.flatMap((link) =>
      link.to !== undefined && stays.has(link.to) && carry(link) === "follows" ? [link.from] : [],
    );
    const all = new Set([...stays, ...following]);
    const needed = new Set(
      [...candidates].filter((record) => !all.has(record)).flatMap((record) => links(record).map(({ to }) => to)),
    );
    const left = new Set([...stays].filter((record) => !needed.has(record)));
    const leftAll = [...following].filter((record) => !needed.has(record));
    if (left.size === stays.size) return new Set([...left, ...leftAll]);
    stays = left;
  }
}

/** Records that some carried record names, and what these name: scans come with what was read from them. */
export function namedBy(
  carried: Iterable<BookRecord>,
  kinds: ReadonlyMap<string, Kind>,
  links: KeptLinks,
): ReadonlySet<BookRecord> {
  const named = new Set<BookRecord>();
  const visit = (record: BookRecord): void => {
    for (const { to } of links(record)) {
      if (to === undefined || named.has(to) || kinds.get(to.kind)?.carry !== "named") continue;
      named.add(to);
      visit(to);
    }
  };
  for (const record of carried) visit(record);
  return named;
}

/** Addresses of rows that links of carried records lead to. */
export function namedRows(carried: Iterable<BookRecord>, links: KeptLinks): ReadonlySet<Address> {
  return new Set(
    [...carried].flatMap((record) =>
      links(record).flatMap(({ to, toPointer = "" }) =>
        to === undefined || toPointer === "" ? [] : [addressOf(to, toPointer)],
      ),
    ),
  );
}

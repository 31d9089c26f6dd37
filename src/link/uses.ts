import type { Graph, Link } from "../model/graph.ts";
import { atPointer, isObject, headOf, holderOf, stepsOf } from "../model/json.ts";
import { fieldAt, type Kind } from "../model/kind.ts";
import { addressOf, type BookRecord } from "../model/record.ts";

/** A record that names another, where in it, and what it is about itself. */
export interface Use {
  readonly record: BookRecord;
  /** Links in it, in their order. */
  readonly links: readonly Link[];
  /** What it, or the row that names, is about: the joint of a weld log, the part of a mark. */
  readonly about: readonly BookRecord[];
}

/**
 * Where a record was used: all that names it, or a row of it. Of a derived record, what names the rows it was made of: it is
 * never named itself.
 */
export function usesOf(graph: Graph, kinds: ReadonlyMap<string, Kind>, record: BookRecord): readonly Use[] {
  const derived = ({ kind }: BookRecord) => kinds.get(kind)?.derived === true;
  const rows = [...(graph.out.get(record)?.values() ?? [])].flatMap(({ to, toPointer = "" }) =>
    derived(record) && to !== undefined && toPointer !== "" ? [addressOf(to, toPointer)] : [],
  );
  const found = new Map<BookRecord, Set<Link>>();
  for (const address of [addressOf(record), ...rows])
    for (const link of graph.back.get(address) ?? []) {
      if (link.from === record || derived(link.from)) continue;
      found.set(link.from, (found.get(link.from) ?? new Set()).add(link));
    }
  return [...found].map(([from, links]) => ({
    record: from,
    links: [...links],
    about: aboutOf(graph, kinds, from, [...links]).filter((one) => one !== record && one !== from),
  }));
}

/** What the links of identity lead to: those that the schema requires of the record, and of the rows on the way to a link. */
function aboutOf(
  graph: Graph,
  kinds: ReadonlyMap<string, Kind>,
  from: BookRecord,
  links: readonly Link[],
): readonly BookRecord[] {
  const kind = kinds.get(from.kind);
  if (kind === undefined) return [];
  const holders = new Set(links.flatMap(({ pointer }) => [...objectsOn(from, pointer)]));
  const about = new Set<BookRecord>();
  for (const link of graph.out.get(from)?.values() ?? []) {
    const holder = holderOf(link.pointer);
    if (link.to !== undefined && holders.has(holder) && fieldAt(kind, link.path)?.required === true) about.add(link.to);
  }
  return [...about];
}

/** Pointers of the objects on the way to a pointer, the record first. */
function* objectsOn(from: BookRecord, pointer: string): Generator<string> {
  yield "";
  const { length } = stepsOf(pointer);
  for (let count = 1; count < length; count++) {
    const holder = headOf(pointer, count);
    if (isObject(atPointer(from.value, holder))) yield holder;
  }
}

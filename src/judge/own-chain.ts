import { lowerTitle } from "../model/titles.ts";
import type { JudgedBook, Owed } from "../model/book.ts";
import type { Chain, ChainStep } from "../model/chain.ts";
import type { Outcome } from "../model/finding.ts";
import { grouped } from "../model/grouped.ts";
import type { Kind } from "../model/kind.ts";
import { parsePath } from "../model/path.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { walkPath } from "../reading/walk-path.ts";

/**
 * The chain of a record whose kind has none: each field that links, judged by whatever of its own checks read what the
 * link names; each row of the register about it; and its checks.
 */
export function ownChain(judged: JudgedBook, kind: Kind, record: BookRecord, outcomesOf: OutcomesOf): Chain {
  const outcomes = outcomesOf.get(addressOf(record)) ?? [];
  const links = [...kind.fields.values()].flatMap((field): ChainStep[] => {
    const isLink = field.type === "link" || field.item?.type === "link";
    if (!isLink || field.name === "attachments") return [];
    const path = field.type === "list" ? `${field.name}[]` : field.name;
    const named = new Set(walkPath(judged, record, parsePath(path)).map((hit) => addressOf(hit.record)));
    const reading = outcomes.filter(({ reads }) => reads.some((address) => named.has(address)));
    return [{ what: field.title, paths: [path], judgedBy: ids(reading) }];
  });
  // What rows name and was judged by its use here: an instrument by the day of its reading.
  const used = [...kind.fields.values()].flatMap((field): ChainStep[] =>
    [...(field.item?.fields?.values() ?? [])].flatMap((inner): ChainStep[] => {
      if (inner.type !== "link") return [];
      const path = `${field.name}[].${inner.name}`;
      const hits = walkPath(judged, record, parsePath(path));
      const judgedBy = [
        ...new Set(
          hits.flatMap((hit) => [...(readersAbout(outcomesOf, addressOf(hit.record)).get(addressOf(record)) ?? [])]),
        ),
      ];
      return judgedBy.length === 0
        ? []
        : [{ what: `${field.title}, ${lowerTitle(inner.title)}`, paths: [path], judgedBy }];
    }),
  );
  const owed = (owedBy(judged).get(record) ?? []).map((one): ChainStep => ({
    what: one.requirement.title,
    paths: [one.requirement.needs],
    judgedBy: [one.requirement.id],
  }));
  const title = lowerTitle(kind.title);
  const own = outcomes.length === 0 ? [] : [{ what: `Checks of this ${title}`, paths: [], judgedBy: ids(outcomes) }];
  return { kind: record.kind, links: [...links, ...used, ...owed, ...own] };
}

const owing = new WeakMap<JudgedBook, ReadonlyMap<BookRecord | null, readonly Owed[]>>();

/** What is owed of each record. */
function owedBy(judged: JudgedBook): ReadonlyMap<BookRecord | null, readonly Owed[]> {
  const known = owing.get(judged) ?? grouped(judged.owed, ({ subject }) => subject);
  owing.set(judged, known);
  return known;
}

const readers = new WeakMap<OutcomesOf, Map<Address, ReadonlyMap<Address, ReadonlySet<string>>>>();

/** By what was read, the definitions that read it when they judged this record; found once, for many records name one. */
function readersAbout(outcomesOf: OutcomesOf, about: Address): ReadonlyMap<Address, ReadonlySet<string>> {
  const all = readers.get(outcomesOf) ?? new Map<Address, ReadonlyMap<Address, ReadonlySet<string>>>();
  readers.set(outcomesOf, all);
  const known = all.get(about);
  if (known !== undefined) return known;
  const found = new Map<Address, Set<string>>();
  for (const { definition, reads, verdict } of outcomesOf.get(about) ?? []) {
    if (verdict === "not applicable") continue;
    for (const read of reads) {
      const by = found.get(read);
      if (by === undefined) found.set(read, new Set([definition]));
      else by.add(definition);
    }
  }
  all.set(about, found);
  return found;
}

type OutcomesOf = ReadonlyMap<Address, readonly Outcome[]>;

const ids = (outcomes: readonly Outcome[]): readonly string[] => [
  ...new Set(outcomes.map(({ definition }) => definition)),
];

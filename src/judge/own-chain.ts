import { lowerTitle } from "../model/titles.ts";
import type { JudgedBook } from "../model/book.ts";
import type { Chain, ChainStep } from "../model/chain.ts";
import type { Outcome } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { parsePath } from "../model/path.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { walkPath } from "./walk-path.ts";

/**
 * The chain of a record whose kind has none: each field that links, judged by whatever of its own checks read what the
 * link names; each row of the register about it; and its checks.
 */
export function ownChain(judged: JudgedBook, kind: Kind, record: BookRecord, outcomes: readonly Outcome[]): Chain {
  const links = [...kind.fields.values()].flatMap((field): ChainStep[] => {
    const isLink = field.type === "link" || field.item?.type === "link";
    if (!isLink || field.name === "attachments") return [];
    const path = field.type === "list" ? `${field.name}[]` : field.name;
    const named = new Set(walkPath(judged, record, parsePath(path)).map((hit) => addressOf(hit.record)));
    const reading = outcomes.filter(({ reads }) => reads.some((address) => named.has(address)));
    return [{ what: field.title, paths: [path], judgedBy: ids(reading) }];
  });
  const owed = judged.owed
    .filter((one) => one.subject === record)
    .map((one): ChainStep => ({
      what: one.requirement.title,
      paths: [one.requirement.needs],
      judgedBy: [one.requirement.id],
    }));
  const title = lowerTitle(kind.title);
  const own = outcomes.length === 0 ? [] : [{ what: `Checks of this ${title}`, paths: [], judgedBy: ids(outcomes) }];
  return { kind: record.kind, links: [...links, ...owed, ...own] };
}

const ids = (outcomes: readonly Outcome[]): readonly string[] => [
  ...new Set(outcomes.map(({ definition }) => definition)),
];

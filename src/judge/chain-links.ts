import type { JudgedBook } from "../model/book.ts";
import type { Chain, ChainStep } from "../model/chain.ts";
import type { Outcome } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { addTo } from "../model/grouped.ts";
import { atPointer, stepsOf } from "../model/json.ts";
import { markOf, worst, type Mark } from "../model/mark.ts";
import { parsePath } from "../model/path.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { lowerTitle } from "../model/titles.ts";
import { ownChain } from "./own-chain.ts";
import { walkEvidence } from "../reading/walk-path.ts";
import { recordOfSubject, rowOfSubject } from "../model/subject.ts";

/** A record, or a row of one, that the paths of a link lead to. */
export interface Reached {
  readonly record: BookRecord;
  readonly pointer: string;
  /** A rule of the link read it, or is about it, and passed. */
  readonly judged: boolean;
}

/** A link of a record's chain as it was walked: what its paths lead to, what was judged there, and what that comes to. */
export interface WalkedLink {
  readonly step: ChainStep;
  readonly reached: readonly Reached[];
  /** Outcomes of the link's definitions about the record, or about what is reached. */
  readonly outcomes: readonly Outcome[];
  /** Findings for whose sake the paths lead no further: what should lie behind them is judged by nobody. */
  readonly open: readonly string[];
  /** Milestones before which what should lie behind them is not owed. */
  readonly notDue: readonly string[];
  readonly mark: Mark;
}

interface Walked {
  readonly record: BookRecord;
  readonly links: readonly WalkedLink[];
}

/** The chain last walked: a page asks for its own several times. Those of all records would be as large as the book. */
const last = new WeakMap<JudgedBook, Walked>();

/**
 * The chain of a record, link by link: the one place that says whether a link passes. It does where each record it reaches
 * was read by a passed outcome of its own rules, or is the subject of one, and none of them came to anything worse. What is
 * there and judged by none of them is *on record*; where a path ends at something missing or in doubt, it is *not judged*.
 */
export function chainLinks(judged: JudgedBook, chains: readonly Chain[], record: BookRecord): readonly WalkedLink[] {
  const before = last.get(judged);
  if (before?.record === record) return before.links;
  const kind = judged.definitions.kinds.get(record.kind);
  const named = chains.find((one) => one.kind === record.kind);
  const chain =
    named ??
    (kind === undefined ? { kind: record.kind, links: [] } : ownChain(judged, kind, record, outcomesOf(judged)));
  const links = withObjections(
    judged,
    chain.links.map((step) => walked(judged, record, step)),
  );
  const all =
    named === undefined || kind === undefined ? links : [...links, ...furtherChecks(judged, kind, record, links)];
  last.set(judged, { record, links: all });
  return all;
}

/** What is judged of the record itself and by no link of its chain: a rule is shown before anybody gives it a link. */
function furtherChecks(
  judged: JudgedBook,
  kind: Kind,
  record: BookRecord,
  links: readonly WalkedLink[],
): readonly WalkedLink[] {
  const shown = new Set(links.flatMap(({ outcomes }) => outcomes));
  const own = about(judged, [{ record, pointer: "" }], (outcome) => !shown.has(outcome));
  if (own.length === 0) return [];
  const judgedBy = [...new Set(own.map(({ definition }) => definition))];
  return [walked(judged, record, { what: `Further checks of this ${lowerTitle(kind.title)}`, paths: [], judgedBy })];
}

const indexes = new WeakMap<JudgedBook, ReadonlyMap<Address, readonly Outcome[]>>();

/** Outcomes by the record they are about, those of its rows among them. */
export function outcomesOf(judged: JudgedBook): ReadonlyMap<Address, readonly Outcome[]> {
  let index = indexes.get(judged);
  if (index === undefined) {
    const lists = new Map<Address, Outcome[]>();
    for (const outcome of judged.outcomes) {
      if (outcome.subject === null) continue;
      const address = recordOfSubject(outcome.subject);
      const list = lists.get(address);
      if (list === undefined) lists.set(address, [outcome]);
      else list.push(outcome);
    }
    indexes.set(judged, (index = lists));
  }
  return index;
}

type Hit = Omit<Reached, "judged">;

function walked(judged: JudgedBook, record: BookRecord, step: ChainStep): WalkedLink {
  const walks = step.paths.map((path) => walkEvidence(judged, record, parsePath(path)));
  const hits = walks.flatMap((walk) => walk.hits);
  const open = [...new Set(walks.flatMap((walk) => walk.open))];
  const notDue = [...new Set(walks.flatMap((walk) => walk.notDue))];
  const found = [...new Map(hits.map((hit) => [addressOf(hit.record, hit.pointer), hit])).values()];
  const wanted = new Set(step.judgedBy);
  const outcomes = about(judged, [{ record, pointer: "" }, ...found], ({ definition }) => wanted.has(definition));
  const read = readers(
    outcomes.filter(({ verdict }) => verdict === "passed"),
    new Set(found.map((hit) => addressOf(hit.record))),
  );
  const reached = found.map((hit) => ({
    ...hit,
    // A record is read by whoever is about another thing; of its rows only their own outcomes speak.
    judged: speaks(judged, read.get(addressOf(hit.record)) ?? [], hit),
  }));
  const link = { step, reached, outcomes, open, notDue };
  return { ...link, mark: markOfLink(link) };
}

function markOfLink({ outcomes, reached, open, notDue }: Omit<WalkedLink, "mark">): Mark {
  const unjudged = reached.some((one) => !one.judged);
  return worst([
    ...outcomes.map(markOf),
    ...(unjudged ? (["on record"] as const) : []),
    ...(open.length > 0 ? (["not judged"] as const) : []),
    ...(notDue.length > 0 ? (["not due"] as const) : []),
  ]);
}

/** Outcomes by those of these records that they read. */
function readers(
  outcomes: readonly Outcome[],
  records: ReadonlySet<Address>,
): ReadonlyMap<Address, readonly Outcome[]> {
  const by = new Map<Address, Outcome[]>();
  for (const outcome of records.size === 0 ? [] : outcomes)
    for (const address of new Set(outcome.reads)) if (records.has(address)) addTo(by, address, outcome);
  return by;
}

/** Outcomes of a sort about records and rows; a row is spoken of by its own outcomes and by those of its whole record. */
function about(judged: JudgedBook, hits: readonly Hit[], isWanted: (outcome: Outcome) => boolean): readonly Outcome[] {
  const index = outcomesOf(judged);
  return [
    ...new Set(
      hits.flatMap((hit) => {
        const row = rowIn(judged, hit);
        return (index.get(addressOf(hit.record)) ?? []).filter((outcome) => isWanted(outcome) && isAbout(outcome, row));
      }),
    ),
  ];
}

/** Whether any of the outcomes that read the hit is about it, or about another record than its own. */
function speaks(judged: JudgedBook, outcomes: readonly Outcome[], hit: Hit): boolean {
  const address = addressOf(hit.record);
  const row = rowIn(judged, hit);
  return outcomes.some(
    (outcome) => outcome.subject === null || recordOfSubject(outcome.subject) !== address || isAbout(outcome, row),
  );
}

const isAbout = ({ subject }: Outcome, row: string | undefined): boolean => {
  const own = subject === null ? undefined : rowOfSubject(subject.id);
  return row === undefined || own === undefined || own === row;
};

/** Name of the row a hit stands in, as subjects of outcomes are named; undefined for a whole record. */
function rowIn({ definitions }: JudgedBook, { record, pointer }: Hit): string | undefined {
  const [list = "", index] = stepsOf(pointer);
  const field = definitions.kinds.get(record.kind)?.fields.get(list);
  if (field?.type !== "list" || index === undefined) return undefined;
  return rowName(field, atPointer(record.value, `/${list}/${index}`));
}

const objections: ReadonlySet<Mark> = new Set(["rejected", "failed", "not judged", "answered"]);

/** What did not pass of anything a link reaches shows in it, whether or not the link names who judged it. */
function withObjections(judged: JudgedBook, links: readonly WalkedLink[]): readonly WalkedLink[] {
  const shown = new Set(links.flatMap(({ outcomes }) => outcomes));
  return links.map((link) => {
    const more = about(judged, link.reached, (one) => objections.has(markOf(one)) && !shown.has(one));
    if (more.length === 0) return link;
    for (const one of more) shown.add(one);
    const full = { ...link, outcomes: [...link.outcomes, ...more] };
    return { ...full, mark: markOfLink(full) };
  });
}

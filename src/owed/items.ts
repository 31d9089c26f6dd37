import type { Adoptable, Missing } from "../model/missing.ts";
import { blocks, type Finding } from "../model/finding.ts";
import { milestoneDays, type MilestoneDay } from "../model/milestone-days.ts";
import { recordWords } from "../model/titles.ts";
import type { Milestone, Owner } from "../model/vocabulary.ts";
import {
  originalAt,
  partiesAt,
  plannedIn,
  thingWords,
  titleOf,
  type At,
  type Book,
  type OriginalOf,
  type Party,
} from "./things.ts";
import { partsOfAddress, type Address } from "../model/record.ts";
import { recordId } from "../model/subject.ts";

/**
 * due: nobody may wait any longer · not due: its milestone is not reached · open: another finding says why it is absent ·
 * accepted: an exception answers it.
 */
export type Standing = "due" | "not due" | "open" | "accepted";

/** One thing that is owed: what, for which thing, when, by whom, and from which paper. */
export interface OwedItem {
  /** Key of the absence or of the gap. */
  readonly key: string;
  /** Record or row in which it is missing; null: the book, or a record that links name. */
  readonly at: At | null;
  readonly standing: Standing;
  /** "NDT report with method RT". */
  readonly what: string;
  /** "joint C2", "the book"; of a record that links name, who names it. */
  readonly thing: string;
  /** Links name the record that is missing; the thing is then who names it: "named by inspection step ITP-230". */
  readonly named: boolean;
  /** What the thing is called beside its id. */
  readonly title: string;
  /** The whole in one sentence, as a finding says it. */
  readonly says: string;
  /** Who must act, and the firms or persons that records name for that. */
  readonly owner: Owner;
  readonly parties: readonly Party[];
  readonly milestone: MilestoneDay | null;
  /** Position of the milestone in the order of the issue; what is owed at once comes first. */
  readonly rank: number;
  /** Day that the record it is missing in plans for itself. */
  readonly planned: string | null;
  /** The paper it is read from, if one is named, and whose paper that is. */
  readonly original: OriginalOf | null;
  readonly paperOf: readonly Party[];
  /** What stands in the way, or has accepted it, in words. */
  readonly because: readonly string[];
  /** Recomputed figures that the designer may adopt in its place, by a signature for the digest of each. */
  readonly adoptable: readonly Omit<Adoptable, "fields">[];
}

/**
 * Everything the book misses or will be asked for, each thing once: what is absent, due or not, and other gaps of its
 * findings (evidence that is there and not enough).
 */
export function owedItems(book: Book): readonly OwedItem[] {
  const days = milestoneDays(book.issue);
  const findings = new Map(book.findings.map((finding) => [finding.key, finding]));
  const own = new Set(book.missing.flatMap(({ became }) => ("finding" in became ? [became.finding] : [])));
  const others = book.findings.filter(({ key, severity }) => severity === "gap" && !own.has(key));
  return [
    ...book.missing.map((missing) => ofMissing(book, days, findings, missing)),
    ...others.map((finding) => ofFinding(book, days, finding)),
  ];
}

function ofMissing(
  book: Book,
  days: readonly MilestoneDay[],
  findings: ReadonlyMap<string, Finding>,
  missing: Missing,
): OwedItem {
  const { became, at, owner } = missing;
  const exception = "finding" in became ? (findings.get(became.finding)?.exception ?? null) : null;
  const explained = "explained" in became ? became.explained.map((key) => findings.get(key)?.message ?? key) : [];
  const field = missing.target === null ? missing.field : null;
  return {
    key: missing.key,
    at,
    standing: "notDue" in became ? "not due" : "explained" in became ? "open" : exception === null ? "due" : "accepted",
    what: missing.what,
    ...(missing.target === null ? thingOf(book, at) : namedBy(book, missing.target)),
    named: missing.target !== null,
    says: missing.message,
    ...actorsOf(book, at, owner),
    ...whenOf(days, missing.due),
    planned: at === null ? null : plannedIn(book, at.record),
    original: at === null || missing.kind !== null ? null : originalAt(book, at, field),
    because: exception === null ? explained : [`accepted by ${spoken(book, exception)}`],
    adoptable: (missing.parts ?? [missing]).flatMap(({ adoptable }) =>
      adoptable === undefined ? [] : [{ of: adoptable.of, digest: adoptable.digest, said: adoptable.said }],
    ),
  };
}

/** Findings that block and are in no list of what is owed: something is there, and wrong or in doubt. */
export const notOwed = ({ findings }: Pick<Book, "findings">): readonly Finding[] =>
  findings.filter((finding) => blocks(finding) && finding.severity !== "gap");

/** A gap that is no absence: its sentence says what is lacking. */
function ofFinding(book: Book, days: readonly MilestoneDay[], finding: Finding): OwedItem {
  const { subject, exception } = finding;
  const record = subject === null ? undefined : book.graph.byKind.get(subject.kind)?.get(recordId(subject.id));
  const at = record === undefined ? null : { record, pointer: "" };
  return {
    key: finding.key,
    at,
    standing: exception === null ? "due" : "accepted",
    what: finding.message,
    ...thingOf(book, at),
    named: false,
    says: finding.message,
    ...actorsOf(book, at, finding.owner),
    ...whenOf(days, finding.due ?? "now"),
    planned: at === null ? null : plannedIn(book, at.record),
    original: at === null ? null : originalAt(book, at, null),
    because: exception === null ? [] : [`accepted by ${spoken(book, exception)}`],
    adoptable: [],
  };
}

function thingOf(book: Book, at: At | null): Pick<OwedItem, "thing" | "title"> {
  return at === null
    ? { thing: "the book", title: titleText(book.book.value["title"]) }
    : { thing: thingWords(book, at), title: titleOf(book, at.record) };
}

const titleText = (value: unknown): string => (typeof value === "string" ? value : "");

/** A record that is not there has no title: who names it tells what it is. */
function namedBy({ graph, definitions }: Book, target: Address): Pick<OwedItem, "thing" | "title"> {
  const names = (graph.absent.get(target) ?? []).map(({ from }) => recordWords(definitions.kinds, from));
  return { thing: `named by ${[...new Set(names)].join(", ")}`, title: "" };
}

function actorsOf(book: Book, at: At | null, owner: Owner): Pick<OwedItem, "owner" | "parties" | "paperOf"> {
  const whole = { record: book.book, pointer: "" };
  const plays = (role: Owner) => role === owner;
  const near = at === null ? [] : partiesAt(book, at, plays);
  const parties = near.length > 0 ? near : partiesAt(book, whole, plays);
  const others = at === null || at.record === book.book ? [] : partiesAt(book, at, (role) => role !== owner);
  return { owner, parties, paperOf: near.length > 0 ? [] : others };
}

function whenOf(days: readonly MilestoneDay[], due: Milestone): Pick<OwedItem, "milestone" | "rank"> {
  if (due === "now") return { milestone: null, rank: -1 };
  const rank = days.findIndex(({ name }) => name === due);
  return { milestone: days[rank] ?? { name: due, reached: false }, rank: rank < 0 ? days.length : rank };
}

function spoken({ definitions }: Book, address: string): string {
  return recordWords(definitions.kinds, partsOfAddress(address));
}

import { milestoneDays, type MilestoneDay } from "../model/milestone-days.ts";
import { byCodePoint } from "../model/order.ts";
import type { OwedItem } from "./items.ts";
import type { Book } from "./things.ts";

/** Which of what is owed somebody asks for. */
export interface Asked {
  /** Owed at this milestone or before it. */
  readonly until?: string;
  /** Role, or id or name of a firm or person that owes it or whose paper it is owed from; in capitals or not. */
  readonly owner?: string;
}

/** What one person or firm owes, soonest first. */
export interface OwedBy {
  /** "testing", "supplier, Greyvault Plate Mill". */
  readonly who: string;
  readonly items: readonly OwedItem[];
}

/** Everything owed, by who must act. */
export interface OwedList {
  readonly groups: readonly OwedBy[];
  /** What exceptions have accepted: absent, and owed by nobody. */
  readonly accepted: readonly OwedItem[];
  /** How many there are in all, and how many of them were asked for. */
  readonly all: number;
  readonly listed: number;
}

/** "supplier, Greyvault Plate Mill": the role, and the firms or persons that records name for it. */
export const whoOf = ({ owner, parties }: Pick<OwedItem, "owner" | "parties">): string =>
  [owner, ...parties.map(({ name }) => name)].join(", ");

/** What was asked for, by who must act; within each by day, then in the order of milestones, then by what it is about. */
export function owedList(items: readonly OwedItem[], days: readonly MilestoneDay[], asked: Asked): OwedList {
  const last = asked.until === undefined ? Infinity : days.findIndex(({ name }) => name === asked.until);
  const wanted = items.filter((item) => item.rank <= last && isOf(item, asked.owner)).sort(bySoonest);
  const open = wanted.filter(({ standing }) => standing !== "accepted");
  const groups = [...new Set(open.map(whoOf))].sort(byCodePoint).map((who) => ({
    who,
    items: open.filter((item) => whoOf(item) === who),
  }));
  return {
    groups,
    accepted: wanted.filter(({ standing }) => standing === "accepted"),
    all: items.length,
    listed: wanted.length,
  };
}

/** Whether somebody owes it, or it is owed from a paper of theirs: whoever has to send that is the one to write to. */
function isOf(item: OwedItem, asked: string | undefined): boolean {
  const wanted = asked?.toLowerCase();
  return wanted === undefined || ownersOf(item).some((one) => one.toLowerCase() === wanted);
}

const ownersOf = ({ owner, parties, paperOf }: OwedItem): readonly string[] => [
  owner,
  ...[...parties, ...paperOf].flatMap(({ id, name }) => [id, name]),
];

/** Firms and persons that owe something, or whose paper is owed: "Greyvault Plate Mill (GREYVAULT)". */
export const firmsIn = (items: readonly OwedItem[]): readonly string[] =>
  [
    ...new Set(
      items
        .flatMap(({ parties, paperOf }) => [...parties, ...paperOf])
        .map(({ id, name }) => (name === id ? id : `${name} (${id})`)),
    ),
  ].sort(byCodePoint);

/** Everyone who owes something, or whose paper is owed, as a command line may name them. */
export const ownersIn = (items: readonly OwedItem[]): readonly string[] => [...new Set(items.flatMap(ownersOf))];

function bySoonest(a: OwedItem, b: OwedItem): number {
  return (
    byCodePoint(dayOf(a), dayOf(b)) ||
    a.rank - b.rank ||
    byCodePoint(a.planned ?? "~", b.planned ?? "~") ||
    byCodePoint(a.thing, b.thing) ||
    byCodePoint(a.what, b.what) ||
    byCodePoint(a.says, b.says)
  );
}

/** What is owed at once comes first, what has no day last. */
const dayOf = ({ milestone, rank }: OwedItem): string => (rank < 0 ? "" : (milestone?.day ?? "~"));

/** The first milestone that is not reached; undefined when all are. */
export const nextMilestone = (book: Pick<Book, "issue">): MilestoneDay | undefined =>
  milestoneDays(book.issue).find(({ reached }) => !reached);

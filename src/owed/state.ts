import type { JudgedBook } from "../model/book.ts";
import { milestoneDays, type MilestoneDay } from "../model/milestone-days.ts";
import { owedItems, type OwedItem } from "./items.ts";
import { nextMilestone, whoOf } from "./list.ts";
import type { Book } from "./things.ts";

/** How far a book has got with what one milestone makes due. */
export interface MilestoneState {
  /** null: what is owed at once, whatever is reached. */
  readonly milestone: MilestoneDay | null;
  /** Rows of the register and what definitions are owed, each for each thing it is about: how many apply, and how many are there. */
  readonly asked: number;
  readonly there: number;
  /** Things missing, as the list of what is owed has them: fields and records that links name are among them. */
  readonly missing: number;
}

/** Where a book stands: for the one who asks how far it is. */
export interface BookState {
  readonly milestones: readonly MilestoneState[];
  readonly asked: number;
  readonly there: number;
  readonly next?: MilestoneDay;
  /** What is missing for the next milestone, what is overdue among it, by who must act; most first. */
  readonly heldUp: readonly { readonly who: string; readonly count: number }[];
}

/** Counts what the register and definitions ask for and what is there, by milestone, and who holds the next one up. */
export function bookState(book: Book & Pick<JudgedBook, "owed" | "owing">): BookState {
  const days = milestoneDays(book.issue);
  const open = owedItems(book).filter(({ standing }) => standing !== "accepted");
  const rows = [
    ...book.owed
      .filter(({ state }) => state !== "not applicable")
      .map(({ requirement, state }) => ({ at: requirement.due, state })),
    ...book.owing.map(({ by, state }) => ({ at: by[0]?.due ?? "now", state })),
  ];
  const due = new Map(rows.map((row) => [row, days.findIndex(({ name }) => name === row.at)]));
  const stateAt = (milestone: MilestoneDay | null, rank: number): MilestoneState => {
    const asked = rows.filter((row) => due.get(row) === rank);
    return {
      milestone,
      asked: asked.length,
      there: asked.filter(({ state }) => state === "met").length,
      missing: open.filter((item) => item.rank === rank).length,
    };
  };
  const milestones = [stateAt(null, -1), ...days.map((one, rank) => stateAt(one, rank))];
  const next = nextMilestone(book);
  const last = next === undefined ? Infinity : days.indexOf(days.find(({ name }) => name === next.name) ?? next);
  return {
    milestones: milestones.filter(({ milestone, asked, missing }) => milestone !== null || asked + missing > 0),
    asked: rows.length,
    there: rows.filter(({ state }) => state === "met").length,
    ...(next !== undefined && { next }),
    heldUp: counted(open.filter(({ rank }) => rank <= last)),
  };
}

function counted(items: readonly OwedItem[]): BookState["heldUp"] {
  const counts = new Map<string, number>();
  for (const item of items) counts.set(whoOf(item), (counts.get(whoOf(item)) ?? 0) + 1);
  return [...counts]
    .map(([who, count]) => ({ who, count }))
    .sort((a, b) => b.count - a.count || (a.who < b.who ? -1 : 1));
}

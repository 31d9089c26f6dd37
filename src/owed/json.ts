import { jsonText } from "../report/plain.ts";
import type { ReportedBook } from "../report/report.ts";
import type { Announced } from "./announced.ts";
import type { OwedItem } from "./items.ts";
import { whoOf, type Asked, type OwedList } from "./list.ts";
import type { MilestoneDay } from "../model/milestone-days.ts";

/** The list for the next program; format 1. Ends with a line end. */
export function owedJson(
  tool: string,
  { number, title, revision, state, dataCutOff, fingerprint }: ReportedBook,
  next: MilestoneDay | undefined,
  asked: Asked,
  { groups, accepted, all, listed }: OwedList,
  announced: readonly Announced[],
): string {
  return jsonText({
    tool,
    format: 1,
    book: { number, title, revision, state, dataCutOff, fingerprint },
    nextMilestone: next === undefined ? null : { name: next.name, planned: next.day ?? null },
    asked: { until: asked.until ?? null, owner: asked.owner ?? null },
    counts: { all, listed },
    owed: [...groups.flatMap(({ items }) => items), ...accepted].map(itemJson),
    announced,
  });
}

function itemJson(item: OwedItem) {
  const {
    standing,
    what,
    thing,
    title,
    says,
    owner,
    parties,
    milestone,
    planned,
    original,
    paperOf,
    because,
    adoptable,
  } = item;
  return {
    who: whoOf(item),
    owner,
    parties,
    standing,
    what,
    thing,
    title,
    says,
    milestone: milestone === null ? null : milestone.name,
    day: milestone?.day ?? null,
    reached: milestone?.reached ?? null,
    planned,
    original,
    paperOf,
    because,
    adoptable,
  };
}

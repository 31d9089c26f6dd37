import type { Finding } from "../model/finding.ts";
import { jsonText } from "../report/plain.ts";
import type { ReportedBook } from "../report/report.ts";
import type { ToHold } from "./announced.ts";
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
  announced: readonly ToHold[],
  others: readonly Finding[],
): string {
  return jsonText({
    tool,
    format: 1,
    book: { number, title, revision, state, dataCutOff, fingerprint },
    nextMilestone: next === undefined ? null : { name: next.name, planned: next.day ?? null },
    asked: { until: asked.until ?? null, owner: asked.owner ?? null },
    counts: { all, listed },
    owed: [...groups.flatMap(({ items }) => items), ...accepted].map(itemJson),
    announced: announced.map(announcedJson),
    notOwed: others.map(({ key, severity, message }) => ({ key, severity, message })),
  });
}

/** `value` null: it is not known yet, and `because` says why. */
function announcedJson({ announced: { of, remark, limits, because }, item, thing, title }: ToHold) {
  return {
    thing,
    title,
    of,
    who: whoOf(item),
    owner: item.owner,
    milestone: item.milestone?.name ?? null,
    day: item.milestone?.day ?? null,
    remark: remark ?? null,
    limits,
    because,
  };
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

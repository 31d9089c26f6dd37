import { canPrecede, parseDate } from "./dates.ts";
import { isList, isObject, type Json } from "./json.ts";
import type { BookRecord } from "./record.ts";

/** A milestone as issue.json lists it. */
export interface MilestoneDay {
  readonly name: string;
  /** Day it was reached, or will be; undefined where none is written, or none that can be read. */
  readonly day?: string;
  /** Its day is not after the cut-off of the evidence; else the day is planned. */
  readonly reached: boolean;
}

/** The milestones of an issue in their order. A day after the data cut-off is a plan. */
export function milestoneDays(issue: Pick<BookRecord, "value">): readonly MilestoneDay[] {
  const cutOff = parseDate(text(issue.value["dataCutOff"]));
  const listed = issue.value["milestones"];
  return (isList(listed) ? listed : []).flatMap((one): readonly MilestoneDay[] => {
    if (!isObject(one) || typeof one["name"] !== "string") return [];
    const day = parseDate(text(one["reached"]));
    if (!day.ok) return [{ name: one["name"], reached: false }];
    const reached = cutOff.ok && canPrecede(day.date, cutOff.date) === "yes";
    return [{ name: one["name"], day: day.date.text, reached }];
  });
}

const text = (value: Json | undefined) => (typeof value === "string" ? value : "");

import type { Finding, Related } from "../model/finding.ts";
import { parseDate } from "../model/dates.ts";
import { atPointer, isList, isObject, type Json } from "../model/json.ts";
import type { Field } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { BookRecord } from "../model/record.ts";
import { fieldOfPointer } from "../model/stable.ts";
import type { World } from "./world.ts";

type Affected = Pick<Related, "subject" | "place">;

/**
 * Day on which what is affected took place: the date that is pointed at, else the event of the row around it, else the
 * first event of the record. Empty: it is no event.
 */
export function dayOf({ graph, kinds }: Pick<World, "graph" | "kinds">, { subject, place }: Affected): string {
  const record = recordOf(graph, subject);
  if (record === undefined) return "";
  const fields = kinds.get(record.kind)?.fields;
  const inside = place.file === record.file && place.pointer.startsWith(record.pointer);
  let pointer = inside ? place.pointer.slice(record.pointer.length) : "";
  for (;;) {
    const field = pointer === "" ? undefined : fieldOfPointer(fields, record.value, pointer);
    const day = firstDay(atPointer(record.value, pointer) ?? null, field, pointer === "" ? fields : field?.fields);
    if (day !== "" || pointer === "") return day;
    pointer = pointer.slice(0, pointer.lastIndexOf("/"));
  }
}

function recordOf({ byKind }: World["graph"], subject: Affected["subject"]): BookRecord | undefined {
  if (subject === null) return undefined;
  const records = byKind.get(subject.kind);
  return records?.get(subject.id) ?? records?.get(subject.id.split("#")[0] ?? "");
}

/** The first event in a value: of an object among its own dates, then among those of its rows. */
function firstDay(value: Json, field: Field | undefined, fields: ReadonlyMap<string, Field> | undefined): string {
  if (typeof value === "string") return field?.date === "event" ? day(value) : "";
  if (!isObject(value) || fields === undefined) return "";
  const own: string[] = [];
  const inner: string[] = [];
  for (const [name, one] of fields) {
    const member = Object.hasOwn(value, name) ? value[name] : undefined;
    if (typeof member === "string") own.push(firstDay(member, one, undefined));
    else if (isList(member)) inner.push(...member.map((row) => firstDay(row, one.item, one.item?.fields)));
    else if (isObject(member)) inner.push(firstDay(member, one, one.fields));
  }
  return least(own) || least(inner);
}

const day = (text: string): string => {
  const parsed = parseDate(text);
  return parsed.ok ? parsed.date.day : "";
};
const least = (days: readonly string[]): string => days.filter((one) => one !== "").sort()[0] ?? "";

interface Dated<T> {
  readonly one: T;
  readonly day: string;
}

/** What is affected in order of time, then of kind and id; what is no event comes last. */
export function inTime<T extends Affected>(
  world: Pick<World, "graph" | "kinds">,
  all: readonly T[],
): readonly Dated<T>[] {
  const name = ({ subject }: T) => (subject === null ? "" : `${subject.kind} ${subject.id}`);
  return all
    .map((one) => ({ one, day: dayOf(world, one) }))
    .sort(
      (a, b) =>
        byCodePoint(a.day || "9999", b.day || "9999") ||
        byCodePoint(name(a.one), name(b.one)) ||
        byCodePoint(a.one.place.pointer, b.one.place.pointer),
    );
}

/** "first: weld log WL-C1 on 2026-03-09; 11 more" */
export function firstAndMore(
  { kinds }: Pick<World, "kinds">,
  { subject }: Pick<Finding, "subject">,
  on: string,
  more: number,
): string {
  if (subject === null) return "";
  const title = (kinds.get(subject.kind)?.title ?? subject.kind).toLowerCase();
  return `first: ${title} ${subject.id}${on === "" ? "" : ` on ${on}`}; ${more} more`;
}

import type { Finding, Related } from "../model/finding.ts";
import { parseDate, type DateValue } from "../model/dates.ts";
import { atPointer, isList, isObject, type Json, holderOf } from "../model/json.ts";
import type { Field } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { BookRecord } from "../model/record.ts";
import { fieldOfPointer } from "../model/stable.ts";
import type { World } from "../reading/world.ts";
import { subjectWords } from "../model/titles.ts";
import { recordId } from "../model/subject.ts";

type Affected = Pick<Related, "subject" | "place">;

/**
 * When what is affected took place: the date that is pointed at, else the event of the row around it, else the
 * first event of the record. Undefined: it is no event.
 */
function dateOf({ graph, kinds }: Pick<World, "graph" | "kinds">, { subject, place }: Affected): DateValue | undefined {
  const record = recordOf(graph, subject);
  if (record === undefined) return undefined;
  const fields = kinds.get(record.kind)?.fields;
  const inside = place.file === record.file && `${place.pointer}/`.startsWith(`${record.pointer}/`);
  let pointer = inside ? place.pointer.slice(record.pointer.length) : "";
  for (;;) {
    const field = pointer === "" ? undefined : fieldOfPointer(fields, record.value, pointer);
    const date = firstIn(atPointer(record.value, pointer) ?? null, field, pointer === "" ? fields : field?.fields);
    if (date !== undefined || pointer === "") return date;
    pointer = holderOf(pointer);
  }
}

function recordOf({ byKind }: World["graph"], subject: Affected["subject"]): BookRecord | undefined {
  if (subject === null) return undefined;
  const records = byKind.get(subject.kind);
  return records?.get(subject.id) ?? records?.get(recordId(subject.id));
}

/** The first event in a value: of an object among its own dates, then among those of its rows. */
function firstIn(
  value: Json,
  field: Field | undefined,
  fields: ReadonlyMap<string, Field> | undefined,
): DateValue | undefined {
  if (typeof value === "string") {
    const parsed = field?.date === "event" ? parseDate(value) : null;
    return parsed?.ok === true ? parsed.date : undefined;
  }
  if (!isObject(value) || fields === undefined) return undefined;
  const own: (DateValue | undefined)[] = [];
  const inner: (DateValue | undefined)[] = [];
  for (const [name, one] of fields) {
    const member = Object.hasOwn(value, name) ? value[name] : undefined;
    if (typeof member === "string") own.push(firstIn(member, one, undefined));
    // What a record need not tell of is not the event it is about.
    else if (one.due === undefined && !one.required) continue;
    else if (isList(member)) inner.push(...member.map((row) => firstIn(row, one.item, one.item?.fields)));
    else if (isObject(member)) inner.push(firstIn(member, one, one.fields));
  }
  return earliest(own) ?? earliest(inner);
}

const earliest = (dates: readonly (DateValue | undefined)[]): DateValue | undefined =>
  dates.filter((one) => one !== undefined).sort((a, b) => a.from - b.from)[0];

interface Dated<T> {
  readonly one: T;
  /** Empty: it is no event. */
  readonly day: string;
}

/** What is affected in order of time, then of kind and id; what is no event comes last. */
export function inTime<T extends Affected>(
  world: Pick<World, "graph" | "kinds">,
  all: readonly T[],
): readonly Dated<T>[] {
  const name = ({ subject }: T) => (subject === null ? "" : `${subject.kind} ${recordId(subject.id)}`);
  return all
    .map((one) => ({ one, date: dateOf(world, one) }))
    .map(({ one, date }) => ({ one, day: date?.day ?? "", at: date?.from ?? Infinity }))
    .sort(
      (a, b) =>
        (a.at === b.at ? 0 : a.at - b.at) ||
        byCodePoint(name(a.one), name(b.one)) ||
        byCodePoint(sortable(a.one.place.pointer), sortable(b.one.place.pointer)),
    );
}

/** Rows in their order, the tenth behind the ninth. */
const sortable = (pointer: string) => pointer.replaceAll(/\d+/g, (digits) => digits.padStart(6, "0"));

/** "first: weld log WL-C1 on 2026-03-09; 11 more" */
export function firstAndMore(
  { kinds }: Pick<World, "kinds">,
  { subject }: Pick<Finding, "subject">,
  on: string,
  more: number,
): string {
  if (subject === null) return "";
  return `first: ${subjectWords(kinds, subject)}${on === "" ? "" : ` on ${on}`}; ${more} more`;
}

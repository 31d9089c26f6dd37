import { canPrecede, parseDate, type DateValue } from "../model/dates.ts";
import type { Finding } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { eachLeaf, type Leaf } from "../model/leaves.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { recordWords } from "../model/titles.ts";
import { locate, type Court } from "../court/court.ts";

/** A day of an event that can be read and is not doubted. */
export interface Event {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly day: DateValue;
}

/** With its field. */
export type Dated = Event & Pick<Leaf, "field">;

/** Days of a record by its kind: read once of a record that is the same. */
const read = new WeakMap<BookRecord, { readonly kind: Kind; readonly events: readonly Dated[] }>();

function eventsOf(record: BookRecord, kind: Kind): readonly Dated[] {
  const before = read.get(record);
  if (before?.kind === kind) return before.events;
  const events: Dated[] = [];
  eachLeaf(record, kind.fields, ({ pointer, field, value }) => {
    if (field.date !== "event" || typeof value !== "string") return;
    const parsed = parseDate(value);
    if (parsed.ok) events.push({ record, pointer, field, day: parsed.date });
  });
  read.set(record, { kind, events });
  return events;
}

/** Days of events that nothing doubts, by record. */
export function eventsIn({ world }: Court): ReadonlyMap<BookRecord, readonly Dated[]> {
  const { graph, kinds, ledger } = world;
  return new Map(
    graph.records.flatMap((record) => {
      const kind = kinds.get(record.kind);
      const all = kind === undefined || kind.derived ? [] : eventsOf(record, kind);
      const sound = all.filter(({ pointer }) => ledger.doubts(addressOf(record, pointer)).length === 0);
      return sound.length === 0 ? [] : [[record, sound] as const];
    }),
  );
}

/** A day as a record writes it; none where it cannot be read, or something doubts it. */
export function dayAt(court: Court, record: BookRecord, pointer: string, value: unknown): DateValue | undefined {
  if (typeof value !== "string" || court.world.ledger.doubts(addressOf(record, pointer)).length > 0) return undefined;
  const parsed = parseDate(value);
  return parsed.ok ? parsed.date : undefined;
}

/** Surely before the other. */
export const isBefore = (a: DateValue, b: DateValue): boolean => canPrecede(b, a) === "no";

/** Where a day stands. */
export const spot = (court: Court, { record, pointer }: Event): Pick<Finding, "subject" | "place"> => {
  const { subject, place } = locate(court.world, record, pointer);
  return { subject, place };
};

/** At most so many other places are listed. */
export const shown = 20;
/** "weld log WL-C1 of 2026-06-09". */
export const said = (court: Court, { record, day }: Event) =>
  `${recordWords(court.world.kinds, record)} of ${day.text}`;

/** The first in time, and how many follow. */
export function firstOf<E extends Event>(all: readonly E[]): readonly [first: E, more: string] {
  const [first, ...others] = [...all].sort((a, b) => a.day.from - b.day.from);
  if (first === undefined) throw new RangeError("no event");
  return [first, others.length === 0 ? "" : `; ${others.length} more`];
}

import { milestoneDays } from "../model/milestone-days.ts";
import { keyOf } from "../model/finding-key.ts";
import { addTo } from "../model/grouped.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { recordWords } from "../model/titles.ts";
import { firstAndMore } from "../court/chronology.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { dayRules } from "./days.ts";
import { dayAt, eventsIn, firstOf, isBefore, said, shown, spot, type Dated, type Event } from "./events.ts";

/** Holds them against the days of what rests on them, and against milestones; what was found wrong before counts for nothing. */
export function checkRests(court: Court, issue: BookRecord): void {
  const events = eventsIn(court);
  for (const record of court.world.graph.records) thereBy(court, record, (one) => events.get(one) ?? []);
  milestonesBegun(court, issue, [...events.values()].flat());
}

/** What a record names as there by a day of its own, against that day. */
function thereBy(court: Court, record: BookRecord, daysOf: (record: BookRecord) => readonly Event[]): void {
  const { graph, kinds, ledger } = court.world;
  for (const [name, { thereBy: by, title }] of kinds.get(record.kind)?.fields ?? []) {
    const day = by === undefined ? undefined : dayAt(court, record, `/${by}`, record.value[by]);
    if (by === undefined || day === undefined) continue;
    const late = [...(graph.out.get(record) ?? [])].flatMap(([pointer, { to }]) => {
      if (to === undefined || !pointer.startsWith(`/${name}/`)) return [];
      if (ledger.doubts(addressOf(record, pointer)).length > 0) return [];
      const [first] = needed(court, to, daysOf(to))
        .filter((one) => isBefore(day, one.day))
        .sort((a, b) => a.day.from - b.day.from);
      return first === undefined ? [] : [first];
    });
    if (late.length === 0) continue;
    const [first, more] = firstOf(late);
    const { subject, place } = locate(court.world, record, `/${by}`);
    addFinding(
      court,
      newFinding(
        finderOf(dayRules, "there-by"),
        { subject, place },
        {
          key: keyOf("there-by", record, name),
          message: `${recordWords(kinds, record)} was ${by} on ${day.text}, before what it rests on: ${said(court, first)}${more}`,
          why: `its ${title.toLowerCase()} name ${late.length === 1 ? "it" : "them"}`,
          hint: "correct the wrong day, or name the evidence there was; if it was signed in advance, answer this query",
          about: JSON.stringify([day.text, ...late.map((one) => one.day.text)]),
          related: late.slice(0, shown).map((one) => ({ ...spot(court, one), message: one.day.text })),
        },
      ),
    );
  }
}

/**
 * Days of a record that had come when something was done that rests on it. What goes on from job to job (an instrument, a
 * qualification) and what is revised was there with its first row; later rows do not count. Nor do rows that are told apart by
 * their day, as dryings of a batch: they are what becomes of a thing that was there.
 */
function needed(court: Court, record: BookRecord, events: readonly Event[]): readonly Event[] {
  const kind = court.world.kinds.get(record.kind);
  const goesOn = kind?.carry !== "never";
  const own = events.filter(({ pointer }) => !/\/\d+(\/|$)/.test(pointer));
  if (goesOn && own.length > 0) return own;
  const first = new Map<string, Event>();
  const all: Event[] = [];
  for (const event of events) {
    const [, list = "", rest] = /^\/([^/]+)\/\d+(\/.*)?$/.exec(event.pointer) ?? [];
    if (own.length > 0 && kind?.fields.get(list)?.rowKey === "date") continue;
    const earliestOnly = rest !== undefined && (goesOn || kind.fields.get(list)?.rowKey === "revision");
    if (!earliestOnly) {
      all.push(event);
      continue;
    }
    const before = first.get(list);
    if (before === undefined || isBefore(event.day, before.day)) first.set(list, event);
  }
  return [...all, ...first.values()];
}

/** Each milestone against the events that are due at it: late ones there may be, but not most of a kind. */
function milestonesBegun(court: Court, issue: BookRecord, events: readonly Dated[]): void {
  if (court.world.ledger.doubts(addressOf(issue, "/milestones")).length > 0) return;
  milestoneDays(issue).forEach(({ name, day: text, reached }, index) => {
    const day = reached ? dayAt(court, issue, `/milestones/${index}/reached`, text) : undefined;
    if (day === undefined) return;
    const sorts = new Map<string, Event[]>();
    for (const event of events)
      // A report of what went wrong is raised when it goes wrong, whatever is reached.
      if (event.field.due === name && name !== "order")
        addTo(sorts, `${event.record.kind} ${event.pointer.replaceAll(/\/\d+/g, "")}`, event);
    const late = [...sorts.values()].flatMap((all) => {
      const byRecord = new Map<BookRecord, Event>();
      for (const event of all) {
        const before = byRecord.get(event.record);
        if (before === undefined || isBefore(event.day, before.day)) byRecord.set(event.record, event);
      }
      const after = [...byRecord.values()].filter((one) => isBefore(day, one.day));
      return 2 * after.length > byRecord.size ? after : [];
    });
    if (late.length === 0) return;
    const subjects = new Map(late.map((one) => [one.record, one]));
    const [first] = firstOf([...subjects.values()]);
    const { subject, place } = locate(court.world, issue, `/milestones/${index}/reached`);
    addFinding(
      court,
      newFinding(
        finderOf(dayRules, "milestone-day"),
        { subject, place },
        {
          key: keyOf("milestone-day", issue, name),
          message: `milestone "${name}" was reached on ${day.text}; what is due at it is later (${firstAndMore(court.world, spot(court, first), first.day.text, subjects.size - 1)})`,
          why: "most records of that kind are of a later day",
          hint: "correct the day in issue.json, or the wrong day of a record; if the milestone was reached without them, answer this query",
          about: JSON.stringify([day.text, ...late.map((one) => one.day.text)]),
          related: late.slice(0, shown).map((one) => ({ ...spot(court, one), message: one.day.text })),
        },
      ),
    );
  });
}

import { ownChoice, commonPractice } from "../model/basis.ts";
import { statementOf } from "../model/comparison.ts";
import { canPrecede, parseDate, type DateValue } from "../model/dates.ts";
import type { BuiltIn } from "../model/definitions.ts";
import { keyOf } from "../model/finding-key.ts";
import { addTo } from "../model/grouped.ts";
import { atPointer, isObject } from "../model/json.ts";
import { fieldAt } from "../model/kind.ts";
import { eachLeaf, type Leaf } from "../model/leaves.ts";
import { milestoneDays } from "../model/milestone-days.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";
import { originalAt, originalsAmong } from "../model/read-from.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { kindWords, recordWords } from "../model/titles.ts";
import { firstAndMore } from "../court/chronology.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";

/** What follows from the schemas alone: which days of a record are events, and when they are due. */
export const dayRules = [
  {
    id: "signed-after",
    title: "A signature is not of an earlier day than what is signed",
    severity: "nonconformity",
    basis: ownChoice("nobody can sign for what has not taken place, or for a paper that is not written yet"),
    reads: [{ kinds: "any", paths: ["signatures[].date", "approvals[].date"] }],
  },
  {
    id: "compared-after",
    title: "A paper is compared after everything that stands on it",
    severity: "nonconformity",
    basis: ownChoice("a paper that tells of an event did not exist before it"),
    reads: [{ kinds: ["original"], paths: ["transcription.date"] }],
  },
  {
    id: "there-by",
    title: "What a record names as its evidence was there on the day it speaks for",
    severity: "query",
    owner: "quality",
    basis: commonPractice("a step of the plan is signed, and a report closed, when its records lie on the table"),
    reads: [
      { kinds: ["inspection-step"], paths: ["records"] },
      { kinds: ["nonconformity-report"], paths: ["verification"] },
    ],
  },
  {
    id: "milestone-day",
    title: "What is due at a milestone has begun when the milestone is reached",
    severity: "query",
    basis: ownChoice("a milestone is not reached while most records of a kind that it makes due are of a later day"),
    reads: [{ kinds: ["issue"], paths: ["milestones[].reached"] }],
  },
] as const satisfies readonly (BuiltIn & { readonly owner?: "quality" })[];

/** A day of an event that can be read and is not doubted. */
interface Event {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly day: DateValue;
}

/** Holds the days of records against those of signatures, comparisons, what rests on them and milestones. */
export function checkDays(court: Court, issue: BookRecord): void {
  const events = new Map<BookRecord, readonly (Event & Pick<Leaf, "field">)[]>();
  for (const record of court.world.graph.records) {
    const kind = court.world.kinds.get(record.kind);
    if (kind === undefined || kind.derived) continue;
    const found: (Event & Pick<Leaf, "field">)[] = [];
    eachLeaf(record, kind.fields, ({ pointer, field, value }) => {
      const day = field.date === "event" ? dayAt(court, record, pointer, value) : undefined;
      if (day !== undefined) found.push({ record, pointer, day, field });
    });
    if (found.length > 0) events.set(record, found);
  }
  for (const [record, own] of events) signed(court, record, own);
  compared(court, [...events.values()].flat());
  for (const record of court.world.graph.records) thereBy(court, record, (one) => events.get(one) ?? []);
  milestonesBegun(court, issue, [...events.values()].flat());
}

function dayAt(court: Court, record: BookRecord, pointer: string, value: unknown): DateValue | undefined {
  if (typeof value !== "string" || court.world.ledger.doubts(addressOf(record, pointer)).length > 0) return undefined;
  const parsed = parseDate(value);
  return parsed.ok ? parsed.date : undefined;
}

const isBefore = (a: DateValue, b: DateValue): boolean => canPrecede(b, a) === "no";

/** Lists of people who put their name to a record as a whole. */
const signing = /^\/(signatures|approvals)\/\d+\/date$/;

function signed(court: Court, record: BookRecord, events: readonly Event[]): void {
  const { kinds } = court.world;
  const dated = kinds.get(record.kind)?.dated;
  const day = events.find(({ pointer }) => pointer === `/${(dated ?? "").replaceAll(".", "/")}`);
  if (dated === undefined || day === undefined) return;
  for (const { pointer, day: own } of events.filter((one) => signing.test(one.pointer))) {
    if (!isBefore(own, day.day)) continue;
    const row = atPointer(record.value, pointer.replace(/\/date$/, ""));
    const role = isObject(row) && typeof row["role"] === "string" ? row["role"] : "";
    const { subject, place, name } = locate(court.world, record, pointer);
    const what = kindWords(kinds, record.kind);
    addFinding(
      court,
      newFinding(
        finderOf(dayRules, "signed-after"),
        { subject, place },
        {
          key: keyOf("signed-after", record, name),
          message: `${what} ${record.id} was signed as ${role} on ${own.text}, before ${fieldTitle(court, record, dated)} ${day.day.text}`,
          why: "both days are entered in one record",
          hint: "compare both with the original and correct the wrong one; if it was signed in advance, have it signed again",
          about: `${own.text} ${day.day.text}`,
          related: [{ ...spot(court, day), message: day.day.text }],
          accuses: [addressOf(record, pointer), addressOf(record, day.pointer)],
        },
      ),
    );
  }
}

function fieldTitle(court: Court, record: BookRecord, path: string): string {
  const kind = court.world.kinds.get(record.kind);
  const field = kind === undefined ? undefined : fieldAt(kind, path);
  return `its ${(field?.title ?? path).toLowerCase()}`;
}

const spot = (court: Court, { record, pointer }: Event) => {
  const { subject, place } = locate(court.world, record, pointer);
  return { subject, place };
};

/** Each paper against all events that were read from it. */
function compared(court: Court, events: readonly (Event & Pick<Leaf, "field">)[]): void {
  const originals = originalsAmong(court.world.graph.byKind.get("original")?.values() ?? []);
  const sources = new Map<BookRecord, ReturnType<typeof originalAt>>();
  const late = new Map<BookRecord, Event[]>();
  const days = new Map<BookRecord, DateValue | undefined>();
  const dayOf = (original: BookRecord) => {
    const place = "/transcription/date";
    if (!days.has(original)) days.set(original, dayAt(court, original, place, atPointer(original.value, place)));
    return days.get(original);
  };
  for (const event of events) {
    if (event.record.kind === "original" || event.field.unprinted !== undefined) continue;
    const source = sources.get(event.record) ?? originalAt(event.record, originals);
    sources.set(event.record, source);
    const original = source(event.pointer);
    const day = original === undefined ? undefined : dayOf(original);
    if (original === undefined || day === undefined || !isBefore(day, event.day)) continue;
    // Of what nobody compared the comparison says nothing.
    if (statementOf(original).records.has(addressOf(event.record))) addTo(late, original, event);
  }
  for (const [original, all] of late) {
    const day = dayOf(original)?.text ?? "";
    const [first, more] = firstOf(all);
    const { subject, place } = locate(court.world, original, "/transcription/date");
    addFinding(
      court,
      newFinding(
        finderOf(dayRules, "compared-after"),
        { subject, place },
        {
          key: keyOf("compared-after", original, ""),
          message: `original ${original.id} was compared on ${day}, before what stands on it: ${said(court, first)}${more}`,
          why: "these days were read from it",
          hint: "correct the wrong day; where the paper was written on later, have a second person compare it again",
          about: JSON.stringify([day, ...all.map(({ day: own }) => own.text)]),
          related: all.slice(0, shown).map((one) => ({ ...spot(court, one), message: one.day.text })),
          accuses: [addressOf(original, "/transcription/date")],
        },
      ),
    );
  }
}

const shown = 20;
const said = (court: Court, { record, day }: Event) => `${recordWords(court.world.kinds, record)} of ${day.text}`;

function firstOf<E extends Event>(all: readonly E[]): readonly [first: E, more: string] {
  const [first, ...others] = [...all].sort((a, b) => a.day.from - b.day.from);
  if (first === undefined) throw new RangeError("no event");
  return [first, others.length === 0 ? "" : `; ${others.length} more`];
}

/** What a record names as there by a day of its own, against that day. */
function thereBy(court: Court, record: BookRecord, eventsOf: (record: BookRecord) => readonly Event[]): void {
  const { graph, kinds, ledger } = court.world;
  for (const [name, { thereBy: by, title }] of kinds.get(record.kind)?.fields ?? []) {
    const day = by === undefined ? undefined : dayAt(court, record, `/${by}`, record.value[by]);
    if (by === undefined || day === undefined) continue;
    const late = [...(graph.out.get(record) ?? [])].flatMap(([pointer, { to }]) => {
      if (to === undefined || !pointer.startsWith(`/${name}/`)) return [];
      if (ledger.doubts(addressOf(record, pointer)).length > 0) return [];
      const [first] = needed(court, to, eventsOf(to))
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
 * qualification) and what is revised was there with its first row; later rows do not count.
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
function milestonesBegun(court: Court, issue: BookRecord, events: readonly (Event & Pick<Leaf, "field">)[]): void {
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

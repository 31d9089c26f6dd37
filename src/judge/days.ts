import { commonPractice, ownChoice } from "../model/basis.ts";
import { statementOf } from "../model/comparison.ts";
import type { DateValue } from "../model/dates.ts";
import type { BuiltIn } from "../model/definitions.ts";
import { keyOf } from "../model/finding-key.ts";
import { addTo } from "../model/grouped.ts";
import { atPointer, isObject } from "../model/json.ts";
import { fieldAt } from "../model/kind.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";
import { originalAt, originalsAmong } from "../model/read-from.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { kindWords } from "../model/titles.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { dayAt, eventsIn, firstOf, isBefore, said, shown, spot, type Dated, type Event } from "./events.ts";

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

/** Holds the days of records against those of signatures and comparisons. */
export function checkDays(court: Court): void {
  const events = eventsIn(court);
  for (const [record, own] of events) signed(court, record, own);
  compared(court, [...events.values()].flat());
}

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

/** Each paper against all events that were read from it. */
function compared(court: Court, events: readonly Dated[]): void {
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
          accuses: [
            addressOf(original, "/transcription/date"),
            ...all.map(({ record, pointer }) => addressOf(record, pointer)),
          ],
        },
      ),
    );
  }
}

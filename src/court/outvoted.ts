import { addressOf, type BookRecord } from "../model/record.ts";
import { digestOf } from "../model/stable.ts";
import { firstAndMore, inTime } from "./chronology.ts";
import { locate, type Court } from "./court.ts";
import { addFinding } from "./entries.ts";
import { keyOf, type FindingKey } from "../model/finding-key.ts";
import { recordOfSubject } from "../model/subject.ts";

/** So many records that contradict one value outweigh it: fewer may each have a slip of their own. */
const many = 3;

/** One value that many records are held against, and what is wrong with it where they outweigh it. */
export interface HeldAgainst {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly text: string;
  readonly fault: string;
  says(value: string, days: string, count: number): string;
  readonly hint: string;
}

/**
 * Where many records contradict one value, that value is accused, in one finding that names the days and the first of
 * them; where few do, each of them is.
 */
export function outvote(court: Court, keys: readonly FindingKey[], held: HeldAgainst): void {
  const parts = inTime(
    court.world,
    keys.flatMap((key) => {
      const entry = court.entries.get(key);
      return entry === undefined || entry.exception !== null ? [] : [...entry.parts.values()];
    }),
  );
  const days = parts.map(({ day }) => day).filter((day) => day !== "");
  const records = new Set(parts.map(({ one: { subject } }) => (subject === null ? null : recordOfSubject(subject))));
  const [first] = parts;
  if (first === undefined || records.size < many) return;
  const { place, where } = locate(court.world, held.record, held.pointer);
  const key = keyOf(held.fault, held.record, where);
  const [from = "", to = ""] = [days[0], days.at(-1)];
  const span = from === to ? `on ${from}` : `from ${from} to ${to}`;
  const named = firstAndMore(court.world, first.one, first.day, records.size - 1);
  for (const old of keys) {
    court.entries.delete(old);
    court.fresh.delete(old);
  }
  addFinding(court, {
    ...first.one,
    key,
    place,
    message: `${held.says(held.text, span, records.size)} (${named})`,
    hint: held.hint,
    digest: digestOf([held.text, ...parts.map(({ one }) => one.digest)].join(" ")),
    related: parts.map(({ one: { subject, place: at, message } }) => ({ subject, place: at, message })),
    accuses: [addressOf(held.record, held.pointer)],
  });
  const folded = new Set(keys);
  court.outcomes.forEach((outcome, index) => {
    if (!outcome.findings.some((one) => folded.has(one))) return;
    court.outcomes[index] = {
      ...outcome,
      verdict: "not judged",
      findings: [],
      because: { type: "finding", keys: [key] },
    };
  });
}

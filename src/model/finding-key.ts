import type { Branded } from "./branded.ts";
import { addressOf, type BookRecord, type Address } from "./record.ts";

/**
 * Stable name of a finding across builds: its rule, what it is about (`kind:id`, "book", or what the rule itself tells its
 * findings apart by), and where that has several faults of the rule, a name for each. Exceptions cite it.
 */
export type FindingKey = Branded<"finding">;

/** A text that is cited as a key: of an exception, or of an issue that was published. Whether there is such a finding is asked of it. */
export const citedKey = (text: string): FindingKey => text as FindingKey;

/** A record as findings are about it; null is the book as a whole. */
export const aboutRecord = (record: Pick<BookRecord, "kind" | "id"> | null): string =>
  record === null ? "book" : addressOf(record);

/** A place in a record, by its stable name there ("" is the whole record). */
export const aboutPlace = (record: Pick<BookRecord, "kind" | "id">, where: string): string =>
  where === "" ? addressOf(record) : `${addressOf(record)}|${where}`;

export const findingKey = (rule: string, about: string, name?: string): FindingKey =>
  (name === undefined ? `${rule}|${about}` : `${rule}|${about}|${name}`) as FindingKey;

/** Key of a finding about a record, or about the book. The name may be empty, and its place stays. */
export const keyOf = (rule: string, record: Pick<BookRecord, "kind" | "id"> | null, name: string): FindingKey =>
  findingKey(rule, aboutRecord(record), name);

/** Key of a finding after others whose name is borne twice: the count tells them apart. */
export const numberedKey = (key: FindingKey, count: number): FindingKey => `${key} (${count})` as FindingKey;

/** What stands first in a key, and what second: its rule, and what it is about. */
export function partsOfKey(key: FindingKey): { readonly rule: string; readonly about: string } {
  const [rule = "", about = ""] = key.split("|", 2);
  return { rule, about };
}

/** Key of the gap about an absent record, whoever wants it. */
export const missingKey = (target: Address): FindingKey => findingKey("missing", target);

/** Records and places that a key names: exceptions that cite it rest on them. */
export const addressesIn = (key: FindingKey): readonly string[] =>
  key.split("|").flatMap((part) => /^[a-z][a-z-]*:[A-Z0-9][A-Z0-9.-]*/.exec(part)?.[0] ?? []);

const waiting = "waiting";

/** Of a gap that is not due: the finding about what waits for it all the same. */
export const waitingKey = (gap: FindingKey): FindingKey => findingKey(waiting, gap);

/** The gap that a key of such a finding is about; any other key as it is. */
export const gapOfWaiting = (key: FindingKey): FindingKey =>
  key.startsWith(`${waiting}|`) ? (key.slice(waiting.length + 1) as FindingKey) : key;

import { comparisonsOf, statementOf } from "../model/comparison.ts";
import { isList, isObject, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { digestOfTaken, originalsAmong, takenFrom, type Originals } from "../model/read-from.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { shelfOf } from "../model/shelf.ts";
import type { PlannedRecord } from "./import-plan.ts";

/** A record of a plan and the record it takes the place of. */
export type Rewritten = Pick<PlannedRecord, "kind" | "id" | "value" | "before">;

/** An original of which the comparison with a record is taken out, because the record gets other values. */
export interface Uncompared {
  readonly original: BookRecord;
  readonly records: readonly Rewritten[];
  /** Its record without them; undefined where it stands on a shelf, to which nobody writes through a book. */
  readonly value: JsonObject | undefined;
}

/** Whether a record takes from an original what it took before. */
export function takesTheSame(
  before: BookRecord,
  after: JsonObject,
  kind: Kind,
  original: BookRecord,
  originals: Originals,
): boolean {
  const digest = (value: JsonObject) => {
    const taken = takenFrom({ ...before, value }, kind, originals).find((one) => one.original === original);
    return taken === undefined ? undefined : digestOfTaken(taken);
  };
  return digest(before.value) === digest(after);
}

/** The originals whose comparison does not outlive what is written, each with the records that are taken out of it. */
export function uncomparedBy(written: readonly Rewritten[], records: readonly BookRecord[]): readonly Uncompared[] {
  const originals = originalsAmong(records);
  const gone = new Map<BookRecord, Rewritten[]>();
  for (const one of written) {
    const { before, kind, value } = one;
    if (before === undefined) continue;
    for (const { original } of comparisonsOf(before, kind, originals)) {
      if (!statementOf(original).records.has(addressOf(before))) continue;
      if (takesTheSame(before, value, kind, original, originals)) continue;
      gone.set(original, [...(gone.get(original) ?? []), one]);
    }
  }
  return [...gone].map(([original, list]) => ({
    original,
    records: list,
    value: shelfOf(original.file) === undefined ? without(original.value, list) : undefined,
  }));
}

/** Without the last of its records nothing is left of a comparison but who typed. */
function without(value: JsonObject, list: readonly Rewritten[]): JsonObject {
  const { transcription } = value;
  if (!isObject(transcription)) return value;
  const gone = new Set<string>(list.map(({ kind, id }) => addressOf({ kind: kind.name, id })));
  const { comparedBy: _by, date: _date, sha256: _hash, records: lines, ...typed } = transcription;
  const left = isList(lines) ? lines.filter((line) => typeof line !== "string" || !gone.has(line.slice(17))) : [];
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, member]) => {
      if (name !== "transcription") return [[name, member]];
      if (left.length > 0) return [[name, { ...transcription, records: left }]];
      return Object.keys(typed).length === 0 ? [] : [[name, typed]];
    }),
  );
}

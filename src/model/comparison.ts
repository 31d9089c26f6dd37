import { isList, isObject, type JsonObject } from "./json.ts";
import type { Kind } from "./kind.ts";
import { addressOf, type BookRecord } from "./record.ts";
import { byCodePoint } from "./order.ts";
import { digestOfTaken, digestsOf, takenFrom, type Digested, type Originals, type Taken } from "./read-from.ts";

/**
 * How the comparison with an original by a second person stands for one record that was read from it.
 *
 * compared: as it is now · nobody: nobody is named · alone: who typed it, or nobody says who did · left out: it is not among
 * the records that were compared · changed: its values were changed since · other file: the original was another file then ·
 * read back: no person's comparison stands, and the profile of the book lets the file's own text do in its place.
 */
export type ComparisonState = "compared" | "nobody" | "alone" | "left out" | "changed" | "other file" | "read back";

export interface Comparison {
  readonly original: BookRecord;
  readonly state: ComparisonState;
}

/** What an original's record says of the comparison; "" and empty where it does not. */
export interface Statement {
  readonly typedBy: readonly string[];
  readonly by: string;
  readonly date: string;
  readonly sha256: string;
  /** Digest of the values compared, by the address of their record. */
  readonly records: ReadonlyMap<string, string>;
}

const statements = new WeakMap<JsonObject, Statement>();

/** What an original's record states of its comparison; read once, since each record read from the original asks for it. */
export function statementOf({ value }: Pick<BookRecord, "value">): Statement {
  const known = statements.get(value) ?? readStatement(value);
  statements.set(value, known);
  return known;
}

function readStatement(value: JsonObject): Statement {
  const stated = isObject(value["transcription"]) ? value["transcription"] : {};
  const listed = isList(stated["records"]) ? stated["records"] : [];
  const typed = isList(stated["enteredBy"]) ? stated["enteredBy"] : [];
  return {
    typedBy: typed.filter((one) => typeof one === "string"),
    by: textOf(stated, "comparedBy"),
    date: textOf(stated, "date"),
    sha256: textOf(stated, "sha256"),
    records: new Map(
      listed.flatMap((line) => {
        const [, digest, address] = typeof line === "string" ? (lineForm.exec(line) ?? []) : [];
        return digest === undefined || address === undefined ? [] : [[address, digest] as const];
      }),
    ),
  };
}

const lineForm = /^([0-9a-f]{16}) (\S+)$/;

const textOf = (value: JsonObject, name: string): string => {
  const found = value[name];
  return typeof found === "string" ? found : "";
};

/** How the comparison stands for a record, for each original it was read from. */
export function comparisonsOf(record: BookRecord, kind: Kind | undefined, originals: Originals): readonly Comparison[] {
  return digestsOf(record, kind, originals).map((one) => ({ original: one.original, state: stateOf(record, one) }));
}

function stateOf(record: BookRecord, { original, digest: now }: Digested): ComparisonState {
  const { typedBy, by, sha256, records } = statementOf(original);
  if (by === "") return "nobody";
  if (typedBy.length === 0 || typedBy.includes(by)) return "alone";
  const digest = records.get(addressOf(record));
  if (digest === undefined || sha256 === "") return "left out";
  if (sha256 !== original.value["sha256"]) return "other file";
  return digest === now ? "compared" : "changed";
}

/** A record among those that were compared with an original, as its record lists it. */
export const comparedLine = (record: Pick<BookRecord, "kind" | "id">, taken: Taken): string =>
  `${digestOfTaken(taken)} ${addressOf(record)}`;

/** What was read from each original, now: by the original's id, the lines of its records in code-point order of their address. */
export function linesByOriginal(
  records: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
  originals: Originals,
): ReadonlyMap<string, readonly string[]> {
  const lines = new Map<string, [address: string, line: string][]>();
  for (const record of records)
    for (const taken of takenFrom(record, kinds.get(record.kind), originals)) {
      const list = lines.get(taken.original.id) ?? [];
      lines.set(taken.original.id, list);
      list.push([addressOf(record), comparedLine(record, taken)]);
    }
  return new Map(
    [...lines].map(([id, list]) => [id, list.sort(([a], [b]) => byCodePoint(a, b)).map(([, line]) => line)]),
  );
}

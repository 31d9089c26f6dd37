import type { Comparison } from "../../model/comparison.ts";
import { statementOf } from "../../model/comparison.ts";
import type { JudgedBook } from "../../model/book.ts";
import { addTo } from "../../model/grouped.ts";
import { addressOf, type BookRecord } from "../../model/record.ts";
import type { Note, Text } from "../blocks.ts";
import { nameOf, plain, recordOf, type Context } from "./context.ts";
import { listed } from "./listed.ts";
import { counted } from "./titles.ts";

/** How the comparison with an original stands for a record, as it follows the original's name. */
export function comparedWords(context: Context, { original, state }: Comparison): string {
  const { typedBy, by, date } = statementOf(original);
  const who = personName(context, by);
  const made = `${who}${date === "" ? "" : ` on ${date}`}`;
  switch (state) {
    case "compared":
      return `, compared with the data by ${made}`;
    case "nobody":
      return ". Not yet compared with the data by a person";
    case "alone":
      if (typedBy.length === 0) return `. Compared by ${made}; who typed it is not said`;
      return typedBy.length === 1
        ? `. Typed and compared by ${who} alone`
        : `. Compared by ${who}, who typed some of what was read from it`;
    case "left out":
      return `. Compared by ${made}, but not with this record`;
    case "changed":
      return `. Compared by ${made}, and changed since: to be compared again`;
    case "read back":
      return by === ""
        ? ". Not compared by a person: the profile lets the file's own text, read back, stand in place of that"
        : `. Not as ${made} compared it: the profile lets the file's own text, read back, stand in place of that`;
    case "other file":
      return `. What ${made} compared was another file`;
  }
}

const personName = (context: Context, id: string): string => {
  const person = recordOf(context, { kind: "person", id });
  return person === undefined ? id : `${plain(person.value["name"])} (${id})`;
};

interface Read {
  readonly record: BookRecord;
  readonly comparison: Comparison;
}

const known = new WeakMap<JudgedBook, ReadonlyMap<BookRecord, readonly Read[]>>();

/** What was read from each original. */
function readFrom(judged: JudgedBook): ReadonlyMap<BookRecord, readonly Read[]> {
  const before = known.get(judged);
  if (before !== undefined) return before;
  const found = new Map<BookRecord, Read[]>();
  for (const record of judged.graph.records)
    for (const comparison of judged.comparisons.get(addressOf(record)) ?? [])
      addTo(found, comparison.original, { record, comparison });
  known.set(judged, found);
  return found;
}

const shownNames = 60;

/** Of an original: who typed what was read from it, who compared it, and what of it does not stand as compared. */
export function comparisonNotes(context: Context, original: BookRecord): Note[] {
  if (original.kind !== "original") return [];
  const read = readFrom(context.judged).get(original) ?? [];
  if (read.length === 0) return [{ lead: "Comparison", text: ["No record was read from it."] }];
  const { typedBy, by, date } = statementOf(original);
  const typed = typedBy.length === 0 ? "" : `typed by ${typedBy.map((one) => personName(context, one)).join(", ")}`;
  const text: Text = [
    `${counted(read.length, "record was", "records were")} read from it${typed === "" ? "" : `, ${typed}`}`,
  ];
  const instead = read.filter(({ comparison }) => comparison.state === "read back").length;
  const allowed =
    instead === 0
      ? ""
      : ` Of ${instead} the profile lets the file's own text, read back, stand in place of a second person.`;
  if (by === "") return [{ lead: "Comparison", text: [...text, `; not yet compared by a second person.${allowed}`] }];
  const open = read.filter(({ comparison }) => comparison.state !== "compared");
  const made = `${personName(context, by)}${date === "" ? "" : ` on ${date}`}`;
  if (open.length === 0) return [{ lead: "Comparison", text: [...text, `, all compared with it by ${made}.`] }];
  return [
    {
      lead: "Comparison",
      text: [
        ...text,
        `. ${made} compared ${counted(read.length - open.length, "of them", "of them")} as they stand; not so: `,
        ...listed(
          open.map(({ record }) => [nameOf(context, record)]),
          shownNames,
        ),
        `.${allowed}`,
      ],
    },
  ];
}

/** How many of the records that were read from an original stand as a second person compared them. */
export function comparedCount({ judged }: Context): {
  readonly read: number;
  readonly open: readonly BookRecord[];
  /** Of these the file's own text stands in place of the person, wholly or for one of their originals. */
  readonly byReading: readonly BookRecord[];
} {
  const read = judged.graph.records.filter((record) => judged.comparisons.has(addressOf(record)));
  const states = (record: BookRecord) => (judged.comparisons.get(addressOf(record)) ?? []).map(({ state }) => state);
  const open = read.filter((record) => states(record).some((state) => state !== "compared" && state !== "read back"));
  const byReading = read.filter((record) => !open.includes(record) && states(record).includes("read back"));
  return { read: read.length, open, byReading };
}

/** The same as a sentence. */
export function comparedSentence(context: Context): string {
  const { read, open, byReading } = comparedCount(context);
  if (read === 0) return "No record names an original it was read from, so none was compared with one.";
  const records = counted(read, "record");
  const done = read - open.length - byReading.length;
  const person =
    done === read
      ? `A second person compared each of the ${records} that were read from originals.`
      : `A second person compared ${done} of the ${records} that were read from originals, as they stand.`;
  return byReading.length === 0
    ? person
    : `${person} Of ${byReading.length} the profile lets the file's own text, read back, stand in place of that: choices and sentences in them nobody compared.`;
}

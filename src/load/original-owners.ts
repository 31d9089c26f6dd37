import { atPointer, isList, isObject, type Json } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { type BookRecord, addressOf } from "../model/record.ts";
import { shelfOf } from "../model/shelf.ts";

/** A record that the name of a file speaks of. */
export interface Spoken {
  readonly kind: string;
  readonly id: string;
  /** What of the record stands in the name: its id, number or mark. */
  readonly by: string;
  /** It names an original already, or stands where this book does not write. */
  readonly taken: boolean;
}

const apart: ReadonlySet<string> = new Set(["book", "issue", "original", "organisation", "person"]);
/** Fields by which papers call what they are about, beside the number of the paper. */
const marks = ["number", "mark", "serial", "tag"];
/** A shorter name would be found in any other. */
const shortest = 3;

/**
 * Tells which records the name of a file speaks of: their id, number or mark stands in it as whole words, whatever parts them.
 * Of two of which one stands inside the other, the longer is meant; several are left to a person.
 */
export function ownersByName(
  records: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
): (path: string) => readonly Spoken[] {
  const known = records.flatMap((record) => {
    const kind = kinds.get(record.kind);
    if (kind === undefined || apart.has(record.kind)) return [];
    return namesOf(record, kind).map((by) => ({ record, by, words: wordsOf(by) }));
  });
  return (path) => {
    const name = wordsOf(path.slice(path.lastIndexOf("/") + 1).replace(/(?<=.)\.[A-Za-z0-9]{1,5}$/, ""));
    const found = known.filter(({ words }) => name.includes(words));
    const longest = found.filter(
      ({ words }) => !found.some((other) => other.words !== words && other.words.includes(words)),
    );
    const spoken = new Map<string, Spoken>();
    for (const { record, by } of longest) {
      const { kind, id, value, file } = record;
      const key = addressOf({ kind, id });
      if (!spoken.has(key))
        spoken.set(key, { kind, id, by, taken: value["source"] !== undefined || shelfOf(file) !== undefined });
    }
    return [...spoken.values()];
  };
}

function namesOf({ id, value }: BookRecord, { fields, number }: Kind): readonly string[] {
  const own = marks.filter((name) => fields.get(name)?.type === "text").map((name) => value[name]);
  const papers = number === undefined || number === "id" ? [] : valuesAt(value, number);
  const all = [id, ...own, ...papers].filter((one) => typeof one === "string");
  return [...new Set(all)].filter((one) => /\d/.test(one) && wordsOf(one).replaceAll(" ", "").length >= shortest);
}

function valuesAt(value: Json, path: string): readonly (Json | undefined)[] {
  const [list, rest] = path.split("[].");
  if (rest === undefined) return [atPointer(value, `/${path.replaceAll(".", "/")}`)];
  const rows = atPointer(value, `/${list ?? ""}`);
  return isList(rows) ? rows.map((row) => (isObject(row) ? row[rest] : undefined)) : [];
}

/** A text as its words of letters and digits, each between blanks. */
const wordsOf = (text: string): string =>
  ` ${text
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toUpperCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim()} `;

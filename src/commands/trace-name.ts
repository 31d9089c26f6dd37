import { nearestIds } from "../link/alike.ts";
import type { JudgedBook } from "../model/book.ts";
import { isList, isObject } from "../model/json.ts";
import type { BookRecord } from "../model/record.ts";
import { rowName } from "../model/stable.ts";
import { recordWords } from "../model/titles.ts";
import { plain } from "../report/plain.ts";
import { didYouMean } from "./choose.ts";
import { UsageError } from "./command.ts";
import { unlessNotRead } from "./not-read.ts";

/**
 * The record that a kind and an id mean: the kind by its name, or by a word that one kind alone has in its name (`batch`); the record
 * by its id, or by a text that one record alone states (a heat by its number, a person by the mark). Else a `UsageError` that
 * names what was probably meant.
 */
export function recordMeant(judged: JudgedBook, kind: string, id: string): BookRecord {
  const name = kindMeant(judged, kind);
  const ids = judged.graph.byKind.get(name) ?? new Map<string, BookRecord>();
  const exact = ids.get(id) ?? ids.get(id.toUpperCase());
  if (exact !== undefined) return exact;
  const stating = [...ids.values()].filter(({ value }) =>
    Object.values(value).some((text) => typeof text === "string" && text.toLowerCase() === id.toLowerCase()),
  );
  const [only, ...others] = stating;
  if (only !== undefined && others.length === 0) return only;
  const near = stating.length > 0 ? stating.map((one) => one.id) : nearestIds(id.toUpperCase(), ids.keys());
  const holding = [...ids.keys()].filter((one) => id.length > 2 && one.includes(id.toUpperCase()));
  const meant = [...new Set([...near, ...holding])].slice(0, 5);
  const what = ids.size === 0 ? `the book holds no ${name} at all` : `the book holds no ${name} "${plain(id)}"`;
  const instead = meant.length === 0 ? rowsNamed(judged, id) : didYouMean(meant);
  throw new UsageError(what + instead + unlessNotRead(judged.loaded));
}

/** What has a row of that name though it is no such record: a heat of a certificate that names no mill stands only there. */
function rowsNamed({ loaded: { records }, definitions: { kinds } }: JudgedBook, id: string): string {
  const having = records.filter((record) =>
    [...(kinds.get(record.kind)?.fields.values() ?? [])].some((field) => {
      const rows = record.value[field.name];
      return field.type === "list" && isList(rows) && rows.some((row) => isObject(row) && rowName(field, row) === id);
    }),
  );
  const [first] = having;
  if (first === undefined) return "";
  const names = having.slice(0, 5).map((record) => recordWords(kinds, record));
  const more = having.length > names.length ? ` and ${having.length - names.length} more` : "";
  return `; a row of that name is in ${names.join(", ")}${more}: trace ${first.kind} ${first.id}`;
}

function kindMeant({ definitions: { kinds } }: JudgedBook, kind: string): string {
  if (kinds.has(kind)) return kind;
  const word = kind.toLowerCase().replace(/s$/, "");
  if (kinds.has(word)) return word;
  const having = [...kinds.keys()].filter((name) => name.split("-").includes(word));
  const [only, ...others] = having;
  if (only !== undefined && others.length === 0) return only;
  const meant = having.length > 0 ? having : nearestIds(kind, kinds.keys());
  throw new UsageError(`there is no kind "${plain(kind)}"${didYouMean(meant)}`);
}

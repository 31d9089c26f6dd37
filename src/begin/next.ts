import { join, relative } from "node:path";
import type { LoadedBook } from "../model/book.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import { publishedPath } from "../model/record.ts";
import { pathNamedBy, shelfOf, type Shelf } from "../model/shelf.ts";
import type { Carried, CarriedRecord } from "./carry/carry.ts";
import type { Contents } from "./new-folder.ts";
import { manyRecords } from "./record-text.ts";

/** What the folder of the next book is made of, and which files of originals were not there to be copied. */
export interface NextBook extends Contents {
  readonly copies: ReadonlyMap<string, string>;
  readonly missing: readonly string[];
}

/**
 * The files of the next book: its beginning, the carried records under the paths they had, and the files that carried originals
 * name, byte for byte. `schemas` is the folder of the schemas for editors.
 */
export function nextBook(
  beginning: ReadonlyMap<string, string>,
  { records }: Carried,
  from: Pick<LoadedBook, "dir" | "files" | "shelves">,
  schemas: string,
): NextBook {
  // What stands on a shelf stays there for the next book too; a copy of a shelf comes along as such.
  const away = new Set(standingAway(records, from.shelves));
  const taken = records.filter((record) => !away.has(record));
  const byFile = new Map<string, { readonly kind: string; readonly values: JsonObject[] }>();
  for (const { from: record, value } of taken) {
    const file = byFile.get(record.file) ?? { kind: record.kind, values: [] };
    file.values.push(value);
    byFile.set(record.file, file);
  }
  const texts = new Map(beginning);
  for (const [path, { kind, values }] of [...byFile].sort(([a], [b]) => byCodePoint(a, b)))
    texts.set(path, manyRecords(kind, `${"../".repeat(path.split("/").length - 1)}${schemas}`, values));
  const there = new Map(from.files.filter(({ role }) => role === "original").map((file) => [file.path, file]));
  const named = taken.flatMap(({ from: record, value: { path } }) => (isFile(path) ? [pathNamedBy(record, path)] : []));
  return {
    texts,
    copies: new Map(
      named.flatMap((path) => {
        const file = there.get(path);
        if (file === undefined) return [];
        return [[shelfOf(path) === undefined ? path : publishedPath(file), join(from.dir, file.lies ?? path)] as const];
      }),
    ),
    missing: named.filter((path) => !there.has(path)).sort(byCodePoint),
  };
}

/** Only originals lie in `files/`; a path that leads anywhere else names none. */
const isFile = (path: unknown): path is string => typeof path === "string" && path.startsWith("files/");

/** Of what comes along, what stays on a shelf that the next book names as well. */
export function standingAway(
  records: readonly CarriedRecord[],
  shelves: readonly Shelf[] = [],
): readonly CarriedRecord[] {
  const away = new Set(shelves.flatMap(({ name, copy }) => (copy ? [] : [name])));
  return records.filter(({ from: { file } }) => away.has(shelfOf(file) ?? ""));
}

/**
 * The entries of shelves for a book in another folder: the way to each leads from there. A shelf of which nothing comes along,
 * that of the last order say, is none of the next book's.
 */
export function shelvesFrom(
  entries: Json | undefined,
  shelves: readonly Shelf[],
  records: readonly CarriedRecord[],
  dir: string,
): readonly JsonObject[] {
  const used = new Set(records.map(({ from: { file } }) => shelfOf(file)));
  return (isList(entries) ? entries : []).flatMap((entry) => {
    const shelf = isObject(entry) ? shelves.find(({ name }) => name === entry["name"]) : undefined;
    if (!isObject(entry) || shelf === undefined || !used.has(shelf.name)) return [];
    return [shelf.copy ? entry : { ...entry, folder: relative(dir, shelf.dir).replaceAll("\\", "/") }];
  });
}

import { join } from "node:path";
import type { LoadedBook } from "../model/book.ts";
import type { JsonObject } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import type { Carried } from "./carry/carry.ts";
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
  from: Pick<LoadedBook, "dir" | "files">,
  schemas: string,
): NextBook {
  const byFile = new Map<string, { readonly kind: string; readonly values: JsonObject[] }>();
  for (const { from: record, value } of records) {
    const file = byFile.get(record.file) ?? { kind: record.kind, values: [] };
    file.values.push(value);
    byFile.set(record.file, file);
  }
  const texts = new Map(beginning);
  for (const [path, { kind, values }] of [...byFile].sort(([a], [b]) => byCodePoint(a, b)))
    texts.set(path, manyRecords(kind, `${"../".repeat(path.split("/").length - 1)}${schemas}`, values));
  const there = new Set(from.files.filter(({ role }) => role === "original").map(({ path }) => path));
  const named = records.flatMap(({ value }) => (isFile(value["path"]) ? [value["path"]] : []));
  return {
    texts,
    copies: new Map(named.filter((path) => there.has(path)).map((path) => [path, join(from.dir, path)])),
    missing: named.filter((path) => !there.has(path)).sort(byCodePoint),
  };
}

/** Only originals lie in `files/`; a path that leads anywhere else names none. */
const isFile = (path: unknown): path is string => typeof path === "string" && path.startsWith("files/");

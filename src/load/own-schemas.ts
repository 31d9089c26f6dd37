import { lstatSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Finding } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { editorSchemas } from "./compose.ts";
import { findingOf } from "./file-rules.ts";

/** Folder of a book with the schemas that editors complete with: no record, never read as one, and no part of the evidence. */
export const schemaFolder = ".schemas";

/**
 * A note, where the schemas that go with a book are not those of this program: editors would complete and refuse by other
 * rules than the book is judged by. A book without them needs none.
 */
export function ownSchemas(dir: string, kinds: ReadonlyMap<string, Kind>): readonly Finding[] {
  const stat = (path: string) => {
    try {
      return lstatSync(path);
    } catch {
      return undefined;
    }
  };
  const folder = join(dir, schemaFolder);
  if (stat(folder)?.isDirectory() !== true) return [];
  const other = [...editorSchemas(kinds)].flatMap(([name, text]) => {
    const path = join(folder, name);
    const found = stat(path);
    if (found?.isFile() !== true) return [`${name} is not there`];
    // The size is asked first: what stands there may be of any length.
    return found.size === Buffer.byteLength(text) && same(path, text) ? [] : [`${name} differs`];
  });
  const [first] = other;
  if (first === undefined) return [];
  return [
    findingOf({
      rule: "file-schemas",
      place: { file: schemaFolder, pointer: "" },
      message: `the schemas for editors in "${schemaFolder}" are of another version: ${first}${other.length === 1 ? "" : `, and ${other.length - 1} more`}`,
      why: "editors complete and refuse by them; the book is judged by the schemas of the program",
      hint: "renew them: databook new --schemas, with the folder of the book",
      about: other.join("\n"),
    }),
  ];
}

function same(path: string, text: string): boolean {
  try {
    return readFileSync(path, "utf8") === text;
  } catch {
    return false;
  }
}

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { LoadedBook } from "../model/book.ts";
import { sha256 } from "../model/fingerprint.ts";
import type { BookFile } from "../model/record.ts";

/** The bytes of a file of the book as they were judged, or undefined where another file lies there now. */
export function bytesOf({ dir }: Pick<LoadedBook, "dir">, file: BookFile): Uint8Array | undefined {
  // A record of a shelf stands alone nowhere but in the issue.
  if (file.text !== undefined) return Buffer.from(file.text);
  const bytes = readFileSync(join(dir, file.lies ?? file.path));
  return sha256(bytes) === file.sha256 ? bytes : undefined;
}

import type { JsonObject } from "./json.ts";
import type { OriginalNature } from "./original.ts";

/** One record of the book: its value exactly as written, and where it was written. */
export interface BookRecord {
  readonly kind: string;
  readonly id: string;
  /** File relative to the book, `/` as separator; of a derived record, the file of its first source. */
  readonly file: string;
  /** Pointer of the record's object in that file. */
  readonly pointer: string;
  readonly value: JsonObject;
  /** The schema objected to it: it is listed and linked, but what the fault touches is not judged. */
  readonly faulty: boolean;
}

/** Name of a thing in the book, independent of files: `kind:id`, followed by a JSON pointer inside the record. */
export type Address = string;

export function addressOf(record: Pick<BookRecord, "kind" | "id">, pointer = ""): Address {
  return `${record.kind}:${record.id}${pointer}`;
}

/** A file of the book as read: text files keep their bytes, so that places and hashes can be found later. */
export interface BookFile {
  readonly path: string;
  /** Its path in an issue, where that is another: names no system can be trusted with are published under one made of them. */
  readonly publishedAs?: string;
  /** Where it lies, as a path from the book's folder, where that is another: originals of shelves. */
  readonly lies?: string;
  /** Of a record of a shelf: its text, in a form that stands nowhere but here and in the issue. */
  readonly text?: string;
  readonly size: number;
  readonly sha256: string;
  readonly role: "record" | "original";
  /** Of an original: what it is by its content. */
  readonly nature?: OriginalNature;
}

/** Path of a file in an issue, as the fingerprint counts it: below `evidence/` if it holds records, else as it is. */
export const publishedPath = ({ path, publishedAs }: Pick<BookFile, "path" | "publishedAs">): string =>
  publishedAs ?? path;

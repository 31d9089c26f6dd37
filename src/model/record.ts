import type { Branded } from "./branded.ts";
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
export type Address = Branded<"address">;

export function addressOf({ kind, id }: { readonly kind: string; readonly id: string }, pointer = ""): Address {
  return `${kind}:${id}${pointer}` as Address;
}

/** "deviation DV-01", for a sentence. */
export const spokenAddress = (address: string): string => address.replace(":", " ");

/** Whether a text that may be anything can be an address. */
export const isAddress = (text: string): text is Address => text.includes(":");

/** A place in a record that is known by its address. */
export const inRecord = (record: Address, pointer: string): Address => `${record}${pointer}` as Address;

/** The record that an address names or leads into, as `kind:id`. */
export function recordIn(address: Address): Address {
  const cut = address.indexOf("/");
  return cut < 0 ? address : (address.slice(0, cut) as Address);
}

/** The place that holds a place: a field's object, a row's list; undefined of a record. */
export function placeAround(address: Address): Address | undefined {
  const cut = address.lastIndexOf("/");
  return cut < 0 ? undefined : (address.slice(0, cut) as Address);
}

/** What an address is made of. */
export function partsOfAddress(address: string): {
  readonly kind: string;
  readonly id: string;
  readonly pointer: string;
} {
  const [colon, slash] = [address.indexOf(":"), address.indexOf("/")];
  const end = slash < 0 ? address.length : slash;
  return { kind: address.slice(0, colon), id: address.slice(colon + 1, end), pointer: address.slice(end) };
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

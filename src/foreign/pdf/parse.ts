import { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { beyond, damaged } from "../refused.ts";
import type { PdfDict, PdfValue } from "./values.ts";

/** A place in bytes of PDF source, moved on by reading. */
export interface Cursor {
  readonly bytes: Buffer;
  at: number;
}

const regular = 0;
const space = 1;
const delimiter = 2;
const classes = new Uint8Array(256);
for (const byte of [0, 9, 10, 12, 13, 32]) classes[byte] = space;
for (const sign of "()<>[]{}/%") classes[sign.charCodeAt(0)] = delimiter;

const classAt = (cursor: Cursor) => classes[cursor.bytes[cursor.at] ?? 32] ?? regular;

/** Passes over white space and remarks. */
export function skipSpace(cursor: Cursor): void {
  const { bytes } = cursor;
  for (; cursor.at < bytes.length; cursor.at++) {
    const byte = bytes[cursor.at] ?? 0;
    if (byte === 0x25) while (cursor.at + 1 < bytes.length && !isEol(bytes[cursor.at + 1])) cursor.at++;
    else if (classes[byte] !== space) return;
  }
}

const isEol = (byte: number | undefined) => byte === 10 || byte === 13;

/** The run of regular signs at the cursor; empty before a delimiter. */
export function readWord(cursor: Cursor): string {
  const from = cursor.at;
  while (cursor.at < cursor.bytes.length && classAt(cursor) === regular) cursor.at++;
  return cursor.bytes.toString("latin1", from, cursor.at);
}

/** Whether the word stands at the cursor; passes over it if so. */
export function takeWord(cursor: Cursor, word: string): boolean {
  skipSpace(cursor);
  const end = cursor.at + word.length;
  if (cursor.bytes.toString("latin1", cursor.at, end) !== word) return false;
  if (end < cursor.bytes.length && (classes[cursor.bytes[end] ?? 0] ?? 0) === regular) return false;
  cursor.at = end;
  return true;
}

/** Reads a whole number that is not negative; undefined, and the cursor where it was, if there is none. */
export function takeCount(cursor: Cursor): number | undefined {
  const from = cursor.at;
  skipSpace(cursor);
  const word = readWord(cursor);
  if (/^\d{1,15}$/.test(word)) return Number(word);
  cursor.at = from;
  return undefined;
}

/** Reads one value. Throws Refused when there is none, or when it nests too deep. */
export function readValue(cursor: Cursor, budget: Budget, depth = 0): PdfValue {
  budget.spend("values");
  if (depth > budget.limits.depth)
    throw beyond(
      `the file nests its objects deeper than ${budget.limits.depth} levels`,
      `at most ${budget.limits.depth} levels`,
    );
  skipSpace(cursor);
  const { bytes } = cursor;
  switch (bytes[cursor.at]) {
    case 0x2f:
      cursor.at++;
      return { type: "name", name: nameText(readWord(cursor)) };
    case 0x28:
      return { type: "text", bytes: readLiteral(cursor) };
    case 0x3c:
      if (bytes[cursor.at + 1] === 0x3c) return readDict(cursor, budget, depth);
      return { type: "text", bytes: readHex(cursor) };
    case 0x5b:
      return readList(cursor, budget, depth);
  }
  const word = readWord(cursor);
  if (/^[\d+.-]/.test(word)) return numberOrRef(cursor, word);
  if (word === "true" || word === "false") return word === "true";
  if (word === "null") return null;
  throw damaged("an object of it cannot be read");
}

const nameText = (word: string) =>
  word.includes("#")
    ? word.replaceAll(/#([0-9a-fA-F]{2})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)))
    : word;

function numberOrRef(cursor: Cursor, word: string): PdfValue {
  if (/^\d{1,10}$/.test(word)) {
    const after = cursor.at;
    if (takeCount(cursor) !== undefined && takeWord(cursor, "R")) return { type: "ref", number: Number(word) };
    cursor.at = after;
  }
  const number = Number(word);
  if (Number.isFinite(number)) return number;
  // Some writers double a sign or put one in the middle: other readers take what can be read.
  const some = Number.parseFloat(word.replace(/^[+-]*-/, "-"));
  return Number.isFinite(some) ? some : 0;
}

function readList(cursor: Cursor, budget: Budget, depth: number): PdfValue {
  cursor.at++;
  const items: PdfValue[] = [];
  for (;;) {
    skipSpace(cursor);
    if (cursor.bytes[cursor.at] === 0x5d) {
      cursor.at++;
      return items;
    }
    items.push(readValue(cursor, budget, depth + 1));
  }
}

function readDict(cursor: Cursor, budget: Budget, depth: number): PdfDict {
  cursor.at += 2;
  const entries = new Map<string, PdfValue>();
  for (;;) {
    skipSpace(cursor);
    if (closes(cursor)) break;
    if (cursor.bytes[cursor.at] !== 0x2f) throw damaged("an object of it cannot be read");
    cursor.at++;
    const name = nameText(readWord(cursor));
    skipSpace(cursor);
    if (cursor.bytes[cursor.at] === 0x3e && cursor.bytes[cursor.at + 1] === 0x3e) continue;
    entries.set(name, readValue(cursor, budget, depth + 1));
  }
  return { type: "dict", entries };
}

function closes(cursor: Cursor): boolean {
  if (cursor.bytes[cursor.at] !== 0x3e || cursor.bytes[cursor.at + 1] !== 0x3e) return false;
  cursor.at += 2;
  return true;
}

const escapes: ReadonlyMap<number, number> = new Map([
  [0x6e, 10],
  [0x72, 13],
  [0x74, 9],
  [0x62, 8],
  [0x66, 12],
]);

/** Bytes of one text, at most; a signature or a table of colours is far smaller. */
const mostText = 8 * 1024 * 1024;

function readLiteral(cursor: Cursor): Buffer {
  const { bytes } = cursor;
  const from = cursor.at + 1;
  const out = Buffer.allocUnsafe(literalEnd(bytes, from) - from);
  let size = 0;
  for (let at = from; at < from + out.length; at++) {
    const byte = bytes[at] ?? 0;
    if (byte !== 0x5c) {
      out[size++] = byte;
      continue;
    }
    const next = bytes[++at] ?? 0;
    const octal = /^[0-7]{1,3}/.exec(bytes.toString("latin1", at, at + 3))?.[0];
    if (octal !== undefined) {
      out[size++] = Number.parseInt(octal, 8) & 0xff;
      at += octal.length - 1;
    } else if (next === 13 && bytes[at + 1] === 10) at++;
    else if (!isEol(next)) out[size++] = escapes.get(next) ?? next;
  }
  cursor.at = from + out.length + 1;
  return out.subarray(0, size);
}

/** Offset of the bracket that closes a text. */
function literalEnd(bytes: Buffer, from: number): number {
  let open = 1;
  for (let at = from; at < Math.min(bytes.length, from + mostText); at++) {
    const byte = bytes[at];
    if (byte === 0x5c) at++;
    else if (byte === 0x28) open++;
    else if (byte === 0x29 && --open === 0) return at;
  }
  throw damaged("a text in it does not end");
}

function readHex(cursor: Cursor): Buffer {
  const end = cursor.bytes.subarray(0, cursor.at + mostText).indexOf(0x3e, cursor.at);
  if (end < 0) throw damaged("a text in it does not end");
  const digits = cursor.bytes.toString("latin1", cursor.at + 1, end).replaceAll(/[^0-9a-fA-F]/g, "");
  cursor.at = end + 1;
  return Buffer.from(digits.length % 2 === 0 ? digits : `${digits}0`, "hex");
}

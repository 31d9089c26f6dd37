import { isAscii, isUtf8 } from "node:buffer";
import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import type { Position } from "../model/place.ts";

/** Why the bytes of a record file are not the text of one. */
export interface FileFault {
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  readonly position?: Position;
}

/** Bytes of one record file, at most. */
export const maxFileBytes = 64 * 1024 * 1024;

const megabytes = (bytes: number) => (bytes / 1024 / 1024).toFixed(1);
const code = (error: unknown) =>
  typeof error === "object" && error !== null && "code" in error && typeof error.code === "string" ? error.code : "";

const reasons: Readonly<Record<string, string>> = {
  EACCES: "permission is denied",
  EPERM: "permission is denied",
  ENOENT: "it is no longer there",
  EISDIR: "it is a folder",
  ENAMETOOLONG: "its path is too long",
  ELOOP: "its links lead in a circle",
};

/** Why the system refused a file or folder, in words. */
export function refusal(error: unknown): string {
  return reasons[code(error)] ?? `the system says ${code(error) === "" ? String(error) : code(error)}`;
}

/** Reads a file whole, unless it holds more than `most` bytes; the size is checked before anything is read. */
export function readBytes(path: string, most: number = maxFileBytes): Buffer | FileFault {
  let file: number | undefined;
  try {
    file = openSync(path, "r");
    const { size } = fstatSync(file);
    if (size > most)
      return {
        message: `the file holds ${megabytes(size)} MB; expected at most ${megabytes(most)} MB`,
        why: "larger files are refused before they are read, so that one file cannot exhaust the machine",
        hint: "split its records into several files",
      };
    const bytes = Buffer.allocUnsafe(size);
    let filled = 0;
    for (let got = -1; filled < size && got !== 0; filled += got)
      got = readSync(file, bytes, filled, size - filled, filled);
    return bytes.subarray(0, filled);
  } catch (error) {
    return {
      message: `the file cannot be read: ${refusal(error)}`,
      why: "what it holds is unknown",
      hint: "restore the file, or give the account that runs this the right to read it",
    };
  } finally {
    if (file !== undefined) closeSync(file);
  }
}

/** The text of bytes in UTF-8 without byte order mark, or why they are none. */
export function decode(bytes: Buffer): string | FileFault {
  const saveAs = 'save it as "UTF-8" without byte order mark';
  if (bytes.length === 0)
    return {
      message: "the file is empty",
      why: "a file holds at least one record",
      hint: "write the record, or remove the file",
    };
  const other = otherEncoding(bytes);
  if (other !== undefined)
    return {
      message: `the file is written in ${other}; expected UTF-8`,
      why: "JSON files are exchanged in UTF-8",
      hint: saveAs,
      position: { line: 1, column: 1, length: 0 },
    };
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf)
    return {
      message: "the file begins with a byte order mark",
      why: "a byte order mark is no part of JSON, and other readers stumble over it",
      hint: saveAs,
      position: { line: 1, column: 1, length: 0 },
    };
  const zero = bytes.indexOf(0);
  if (zero >= 0)
    return {
      message: `byte ${zero + 1} of the file is zero`,
      why: "a text holds no zero bytes: the file is damaged, or no text at all",
      hint: "restore the file from its source",
      position: positionOf(bytes, zero),
    };
  if (isAscii(bytes)) return bytes.toString("latin1");
  if (isUtf8(bytes)) return bytes.toString("utf8");
  const at = firstFault(bytes);
  const byte = bytes[at] ?? 0;
  const latin = byte >= 0xa0 ? `, which is "${String.fromCharCode(byte)}" in Latin-1,` : "";
  return {
    message: `byte ${at + 1} of the file, 0x${byte.toString(16).toUpperCase()}${latin} is not UTF-8`,
    why: "signs such as ° or ü are read wrongly unless the encoding is known",
    hint: `${saveAs}, and compare the signs beyond a-z on that line`,
    position: positionOf(bytes, at),
  };
}

function otherEncoding(bytes: Buffer): string | undefined {
  const [a, b, c, d] = bytes;
  if (a === 0xff && b === 0xfe) return c === 0 && d === 0 ? "UTF-32" : "UTF-16 (little-endian)";
  if (a === 0xfe && b === 0xff) return "UTF-16 (big-endian)";
  if (a === 0 && b === 0 && c === 0xfe && d === 0xff) return "UTF-32";
  if (a !== 0 && b === 0 && c !== 0 && d === 0) return "UTF-16 (little-endian)";
  if (a === 0 && b !== 0 && c === 0 && d !== 0) return "UTF-16 (big-endian)";
  return undefined;
}

/** Offset of the first byte that begins no sign of UTF-8. */
function firstFault(bytes: Buffer): number {
  let at = 0;
  while (at < bytes.length) {
    const lead = bytes[at] ?? 0;
    const length = lead < 0x80 ? 1 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : 4;
    if (length > 1 && (at + length > bytes.length || !isUtf8(bytes.subarray(at, at + length)))) return at;
    at += length;
  }
  return at;
}

function positionOf(bytes: Buffer, at: number): Position {
  let line = 1;
  let start = 0;
  for (let end = bytes.indexOf(10); end >= 0 && end < at; end = bytes.indexOf(10, start)) {
    line++;
    start = end + 1;
  }
  return { line, column: bytes.subarray(start, at).toString("utf8").length + 1, length: 1 };
}

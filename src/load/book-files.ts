import { createHash } from "node:crypto";
import { statSync } from "node:fs";
import { join } from "node:path";
import { startNatures } from "../foreign/natures.ts";
import type { LoadedBook } from "../model/book.ts";
import type { Finding } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { BookFile, BookRecord } from "../model/record.ts";
import { headOf } from "./book-record.ts";
import { findingOf, withOwnKeys } from "./file-rules.ts";
import { hashFile } from "./hash-file.ts";
import { locatorOf } from "./locate.ts";
import { quoted } from "./portable.ts";
import { ownSchemas } from "./own-schemas.ts";
import { publishedPaths } from "./published-paths.ts";
import { decode, maxFileBytes, readBytes, refusal, type FileFault } from "./read-file.ts";
import { readRecords } from "./record-file.ts";
import { listBook, maxFiles, type Listing } from "./walk.ts";

/** Caps, smaller in tests. */
export interface LoadOptions {
  readonly maxFileBytes?: number;
  readonly maxFiles?: number;
}

/** A loaded book with its two records that say what it is, and the text of each record file. */
export interface BookOnDisk extends LoadedBook {
  readonly book: BookRecord | null;
  readonly issue: BookRecord | null;
  /** The text of a record file as it was read; undefined for any other file. */
  text(file: string): string | undefined;
}

/**
 * Reads a book folder: every record that can be read, every file with its hash, and a finding for whatever is wrong with
 * the rest. Never throws on what the folder holds; ForeignWorkEnded says
 * that an original took more time or memory than any is given. The result depends on the files' content alone: records are sorted by
 * kind and id, whatever file they stand in.
 */
export function loadBook(dir: string, kinds: ReadonlyMap<string, Kind>, options: LoadOptions = {}): BookOnDisk {
  const listing = list(dir, options.maxFiles ?? maxFiles);
  const records: BookRecord[] = [];
  const files: BookFile[] = [];
  const hashed: BookFile[] = [];
  const findings: Finding[] = [...listing.findings, ...ownSchemas(dir, kinds)];
  const unreadable: string[] = [...listing.unreadable];
  const kept = new Map<string, { readonly bytes: Buffer; readonly sound: boolean }>();
  const refuse = (file: string, { message, why, hint, position }: FileFault) => {
    findings.push(
      findingOf({
        rule: "file-readable",
        place: { file, pointer: "", ...(position !== undefined && { position }) },
        message,
        why,
        hint,
      }),
    );
    unreadable.push(file);
  };

  for (const path of listing.originals) {
    try {
      hashed.push({ path, ...hashFile(join(dir, path)), role: "original" });
    } catch (error) {
      refuse(path, {
        message: `the original ${quoted(path)} cannot be read: ${refusal(error)}`,
        why: "without its bytes there is no hash to compare",
        hint: "restore the file, or give the account that runs this the right to read it",
      });
    }
  }
  // Originals are looked at in a thread of their own while the records are read.
  const natures = startNatures(hashed.map(({ path, sha256 }) => ({ path, file: join(dir, path), sha256 })));

  for (const path of listing.records) {
    const bytes = readBytes(join(dir, path), options.maxFileBytes ?? maxFileBytes);
    if (!Buffer.isBuffer(bytes)) {
      refuse(path, bytes);
      continue;
    }
    files.push({ path, size: bytes.length, sha256: createHash("sha256").update(bytes).digest("hex"), role: "record" });
    const text = decode(bytes);
    if (typeof text !== "string") {
      refuse(path, text);
      continue;
    }
    const read = readRecords(path, text, kinds);
    kept.set(path, { bytes, sound: read.sound });
    records.push(...read.records);
    findings.push(...read.findings);
    if (!read.whole) unreadable.push(path);
  }
  const natureOf = natures();
  for (const one of hashed) {
    const nature = natureOf.get(one.path);
    files.push({ ...one, ...(nature !== undefined && { nature }) });
  }

  const head = headOf(records, listing.records, findings);
  const textOf = (file: string) => {
    const one = kept.get(file);
    return one === undefined ? undefined : { text: one.bytes.toString("utf8"), sound: one.sound };
  };
  return {
    dir,
    // Sorting is stable: of two records with one id, the one in the file that comes first stays first.
    records: records.sort((a, b) => byCodePoint(a.kind, b.kind) || byCodePoint(a.id, b.id)),
    files: withPublishedPaths(files).sort((a, b) => byCodePoint(a.path, b.path)),
    findings: withOwnKeys([...findings, ...head.findings]),
    unreadable: [...new Set(unreadable)].sort(byCodePoint),
    fatal: [...listing.fatal, ...(listing.fatal.length > 0 ? [] : head.fatal)],
    locator: locatorOf(textOf),
    book: head.book,
    issue: head.issue,
    text: (file) => textOf(file)?.text,
  };
}

function withPublishedPaths(files: readonly BookFile[]): BookFile[] {
  const paths = publishedPaths(files.map(({ path }) => path));
  return files.map((file) => {
    const publishedAs = paths.get(file.path) ?? file.path;
    return publishedAs === file.path ? file : { ...file, publishedAs };
  });
}

function list(dir: string, most: number): Listing & { readonly fatal: readonly Finding[] } {
  let reason: string | undefined;
  try {
    if (statSync(dir).isDirectory()) return { ...listBook(dir, most), fatal: [] };
    reason = "it is a file";
  } catch (error) {
    reason = refusal(error);
  }
  const fatal = findingOf({
    rule: "file-book",
    place: { file: "", pointer: "" },
    message: `${quoted(dir)} is no book folder: ${reason}`,
    why: "a book is a folder with book.json and issue.json in it",
    hint: "name the folder of a book",
  });
  return { records: [], originals: [], findings: [], unreadable: [], fatal: [fatal] };
}

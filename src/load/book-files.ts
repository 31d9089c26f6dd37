import { statSync } from "node:fs";
import { join } from "node:path";
import { startNatures } from "../foreign/natures.ts";
import type { LoadedBook } from "../model/book.ts";
import type { Finding } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { BookFile, BookRecord } from "../model/record.ts";
import { shelfOf } from "../model/shelf.ts";
import { headOf } from "./book-record.ts";
import { findingOf, withOwnKeys } from "./file-rules.ts";
import { hashOriginals, readFolder, type LyingOriginal } from "./folder-files.ts";
import { locatorOf } from "./locate.ts";
import type { ReadingMemory } from "./memory.ts";
import { quoted } from "./portable.ts";
import { ownSchemas } from "./own-schemas.ts";
import { publishedPaths } from "./published-paths.ts";
import { maxFileBytes, refusal } from "./read-file.ts";
import { takeIn } from "./shelf-files.ts";
import { listBook, maxFiles, type Listing } from "./walk.ts";

/** Caps, smaller in tests. */
export interface LoadOptions {
  readonly maxFileBytes?: number;
  readonly maxFiles?: number;
  /** The folder is a shelf: it needs no book and no issue. */
  readonly isShelf?: boolean;
  /** What was read of it before by the same kinds; it takes in what is read now. */
  readonly memory?: ReadingMemory | undefined;
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
 * the rest; of the shelves the book names, what it reaches. Never throws on what the folders hold; ForeignWorkEnded says
 * that an original took more time or memory than any is given. The result depends on the files' content alone: records are sorted by
 * kind and id, whatever file they stand in.
 */
export function loadBook(dir: string, kinds: ReadonlyMap<string, Kind>, options: LoadOptions = {}): BookOnDisk {
  const caps = { maxFiles: options.maxFiles ?? maxFiles, maxFileBytes: options.maxFileBytes ?? maxFileBytes };
  const listing = list(dir, caps.maxFiles);
  const [lent, lying] = partition(listing.originals, (path) => shelfOf(path.slice("files/".length)) !== undefined);
  // Originals are looked at in threads of their own while the records are read.
  const { memory } = options;
  const originals = lookAt(dir, lying.map(asItLies), memory);
  const own = readFolder(dir, listing.records, kinds, { most: caps.maxFileBytes, memory });
  const ownFaults = [...listing.findings, ...ownSchemas(dir, kinds), ...originals.findings, ...own.findings];
  const head = headOf(own.records, listing.records, ownFaults);

  // What is reached of shelves is known when their records are linked.
  const taken = takeIn(dir, head.book, own.records, lent, { kinds, memory, ...caps });
  const late = lookAt(dir, [...lent.filter((path) => !taken.claims(path)).map(asItLies), ...taken.originals], memory);
  const files = [...own.files, ...taken.files, ...originals.files(), ...late.files()];
  const findings = [...ownFaults, ...late.findings, ...taken.findings, ...head.findings];
  const unreadable = [
    ...listing.unreadable,
    ...own.unreadable,
    ...taken.unreadable,
    ...[...originals.findings, ...late.findings].map(({ place }) => place.file),
  ];
  const kept = new Map([...own.kept, ...taken.kept]);
  const textOf = (file: string) => {
    const text = taken.texts.get(file);
    if (text !== undefined) return { text, sound: true };
    const one = kept.get(file);
    return one === undefined ? undefined : { text: one.bytes.toString("utf8"), sound: one.sound };
  };
  return {
    dir,
    // Sorting is stable: of two records with one id, the one in the file that comes first stays first.
    records: [...own.records, ...taken.records].sort((a, b) => byCodePoint(a.kind, b.kind) || byCodePoint(a.id, b.id)),
    files: withPublishedPaths(files).sort((a, b) => byCodePoint(a.path, b.path)),
    findings: withOwnKeys(findings),
    unreadable: [...new Set(unreadable)].sort(byCodePoint),
    fatal: [...listing.fatal, ...(listing.fatal.length > 0 || options.isShelf === true ? [] : head.fatal)],
    locator: { ...locatorOf(textOf), written: taken.written },
    shelves: taken.shelves,
    aside: taken.aside,
    book: head.book,
    issue: head.issue,
    text: (file) => textOf(file)?.text,
  };
}

const asItLies = (path: string): LyingOriginal => ({ path, lies: path });

function partition(paths: readonly string[], first: (path: string) => boolean) {
  return [paths.filter(first), paths.filter((path) => !first(path))] as const;
}

/** Hashes originals and begins to look at them; `files` waits for what is found. */
function lookAt(dir: string, originals: readonly LyingOriginal[], memory: ReadingMemory | undefined) {
  const { files, findings } = hashOriginals(dir, originals, memory);
  const natures = startNatures(files.map(({ path, lies = path, sha256 }) => ({ path, file: join(dir, lies), sha256 })));
  return {
    findings,
    files(): readonly BookFile[] {
      const natureOf = natures();
      return files.map((one) => {
        const nature = natureOf.get(one.path);
        return { ...one, ...(nature !== undefined && { nature }) };
      });
    },
  };
}

function withPublishedPaths(files: readonly BookFile[]): BookFile[] {
  const paths = publishedPaths(files.map(pathInIssue));
  return files.map((file) => {
    const publishedAs = paths.get(pathInIssue(file)) ?? file.path;
    return publishedAs === file.path ? file : { ...file, publishedAs };
  });
}

/** Originals of shelves stand with those of the book. */
function pathInIssue({ path, role }: BookFile): string {
  const shelf = role === "original" ? shelfOf(path) : undefined;
  return shelf === undefined ? path : `files/${path.replace(`/${shelf}/files/`, `/${shelf}/`)}`;
}

function list(dir: string, most: number): Listing & { readonly fatal: readonly Finding[] } {
  let reason: string | undefined;
  try {
    if (statSync(dir).isDirectory()) return { ...listBook(dir, { most }), fatal: [] };
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

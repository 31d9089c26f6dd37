import { existsSync } from "node:fs";
import { join, relative } from "node:path";
import { reachedOn } from "../link/reach.ts";
import { answerable } from "../model/exceptions.ts";
import type { Finding } from "../model/finding.ts";
import { sha256 } from "../model/fingerprint.ts";
import { grouped } from "../model/grouped.ts";
import type { Kind } from "../model/kind.ts";
import type { Place } from "../model/place.ts";
import { addressOf, type BookFile, type BookRecord } from "../model/record.ts";
import { pathNamedBy, shelvesFolder } from "../model/shelf.ts";
import { findingOf } from "./file-rules.ts";
import { readFolder, type FolderRecords, type LyingOriginal } from "./folder-files.ts";
import type { ReadingMemory } from "./memory.ts";
import { inTheWay, shelvesOf, type NamedShelf } from "./shelf-list.ts";
import { asNote, copyRead, linkNotes, notOnShelf } from "./shelf-notes.ts";
import { canonicalFiles, lookUpIn, movedBy } from "./shelf-places.ts";
import { isMarker, listBook } from "./walk.ts";

/** What a book takes from its shelves. */
export interface TakenIn {
  readonly shelves: readonly NamedShelf[];
  /** Reached records, each as the one record of a file of its own. */
  readonly records: readonly BookRecord[];
  readonly files: readonly BookFile[];
  /** Text of these files, by path. */
  readonly texts: ReadonlyMap<string, string>;
  readonly originals: readonly LyingOriginal[];
  readonly findings: readonly Finding[];
  readonly unreadable: readonly string[];
  /** Notes about what stands on the shelves and is not reached. */
  readonly aside: readonly Finding[];
  /** Text of the shelves' own files, as read. */
  readonly kept: FolderRecords["kept"];
  /** Whether a file below the book's `files/` belongs to a copy of a shelf. */
  claims(path: string): boolean;
  /** Where a place in a file of a reached record is written on the shelf. */
  readonly written: (place: Place) => Place;
}

export interface TakeInOptions {
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly maxFiles: number;
  readonly maxFileBytes: number;
  readonly memory?: ReadingMemory | undefined;
}

/** Records that are a book's own, wherever they stand. */
const ownOnly = (kind: string) => kind === "book" || kind === "issue" || answerable.has(kind);

/**
 * Reads the shelves a book names, and takes in what it reaches of them. `own` are the records of the book, `ownOriginals`
 * the files below its `files/`.
 */
export function takeIn(
  dir: string,
  book: BookRecord | null,
  own: readonly BookRecord[],
  ownOriginals: readonly string[],
  options: TakeInOptions,
): TakenIn {
  const named = book === null ? { shelves: [], findings: [], unread: [] } : shelvesOf(dir, book);
  const { kinds } = options;
  const read = named.shelves.map((shelf) => readShelf(dir, shelf, ownOriginals, options));
  const all = read.flatMap(({ records }) => records);
  const shelved = all.filter(({ kind }) => !ownOnly(kind));
  const reached = reachedOn(own, shelved, kinds);
  const placed = canonicalFiles([...reached], kinds);
  const moved = movedBy(placed);
  const meant = new Set([...reached].flatMap(meantBy));
  const findings: Finding[] = [...named.findings];
  const aside: Finding[] = read.flatMap((one) => one.aside);
  const recordAt = lookUpIn(all);
  const byAddress = grouped(all, (record) => addressOf(record));
  for (const finding of read.flatMap((one) => one.findings)) {
    const record = recordAt(finding.place);
    // Faults that were not listed one by one name those they are about.
    const accused = finding.accuses.flatMap((address) => byAddress.get(address) ?? []);
    if (record === undefined && accused.length === 0) findings.push(finding);
    else if ([record, ...accused].some((one) => one !== undefined && reached.has(one))) findings.push(moved(finding));
    else aside.push(asNote(finding));
  }
  for (const finding of read.flatMap((one) => one.named))
    if (meant.has(finding.place.file)) findings.push(finding);
    else aside.push(asNote(finding));
  for (const record of all) if (ownOnly(record.kind)) findings.push(notOnShelf(record, kinds));
  const unreached = new Set(shelved.filter((record) => !reached.has(record)));
  aside.push(...linkNotes(own, shelved, unreached, kinds));
  const originals = read.flatMap((one) => one.originals).filter(({ path }) => meant.has(path));
  const texts = new Map([...placed.values()].map(({ file, text }) => [file, text]));
  const sources = new Map([...placed].map(([record, { file }]) => [file, record]));
  return {
    shelves: named.shelves,
    records: [...placed].map(([record, { file, value }]) => ({ ...record, file, pointer: "", value })),
    files: [...texts].map(([path, text]) => ({
      path,
      size: Buffer.byteLength(text),
      sha256: sha256(text),
      role: "record",
      text,
    })),
    texts,
    originals,
    findings,
    unreadable: [...named.unread, ...read.flatMap((one) => one.unreadable)],
    aside,
    kept: new Map(read.flatMap((one) => [...one.kept])),
    claims: (path) => named.shelves.some(({ name, copy }) => copy && path.startsWith(originalsOf(name))),
    written: (place) => {
      const record = sources.get(place.file);
      return record === undefined ? place : { ...place, file: record.file, pointer: record.pointer + place.pointer };
    },
  };
}

/** Folder of an issue, and of a book that holds a copy, where the originals of a shelf stand. */
const originalsOf = (name: string) => `files/${shelvesFolder}/${name}/`;

interface ReadShelf extends FolderRecords {
  readonly originals: readonly LyingOriginal[];
  readonly aside: readonly Finding[];
  /** About names of files: of those of originals that are reached they count. In the issue each record gets a file of its own. */
  readonly named: readonly Finding[];
}

function readShelf(
  bookDir: string,
  shelf: NamedShelf,
  ownOriginals: readonly string[],
  { kinds, maxFiles, maxFileBytes, memory }: TakeInOptions,
): ReadShelf {
  const { name, dir, copy } = shelf;
  const below = `${shelvesFolder}/${name}/`;
  const listing = listBook(dir, { most: maxFiles, below });
  const read = readFolder(dir, listing.records, kinds, { most: maxFileBytes, below, memory });
  const findings: Finding[] = [];
  const aside: Finding[] = [];
  const named: Finding[] = [];
  for (const finding of listing.findings)
    if (finding.severity === "note") aside.push(finding);
    else if (finding.rule === "file-path" && !isMarker(finding.place.file)) named.push(finding);
    else findings.push(finding);
  if (existsSync(join(dir, shelvesFolder)))
    findings.push(
      findingOf({
        rule: "shelf-holds",
        place: { file: `${below}${shelvesFolder}`, pointer: "" },
        message: `the shelf "${name}" holds a folder of shelves`,
        why: "a shelf has no shelves of its own: a book names every shelf it uses",
        hint: "name those shelves in book.json, and take the folder away from this one",
      }),
    );
  if (shelf.beside !== undefined) aside.push(copyRead(shelf));
  const lying = new Map(
    listing.originals.map((path) => [`${below}${path}`, relative(bookDir, join(dir, path)).replaceAll("\\", "/")]),
  );
  // In an issue the originals of a shelf stand with those of the book.
  const kept = originalsOf(name);
  for (const path of ownOriginals.filter((one) => one.startsWith(kept)))
    if (copy) lying.set(`${below}files/${path.slice(kept.length)}`, path);
    else findings.push(inTheWay(path, name));
  return {
    ...read,
    findings: [...findings, ...read.findings],
    unreadable: [...listing.unreadable, ...read.unreadable],
    originals: [...lying].map(([path, lies]) => ({ path, lies })),
    aside,
    named,
  };
}

/** Printed paths of the files an original's record names. */
function meantBy(record: BookRecord): readonly string[] {
  const { path } = record.value;
  return record.kind === "original" && typeof path === "string" ? [pathNamedBy(record, path)] : [];
}

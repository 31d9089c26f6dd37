import { existsSync } from "node:fs";
import { join, relative } from "node:path";
import { linkRecords } from "../link/graph.ts";
import { reachedOn } from "../link/reach.ts";
import { answerable } from "../model/exceptions.ts";
import type { Finding } from "../model/finding.ts";
import { sha256 } from "../model/fingerprint.ts";
import { grouped } from "../model/grouped.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { Place } from "../model/place.ts";
import { addressOf, type BookFile, type BookRecord } from "../model/record.ts";
import { pathNamedBy, shelvesFolder } from "../model/shelf.ts";
import { canonicalText, canonicalValue } from "./canonical.ts";
import { findingOf } from "./file-rules.ts";
import { readFolder, type FolderRecords, type LyingOriginal } from "./folder-files.ts";
import { quoted } from "./portable.ts";
import { inTheWay, shelvesOf, type NamedShelf } from "./shelf-list.ts";
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
  { kinds, maxFiles, maxFileBytes }: TakeInOptions,
): ReadShelf {
  const { name, dir, copy } = shelf;
  const below = `${shelvesFolder}/${name}/`;
  const listing = listBook(dir, { most: maxFiles, below });
  const read = readFolder(dir, listing.records, kinds, { most: maxFileBytes, below });
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

interface Placed {
  readonly file: string;
  readonly value: BookRecord["value"];
  readonly text: string;
}

/** The file each reached record gets; of two that bear one id on one shelf the second is numbered. */
function canonicalFiles(
  reached: readonly BookRecord[],
  kinds: ReadonlyMap<string, Kind>,
): ReadonlyMap<BookRecord, Placed> {
  const taken = new Map<string, number>();
  const inOrder = [...reached].sort((a, b) => byCodePoint(a.file, b.file) || byCodePoint(a.pointer, b.pointer));
  return new Map(
    inOrder.map((record) => {
      const stem = pathNamedBy(record, `${record.kind}/r-${record.id}`);
      const count = (taken.get(stem) ?? 0) + 1;
      taken.set(stem, count);
      const value = canonicalValue(record, kinds.get(record.kind));
      const file = `${stem}${count === 1 ? "" : `_${count}`}.json`;
      return [record, { file, value, text: canonicalText(value) }];
    }),
  );
}

/** Findings about reached records, at the file those get. */
function movedBy(placed: ReadonlyMap<BookRecord, Placed>): (finding: Finding) => Finding {
  const recordAt = lookUpIn(placed.keys());
  const moved = ({ file, pointer, ...rest }: Place): Place => {
    const record = recordAt({ file, pointer });
    const to = record === undefined ? undefined : placed.get(record);
    if (record === undefined || to === undefined) return { file, pointer, ...rest };
    return { file: to.file, pointer: pointer.slice(record.pointer.length) };
  };
  return (finding) => ({
    ...finding,
    place: moved(finding.place),
    related: finding.related.map((one) => ({ ...one, place: moved(one.place) })),
  });
}

/** Finds the record a place lies in. */
function lookUpIn(records: Iterable<BookRecord>): (place: Place) => BookRecord | undefined {
  const nameOf = (file: string, pointer: string) => `${file}\n${pointer}`;
  const byPlace = new Map([...records].map((record) => [nameOf(record.file, record.pointer), record]));
  // A record is a file, or a row of the one list of a file.
  return ({ file, pointer }) =>
    byPlace.get(nameOf(file, "")) ?? byPlace.get(nameOf(file, pointer.split("/", 3).join("/")));
}

/** Printed paths of the files an original's record names. */
function meantBy(record: BookRecord): readonly string[] {
  const { path } = record.value;
  return record.kind === "original" && typeof path === "string" ? [pathNamedBy(record, path)] : [];
}

const asNote = (finding: Finding): Finding => ({
  ...finding,
  severity: "note",
  why: `${finding.why}; nothing in this book reaches the record`,
  accuses: [],
});

/** What is wrong with links and ids of records that are not reached, each a note. */
function linkNotes(
  own: readonly BookRecord[],
  shelved: readonly BookRecord[],
  unreached: ReadonlySet<BookRecord>,
  kinds: ReadonlyMap<string, Kind>,
): readonly Finding[] {
  if (unreached.size === 0) return [];
  const recordAt = lookUpIn(unreached);
  return linkRecords([...own, ...shelved], kinds)
    .findings.filter(({ place, related }) =>
      [place, ...related.map((one) => one.place)].some((one) => recordAt(one) !== undefined),
    )
    .map(asNote);
}

function notOnShelf(record: BookRecord, kinds: ReadonlyMap<string, Kind>): Finding {
  const title = (kinds.get(record.kind)?.title ?? record.kind).toLowerCase();
  const [, name = ""] = record.file.split("/");
  return findingOf({
    rule: "shelf-holds",
    place: { file: record.file, pointer: record.pointer },
    name: `${record.kind}:${record.id}`,
    message: `the shelf "${name}" holds the ${title} "${record.id}"`,
    why: "a book, its issue and the exceptions of one job are that job's own; on a shelf none of them counts",
    hint: "move it into the book it belongs to; a shelf is named in the book.json of each book that uses it",
  });
}

const copyRead = ({ name, beside = "" }: NamedShelf): Finding => ({
  ...findingOf({
    rule: "shelf-folder",
    place: { file: `${shelvesFolder}/${name}`, pointer: "" },
    name: "copy",
    message: `the copy of the shelf "${name}" in the book is read, not the folder ${quoted(beside)}`,
    why: "a book that holds a copy of a shelf stands by itself",
    hint: `remove ${shelvesFolder}/${name}/ to read the folder again`,
  }),
  severity: "note",
});

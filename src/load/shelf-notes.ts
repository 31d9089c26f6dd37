import { linkRecords } from "../link/graph.ts";
import type { Finding } from "../model/finding.ts";
import type { Kind } from "../model/kind.ts";
import { type BookRecord, addressOf } from "../model/record.ts";
import { shelvesFolder } from "../model/shelf.ts";
import { findingOf } from "./file-rules.ts";
import { quoted } from "./portable.ts";
import type { NamedShelf } from "./shelf-list.ts";
import { lookUpIn } from "./shelf-places.ts";

/** A fault of what no book reaches: it blocks nothing here. */
export const asNote = (finding: Finding): Finding => ({
  ...finding,
  severity: "note",
  why: `${finding.why}; nothing in this book reaches the record`,
  accuses: [],
});

/** What is wrong with links and ids of records that are not reached, each a note. */
export function linkNotes(
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

/** A record of one job, where records of many stand. */
export function notOnShelf(record: BookRecord, kinds: ReadonlyMap<string, Kind>): Finding {
  const title = (kinds.get(record.kind)?.title ?? record.kind).toLowerCase();
  const [, name = ""] = record.file.split("/");
  return findingOf({
    rule: "shelf-holds",
    place: { file: record.file, pointer: record.pointer },
    name: addressOf(record),
    message: `the shelf "${name}" holds the ${title} "${record.id}"`,
    why: "a book, its issue and the exceptions of one job are that job's own; on a shelf none of them counts",
    hint: "move it into the book it belongs to; a shelf is named in the book.json of each book that uses it",
  });
}

/** A copy in the book is read although its folder is there too. */
export const copyRead = ({ name, beside = "" }: NamedShelf): Finding => ({
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

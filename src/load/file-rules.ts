import { ownChoice, published } from "../model/basis.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding, Related } from "../model/finding.ts";
import type { Place } from "../model/place.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { findingKey, numberedKey } from "../model/finding-key.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

const json = "RFC 8259";
const closed = ownChoice(
  "a schema lists every property of its kind and the form of its value: what it does not know is found, never passed over",
);
const paths = ownChoice("paths of a book are the same on every operating system, and on a stick or in an archive");
const shelves = ownChoice(
  "what several books share is read from one place, stands by itself in every issue, and never answers for one of them",
);

export const fileRules = [
  {
    id: "file-book",
    title: "A book has one book record in book.json and one issue record in issue.json",
    severity: "nonconformity",
    basis: ownChoice("one place says what the book is, one which issue it is"),
    reads: [{ kinds: ["book"], paths: ["format"] }],
  },
  {
    id: "file-readable",
    title: "A file can be read, and is text in UTF-8",
    severity: "nonconformity",
    basis: published(json, undefined, "section 8.1"),
  },
  {
    id: "file-syntax",
    title: "A record file is JSON",
    severity: "nonconformity",
    basis: published(json, undefined, "section 2"),
  },
  {
    id: "file-duplicate-key",
    title: "A name stands once in an object",
    severity: "nonconformity",
    basis: published(json, undefined, "section 4"),
  },
  {
    id: "file-number",
    title: "A number is kept as it was written",
    severity: "nonconformity",
    basis: published(json, undefined, "section 6"),
  },
  {
    id: "file-record",
    title: "A record states a known kind and an id",
    severity: "nonconformity",
    basis: ownChoice("kind and id are what a record is found and linked by"),
  },
  { id: "file-path", title: "A path has portable signs and names no device", severity: "nonconformity", basis: paths },
  { id: "file-link", title: "A book holds files, not links to files", severity: "nonconformity", basis: paths },
  {
    id: "file-not-read",
    title: "A file outside files/ is a record file or a text",
    severity: "note",
    basis: ownChoice("originals stand in files/, where records name them by hash"),
  },
  {
    id: "file-schemas",
    title: "Schemas that go with a book are those of the program",
    severity: "note",
    basis: ownChoice("editors complete a record by the schemas it is judged by"),
  },
  {
    id: "shelf-folder",
    title: "The folder of a shelf is there, beside the book and by itself",
    severity: "nonconformity",
    basis: shelves,
    reads: [{ kinds: ["book"], paths: ["shelves[].folder"] }],
  },
  {
    id: "shelf-holds",
    title: "A shelf holds no book, issue, exception or further shelf",
    severity: "nonconformity",
    basis: shelves,
  },
  {
    id: "shelf-listed",
    title: "What stands below shelves/ belongs to a shelf that the book names",
    severity: "nonconformity",
    basis: shelves,
  },
  { id: "record-schema", title: "A record keeps to the schema of its kind", severity: "nonconformity", basis: closed },
] as const satisfies readonly BuiltIn[];

export type FileRule = (typeof fileRules)[number]["id"];

export interface Fault {
  readonly rule: FileRule;
  readonly place: Place;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  /** The text objected to; by default what the finding is about. */
  readonly about?: string;
  readonly record?: Pick<BookRecord, "kind" | "id">;
  /** Stable name inside the record, or what tells several faults of one file apart. */
  readonly name?: string;
  readonly related?: readonly Related[];
  readonly accuses?: readonly Address[];
}

/** A fault of a file or of a record's form as a finding. No exception answers it: it is mended in the file. */
export function findingOf({ rule, place, record, name, about, ...words }: Fault): Finding {
  const subject = record === undefined ? null : { kind: record.kind, id: record.id };
  const owner = record === undefined ? `${place.file}${place.pointer}` : addressOf(record);
  const key = findingKey(rule, owner, name);
  return newFinding(finderOf(fileRules, rule), { subject, place }, { key, ...words, about: about ?? key });
}

/**
 * The findings with keys of their own: where one id or row name is borne twice (a finding itself), faults of the two would
 * else have one key. The later ones get a number, in the order of the files.
 */
export function withOwnKeys(findings: readonly Finding[]): Finding[] {
  const seen = new Map<string, number>();
  return findings.map((finding) => {
    const count = (seen.get(finding.key) ?? 0) + 1;
    seen.set(finding.key, count);
    return count === 1 ? finding : { ...finding, key: numberedKey(finding.key, count) };
  });
}

import type { Finding } from "../model/finding.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { findingOf } from "./file-rules.ts";

/** Version of the record format that this program reads. */
export const format = 1;

interface Head {
  /** The record in `book.json`, in `issue.json`. */
  readonly book: BookRecord | null;
  readonly issue: BookRecord | null;
  readonly findings: readonly Finding[];
  /** Why the book cannot be judged at all. */
  readonly fatal: readonly Finding[];
}

/** Finds the book and the issue record. `found` are the record files of the folder, `faults` what is wrong with them. */
export function headOf(records: readonly BookRecord[], found: readonly string[], faults: readonly Finding[]): Head {
  const fatal: Finding[] = [];
  const findings: Finding[] = [];
  const head = (kind: "book" | "issue"): BookRecord | null => {
    const file = `${kind}.json`;
    const place = { file, pointer: "" };
    const here = records.filter((record) => record.file === file);
    const record = here.find((one) => one.kind === kind);
    for (const extra of records.filter((one) => one.kind === kind && one !== record))
      findings.push(
        findingOf({
          rule: "file-book",
          place: { file: extra.file, pointer: extra.pointer },
          record: extra,
          message: `${extra.kind} "${extra.id}" is not the one in ${file}`,
          why: `a book holds one ${kind} record, in ${file}`,
          hint: `remove it, or move it into a book of its own`,
          accuses: [addressOf(extra)],
        }),
      );
    if (record !== undefined) return record;
    const own = faults.filter((fault) => fault.place.file === file && fault.rule.startsWith("file-"));
    if (found.includes(file) && own.length > 0) fatal.push(...own);
    else
      fatal.push(
        findingOf({
          rule: "file-book",
          place,
          message: found.includes(file) ? `${file} holds no ${kind} record` : `there is no ${file} in the folder`,
          why:
            kind === "book"
              ? "book.json says what is delivered, and marks the folder as a book"
              : "issue.json says which issue is judged, and up to which day",
          hint: `write ${file} with one record of kind "${kind}"`,
        }),
      );
    return null;
  };
  const book = head("book");
  const issue = head("issue");
  if (book !== null && book.value["format"] !== format) {
    const stated = Object.hasOwn(book.value, "format") ? JSON.stringify(book.value["format"]) : undefined;
    fatal.push(
      findingOf({
        rule: "file-book",
        name: "format",
        place: { file: book.file, pointer: `${book.pointer}/format` },
        record: book,
        message: stated === undefined ? "book.json states no format" : `format is ${stated}; expected ${format}`,
        why: `this program reads format ${format}; what another format means by a field is not known to it`,
        hint:
          stated === undefined
            ? `add "format": ${format}`
            : "read the book with the release that wrote it, or convert it",
      }),
    );
  }
  return { book, issue, findings, fatal };
}

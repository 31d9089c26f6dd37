import { join, resolve } from "node:path";
import { changedFiles } from "../imports/record-files.ts";
import type { Rewritten } from "../imports/uncompared.ts";
import { nearestName } from "../model/nearest.ts";
import { NotWritten, putFiles, textAt } from "../load/put-files.ts";
import { readBackRules } from "../judge/read-back.ts";
import { linesByOriginal, statementOf } from "../model/comparison.ts";
import { parseDate } from "../model/dates.ts";
import { originalsAmong } from "../model/read-from.ts";
import { addressOf, type BookRecord, partsOfAddress } from "../model/record.ts";
import { pathNamedBy, shelfOf } from "../model/shelf.ts";
import { recordWords } from "../model/titles.ts";
import { plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import { bookFolder, readOwnFolder } from "./books.ts";
import { cutOffOf } from "./new-from.ts";
import { unlessNotRead } from "./not-read.ts";
import { UsageError, type Command, type Effects, type Given, type ReadBook } from "./command.ts";

export const compared: Command = {
  name: "compared",
  summary: "record that a second person compared originals with what was read from them",
  readsBook: true,
  arguments: [{ name: "originals", required: true, means: "ids of the originals, with commas between them" }],
  options: {
    by: { value: "PERSON", means: "id of the person who compared" },
    on: { value: "DAY", means: "day it was done, as 2026-03-09" },
    "typed-by": {
      value: "PERSONS",
      means:
        "ids of whoever typed the records or took them from a sheet, with commas; what the original says, if not given",
    },
    book: { value: "DIR", means: "folder of the book, or of a shelf; the book around here, or records/, if not given" },
    people: {
      value: "DIR",
      means:
        "folder of the book or shelf in which the people stand, where that is another: an order's shelf names those of the shop's",
    },
    write: { means: "write what is shown; without it nothing is written" },
  },
  help: [
    "A comparison stands once on the original, for all records that were read from it, by their source or as the sheet they were " +
      "imported from. Beside who and when it keeps the hash of the file and a digest of what each record takes from it: when a value or " +
      "the file is changed later, check says that the comparison no longer holds, and of which record.",
    "Record what a person did, and nothing else: whoever compares looks at every value of the records that are listed, page by " +
      "page. Who typed does not compare.",
    "Values that are not on the page they were read from, and a day after the data cut-off, are said before anything is written; a " +
      "day in the future is not written.",
    "Exit 0: what was asked for is shown, or written.",
  ],
  async run(given, effects) {
    const dir = await bookFolder(given.options.get("book"), effects);
    const read = await readOwnFolder(dir, effects);
    if (read === undefined) return 2;
    const elsewhere = given.options.get("people");
    const people = elsewhere === undefined ? read : await readOwnFolder(resolve(effects.cwd, elsewhere), effects);
    if (people === undefined) return 2;
    if (read.unreadable.length > 0)
      throw new UsageError(
        `what is read from an original is not known while ${read.unreadable.slice(0, 5).join(", ")} cannot be read; check says why`,
      );
    const day = given.options.get("on") ?? "";
    if (given.options.has("write") && parseDate(day).ok && day > effects.today())
      throw new UsageError(
        `${day} lies in the future, today is ${effects.today()}: a comparison is recorded when it was made`,
      );
    const ids = listOf(given.arguments[0]);
    if (ids.length === 0) throw new UsageError("no original is named");
    const lines = linesByOriginal(read.records, read.kinds, originalsAmong(read.records));
    const written = ids.map((id) => comparedNow(id, given, read, people, lines.get(id) ?? []));
    for (const { before, lines: own } of written)
      effects.print(`compared     ${plain(before.id)}, ${counted(own.length, "record")}: ${namesOf(own, read)}\n`);
    effects.print(againstIt(written, given.options.get("on") ?? "", read, effects));
    if (!given.options.has("write")) {
      effects.print("nothing is written yet; to write it: --write\n");
      return 0;
    }
    const texts = new Map<string, string | undefined>();
    for (const { before } of written) texts.set(before.file, await textAt(join(dir, before.file)));
    const changes = [...changedFiles(written, "", (path) => texts.get(path))].map(([path, after]) => ({
      path,
      before: texts.get(path),
      after,
    }));
    await putFiles(dir, changes).catch((error: unknown) => {
      throw error instanceof NotWritten ? new UsageError(error.message) : error;
    });
    for (const { path } of changes) effects.print(`written      ${path}\n`);
    return 0;
  },
};

/**
 * What speaks against the comparison: values that are not on the page they were read from, and a day that has not come or
 * lies after the data cut-off. Of a shelf only the day, as it is judged with a book.
 */
function againstIt(written: readonly Written[], day: string, read: ReadBook, effects: Effects): string {
  const cutOff = cutOffOf(read);
  const judged = read.records.some(({ kind }) => kind === "issue") ? effects.engine.judgeBook(read) : undefined;
  const addresses = new Set(written.flatMap(({ lines }) => lines.map(addressIn)));
  const open = (judged?.findings ?? []).filter(
    ({ rule, subject, exception }) =>
      readBackNames.has(rule) && exception === null && subject !== null && addresses.has(addressOf(subject)),
  );
  return [
    ...(day > effects.today()
      ? [`in the future: ${day}, today is ${effects.today()}; it is not written before that day`]
      : []),
    ...(cutOff !== "" && day > cutOff
      ? [`${day} lies after the data cut-off, ${plain(cutOff)}: check objects until the cut-off in issue.json is moved`]
      : []),
    ...open.map(({ message }) => `open: ${plain(message)}`),
    ...(open.length > 0
      ? ["compare these with the page again, and correct the records or answer the query, before it is written"]
      : []),
  ]
    .map((line) => `  but        ${line}\n`)
    .join("");
}

const readBackNames = new Set(readBackRules.map(({ id }) => id));

interface Written extends Rewritten {
  readonly before: BookRecord;
  readonly lines: readonly string[];
}

/** The record of an original with the comparison that is asked for. Throws where it cannot have been made. */
function comparedNow(id: string, given: Given, read: ReadBook, people: ReadBook, lines: readonly string[]): Written {
  const before = named("original", id, read);
  const kind = read.kinds.get("original");
  if (kind === undefined) throw new UsageError("there is no kind of originals");
  const shelf = shelfOf(before.file);
  if (shelf !== undefined)
    throw new UsageError(`original "${id}" stands on the shelf "${shelf}"; name the folder of the shelf with --book`);
  if (lines.length === 0)
    throw new UsageError(`nothing was read from original "${id}": no record names it as its source`);
  const addresses = new Set(lines.map(addressIn));
  const faulty = read.records.find((record) => record.faulty && addresses.has(addressOf(record)));
  if (faulty !== undefined)
    throw new UsageError(`${addressOf(faulty)} has not the form of its kind; put right what check says of it first`);
  const sha256 = hashOf(before, read);
  const comparedBy = named("person", optionOf(given, "by", "who compared"), people).id;
  const date = optionOf(given, "on", "on which day");
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date) || !parseDate(date).ok)
    throw new UsageError(`"${date}" is no day; expected one such as 2026-03-09`);
  const typed = listOf(given.options.get("typed-by")).map((one) => named("person", one, people).id);
  const enteredBy = typed.length > 0 ? typed : statementOf(before).typedBy;
  if (enteredBy.length === 0)
    throw new UsageError(`who typed what was read from "${id}" is not said; name them with --typed-by`);
  if (enteredBy.includes(comparedBy))
    throw new UsageError(`"${comparedBy}" typed what was read from "${id}"; somebody else has to compare it`);
  const value = { ...before.value, transcription: { enteredBy, comparedBy, date, sha256, records: lines } };
  return { kind, id, before, value, lines };
}

/** Hash of the file, which must be the one that is recorded. */
function hashOf({ id, value, ...record }: BookRecord, { files }: ReadBook): string {
  const { path, sha256 } = value;
  const at = typeof path === "string" ? pathNamedBy(record, path) : "";
  const file = files.find((one) => one.role === "original" && one.path === at);
  if (file === undefined) throw new UsageError(`the file of original "${id}" is not there: "${at}"`);
  if (file.sha256 !== sha256)
    throw new UsageError(`"${at}" is not the file that original "${id}" records; put it right before it is compared`);
  return file.sha256;
}

function named(kind: string, id: string, read: ReadBook): BookRecord {
  const own = read.records.filter((record) => record.kind === kind);
  const found = own.find((record) => record.id === id);
  if (found !== undefined) return found;
  const near = nearestName(
    id,
    own.map((record) => record.id),
  );
  throw new UsageError(
    `there is no ${kind} "${id}"${near === undefined ? "" : `; nearest: ${near}`}` +
      (own.length === 0 && kind === "person" ? "; say with --people in which folder the people stand" : "") +
      unlessNotRead(read),
  );
}

function optionOf({ options }: Given, name: string, what: string): string {
  const value = options.get(name);
  if (value === undefined) throw new UsageError(`say ${what}, with --${name}`);
  return value;
}

const listOf = (text: string | undefined): readonly string[] =>
  (text ?? "")
    .split(",")
    .map((one) => one.trim())
    .filter((one) => one !== "");

const addressIn = (line: string) => line.slice(line.indexOf(" ") + 1);
const shown = 12;

function namesOf(lines: readonly string[], { kinds }: ReadBook): string {
  const names = lines.slice(0, shown).map((line) => recordWords(kinds, partsOfAddress(addressIn(line))));
  return `${names.join(", ")}${lines.length > shown ? ` and ${lines.length - shown} more` : ""}`;
}

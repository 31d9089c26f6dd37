import { basename, dirname, join, resolve } from "node:path";
import { linkChoices } from "../imports/choices.ts";
import { owedRows, type OwedRows } from "../imports/owed-rows.ts";
import { toSheets, type RecordToWrite } from "../imports/to-sheets.ts";
import { nearestName } from "../model/nearest.ts";
import { NotWritten, putNew } from "../load/put-files.ts";
import type { LoadedBook } from "../model/book.ts";
import type { Kind } from "../model/kind.ts";
import { plain } from "../report/plain.ts";
import { counted } from "../report/words.ts";
import { isSheetFault } from "../sheets/cells.ts";
import { bookFolder, judgeOrSay, readOrSay, shownPath } from "./books.ts";
import { UsageError, type Command } from "./command.ts";
import { notReadClause, notReadLine } from "./not-read.ts";

export const sheet: Command = {
  name: "sheet",
  summary: "write a workbook to fill in: the records of a kind, or what the book misses of it",
  readsBook: true,
  arguments: [{ name: "kind", required: true, means: "kind of the records; databook explain lists the kinds" }],
  options: {
    owed: { means: "one row for each thing the book misses of this kind, and for each record that misses a field" },
    blank: { means: "headings and choices only" },
    book: { value: "DIR", means: "folder of the book; the one around here, or records/, if not given" },
    out: { value: "FILE", means: "where it is written; KIND.xlsx here if not given" },
  },
  help: [
    "One sheet holds the records, one more each of their lists, keyed by id and the names of rows. Headings are titles with the " +
      "unit, each with the field's description as a note; fields with a choice of values and links have a list to choose from.",
    "Without --owed the records of the book stand in it. With --owed there is a row for everything that is missing, due or not " +
      "yet, with what is known filled in and shaded; ids that are not shaded are proposals. databook import reads the sheet back.",
    "A file that is there is never replaced.",
    "Exit 0: it was written. Exit 2: it was not.",
  ],
  async run(given, effects) {
    const [owed, empty] = [given.options.has("owed"), given.options.has("blank")];
    if (owed && empty) throw new UsageError("--owed writes rows, --blank none: leave one of them out");
    const dir = await bookFolder(given.options.get("book"), effects);
    const judged = owed ? judgeOrSay(dir, effects) : undefined;
    const read = owed ? judged?.loaded : readOrSay(dir, effects);
    if (read === undefined) return 2;
    const { kinds } = effects.engine.definitions();
    const kind = kindNamed(given.arguments[0] ?? "", kinds);
    const own = read.records.filter((record) => record.kind === kind.name);
    const misses = judged === undefined ? undefined : owedRows(kind, judged.missing, read.records, kinds);
    const rows: readonly RecordToWrite[] =
      misses !== undefined
        ? [...misses.missing, ...misses.incomplete]
        : empty
          ? []
          : own.map(({ value }) => ({ value, known: false }));
    // What only this command needs is loaded by it alone.
    const { writeWorkbook } = await import("../sheets/write/workbook.ts");
    const made = await writeWorkbook(toSheets(kind, rows, linkChoices(read.records, kinds)));
    if (isSheetFault(made)) {
      const { message, why, hint, place } = made;
      effects.say(
        `${place === undefined ? "" : `${place}: `}${plain(message)}\n  why    ${plain(why)}\n  hint   ${plain(hint)}\n`,
      );
      return 2;
    }
    const out = resolve(effects.cwd, given.options.get("out") ?? `${kind.name}${owed ? "-owed" : ""}.xlsx`);
    if (!/\.xlsx$/i.test(out))
      throw new UsageError(`"${basename(out)}" does not end in .xlsx: a workbook of several sheets is written`);
    try {
      await putNew(join(dirname(out), basename(out)), made);
    } catch (error) {
      if (error instanceof NotWritten) throw new UsageError(error.message);
      throw error;
    }
    effects.print(
      `written ${plain(shownPath(out, effects.cwd))}: ${misses === undefined ? counted(rows.length, "row") : owedText(misses)}\n` +
        (misses === undefined ? "" : missingText(kind, misses, read)) +
        notReadLine(read),
    );
    return 0;
  },
};

/** "3 rows that the book misses, 2 rows of records that are there and miss something: original". */
function owedText({ missing, incomplete, lacks }: OwedRows): string {
  const absent =
    missing.length > 0 || incomplete.length === 0 ? [`${counted(missing.length, "row")} that the book misses`] : [];
  const partly =
    incomplete.length === 0
      ? []
      : [`${counted(incomplete.length, "row")} of records that are there and miss something: ${lacks.join(", ")}`];
  return [...absent, ...partly].join(", ");
}

/** Whether anything else is missing: nobody can say it of a kind while not all was read. */
function missingText({ name }: Kind, { missing, named }: OwedRows, read: LoadedBook): string {
  const which =
    named.length === 0
      ? ""
      : `links name ${named.join(", ")}, which are not in the book: give these ids to the rows they belong to\n`;
  if (notReadClause(read) !== undefined)
    return `${which}whether the book misses any ${missing.length === 0 ? "" : "other "}${name} cannot be known while not all of it is read\n`;
  return missing.length === 0 ? `the book misses no ${name}, due or not yet\n` : which;
}

function kindNamed(name: string, kinds: ReadonlyMap<string, Kind>): Kind {
  const kind = kinds.get(name);
  if (kind !== undefined && !kind.derived) return kind;
  const near = nearestName(
    name,
    [...kinds.values()].filter(({ derived }) => !derived).map((one) => one.name),
  );
  throw new UsageError(
    `there is no kind "${name}"${near === undefined ? "; databook explain lists the kinds" : `; nearest: ${near}`}`,
  );
}

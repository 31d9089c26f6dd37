import { resolve } from "node:path";
import { nearestIds } from "../link/alike.ts";
import { NotWritten, putNew } from "../load/put-files.ts";
import type { JudgedBook } from "../model/book.ts";
import type { Finding } from "../model/finding.ts";
import { milestoneDays } from "../model/milestone-days.ts";
import { announcedOf } from "../owed/announced.ts";
import { notOwed, owedItems, type OwedItem } from "../owed/items.ts";
import { owedJson } from "../owed/json.ts";
import { nextMilestone, owedList, firmsIn, ownersIn, type Asked } from "../owed/list.ts";
import { owedSheet } from "../owed/sheet.ts";
import { owedText } from "../owed/text.ts";
import { milestoneSentence, milestoneWords } from "../owed/words.ts";
import { owners } from "../model/vocabulary.ts";
import { plain } from "../report/plain.ts";
import { reportedBook } from "../report/report.ts";
import { counted } from "../report/words.ts";
import { isSheetFault, type SheetToWrite } from "../sheets/cells.ts";
import { bookFolder, judgeOrSay, shownPath } from "./books.ts";
import { notReadLine } from "./not-read.ts";
import { bookArgument, formatOption, UsageError, type Command, type Effects, type Exit } from "./command.ts";

export const owed: Command = {
  name: "owed",
  summary: "list what is missing or still to come: what, for what, by when, and who must act",
  readsBook: true,
  arguments: [bookArgument],
  options: {
    until: { value: "MILESTONE", means: "only what is owed at that milestone or before it" },
    owner: {
      value: "WHO",
      means:
        "only what one role owes, such as testing, or one firm or person, by id or name, or is to be read from their paper",
    },
    format: formatOption(["text", "csv", "xlsx", "json"]),
    out: {
      value: "FILE",
      means: "where csv or xlsx is written; csv is printed and xlsx is owed.xlsx here if not given",
    },
  },
  help: [
    "Everything the book misses, due or not, each thing once, by who must act and then by day; nothing is cut off, so that a part " +
      "can be pasted into a mail. It is what check counts as gaps and as not due.",
    "A milestone's day is its reached in issue.json: after the data cut-off it is a planned day. Whoever acts is a role, with the " +
      "firm or person that a record names for it; the paper is the original that the record names as its source.",
    "What is measured comes with the limits it will be held against, computed for this vessel before it is made, for as long as the " +
      "measurement itself is owed: at the end of text and JSON, in the last column of a sheet.",
    "Exit 0: the list was made, whatever it holds. Exit 2: the book cannot be judged at all.",
  ],
  async run(given, effects) {
    const format = given.options.get("format") ?? "text";
    const out = given.options.get("out");
    if (out !== undefined && format !== "csv" && format !== "xlsx")
      throw new UsageError(`--out takes a sheet: say --format csv or --format xlsx; ${format} is printed`);
    const dir = await bookFolder(given.arguments[0], effects);
    const judged = judgeOrSay(dir, effects);
    if (judged === undefined) return 2;
    const items = owedItems(judged);
    const asked = askedFor(judged, items, given.options.get("until"), given.options.get("owner"));
    const list = owedList(items, milestoneDays(judged.issue), asked);
    const announced = announcedOf(judged, list);
    const others = notOwed(judged);
    if (format === "csv" || format === "xlsx") {
      // What is printed as CSV is the sheet and nothing else; the sentence is for whoever looks on.
      if (others.length > 0) effects.say(othersText(others));
      return await putSheet(owedSheet(list, announced), format, out, effects);
    }
    effects.print(
      format === "json"
        ? owedJson(effects.engine.tool, reportedBook(judged), nextMilestone(judged), asked, list, announced, others)
        : owedText(list, headOf(judged, asked), announced) + othersText(others) + notReadLine(judged.loaded),
    );
    return 0;
  },
};

/** What blocks beside all that is missing: nobody is to take the end of the list for the end of the work. */
function othersText(others: readonly Finding[]): string {
  if (others.length === 0) return "";
  const count = (severity: Finding["severity"]) => others.filter((one) => one.severity === severity).length;
  const said = [
    [count("nonconformity"), "nonconformity", "nonconformities"] as const,
    [count("query"), "query", "queries"] as const,
  ].flatMap(([number, one, several]) => (number === 0 ? [] : [counted(number, one, several)]));
  return `beside this list check finds what is there and wrong or in doubt: ${said.join(" and ")}; that blocks too\n`;
}

/** Writes the sheet; a file that is there is never replaced. */
async function putSheet(
  sheet: SheetToWrite,
  format: "csv" | "xlsx",
  out: string | undefined,
  effects: Effects,
): Promise<Exit> {
  const made =
    format === "csv"
      ? (await import("../sheets/write/csv.ts")).writeCsv(sheet)
      : await (await import("../sheets/write/workbook.ts")).writeWorkbook([sheet]);
  if (isSheetFault(made)) {
    const { message, why, hint } = made;
    effects.say(`${plain(message)}\n  why    ${plain(why)}\n  hint   ${plain(hint)}\n`);
    return 2;
  }
  if (format === "csv" && out === undefined) {
    effects.print(Buffer.from(made).toString("utf8"));
    return 0;
  }
  const path = resolve(effects.cwd, out ?? "owed.xlsx");
  try {
    await putNew(path, made);
  } catch (error) {
    if (error instanceof NotWritten) throw new UsageError(error.message);
    throw error;
  }
  effects.print(`written ${plain(shownPath(path, effects.cwd))}: ${counted(sheet.rows.length, "row")}\n`);
  return 0;
}

/** Book, issue, next milestone, and what was asked for: what a mail begins with. */
function headOf(judged: JudgedBook, { until, owner }: Asked): readonly string[] {
  const { number, title, revision, state, dataCutOff } = reportedBook(judged);
  const next = nextMilestone(judged);
  const of = [
    ...(owner === undefined ? [] : [`by ${owner}`]),
    ...(until === undefined ? [] : [`until ${milestoneWords(until)}`]),
  ];
  return [
    `${plain(number)} ${plain(title)}: what is owed${of.length === 0 ? "" : ` ${plain(of.join(" "))}`}`,
    `revision ${plain(revision)}, ${state}, evidence up to ${plain(dataCutOff)}`,
    next === undefined ? "every milestone is reached" : `next milestone: ${plain(milestoneSentence(next))}`,
  ];
}

function askedFor(
  { issue }: JudgedBook,
  items: readonly OwedItem[],
  until: string | undefined,
  owner: string | undefined,
): Asked {
  const names = milestoneDays(issue).map(({ name }) => name);
  if (until !== undefined && !names.includes(until))
    throw new UsageError(
      `--until "${plain(until)}" is no milestone that issue.json lists${suggested(until, names)}; it lists ${names.join(", ")}`,
    );
  const known = new Set([...owners, ...ownersIn(items)]);
  const inAnyCase = new Set([...known].map((one) => one.toLowerCase()));
  const firms = firmsIn(items);
  if (owner !== undefined && !inAnyCase.has(owner.toLowerCase()))
    throw new UsageError(
      `--owner "${plain(owner)}" is no role, and no firm or person that owes anything${suggested(owner, [...known])}; roles are ${owners.join(", ")}${firms.length === 0 ? "" : `; firms and persons are ${firms.map(plain).join(", ")}`}`,
    );
  return { ...(until !== undefined && { until }), ...(owner !== undefined && { owner }) };
}

function suggested(name: string, names: readonly string[]): string {
  const near = nearestIds(name, names);
  return near.length === 0 ? "" : `; did you mean ${near.join(" or ")}?`;
}

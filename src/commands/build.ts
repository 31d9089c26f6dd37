import { resolve } from "node:path";
import type { JudgedBook } from "../model/book.ts";
import { blocks } from "../model/finding.ts";
import {
  checkTarget,
  writeIssue,
  type Content,
  type Marker,
  type Target,
  type Written,
} from "../publish/issue/index.ts";
import { reportHtml } from "../report/html.ts";
import { reportJson } from "../report/json.ts";
import { reportedBook, reportOf, type Report } from "../report/report.ts";
import { summaryText } from "../report/text.ts";
import { bookFolder, judgeOrSay, shownPath } from "./books.ts";
import { bookArgument, formatOption, type Command, type Effects } from "./command.ts";

export const build: Command = {
  name: "build",
  summary: "issue the book: HTML dossier, PDF book, originals, evidence and hash list",
  arguments: [bookArgument],
  options: {
    out: {
      value: "DIR",
      means: "write exactly there; out/<book number>/<revision>-<state>-<fingerprint> if not given",
    },
    format: formatOption(["text", "json"]),
  },
  help: [
    "An issue is written complete or not at all. Without --out it is never overwritten: the same bytes again are success, " +
      "other bytes under the same name are refused. With --out an earlier issue in that folder is replaced, anything else refused.",
    "A final issue is published only when nothing blocks; else a findings report is written beside it and the earlier issue " +
      "stays as it is. An interim issue is always published, open items first.",
    "Exit 0: issued and nothing blocks. Exit 1: findings block. Exit 2: the work could not be done.",
  ],
  async run(given, effects) {
    const dir = await bookFolder(given.arguments[0], effects);
    const out = given.options.get("out");
    const target: Target =
      out === undefined
        ? { type: "shelf", root: resolve(effects.cwd, "out") }
        : { type: "folder", dir: resolve(effects.cwd, out) };
    await checkTarget(target, dir);
    const judged = judgeOrSay(dir, effects);
    if (judged === undefined) return 2;
    const report = reportOf(judged, effects.engine.tool);
    const blocked = judged.findings.some(blocks);
    const holds = blocked && judged.state === "final" ? "findings" : "issue";
    effects.progress("publishing");
    const files = holds === "issue" ? (await effects.engine.publishBook(judged)).files : findingsFiles(report);
    effects.progress("writing");
    const written = await writeIssue(files, markerOf(judged, holds, effects), target, dir);
    tell(report, holds, written, given.options.get("format"), effects);
    return blocked ? 1 : 0;
  },
};

function findingsFiles(report: Report): ReadonlyMap<string, Content> {
  return new Map([
    ["findings.html", reportHtml(report)],
    ["findings.json", reportJson(report)],
  ]);
}

function markerOf(judged: JudgedBook, holds: Marker["holds"], effects: Effects): Marker {
  const { number, revision, state, fingerprint } = reportedBook(judged);
  return { format: 1, holds, number, revision, state, fingerprint, tool: effects.engine.tool };
}

function tell(
  report: Report,
  holds: Marker["holds"],
  { dir, outcome }: Written,
  format: string | undefined,
  effects: Effects,
): void {
  const path = shownPath(dir, effects.cwd);
  if (format === "json") {
    const { number, revision, state, fingerprint } = report.book;
    const book = { number, revision, state, fingerprint };
    effects.print(
      `${JSON.stringify({ tool: report.tool, format: 1, holds, outcome, path, book, counts: report.counts }, null, 2)}\n`,
    );
    return;
  }
  effects.say(`${summaryText(report, effects.sayInk)}\n`);
  const done = {
    written: "written",
    replaced: "written in place of the earlier one",
    unchanged: "unchanged: the same bytes are already there",
  };
  effects.say(
    holds === "issue"
      ? `issue ${done[outcome]}\n`
      : `not issued: a final issue is published only when nothing blocks; findings report ${done[outcome]}\n`,
  );
  effects.print(`${path}/${holds === "issue" ? "index.html" : "findings.html"}\n`);
}

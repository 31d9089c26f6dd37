import { resolve } from "node:path";
import type { JudgedBook } from "../model/book.ts";
import { blocks } from "../model/finding.ts";
import {
  checkTarget,
  refuseSecond,
  refuseShelves,
  seriesOf,
  writeIssue,
  type IssueFile,
  type Marker,
  type Target,
  type Written,
} from "../publish/issue/index.ts";
import { reportHtml } from "../report/html.ts";
import { reportJson } from "../report/json.ts";
import { reportedBook, reportHere, type Report } from "../report/report.ts";
import { spellControls } from "../model/spelled.ts";
import { inGroups, jsonText } from "../report/plain.ts";
import { summaryText } from "../report/text.ts";
import { bookFolder, judgeOrSay, resultsBeside, shownPath } from "./books.ts";
import { bookArgument, formatOption, type Command, type Effects } from "./command.ts";

export const build: Command = {
  name: "build",
  summary: "issue the book: HTML dossier, PDF book, originals, evidence and hash list",
  readsBook: true,
  arguments: [bookArgument],
  options: {
    out: {
      value: "DIR",
      means:
        "write exactly there; if not given, beside the folder of the book: out/<book number>/<revision>-<state>-<fingerprint>",
    },
    format: formatOption(["text", "json"]),
  },
  help: [
    "An issue is written complete or not at all, and the same bytes again are success. An interim issue with other bytes is " +
      "replaced; with --out an earlier issue in that folder is replaced, anything else refused.",
    "Without --out the issue goes beside the book, wherever this is run: my-books/vessel/ gives my-books/out/<book number>/…",
    "A final revision is issued once: a second issue of it with other evidence is refused, naming both fingerprints, whether the " +
      "history in issue.json, the folder out/<book number>/ or the target knows the first. Raise the revision, say in the history " +
      "why, and list there each final issue with its evidence fingerprint.",
    "Two fingerprints are printed: the evidence's, which stands on every page, and the issue's, the SHA-256 of hashes.sha256, " +
      "which covers pages, PDF and findings too. Write the second one down by hand; verify --expect compares.",
    "A final issue is published only when nothing blocks; else a findings report is written beside it and the earlier issue " +
      "stays as it is. An interim issue is always published, open items first.",
    "Exit 0: issued and nothing blocks. Exit 1: findings block. Exit 2: the work could not be done.",
  ],
  async run(given, effects) {
    const dir = await bookFolder(given.arguments[0], effects);
    const out = given.options.get("out");
    const results = await resultsBeside(dir);
    const target: Target =
      out === undefined ? { type: "series", root: results } : { type: "folder", dir: resolve(effects.cwd, out) };
    await checkTarget(target, dir);
    const judged = judgeOrSay(dir, effects);
    if (judged === undefined) return 2;
    await refuseShelves(target, judged.loaded.shelves);
    const report = reportHere(judged, effects.engine.tool);
    const blocked = judged.findings.some(blocks);
    const holds = blocked && judged.state === "final" ? "findings" : "issue";
    const marker = markerOf(judged, holds, effects);
    await refuseSecond(marker, target, seriesOf(results, marker.number));
    effects.progress("publishing");
    const files = holds === "issue" ? effects.engine.publishBook(judged, effects.progress) : findingsFiles(report);
    const written = await writeIssue(files, marker, target, dir);
    tell(report, marker, written, given.options.get("format"), effects);
    return blocked ? 1 : 0;
  },
};

function findingsFiles(report: Report): readonly IssueFile[] {
  return [
    ["findings.html", reportHtml(report)],
    ["findings.json", reportJson(report)],
  ];
}

function markerOf(judged: JudgedBook, holds: Marker["holds"], effects: Effects): Marker {
  const { number, revision, state, fingerprint } = reportedBook(judged);
  return { format: 1, holds, number, revision, state, fingerprint, tool: effects.engine.tool };
}

function tell(
  report: Report,
  { holds, state }: Marker,
  { dir, outcome, fingerprint: issueFingerprint }: Written,
  format: string | undefined,
  effects: Effects,
): void {
  const path = shownPath(dir, effects.cwd);
  if (format === "json") {
    const { number, revision, state, fingerprint } = report.book;
    const book = { number, revision, state, fingerprint };
    effects.print(
      jsonText({ tool: report.tool, format: 1, holds, outcome, path, book, issueFingerprint, counts: report.counts }),
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
  if (holds === "issue") effects.say(fingerprintLines(report, issueFingerprint, state));
  effects.print(`${path}/${holds === "issue" ? "index.html" : "findings.html"}\n`);
}

/** What is to be written down, and of a final issue the line its history will need. */
function fingerprintLines({ book }: Report, issueFingerprint: string, state: Marker["state"]): string {
  const entry = {
    revision: book.revision,
    state,
    date: book.issueDate,
    reason: "…",
    fingerprint: book.fingerprint,
  };
  return [
    `evidence fingerprint ${inGroups(book.fingerprint)}`,
    `issue's fingerprint  ${inGroups(issueFingerprint)}`,
    "write the issue's fingerprint on the front page by hand: it covers pages, PDF and findings, and verify --expect compares it",
    ...(state === "final"
      ? [`for the history of the next revision, in issue.json: ${spellControls(JSON.stringify(entry))}`]
      : []),
    "",
  ].join("\n");
}

import { describeBasis } from "../model/basis.ts";
import { excerpt, plain } from "./plain.ts";
import { adoptedSentence } from "../model/adopted.ts";
import { foldNotes } from "./fold-notes.ts";
import type { Placed, Report } from "./report.ts";
import { counted, foundSentence, groups, judgedSentence, owners, releaseSentence } from "./words.ts";

/** More places than a screen takes in are listed in the other reports. */
const mostRelated = 12;

/** Weights of a terminal; colour never carries meaning. */
export interface Ink {
  readonly bold: (text: string) => string;
  readonly dim: (text: string) => string;
}

export const noInk: Ink = { bold: (text) => text, dim: (text) => text };

/** One finding for people: place, severity and rule, message, the line it stands on, and why, basis, hint. */
export function findingText({ finding, position, line, sheet, related, waits }: Placed, ink: Ink = noInk): string {
  const row = (label: string, text: string) => `  ${ink.dim(label.padEnd(6))} ${plain(text)}`;
  const place = `${plain(finding.place.file)}:${position.line}:${position.column}`;
  return [
    `${ink.bold(place)} ${ink.bold(finding.severity)} ${finding.rule}`,
    `  ${plain(finding.message)}`,
    ...(line === undefined ? [] : [`  ${ink.dim(`${position.line} |`)} ${excerpt(line, position.column)}`]),
    ...(sheet === undefined ? [] : [row("sheet", sheet)]),
    row("why", finding.why),
    row("basis", describeBasis(finding.basis)),
    row("hint", finding.hint),
    row("owner", finding.due === null ? finding.owner : `${finding.owner}, due at ${finding.due}`),
    ...related
      .slice(0, mostRelated)
      .map(({ related: other, position: at, sheet: there }) =>
        row(
          "see",
          `${other.place.file}:${at.line}:${at.column} ${other.message}${there === undefined ? "" : ` (${there})`}`,
        ),
      ),
    ...(related.length > mostRelated ? [row("see", `${related.length - mostRelated} more places, in the report`)] : []),
    ...(waits.length === 0 ? [] : [row("waits", waitingText(waits))]),
    ...(finding.exception === null ? [] : [row("lifted", `answered by ${finding.exception}`)]),
    row("key", `${finding.key}, digest ${finding.digest}`),
  ].join("\n");
}

function waitingText(waiting: readonly string[]): string {
  const first = waiting.slice(0, 3).join("; ");
  return waiting.length <= 3 ? first : `${first}; and ${waiting.length - 3} more checks`;
}

/** The whole report for a terminal: findings by severity, then what they add up to. Ends with a line end. */
export function reportText(report: Report, ink: Ink = noInk): string {
  const listed = groups(report.findings).map(({ title, findings }) =>
    [ink.bold(`${title} (${findings.length})`), ...foldNotes(findings).map((placed) => findingText(placed, ink))].join(
      "\n\n",
    ),
  );
  return `${[...listed, summaryText(report, ink)].join("\n\n")}\n`;
}

/** Which book, what was found, what became of the outcomes, who must act, and whether anything blocks. */
export function summaryText(report: Report, ink: Ink = noInk): string {
  const { book, counts } = report;
  const toAct = owners(report.findings).map(({ owner, count }) => `${plain(owner)} ${count}`);
  return [
    `${ink.bold(plain(book.number))} revision ${plain(book.revision)}, ${book.state}, profile ${plain(book.profile)}, ` +
      `evidence ${book.fingerprint.slice(0, 16)}`,
    `found: ${foundSentence(counts)}`,
    judgedSentence(counts),
    ...(report.adopted.calculations === 0 ? [] : [adoptedSentence(report.adopted)]),
    ...(toAct.length === 0 ? [] : [`to act: ${toAct.join(", ")}`]),
    ink.bold(releaseSentence(report)),
  ].join("\n");
}

/** Why the work could not be done, for standard error. */
export function fatalText(findings: readonly Placed[], ink: Ink = noInk): string {
  const head = `the book cannot be judged: ${counted(findings.length, "fault", "faults")} in what names it`;
  return `${[head, ...findings.map((placed) => findingText(placed, ink))].join("\n\n")}\n`;
}

import { counted, owners } from "./words.ts";
import { foldNotes } from "./fold-notes.ts";
import { plain } from "./plain.ts";
import type { Placed, Report } from "./report.ts";
import type { Since } from "./since.ts";
import { findingText, noInk, summaryText, type Ink } from "./text.ts";
import { spokenAddress } from "../model/record.ts";

/** Findings of one person who must act, one line each. */
interface ByOwner {
  readonly owner: string;
  readonly lines: readonly string[];
}

/**
 * Every finding on one line, grouped by who must act: whoever has most to do first; notes and what is answered last. Many
 * notes of one check are one line.
 */
export function shortText(report: Report, ink: Ink = noInk): string {
  const open = report.findings.filter(({ finding }) => finding.exception === null);
  const lifted = report.findings.filter(({ finding }) => finding.exception !== null);
  const answered = lifted.map((placed) => lineOf(placed, ` · answered by ${spokenId(placed.finding.exception)}`));
  return sections(
    [
      ...grouped(
        foldNotes(open).map((placed) => ({ placed, line: lineOf(placed) })),
        owners(report.findings),
      ),
      ...(answered.length === 0 ? [] : [{ owner: "answered by an exception", lines: answered }]),
    ].map((group) => groupText(group, ink)),
    summaryText(report, ink),
  );
}

/**
 * What changed since an earlier report: new, still open, gone. What is gone without having been put right says so. With
 * `short`, one line each; else what is new stands in full.
 */
export function sinceText(report: Report, since: Since, short: boolean, ink: Ink = noInk): string {
  const { earlier, fresh, still, gone } = since;
  const order = owners(report.findings);
  const heading = (title: string, count: number) => ink.bold(`${title}: ${count === 0 ? "none" : count}`);
  const inFull = short ? [] : foldNotes(fresh.map(({ placed }) => placed)).map((placed) => findingText(placed, ink));
  const newLines = linesOf(
    fresh.map(({ placed, again }) => ({ placed, more: again ? " · an exception answered it then" : "" })),
  );
  const stillLines = linesOf(
    still.map(({ placed, changed }) => ({ placed, more: changed ? " · what it rests on has changed" : "" })),
  );
  return sections(
    [
      `since revision ${plain(earlier.revision)}, ${plain(earlier.state)}, evidence up to ${plain(earlier.dataCutOff)} ` +
        `(${plain(earlier.fingerprint.slice(0, 16))})`,
      heading("new", fresh.length),
      ...(short ? grouped(newLines, order).map((group) => groupText(group, ink)) : inFull),
      heading("still open", still.length),
      ...grouped(stillLines, order).map((group) => groupText(group, ink)),
      heading("gone", gone.length),
      ...(gone.length === 0
        ? []
        : [gone.map(({ earlier: one, now }) => `  ${one.severity}: ${plain(one.message)} · ${plain(now)}`).join("\n")]),
    ],
    `${sinceSentence(since)}\n${summaryText(report, ink)}`,
  );
}

/** "2 new, 5 still open, 1 gone"; what is gone and not put right is said apart. */
export function sinceSentence({ fresh, still, gone, answered }: Since): string {
  const unsettled = gone.filter((one) => one.unsettled).length;
  return [
    `${fresh.length} new`,
    `${still.length} still open`,
    `${gone.length} gone${unsettled === 0 ? "" : `, of which ${unsettled} ${unsettled === 1 ? "was" : "were"} not put right`}`,
    `${counted(answered, "finding is", "findings are")} answered by an exception now`,
  ].join(", ");
}

const sections = (parts: readonly string[], last: string) => `${[...parts, last].join("\n\n")}\n`;

const spokenId = (address: string | null) => (address === null ? "" : spokenAddress(address));

/** One finding on one line: what is wrong first, so that a line can be pasted into a mail as it is. */
function lineOf({ finding, position }: Placed, more = ""): string {
  const due = finding.due === null ? "" : `, due at ${finding.due}`;
  return `${finding.severity}: ${finding.message} (${finding.place.file}:${position.line}${due})${more}`;
}

/** A line for each; many notes of one check, of which there is no more to be said, are one. */
function linesOf(all: readonly { readonly placed: Placed; readonly more: string }[]): readonly Line[] {
  const more = new Map(all.map((one) => [one.placed, one.more]));
  const bare = all.filter((one) => one.more === "").map(({ placed }) => placed);
  const said = all.filter((one) => one.more !== "").map(({ placed }) => placed);
  return [...said, ...foldNotes(bare)].map((placed) => ({ placed, line: lineOf(placed, more.get(placed)) }));
}

interface Line {
  readonly placed: Placed;
  readonly line: string;
}

function grouped(lines: readonly Line[], order: ReturnType<typeof owners>): readonly ByOwner[] {
  const names = new Set([...order.map(({ owner }) => owner), ...lines.map(({ placed }) => placed.finding.owner)]);
  return [...names].flatMap((owner) => {
    const own = lines.filter(({ placed }) => placed.finding.owner === owner).map(({ line }) => line);
    return own.length === 0 ? [] : [{ owner, lines: own }];
  });
}

function groupText({ owner, lines }: ByOwner, ink: Ink): string {
  return [ink.bold(`${plain(owner)} (${lines.length})`), ...lines.map((line) => `  ${plain(line)}`)].join("\n");
}

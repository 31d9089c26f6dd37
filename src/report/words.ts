import type { Counts } from "../model/book.ts";
import { blocks, type Severity } from "../model/finding.ts";
import { countSentence, tallyOf } from "../model/mark.ts";
import type { Placed, Report } from "./report.ts";

/** A group of a findings list: what people have to do first stands first. */
export interface Group {
  readonly title: string;
  readonly findings: readonly Placed[];
}

const severities: readonly { readonly severity: Severity; readonly title: string }[] = [
  { severity: "nonconformity", title: "nonconformities" },
  { severity: "gap", title: "gaps" },
  { severity: "query", title: "queries" },
  { severity: "note", title: "notes" },
];

/** Findings by severity, what blocks first; those an exception answers stand last. Empty groups are left out. */
export function groups(findings: readonly Placed[]): readonly Group[] {
  const open = findings.filter(({ finding }) => finding.exception === null);
  const lifted = findings.filter(({ finding }) => finding.exception !== null);
  return [
    ...severities.map(({ severity, title }) => ({
      title,
      findings: open.filter((f) => f.finding.severity === severity),
    })),
    { title: "answered by an exception", findings: lifted },
  ].filter((group) => group.findings.length > 0);
}

/** "1 gap", "no gaps", "3 gaps". */
export function counted(number: number, one: string, several = `${one}s`): string {
  return `${number === 0 ? "no" : number} ${number === 1 ? one : several}`;
}

/** What was found, in one sentence. */
export function foundSentence(counts: Counts): string {
  return [
    counted(counts.nonconformity, "nonconformity", "nonconformities"),
    counted(counts.gap, "gap"),
    counted(counts.query, "query", "queries"),
    counted(counts.note, "note"),
    `${counts.lifted} answered by an exception`,
  ].join(", ");
}

/** What became of the outcomes, in one sentence; that they all passed is not to be taken for a book without findings. */
export function judgedSentence(counts: Counts): string {
  const said = countSentence(tallyOf(counts), (count) => counted(count, "check"));
  const isFound = counts.nonconformity + counts.gap + counts.query > 0;
  const isInThem = counts.failed + counts.rejected + counts.notJudged > 0;
  return isFound && !isInThem ? `${said}; what was found stands beside these checks` : said;
}

/** Whether the issue may go out, and what is in the way. */
export function releaseSentence({ book, findings }: Pick<Report, "book" | "findings">): string {
  const blocking = findings.filter(({ finding }) => blocks(finding)).length;
  if (blocking === 0) return `nothing blocks this ${book.state} issue`;
  return `${counted(blocking, "finding blocks", "findings block")} release`;
}

/** How many blocking findings wait for whom, most first. */
export function owners(findings: readonly Placed[]): readonly { readonly owner: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const { finding } of findings)
    if (blocks(finding)) counts.set(finding.owner, (counts.get(finding.owner) ?? 0) + 1);
  return [...counts]
    .map(([owner, count]) => ({ owner, count }))
    .sort((a, b) => b.count - a.count || (a.owner < b.owner ? -1 : 1));
}

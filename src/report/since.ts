import type { JudgedBook } from "../model/book.ts";
import type { Verdict } from "../model/finding.ts";
import type { Earlier, EarlierFinding } from "./earlier.ts";
import type { Placed, Report } from "./report.ts";
import { outcomeName } from "../model/outcome-name.ts";
import { spokenAddress } from "../model/record.ts";

/** A finding that is open now and was open then. */
export interface StillOpen {
  readonly placed: Placed;
  /** What it rests on reads otherwise now: an exception that cited it would not answer it any more. */
  readonly changed: boolean;
}

/** A finding that was open then and is not now, and what became of it in words: "not found any more". */
export interface Gone {
  readonly earlier: EarlierFinding;
  readonly now: string;
  /** Nothing says that it was put right: its check was not done again, its record has gone, or an exception answers it. */
  readonly unsettled: boolean;
}

/** What changed between an earlier report of a book and this one. A finding is known by its key. */
export interface Since {
  readonly earlier: Earlier;
  /** Open now, and not open then; `again`: an exception answered it then. */
  readonly fresh: readonly { readonly placed: Placed; readonly again: boolean }[];
  readonly still: readonly StillOpen[];
  readonly gone: readonly Gone[];
  /** How many an exception answers now. */
  readonly answered: number;
}

/** Compares a report with an earlier one of the same book. */
export function sinceOf(report: Report, judged: Pick<JudgedBook, "outcomes" | "graph">, earlier: Earlier): Since {
  const before = new Map(earlier.findings.map((one) => [one.key, one]));
  const now = new Map<string, Placed>(report.findings.map((placed) => [placed.finding.key, placed]));
  const open = report.findings.filter(({ finding }) => finding.exception === null);
  const wasOpen = ({ finding }: Placed) => before.get(finding.key)?.exception === null;
  const verdicts = verdictsOf(judged);
  const became = ({ rule, subject }: EarlierFinding): Pick<Gone, "now" | "unsettled"> => {
    const own = verdicts.get(outcomeName(rule, subject)) ?? new Set<Verdict>();
    if (own.has("not judged")) return { now: "not judged now: its check waits for something else", unsettled: true };
    if (own.size === 1 && own.has("not applicable"))
      return { now: "its check does not apply any more", unsettled: true };
    return subject !== null && judged.graph.byKind.get(subject.kind)?.has(subject.id) !== true
      ? { now: `the book holds no ${subject.kind} ${subject.id} any more`, unsettled: true }
      : { now: "not found any more", unsettled: false };
  };
  return {
    earlier,
    fresh: open
      .filter((placed) => !wasOpen(placed))
      .map((placed) => ({ placed, again: before.has(placed.finding.key) })),
    still: open
      .filter(wasOpen)
      .map((placed) => ({ placed, changed: before.get(placed.finding.key)?.digest !== placed.finding.digest })),
    gone: earlier.findings.flatMap((one): Gone[] => {
      const exception = now.get(one.key)?.finding.exception;
      if (one.exception !== null || exception === null) return [];
      if (exception === undefined) return [{ earlier: one, ...became(one) }];
      return [{ earlier: one, now: `answered by ${spokenAddress(exception)}`, unsettled: true }];
    }),
    answered: report.findings.length - open.length,
  };
}

/** What each check of a record came to; of a check of its rows there are several. */
function verdictsOf({ outcomes }: Pick<JudgedBook, "outcomes">): ReadonlyMap<string, ReadonlySet<Verdict>> {
  const verdicts = new Map<string, Set<Verdict>>();
  for (const { definition, subject, verdict } of outcomes) {
    const name = outcomeName(definition, subject);
    verdicts.set(name, (verdicts.get(name) ?? new Set()).add(verdict));
  }
  return verdicts;
}

import type { Counts } from "../model/book.ts";
import type { Finding, Outcome } from "../model/finding.ts";
import { markOf, tally, type Mark } from "../model/mark.ts";
import { byCodePoint } from "../model/order.ts";

/** Findings that stand, by severity; those lifted; outcomes by mark. */
export function countsOf(findings: readonly Finding[], outcomes: readonly Outcome[]): Counts {
  const open = { nonconformity: 0, gap: 0, query: 0, note: 0 };
  let lifted = 0;
  for (const { severity, exception } of findings)
    if (exception === null) open[severity]++;
    else lifted++;
  const marks = tally(outcomes.map(markOf));
  const count = (mark: Mark) => marks.get(mark) ?? 0;
  return {
    ...open,
    lifted,
    notJudged: count("not judged"),
    notDue: count("not due"),
    notApplicable: count("not applicable"),
    passed: count("passed"),
    computed: count("computed"),
    failed: count("failed"),
    rejected: count("rejected"),
    answered: count("answered"),
  };
}

/** By file, rule and key; line numbers are found by whoever prints them. */
export function inOrder(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(
    (a, b) => byCodePoint(a.place.file, b.place.file) || byCodePoint(a.rule, b.rule) || byCodePoint(a.key, b.key),
  );
}

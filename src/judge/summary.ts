import type { Counts } from "../model/book.ts";
import type { Finding, Outcome } from "../model/finding.ts";
import { byCodePoint } from "../model/order.ts";

/** Findings that stand, by severity; those lifted; outcomes by verdict. */
export function countsOf(findings: readonly Finding[], outcomes: readonly Outcome[]): Counts {
  const open = { nonconformity: 0, gap: 0, query: 0, note: 0 };
  let lifted = 0;
  for (const { severity, exception } of findings)
    if (exception === null) open[severity]++;
    else lifted++;
  const verdicts = { passed: 0, failed: 0, "not judged": 0, "not applicable": 0 };
  let notDue = 0;
  for (const { verdict, because } of outcomes) {
    verdicts[verdict]++;
    if (because?.type === "not due") notDue++;
  }
  return {
    ...open,
    lifted,
    notJudged: verdicts["not judged"] - notDue,
    notDue,
    notApplicable: verdicts["not applicable"],
    passed: verdicts.passed,
  };
}

/** By file, rule and key; line numbers are found by whoever prints them. */
export function inOrder(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(
    (a, b) => byCodePoint(a.place.file, b.place.file) || byCodePoint(a.rule, b.rule) || byCodePoint(a.key, b.key),
  );
}

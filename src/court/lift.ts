import { answerable } from "../model/exceptions.ts";
import type { Finding, Severity } from "../model/finding.ts";
import type { Address } from "../model/record.ts";

/** What one exception answers, if the finding is of its sort and rests on the same values. */
export interface Lift {
  readonly exception: Address;
  readonly digest: string;
  readonly severities: readonly Severity[];
  /** Only rules about an order of dates. */
  readonly rules?: ReadonlySet<string>;
}

/** The exception that answers a finding, if there is one. None answers a finding about an exception. */
export function liftOf(lifts: ReadonlyMap<string, readonly Lift[]>, finding: Finding): Lift | null {
  if (isAboutException(finding)) return null;
  return lifts.get(finding.key)?.find((lift) => mayAnswer(lift, finding) && lift.digest === finding.digest) ?? null;
}

export const isAboutException = ({ subject }: Pick<Finding, "subject">): boolean =>
  subject !== null && answerable.has(subject.kind);

/** Whether a finding is of the sort an exception may answer. */
export function mayAnswer(
  lift: Pick<Lift, "severities" | "rules">,
  finding: Pick<Finding, "severity" | "rule">,
): boolean {
  return lift.severities.includes(finding.severity) && (lift.rules?.has(finding.rule) ?? true);
}

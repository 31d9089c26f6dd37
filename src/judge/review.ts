import type { Finding, Outcome } from "../model/finding.ts";
import type { Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { aboutException, type Answer, type PreparedException } from "./exceptions.ts";
import { answerable } from "../model/exceptions.ts";
import { isAboutException } from "../court/lift.ts";
import type { World } from "../reading/world.ts";
import { addressOf, isAddress } from "../model/record.ts";
import { recordWords } from "../model/titles.ts";
import { recordOfSubject } from "../model/subject.ts";
import { aboutRecord, gapOfWaiting, partsOfKey } from "../model/finding-key.ts";
import { definitionOf } from "../model/outcome-name.ts";

/** What became of absences: keys of gaps that are no finding because they are not due or explained by another. */
export type QuietGaps = ReadonlySet<string>;

/** After everything is judged: answers to findings that do not exist, or that are of another sort. */
export function reviewExceptions(
  court: Court,
  exceptions: readonly PreparedException[],
  outcomes: readonly Outcome[],
  quiet: QuietGaps,
): void {
  if (exceptions.length === 0) return;
  let known: ReadonlySet<string> | undefined;
  const open = () => (known ??= openOutcomes(court, outcomes));
  for (const { record, answers, unsound } of exceptions) {
    if (unsound.length > 0) continue;
    const idle = answers.filter(
      (answer) => !court.entries.has(answer.finding) && isSettled(court, answer, open(), quiet),
    );
    if (idle.length > 0)
      addFinding(
        court,
        aboutException(court.world, record, "/answers", "exception-needed", {
          message: `${recordWords(court.world.kinds, record)} answers ${idle.map(({ finding }) => `"${finding}"`).join(", ")}, which ${idle.length === 1 ? "is no finding" : "are no findings"} of this book`,
          why: "what it excuses was judged and found in order, or the key is misspelt",
          hint: "take the answer out, or correct the key; check prints keys and digests",
        }),
      );
    for (const answer of answers) {
      const entry = court.entries.get(answer.finding);
      if (entry === undefined || entry.exception !== null) continue;
      const { finding } = entry;
      const lift = court.lifts.get(answer.finding)?.find(({ exception }) => exception === addressOf(record));
      const severities = answerable.get(record.kind) ?? [];
      const sort = severities.includes(finding.severity) && (lift?.rules?.has(finding.rule) ?? true);
      if (sort && !isAboutException(finding)) continue;
      addFinding(
        court,
        aboutException(court.world, record, answer.pointer, "exception-fits", {
          message: isAboutException(finding)
            ? `${recordWords(court.world.kinds, record)} answers a finding about an exception`
            : `${recordWords(court.world.kinds, record)} answers a ${finding.severity} of "${finding.rule}"; it may answer ${severities.join(" or ")}${lift?.rules === undefined ? "" : " about an order of dates"}`,
          why: "a query is answered, a gap waived, a nonconformity accepted by a deviation",
          hint: "record the exception that fits, with the authority it needs",
        }),
      );
    }
  }
}

/** Outcomes that came to no verdict: by definition and record, and by definition alone. */
function openOutcomes(court: Court, outcomes: readonly Outcome[]): ReadonlySet<string> {
  const faults = new Map(court.world.definitions.rules.map(({ id, fault }) => [id, fault ?? id]));
  const open = new Set<string>();
  for (const { definition, subject, verdict } of outcomes) {
    const fault = faults.get(definition) ?? definition;
    const known = subject === null ? aboutRecord(null) : recordOfSubject(subject);
    open.add(`${fault} known ${known}`);
    if (verdict !== "not judged") continue;
    open.add(`${fault} ${known}`).add(fault).add(definition).add(definitionOf(definition).id);
  }
  return open;
}

/** Whether what an answer speaks of was judged: while it is open, nobody can say that the answer is not needed. */
function isSettled(court: Court, { finding }: Answer, open: ReadonlySet<string>, quiet: QuietGaps): boolean {
  if (quiet.has(gapOfWaiting(finding))) return false;
  const { rule: definition, about } = partsOfKey(finding);
  // The record it speaks of is missed by others: its gap is the one thing to say.
  if (isAddress(about) && court.world.graph.absent.has(about)) return false;
  if (open.has(`${definition} known ${about}`)) return !open.has(`${definition} ${about}`);
  return !open.has(definition) && !(isAddress(about) && court.world.ledger.doubtsWithin(about).length > 0);
}

/** A finding that an exception answers and does not lift says why: it speaks of other values, or has a fault itself. */
export function sayReopened(
  { kinds }: Pick<World, "kinds">,
  answers: ReadonlyMap<string, readonly { readonly by: PreparedException; readonly digest: string }[]>,
  finding: Finding,
): Finding {
  if (finding.exception !== null) return finding;
  const reasons = (answers.get(finding.key) ?? []).flatMap(({ by: { record, unsound }, digest }) => {
    const name = recordWords(kinds, record);
    if (unsound.length > 0) return [`${name} answers it, but lifts nothing because of ${unsound.join(", ")}`];
    if (digest !== finding.digest)
      return [`${name} answered it for other values (digest ${digest}, now ${finding.digest})`];
    return [];
  });
  return reasons.length === 0 ? finding : { ...finding, why: [finding.why, ...reasons].join("; ") };
}

/** All answers by the finding they speak of. */
export function answersByFinding(exceptions: readonly PreparedException[]) {
  const found = new Map<string, { readonly by: PreparedException; readonly digest: string }[]>();
  for (const by of exceptions)
    for (const { finding, digest } of by.answers) {
      const list = found.get(finding);
      if (list === undefined) found.set(finding, [{ by, digest }]);
      else list.push({ by, digest });
    }
  return found;
}

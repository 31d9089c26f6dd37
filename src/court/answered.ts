import type { Address } from "../model/record.ts";
import type { Outcome } from "../model/finding.ts";
import { type Court } from "./court.ts";
import { outcomeName, type OutcomeName } from "../model/outcome-name.ts";
import { waitingKey, type FindingKey } from "../model/finding-key.ts";

/**
 * The outcomes, each with the exceptions that answer all that stands against it. An outcome that waits for the finding of
 * another is answered only where the exception says so: its own finding is, or that it waits is accepted too.
 */
export function withAnswers(
  court: Court,
  outcomes: readonly Outcome[],
  waiting: ReadonlyMap<FindingKey, readonly OutcomeName[]>,
): readonly Outcome[] {
  if (![...court.entries.values()].some(({ exception }) => exception !== null)) return outcomes;
  return outcomes.map((outcome) => {
    const answered = answersOf(court, outcome, waiting);
    return answered.length === 0 ? outcome : { ...outcome, answered };
  });
}

const none: readonly Address[] = [];

function answersOf(
  court: Court,
  { definition, subject, verdict, findings, because }: Outcome,
  waiting: ReadonlyMap<FindingKey, readonly OutcomeName[]>,
): readonly Address[] {
  const keys =
    verdict === "failed" ? findings : because === undefined || because.type === "not due" ? [] : because.keys;
  if (keys.length === 0) return none;
  const name = outcomeName(definition, subject);
  const answers = keys.flatMap((key) => {
    const entry = court.entries.get(key);
    if (entry?.finding.severity === "note") return [];
    const waits = waiting.get(key)?.includes(name) === true;
    const answer = entry?.exception ?? null;
    return [answer !== null && waits ? (court.entries.get(waitingKey(key))?.exception ?? null) : answer];
  });
  return answers.every((answer) => answer !== null) ? [...new Set(answers)].sort() : [];
}

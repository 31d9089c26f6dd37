import type { Owed } from "../model/book.ts";
import type { Absent } from "../model/missing.ts";
import type { Finding, Outcome } from "../model/finding.ts";
import { ProgramError } from "../model/program-error.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { spokenOutcome } from "../model/titles.ts";
import type { Gap } from "./absences.ts";
import { endStage, type Court, type DraftOutcome } from "../court/court.ts";
import { addFinding, findingOf } from "../court/entries.ts";
import { dueOf, gapFinding, gapRules } from "./gap-finding.ts";
import { unlistedKey, type Calendar } from "./milestones.ts";
import type { DraftOwed } from "./register.ts";
import { outcomeName, type OutcomeName } from "../model/outcome-name.ts";
import { waitingKey, type FindingKey } from "../model/finding-key.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

/**
 * Decides each gap: not due yet, explained by a finding (a link that leads elsewhere, a file that cannot be read, a
 * milestone nobody listed), or a finding of its own.
 */
export function settleGaps(
  court: Court,
  gaps: readonly Gap[],
  calendar: Calendar,
  issue: BookRecord,
  unreadable: readonly FindingKey[],
): ReadonlyMap<Gap, Absent> {
  const results = new Map<Gap, Absent>();
  for (const gap of gaps) {
    const due = dueOf(gap, calendar);
    const explained = [...new Set([...gap.explained, ...unreadable])].sort();
    if (!calendar.isDue(due)) {
      const unlisted = calendar.isListed(due) ? [] : whyUnlisted(court, issue, due);
      results.set(gap, unlisted.length > 0 ? { explained: unlisted } : { notDue: due });
    } else if (explained.length > 0) results.set(gap, { explained });
    else {
      const finding = gapFinding(court.world, gap, due);
      addFinding(court, finding);
      results.set(gap, { finding: finding.key });
    }
  }
  endStage(court);
  return results;
}

function whyUnlisted(court: Court, issue: BookRecord, milestone: string): readonly FindingKey[] {
  const key = unlistedKey(issue, milestone);
  return court.entries.has(key) ? [key] : court.world.ledger.doubts(addressOf(issue, "/milestones"));
}

/** An outcome with what it waits for said in keys of findings. */
export function settleOutcome(
  outcome: DraftOutcome,
  of: ReadonlyMap<string, Gap>,
  results: ReadonlyMap<Gap, Absent>,
): Outcome {
  if (outcome.absences === undefined) return outcome;
  const { definition, subject, verdict, findings, absences, reads } = outcome;
  const base = { definition, subject, verdict, findings, reads };
  const found = absences.flatMap((key) => {
    const gap = of.get(key);
    const result = gap === undefined ? undefined : results.get(gap);
    return result === undefined ? [] : [result];
  });
  const keys = found.flatMap((result) =>
    "finding" in result ? [result.finding] : "explained" in result ? result.explained : [],
  );
  if (keys.length > 0) {
    const onlyExplained = found.every((result) => "explained" in result || "notDue" in result);
    return { ...base, because: { type: onlyExplained ? "finding" : "absent", keys: [...new Set(keys)].sort() } };
  }
  const notDue = found.find((result) => "notDue" in result);
  // Silence is never a pass: what waits for something that became nothing would wait unseen.
  if (notDue === undefined)
    throw new ProgramError(`${definition} waits for ${absences.join(", ")}, of which nobody says anything`);
  return { ...base, because: { type: "not due", milestone: notDue.notDue } };
}

/** Names of the outcomes that wait for each finding and are not its own. */
export function waitingByFinding(
  court: Court,
  outcomes: readonly Outcome[],
): ReadonlyMap<FindingKey, readonly OutcomeName[]> {
  const waiting = new Map<FindingKey, Set<OutcomeName>>();
  for (const [index, { definition, subject, because }] of outcomes.entries()) {
    if (because === undefined || because.type === "not due" || court.outcomes[index]?.asks === true) continue;
    for (const key of because.keys) {
      if (court.entries.get(key)?.finding.rule === definition) continue;
      const names = waiting.get(key) ?? new Set<OutcomeName>();
      waiting.set(key, names.add(outcomeName(definition, subject)));
    }
  }
  return new Map([...waiting].map(([key, names]) => [key, [...names].sort()]));
}

/** An exception lifts the block: what still cannot be judged for want of it is said once more, unless accepted too. */
export function addStillWaiting(
  court: Court,
  waiting: ReadonlyMap<FindingKey, readonly OutcomeName[]>,
  titles: ReadonlyMap<string, string>,
): void {
  const spoken = (names: readonly OutcomeName[]) =>
    names.map((name) => spokenOutcome({ titles, kinds: court.world.kinds }, name));
  for (const [key, names] of waiting) {
    const entry = court.entries.get(key);
    if (entry === undefined || entry.exception === null) continue;
    const answered = findingOf(court.world, entry);
    const { basis, owner, due } = answered;
    const finding = newFinding(finderOf(gapRules, "waiting"), answered, {
      key: waitingKey(key),
      verdict: "not judged",
      message: `${names.length} outcome${names.length === 1 ? "" : "s"} cannot be judged because ${answered.message}`,
      why: `the finding is answered by an exception, its consequences are not: ${spoken(names.slice(0, 12)).join("; ")}${names.length > 12 ? `; and ${names.length - 12} more` : ""}`,
      hint: "name this key in the exception too, if what is not judged is accepted as well",
      basis,
      owner,
      due,
      about: names.join("\n"),
      waiting: names,
      ...(answered.disputes !== undefined && { disputes: answered.disputes }),
    });
    addFinding(court, finding);
  }
  endStage(court);
}

/** Finding with the outcomes that wait for it. */
export function withWaiting(finding: Finding, waiting: ReadonlyMap<FindingKey, readonly OutcomeName[]>): Finding {
  const names = waiting.get(finding.key);
  return names === undefined ? finding : { ...finding, waiting: names };
}

/** What a row of the register came to. */
export function settleOwed(court: Court, draft: DraftOwed, outcomes: readonly Outcome[]): Owed {
  const { requirement, subject, pointer, evidence } = draft;
  const outcome = outcomes[draft.outcome];
  if (outcome === undefined) throw new ProgramError(`row ${requirement.id} of the register has no outcome`);
  return { requirement, subject, pointer, evidence, state: stateOf(court, outcome), outcome };
}

function stateOf(court: Court, outcome: Outcome): Owed["state"] {
  if (outcome.verdict === "passed") return "met";
  if (outcome.verdict === "not applicable") return "not applicable";
  const { because } = outcome;
  if (because === undefined) return "not judged";
  if (because.type === "not due") return "not due";
  if (because.keys.every((key) => court.entries.get(key)?.exception != null)) return "waived";
  return because.type === "absent" ? "missing" : "not judged";
}

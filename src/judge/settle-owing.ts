import type { Owing } from "../model/owing.ts";
import type { Absent } from "../model/missing.ts";
import { pathWords } from "../reading/absent-words.ts";
import type { Gap } from "./absences.ts";
import type { Court } from "../court/court.ts";
import type { Calendar } from "./milestones.ts";
import type { DraftOwing } from "./want-owed.ts";

/** What became of what definitions are owed; of each place the reader that makes it due first comes first. */
export function settleOwing(
  court: Court,
  drafts: readonly DraftOwing[],
  of: ReadonlyMap<string, Gap>,
  results: ReadonlyMap<Gap, Absent>,
  calendar: Calendar,
): readonly Owing[] {
  const became = (key: string): readonly Absent[] => {
    const gap = of.get(key);
    const result = gap === undefined ? undefined : results.get(gap);
    return result === undefined ? [] : [result];
  };
  const words = new Map<string, string>();
  return drafts.map(({ subject, pointer, path, by, absences, doubted }) => ({
    subject,
    pointer,
    path,
    what: said(words, `${subject.kind}${pointer.replaceAll(/\d+/g, "")} ${path}`, () =>
      pathWords(court.world, { record: subject, pointer }, path),
    ),
    by: by
      .map(({ by: { id, basis }, due, owner }) => ({ id, basis, due, owner }))
      .sort((a, b) => calendar.rank(a.due) - calendar.rank(b.due)),
    state: doubted ? "not judged" : stateOf(court, absences.flatMap(became)),
  }));
}

/** Of all records of a kind a path is called alike. */
function said(words: Map<string, string>, key: string, make: () => string): string {
  const known = words.get(key) ?? make();
  words.set(key, known);
  return known;
}

function stateOf(court: Court, absent: readonly Absent[]): Owing["state"] {
  if (absent.length === 0) return "met";
  const findings = absent.flatMap((one) => ("finding" in one ? [one.finding] : []));
  const explained = absent.flatMap((one) => ("explained" in one ? one.explained : []));
  const keys = [...findings, ...explained];
  if (keys.length === 0) return "not due";
  if (keys.every((key) => court.entries.get(key)?.exception != null)) return "waived";
  return findings.length > 0 ? "missing" : "not judged";
}

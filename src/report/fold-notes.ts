import { grouped } from "../model/grouped.ts";
import type { Placed } from "./report.ts";

/** So many notes of one check stand each for itself; more are one, with the places of the others. */
const mostApart = 3;

/**
 * Findings as people read them: notes of one check about many records (nothing names them yet) are said once, with their
 * number. What blocks always stands for itself, and so does what an exception answers.
 */
export function foldNotes(findings: readonly Placed[]): readonly Placed[] {
  const notes = findings.filter(({ finding }) => finding.severity === "note" && finding.exception === null);
  const many = grouped(notes, ({ finding }) => `${finding.rule} ${finding.owner}`);
  const folded = new Map<Placed, Placed | null>();
  for (const all of many.values()) {
    const [first, ...others] = all;
    if (first === undefined || all.length <= mostApart) continue;
    folded.set(first, withOthers(first, others));
    for (const other of others) folded.set(other, null);
  }
  return findings.flatMap((one) => {
    const as = folded.get(one);
    return as === undefined ? [one] : as === null ? [] : [as];
  });
}

function withOthers(first: Placed, others: readonly Placed[]): Placed {
  return {
    ...first,
    finding: {
      ...first.finding,
      message: `${first.finding.message}, and ${others.length} more notes say the same of others`,
    },
    related: [
      ...first.related,
      ...others.map(({ finding: { subject, place, message }, position, sheet }) => ({
        related: { subject, place, message },
        position,
        sheet,
      })),
    ],
  };
}

import type { Gap } from "./absences.ts";
import type { Court, DraftOutcome } from "../court/court.ts";
import type { Entry } from "../court/entries.ts";
import type { Absent } from "../model/missing.ts";
import { partsOfAddress } from "../model/record.ts";
import { partsOfKey, type FindingKey } from "../model/finding-key.ts";

/**
 * An objection that rests on the list of all records of a kind ("holds no certificate for …") is not shown by evidence
 * while a record of that kind is named and absent. Where the book lacks exactly one, and one record only (with records that
 * name it) is objected to for what its list lacks, the objection is that absence seen from the other side: it waits for the
 * gap. Where either is not the only one nothing tells which belongs to which, and all are said.
 */
export function foldIncomplete(court: Court, results: ReadonlyMap<Gap, Absent>): void {
  for (const [kind, gap] of onlyAbsent(court, results)) {
    const resting = [...court.entries.values()].filter((entry) => restsOn(entry, kind));
    if (!concernOne(court, new Set(resting.map(({ finding }) => partsOfKey(finding.key).about)))) continue;
    const folded = new Set(resting.map(({ finding }) => finding.key));
    for (const key of folded) court.entries.delete(key);
    court.outcomes.forEach((outcome, index) => {
      court.outcomes[index] = without(outcome, folded, gap);
    });
  }
}

/** Whether records are one, or one and such as name it: a rejected film, and the joint it is of. */
function concernOne({ world }: Court, owners: ReadonlySet<string>): boolean {
  if (owners.size < 2) return owners.size === 1;
  const named = [...owners].map((owner) => {
    const { kind, id } = partsOfAddress(owner);
    const record = world.graph.byKind.get(kind)?.get(id);
    const links = record === undefined ? [] : [...(world.graph.out.get(record)?.values() ?? [])];
    return { record, links: new Set(links.map(({ to }) => to)) };
  });
  return named.some(
    ({ record: one }) =>
      one !== undefined &&
      named.every(({ record, links }) => record !== undefined && (record === one || links.has(one))),
  );
}

/** Of each kind of which one record only is named and absent: the key of its gap, if that stands. */
function onlyAbsent(court: Court, results: ReadonlyMap<Gap, Absent>): ReadonlyMap<string, FindingKey> {
  const gaps = new Map<string, (FindingKey | undefined)[]>();
  for (const [{ absence }, result] of results)
    if (absence.target !== null && absence.kind !== null)
      gaps.set(absence.kind, [...(gaps.get(absence.kind) ?? []), "finding" in result ? result.finding : undefined]);
  return new Map(
    [...gaps].flatMap(([kind, [key, ...more]]) =>
      key !== undefined && more.length === 0 && court.entries.get(key)?.exception === null
        ? [[kind, key] as const]
        : [],
    ),
  );
}

const restsOn = ({ finding, lists, exception }: Entry, kind: string) =>
  lists.has(kind) && exception === null && finding.severity !== "note";

function without(outcome: DraftOutcome, folded: ReadonlySet<FindingKey>, gap: FindingKey): DraftOutcome {
  const { because } = outcome;
  if (because?.type === "finding" && because.keys.some((key) => folded.has(key))) {
    const keys = [...new Set(because.keys.map((key) => (folded.has(key) ? gap : key)))].sort();
    return { ...outcome, findings: outcome.findings.filter((key) => !folded.has(key)), because: { ...because, keys } };
  }
  if (!outcome.findings.some((key) => folded.has(key))) return outcome;
  const findings = outcome.findings.filter((key) => !folded.has(key));
  if (findings.length > 0) return { ...outcome, findings };
  return { ...outcome, verdict: "not judged", findings, because: { type: "absent", keys: [gap] } };
}

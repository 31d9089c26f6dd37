import type { Finding, Related } from "../model/finding.ts";
import type { Address } from "../model/record.ts";
import { digestOf } from "../model/stable.ts";
import { firstAndMore, inTime } from "./chronology.ts";
import type { World } from "../reading/world.ts";
import { aboutRecord, type FindingKey } from "../model/finding-key.ts";

/** One finding while it may still grow by further subjects. */
export interface Entry {
  readonly finding: Finding;
  /** The finding about each subject, by what it says of it. */
  readonly parts: Map<string, Finding>;
  readonly digests: Set<string>;
  readonly accuses: Set<Address>;
  readonly disputes: Set<Address>;
  /** Objections that wait because it disputes what they rest on. */
  readonly withheld: Map<string, Related>;
  /** Kinds of which the objection read a list: one more record of the kind could undo it. */
  readonly lists: Set<string>;
  exception: Address | null;
}

/** Adds a finding; a second one with its key is the same finding about one more subject. */
export function addFinding(
  { entries, fresh }: { readonly entries: Map<FindingKey, Entry>; readonly fresh: Set<FindingKey> },
  finding: Finding,
): void {
  fresh.add(finding.key);
  const entry = entries.get(finding.key) ?? newEntry(finding);
  entries.set(finding.key, entry);
  const name = `${subjectName(finding)} ${nameOfRelated(finding)}`;
  if (!entry.parts.has(name)) entry.parts.set(name, finding);
  entry.digests.add(finding.digest);
  for (const address of finding.accuses) entry.accuses.add(address);
  for (const address of finding.disputes ?? []) entry.disputes.add(address);
}

const newEntry = (finding: Finding): Entry => ({
  finding,
  parts: new Map(),
  digests: new Set(),
  accuses: new Set(),
  disputes: new Set(),
  withheld: new Map(),
  lists: new Set(),
  exception: null,
});

const subjectName = ({ subject }: Pick<Related, "subject">) => aboutRecord(subject);

/** Tells apart what a finding says beside itself. */
export const nameOfRelated = ({ place, message }: Pick<Related, "place" | "message">) =>
  `${place.file}${place.pointer} ${message}`;

/** Where one subject is asked about and another is at fault, the finding is no mere question. */
const strictest = (parts: readonly Finding[], { severity, verdict }: Finding): Pick<Finding, "severity" | "verdict"> =>
  severity === "query" && parts.some((one) => one.severity === "nonconformity")
    ? { severity: "nonconformity", verdict: "failed" }
    : { severity, verdict };

/**
 * The finding as it stands, with all it has grown by. Of several subjects the first in time is named, with the number of
 * the others, which follow in order of time.
 */
export function findingOf(world: Pick<World, "graph" | "kinds">, entry: Entry): Finding {
  const { digests, accuses, disputes, withheld, exception } = entry;
  const [digest = ""] = digests;
  const [first = { one: entry.finding, day: "" }, ...others] =
    entry.parts.size < 2 ? [] : inTime(world, [...entry.parts.values()]);
  const finding = { ...first.one, ...strictest([...entry.parts.values()], first.one) };
  const subjects = new Set([first, ...others].map(({ one }) => subjectName(one)));
  const more = subjects.size - 1;
  const named = more === 0 || finding.subject === null ? "" : ` (${firstAndMore(world, finding, first.day, more)})`;
  const related = new Map<string, Related>();
  for (const { one } of others) {
    const { subject, place, message } = one;
    related.set(`${subjectName(one)} ${nameOfRelated(one)}`, { subject, place, message });
  }
  for (const one of [finding, ...others.map((other) => other.one)].flatMap((part) => part.related))
    if (!related.has(nameOfRelated(one))) related.set(nameOfRelated(one), one);
  return {
    ...finding,
    message: `${finding.message}${named}`,
    digest: digests.size < 2 ? digest : digestOf([...digests].sort().join(",")),
    accuses: [...accuses],
    ...(disputes.size > 0 && { disputes: [...disputes] }),
    related: [...withheld.values(), ...related.values()],
    exception,
  };
}

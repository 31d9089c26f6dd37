import { ownChoice } from "../model/basis.ts";
import { comparisonsOf, statementOf, type Comparison, type ComparisonState } from "../model/comparison.ts";
import type { JudgedBook } from "../model/book.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { addTo } from "../model/grouped.ts";
import { originalsAmong } from "../model/read-from.ts";
import { addressOf, type Address, type BookRecord } from "../model/record.ts";
import { recordWords } from "../model/titles.ts";
import { missingField } from "../reading/absent.ts";
import { locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { keyOf } from "../model/finding-key.ts";
import { newFinding } from "../model/new-finding.ts";

const basis = ownChoice("a comparison speaks of the values and of the file that were compared, and of no others");

const holds: BuiltIn = {
  id: "comparison-holds",
  title: "What was compared with an original has not changed since",
  severity: "query",
  basis,
  reads: [{ kinds: ["original"], paths: ["transcription.sha256", "transcription.records"] }],
};
export const comparisonRules: readonly BuiltIn[] = [holds];

/** How the comparison stands for every record that was read from an original. */
export type Comparisons = ReadonlyMap<Address, readonly Comparison[]>;

/** Records that are not as somebody compared them, by their original. */
type Stale = Map<BookRecord, { readonly record: BookRecord; readonly state: ComparisonState }[]>;

/**
 * Holds each comparison with an original against what was read from it: one finding for each original of which values, or the
 * file, are others than those compared. A record nobody has compared is none, but owed in its time.
 */
export function judgeComparisons(court: Court, readBack: JudgedBook["readBack"]): Comparisons {
  const { graph, kinds, ledger } = court.world;
  const inPlace = inPlaceOf(court, readBack);
  const originals = originalsAmong(graph.byKind.get("original")?.values() ?? []);
  const found = new Map<Address, readonly Comparison[]>();
  const stale: Stale = new Map();
  for (const record of graph.records) {
    if (ledger.doubts(addressOf(record, "/source")).length > 0) continue;
    const kind = kinds.get(record.kind);
    const comparisons = comparisonsOf(record, kind, originals).map((one) => inPlace(record, one));
    if (comparisons.length === 0) continue;
    found.set(addressOf(record), comparisons);
    for (const { original, state } of comparisons) {
      if (state !== "changed" && state !== "other file" && state !== "left out") continue;
      // What is wrong with a value of it is said of that value; its comparison is asked for once that is settled.
      if (state === "changed" && ledger.doubtsWithin(addressOf(record)).length > 0) continue;
      // What owes no comparison may be left out of one.
      if (state === "left out" && kind?.compared === undefined) continue;
      if (ledger.doubts(addressOf(original, "/transcription")).length > 0) continue;
      addTo(stale, original, { record, state });
    }
  }
  for (const [original, records] of stale) say(court, original, records);
  return found;
}

const parameter = "comparisonByReading";

/** Where the profile allows it, what the file's own text holds throughout is as good as compared. */
function inPlaceOf(court: Court, readBack: JudgedBook["readBack"]) {
  const allows = court.world.parameters.get(parameter);
  return (record: BookRecord, comparison: Comparison): Comparison => {
    if (allows?.value !== "allowed" || comparison.state === "compared") return comparison;
    if (readBack.get(addressOf(record))?.whole.includes(comparison.original.id) !== true) return comparison;
    court.used.set(`parameter ${parameter} of the profile`, allows.basis);
    return { ...comparison, state: "read back" };
  };
}

const spoken: Readonly<Record<"changed" | "left out", string>> = {
  changed: "changed since",
  "left out": "not among what was compared",
};
const shown = 6;

function say(
  court: Court,
  original: BookRecord,
  records: readonly { readonly record: BookRecord; readonly state: ComparisonState }[],
): void {
  const { world } = court;
  const { subject, place } = locate(world, original, "/transcription");
  const { by, date } = statementOf(original);
  const when = date === "" ? by : `${by} on ${date}`;
  const file = records.some(({ state }) => state === "other file");
  const lists = (["changed", "left out"] as const).flatMap((one) => {
    const names = records.filter(({ state }) => state === one).map(({ record }) => recordWords(world.kinds, record));
    const more = names.length > shown ? ` and ${names.length - shown} more` : "";
    return names.length === 0 ? [] : [`${spoken[one]}: ${names.slice(0, shown).join(", ")}${more}`];
  });
  const finding = newFinding(
    holds,
    { subject, place },
    {
      key: keyOf(holds.id, original, ""),
      message: file
        ? `original ${original.id} is another file than the one that was compared by ${when}`
        : `original ${original.id} was compared by ${when} with other values than are read from it now (${lists.join("; ")})`,
      why: file
        ? "the SHA-256 of its record is not the one that stands with the comparison"
        : "the digests that stand with the comparison are not those of the values now",
      hint: "have a second person compare them with the original again, and record it with the command compared; or put back what was changed",
      about: JSON.stringify([original.value["sha256"], records.map(({ record, state }) => [addressOf(record), state])]),
      related: records.slice(0, 20).flatMap(({ record, state }): Finding["related"] => {
        if (state !== "changed" && state !== "left out") return [];
        const at = locate(world, record, "");
        return [{ subject: at.subject, place: at.place, message: spoken[state] }];
      }),
    },
  );
  addFinding(court, finding);
}

/** Originals from which some record was read, by a link or as the sheet it was imported from. */
export const readFromIn = (comparisons: Comparisons): ReadonlySet<BookRecord> =>
  new Set([...comparisons.values()].flatMap((all) => all.map(({ original }) => original)));

/** Registers the comparison of every original from which records were read that owe one, and nobody has made it. */
export function wantComparisons(court: Court, comparisons: Comparisons): void {
  const { graph, kinds, ledger } = court.world;
  for (const record of graph.records) {
    const { compared: due, transcribesUnless: unless } = kinds.get(record.kind) ?? {};
    if (due === undefined || (unless !== undefined && record.value[unless] !== undefined)) continue;
    for (const { original, state } of comparisons.get(addressOf(record)) ?? []) {
      if (state === "read back") continue;
      if (ledger.doubts(addressOf(original, "/transcription")).length > 0) continue;
      for (const [pointer, name] of lacking(original))
        court.wants.push({
          absence: missingField(original, pointer, name),
          by: null,
          due: due,
          basis: ownChoice("nobody sees the own slip: two people, two looks; whoever is not named has not looked"),
          owner: "document control",
          hint: "have a person who typed none of it compare what was read from it, and record that with the command compared",
        });
    }
  }
}

function lacking(original: BookRecord): readonly (readonly [pointer: string, name: string])[] {
  if (original.value["transcription"] === undefined) return [["", "transcription"]];
  const { typedBy, by, date } = statementOf(original);
  return [
    ...(typedBy.length === 0 ? ["enteredBy"] : []),
    ...(by === "" ? ["comparedBy"] : []),
    ...(by !== "" && date === "" ? ["date"] : []),
  ].map((name) => ["/transcription", name] as const);
}

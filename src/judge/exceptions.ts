import { ownChoice } from "../model/basis.ts";
import { canPrecede, parseDate } from "../model/dates.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Finding } from "../model/finding.ts";
import { atPointer, isList, isObject } from "../model/json.ts";
import { addressOf, type BookRecord } from "../model/record.ts";
import { endStage, locate, type Court } from "../court/court.ts";
import { addFinding } from "../court/entries.ts";
import { answerable } from "../model/exceptions.ts";
import type { World } from "../reading/world.ts";
import { recordWords } from "../model/titles.ts";
import { citedKey, keyOf, missingKey, type FindingKey } from "../model/finding-key.ts";
import { finderOf, newFinding } from "../model/new-finding.ts";

const basis = ownChoice(
  "an exception is evidence: who accepted what, why, under which authority, from when, until when, and for exactly which values",
);

export const exceptionRules = [
  {
    id: "exception-sound",
    title: "An exception says who, why, under which authority, when and what for",
    severity: "nonconformity",
    basis,
  },
  {
    id: "exception-in-force",
    title: "An exception has not ended",
    severity: "nonconformity",
    basis,
    reads: [{ kinds: [...answerable.keys()], paths: ["date", "end"] }],
  },
  {
    id: "exception-fits",
    title: "An exception answers findings of its own sort",
    severity: "nonconformity",
    basis,
    reads: [{ kinds: [...answerable.keys()], paths: ["answers[].finding", "answers[].digest"] }],
  },
  { id: "exception-needed", title: "An exception answers a finding that exists", severity: "query", basis },
] as const satisfies readonly BuiltIn[];

type ExceptionRule = (typeof exceptionRules)[number]["id"];

/** One finding an exception answers, as its record says. */
export interface Answer {
  readonly finding: FindingKey;
  readonly digest: string;
  readonly pointer: string;
}

export interface PreparedException {
  readonly record: BookRecord;
  readonly answers: readonly Answer[];
  /** Keys of the findings for which it lifts nothing; a missing record it names counts too. */
  readonly unsound: readonly string[];
}

function answersOf(record: BookRecord): readonly Answer[] {
  const listed = record.value["answers"];
  return (isList(listed) ? listed : []).flatMap((one, index) =>
    isObject(one) && typeof one["finding"] === "string" && typeof one["digest"] === "string"
      ? [{ finding: citedKey(one["finding"]), digest: one["digest"], pointer: `/answers/${index}` }]
      : [],
  );
}

/**
 * Judges the exceptions themselves, before anything they could answer. One that has an open finding lifts nothing;
 * what was found so far (files, schemas, links, hashes, the exceptions' own faults) no exception answers. `last` is the
 * day on which they must be in force, `ordered` the rules about an order of dates.
 */
export function prepareExceptions(
  court: Court,
  last: string,
  ordered: ReadonlySet<string>,
): readonly PreparedException[] {
  const { world } = court;
  const all = [...answerable.keys()].flatMap((kind) => [...(world.graph.byKind.get(kind)?.values() ?? [])]);
  const drafts = all.map((record) => ({ record, answers: answersOf(record) }));
  for (const { record, answers } of drafts)
    for (const fault of faultsOf(court, record, answers, last)) addFinding(court, fault);
  endStage(court);
  const bySubject = openBySubject(court);
  return drafts.map(({ record, answers }) => {
    const address = addressOf(record);
    const absent = [...(world.graph.out.get(record)?.values() ?? [])].flatMap((link) =>
      link.state === "absent" && link.target !== null ? [missingKey(addressOf(link.target))] : [],
    );
    const unsound = [
      ...new Set([...(bySubject.get(address) ?? []), ...world.ledger.doubtsWithin(address), ...absent]),
    ].sort();
    if (unsound.length === 0)
      for (const { finding, digest } of answers) {
        const severities = answerable.get(record.kind) ?? [];
        const lift = {
          exception: address,
          digest,
          severities,
          ...(record.kind === "order-exception" && { rules: ordered }),
        };
        const lifts = court.lifts.get(finding);
        if (lifts === undefined) court.lifts.set(finding, [lift]);
        else lifts.push(lift);
      }
    return { record, answers, unsound };
  });
}

function openBySubject(court: Court): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const [key, { finding }] of court.entries) {
    if (finding.subject === null || finding.severity === "note" || !answerable.has(finding.subject.kind)) continue;
    const address = addressOf(finding.subject);
    found.set(address, [...(found.get(address) ?? []), key]);
  }
  return found;
}

function faultsOf(court: Court, record: BookRecord, answers: readonly Answer[], last: string): readonly Finding[] {
  const { world } = court;
  const open = (pointer: string) => world.ledger.doubts(addressOf(record, pointer)).length === 0;
  const lacking = ["reason", "authority", "by", "date"].filter(
    (name) => record.value[name] === undefined && open(`/${name}`),
  );
  if (answers.length === 0 && open("/answers")) lacking.push("answers (finding and digest)");
  const faults: Finding[] = [];
  if (lacking.length > 0)
    faults.push(
      aboutException(world, record, "", "exception-sound", {
        message: `${recordWords(world.kinds, record)} lacks ${lacking.join(", ")}`,
        why: "an exception that does not say who, why, when and what for lifts nothing",
        hint: "complete it from the signed document",
      }),
    );
  const end = typeof record.value["end"] === "string" ? parseDate(record.value["end"]) : null;
  const day = parseDate(last);
  if (end?.ok === true && day.ok && canPrecede(day.date, end.date) === "no")
    faults.push(
      aboutException(world, record, "/end", "exception-in-force", {
        message: `${recordWords(world.kinds, record)} ended on ${end.date.text}`,
        why: `it is asked for on ${last}; an exception that has ended lifts nothing`,
        hint: "have it extended, or mend what it excused",
      }),
    );
  for (const answer of answers)
    if (court.entries.has(answer.finding) || answer.finding.startsWith("exception-"))
      faults.push(
        aboutException(world, record, answer.pointer, "exception-fits", {
          message: `${recordWords(world.kinds, record)} answers "${answer.finding}", which no exception may answer`,
          why: "broken files, schemas, links and hashes, and faults of exceptions, are mended, not excused",
          hint: "mend the record, and take the answer out",
        }),
      );
  return faults;
}

/** A fault of an exception. It throws doubt on the whole of it. */
export function aboutException(
  world: World,
  record: BookRecord,
  pointer: string,
  rule: ExceptionRule,
  words: { readonly message: string; readonly why: string; readonly hint: string },
): Finding {
  const at = locate(world, record, pointer);
  return newFinding(finderOf(exceptionRules, rule), at, {
    key: keyOf(rule, record, at.name),
    ...words,
    about: JSON.stringify(atPointer(record.value, pointer) ?? null),
    accuses: [addressOf(record)],
  });
}

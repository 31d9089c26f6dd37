import { isDeepStrictEqual } from "node:util";
import { expect } from "vitest";
import { judge } from "../../src/judge/judge.ts";
import { ownChoice } from "../../src/model/basis.ts";
import type { JudgedBook, LoadedBook } from "../../src/model/book.ts";
import type { Definitions } from "../../src/model/definitions.ts";
import { blocks, type Finding, type Outcome } from "../../src/model/finding.ts";
import type { JsonObject } from "../../src/model/json.ts";
import { findingKey } from "../../src/model/finding-key.ts";
import { addressOf, type BookFile, type BookRecord } from "../../src/model/record.ts";
import type { Requirement } from "../../src/model/requirement.ts";
import type { Milestone } from "../../src/model/vocabulary.ts";
import { kind, kindsOf, type Made } from "./small-kinds.ts";

export const basis = ownChoice("invented for a test");

/** Records by kind and id; each stands in a file of its own, so that places do not depend on order. */
export type Records = Readonly<Record<string, Readonly<Record<string, JsonObject>>>>;

export interface SmallBook {
  readonly records: Records;
  readonly issue?: JsonObject;
  readonly book?: JsonObject;
  readonly files?: readonly BookFile[];
  /** Faults that reading would have found. */
  readonly findings?: readonly Finding[];
  readonly unreadable?: readonly string[];
  /** Records beside the others: second ones with an id. */
  readonly more?: readonly BookRecord[];
}

export const milestones = (reached: readonly string[], open: readonly string[]): JsonObject => ({
  milestones: [...reached.map((name) => ({ name, reached: "2026-01-31" })), ...open.map((name) => ({ name }))],
});

export const recordOf = (
  kindName: string,
  id: string,
  value: JsonObject,
  file = `${kindName}/${id}.json`,
): BookRecord => ({
  kind: kindName,
  id,
  file,
  pointer: "",
  value: { id, ...value },
  faulty: false,
});

/** A loaded book in memory. */
export function smallBook({
  records,
  issue = {},
  book = {},
  files = [],
  findings = [],
  unreadable = [],
  more = [],
}: SmallBook): LoadedBook {
  const frame = {
    revision: "0",
    state: "final",
    issueDate: "2026-07-31",
    dataCutOff: "2026-07-01",
    ...milestones([], ["order", "welding"]),
  };
  return {
    dir: "/small",
    records: [
      recordOf("book", "BOOK", { register: "register", ...book }, "book.json"),
      recordOf("issue", "ISSUE", { ...frame, ...issue }, "issue.json"),
      ...Object.entries(records).flatMap(([name, all]) =>
        Object.entries(all).map(([id, value]) => recordOf(name, id, value)),
      ),
      ...more,
    ],
    files,
    findings,
    unreadable,
    fatal: [],
    locator: { position: () => ({ line: 1, column: 1, length: 0 }), line: () => undefined },
  };
}

export type SmallDefinitions = Partial<Omit<Definitions, "kinds" | "registers">> & {
  readonly kinds: Readonly<Record<string, Readonly<Record<string, Made>>>>;
  readonly owed?: readonly Requirement[];
};

/** Definitions for a test; the register is one list of requirements. */
export function define({ kinds, owed = [], ...rest }: SmallDefinitions): Definitions {
  return {
    kinds: kindsOf(Object.entries(kinds).map(([name, fields]) => kind(name, fields, name === "heat"))),
    calculations: [],
    rules: [],
    facts: [],
    profiles: [],
    tables: [],
    ...rest,
    registers: [{ id: "register", title: "Register", requirements: owed }],
  };
}

export const owes = (
  id: string,
  each: string,
  needs: string,
  due: Milestone = "now",
  more: Partial<Requirement> = {},
): Requirement => ({
  id,
  title: id,
  each: { kind: each },
  needs,
  due,
  basis,
  owner: "shop",
  ...more,
});

/** Judges, and holds the result against what is always true of a judged book. */
export function judged(definitions: Definitions, book: SmallBook): JudgedBook {
  const loaded = smallBook(book);
  const first = judge(loaded, definitions);
  holdTrue(first);
  const again = judge(loaded, definitions);
  // Thousands of books are judged here: what differs is sought only where something does.
  if (!isDeepStrictEqual(plain(again), plain(first)))
    expect(plain(again), "judging twice gives the same").toEqual(plain(first));
  return first;
}

const plain = ({ findings, outcomes, counts, owed, exceptions, fingerprint }: JudgedBook) => ({
  findings,
  outcomes,
  counts,
  owed,
  exceptions,
  fingerprint,
});

function holdTrue(book: JudgedBook): void {
  const { findings, outcomes, state } = book;
  const byKey = new Map(findings.map((finding) => [finding.key, finding]));
  const wrong: string[] = [];
  const hold = (isTrue: boolean, what: string): void => {
    if (!isTrue) wrong.push(what);
  };
  hold(byKey.size === findings.length, "keys are unique");
  holdMissing(book);
  for (const outcome of outcomes) {
    for (const key of outcome.findings) hold(byKey.has(key), `${key} is a finding`);
    const { verdict, because } = outcome;
    if (verdict !== "not judged") continue;
    hold(because !== undefined, `${nameOf(outcome)} says why it is not judged`);
    if (because?.type === "not due") continue;
    hold((because?.keys.length ?? 0) > 0, `${nameOf(outcome)} waits for something`);
    for (const key of because?.keys ?? []) hold(byKey.has(key), `${key} is a finding`);
  }
  // Nothing blocks a final issue: whatever is not judged is covered by an exception that names it.
  const isFree = state !== "interim" && !findings.some(blocks);
  for (const { verdict, because, ...outcome } of isFree ? outcomes : []) {
    if (verdict !== "not judged") continue;
    hold(because?.type !== "not due", `${nameOf(outcome)} is due`);
    const keys = because === undefined || because.type === "not due" ? [] : because.keys;
    for (const key of keys)
      hold(
        (byKey.get(key)?.exception ?? null) !== null,
        `an exception answers ${key}, which ${nameOf(outcome)} waits for`,
      );
  }
  expect(wrong, "what is always true of a judged book").toEqual([]);
}

/** What is missing is listed once, as a gap or as not due or explained; every gap of that sort is in the list. */
export function holdMissing({ findings, missing, absent }: Pick<JudgedBook, "findings" | "missing" | "absent">): void {
  expect(new Set(missing.map(({ key }) => key)).size, "what is missing is listed once").toBe(missing.length);
  const gaps = missing.flatMap(({ became }) => ("finding" in became ? [became.finding] : []));
  expect([...new Set(gaps)].sort(), "every gap is in the list").toEqual(
    findings.flatMap(({ key, rule }) => (rule === "missing" ? [key] : [])).sort(),
  );
  expect(missing.flatMap(({ absences }) => absences).sort(), "every absence is one of the list").toEqual(
    [...absent.keys()].sort(),
  );
}

const nameOf = ({ definition, subject }: Pick<Outcome, "definition" | "subject">): string =>
  subject === null ? definition : `${definition}|${subject.kind}:${subject.id}`;

/** Findings that block: `severity key`, in order. */
export const open = ({ findings }: Pick<JudgedBook, "findings">): readonly string[] =>
  findings
    .filter(blocks)
    .map(({ severity, key }) => `${severity} ${key}`)
    .sort();

/** Keys of notes. */
export const notes = ({ findings }: Pick<JudgedBook, "findings">): readonly string[] =>
  findings
    .filter(({ severity }) => severity === "note")
    .map(({ key }) => key)
    .sort();

/** Lifted findings: `key < exception`, in order. */
export const lifted = ({ findings }: Pick<JudgedBook, "findings">): readonly string[] =>
  findings.flatMap(({ key, exception }) => (exception === null ? [] : [`${key} < ${exception}`])).sort();

/** Verdict of every outcome, with what it waits for. */
export function verdicts({ outcomes }: Pick<JudgedBook, "outcomes">): Readonly<Record<string, string>> {
  return Object.fromEntries(
    outcomes.map((outcome) => {
      const { verdict, because } = outcome;
      const why =
        because === undefined
          ? ""
          : because.type === "not due"
            ? `: not due, ${because.milestone}`
            : verdict === "not judged"
              ? `: ${because.keys.join(" ")}`
              : "";
      return [nameOf(outcome), `${verdict}${why}`];
    }),
  );
}

export function finding(book: Pick<JudgedBook, "findings">, key: string): Finding {
  const found = book.findings.find((one) => one.key === key);
  if (found === undefined)
    throw new Error(`no finding ${key}; there are ${book.findings.map((one) => one.key).join(", ")}`);
  return found;
}

/** A fault of a file or a schema, as the loader says it. */
export const fault = (
  rule: string,
  subject: readonly [string, string] | null,
  pointer: string,
  file?: string,
): Finding => {
  const [name = "", id = ""] = subject ?? [];
  const where = file ?? `${name}/${id}.json`;
  const record = { kind: name, id };
  return {
    key: findingKey(rule, subject === null ? where : addressOf(record), pointer === "" ? undefined : pointer.slice(1)),
    rule,
    severity: "nonconformity",
    verdict: "failed",
    subject: subject === null ? null : record,
    place: { file: where, pointer },
    message: "something is wrong here",
    why: "it is not as the schema says",
    hint: "mend it",
    basis,
    owner: "document control",
    due: null,
    digest: "0000000000000000",
    related: [],
    waiting: [],
    exception: null,
    accuses: subject === null ? [] : [addressOf(record, pointer)],
  };
};

/** An exception that answers findings with the digests they have in a judged book. */
export const answering = (
  book: Pick<JudgedBook, "findings">,
  keys: readonly string[],
  more: JsonObject = {},
): JsonObject => ({
  reason: "accepted",
  authority: "minutes 4",
  by: "A. Person",
  date: "2026-06-01",
  answers: keys.map((key) => ({ finding: key, digest: finding(book, key).digest })),
  ...more,
});

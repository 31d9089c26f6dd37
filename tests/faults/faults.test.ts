import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { applyEdits, modify } from "jsonc-parser";
import { describe, expect, test } from "vitest";
import { builtInRules } from "../../src/judge/built-in.ts";
import { resultChecks } from "../../src/plan/result-checks.ts";
import { fileRules } from "../../src/load/file-rules.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import type { Finding } from "../../src/model/finding.ts";
import { fieldAt } from "../../src/model/kind.ts";
import { definitionOf } from "../../src/model/outcome-name.ts";
import type { Change } from "../support/changes.ts";
import {
  boilerBook,
  definitions,
  demoBook,
  judgeChanged,
  newFindings,
  newRoots,
  sound,
  soundBoiler,
} from "../support/demo-book.ts";
import { answered } from "../support/answered.ts";

/** One planted fault: what is changed, and the one finding that must come of it. */
interface Fault {
  readonly title: string;
  /**
   * Definitions that say something first, so that what is expected waits for them: they are silenced, and the maker's sheets
   * left out. It is not said as long as they speak.
   */
  readonly silent?: readonly string[];
  /** What is expected never comes alone. */
  readonly among?: true;
  readonly changes: readonly Change[];
  /** The papers do not say the same: records are read back from them. */
  readonly papers?: true;
  /** What is changed was not compared again. */
  readonly asCompared?: true;
  readonly expect?: {
    readonly rule: string;
    /** What exceptions cite: written by `-u`, compared with every run. */
    readonly key?: string;
    readonly severity: string;
    readonly file: string;
    /** A text that stands on the line the finding points at; empty for a file without lines. */
    readonly line: string;
    readonly message: string;
  };
  /** Keys of all findings that an exception among the changes lifts. */
  readonly lifts?: readonly string[];
}

const files = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith(".json"))
  .sort()
  .map((name) => {
    const text = readFileSync(join(import.meta.dirname, name), "utf8");
    return { name, text, faults: (JSON.parse(text) as Fault[]).map((fault) => ({ name, ...fault })) };
  });

const faults = files.flatMap((file) => file.faults);

type Named = (typeof faults)[number];

/** Faults are planted in the receiver's book, or by the name of their file in the boiler's. */
const bookOf = (name: string) =>
  name.startsWith("boiler-") ? ([boilerBook, soundBoiler()] as const) : ([demoBook, sound] as const);

const onePaper = "one-paper";

/** What each fault gives, judged once. */
const results = new Map<Named, ReturnType<typeof judgeFault>>();
const resultOf = (fault: Named) => {
  const known = results.get(fault) ?? judgeFault(fault);
  results.set(fault, known);
  return known;
};

function judgeFault({ name, changes, papers, asCompared, silent, among, expect: wanted }: Named) {
  const [book, before] = bookOf(name);
  const how = { withPapers: papers === true, asCompared: asCompared === true };
  const said = answered(book, changes);
  const { judged, fatal, fileOf, lineOf } = judgeChanged(book, said, { ...how, ...(silent !== undefined && { silent }) });
  const isNote = wanted?.severity === "note";
  // A note must come alone too; beside a finding that blocks, notes are told apart by it.
  const fresh: readonly Finding[] =
    judged === null ? fatal : isNote ? newFindings(judged, before) : newRoots(judged, before);
  // A record that is added cites a paper of the book in the place of its own, unless papers are what the fault is about.
  const borrows = changes.some((change) => "add" in change) && papers !== true && wanted?.rule !== onePaper;
  const all = borrows ? fresh.filter(({ rule }) => rule !== onePaper) : fresh;
  const one = ({ rule, message }: Finding) => rule === wanted?.rule && message === wanted.message;
  const found = silent !== undefined || among === true ? all.filter(one) : all;
  const own = new Set(answeredIn(before));
  return {
    found: found.map((finding) => ({ ...finding, file: fileOf(finding), line: lineOf(finding) })),
    others: all.length - found.length,
    lifted: (judged === null ? [] : answeredIn(judged)).filter((key) => !own.has(key)).sort(),
    // What is silenced passes whatever it sees.
    shown: judged === null || silent !== undefined ? [] : shownBy(judged).filter((id) => !byDemonstrations().has(id)),
    spoken: silent === undefined ? [] : (judgeChanged(book, said, how).judged?.findings.filter(one) ?? []),
  };
}

const answeredIn = ({ findings }: Pick<JudgedBook, "findings">) =>
  findings.filter(({ exception }) => exception !== null).map(({ key }) => key);

/** Definitions that come to a good end somewhere in a book. */
const shownBy = ({ outcomes }: JudgedBook) =>
  outcomes
    .filter(({ verdict }) => verdict === "passed" || verdict === "computed")
    .map(({ definition }) => definitionOf(definition).id);

let demonstrated: ReadonlySet<string> | undefined;
const byDemonstrations = () => (demonstrated ??= new Set([sound, soundBoiler()].flatMap(shownBy)));

describe("one planted fault, one finding", () => {
  test.each(faults)("$name: $title", (fault) => {
    const { expect: wanted, lifts = [], among } = fault;
    const { found, lifted, others, spoken } = resultOf(fault);
    expect(found.map(({ rule, severity, file, message }) => ({ rule, severity, file, message }))).toEqual(
      wanted === undefined
        ? []
        : [{ rule: wanted.rule, severity: wanted.severity, file: wanted.file, message: wanted.message }],
    );
    for (const { line } of found)
      if (wanted?.line === "") expect(line).toBe("");
      else expect(line).toContain(wanted?.line);
    expect(lifted).toEqual([...lifts].sort());
    // What need not be silenced, or does come alone, says so in vain.
    expect(spoken).toEqual([]);
    if (among === true) expect(others).toBeGreaterThan(0);
    // A fault that expects nothing at all would be no fault.
    expect(wanted !== undefined || lifts.length > 0).toBe(true);
  });
});

// Exceptions of issued books cite keys: a key that changes takes their answers away. DEVELOPERS.md says what a change needs.
describe("keys are those that exceptions cite", () => {
  test.each(files)("$name", async ({ name, text, faults: planted }) => {
    const formattingOptions = { insertSpaces: true, tabSize: 2 };
    let now = text;
    for (const [index, fault] of planted.entries()) {
      const [only, ...more] = resultOf(fault).found;
      if (only === undefined || more.length > 0 || fault.expect === undefined || fault.expect.key === only.key) continue;
      const place = { formattingOptions, getInsertionIndex: () => 1 };
      now = applyEdits(now, modify(now, [index, "expect", "key"], only.key, place));
    }
    await expect(now).toMatchFileSnapshot(name);
  });
});

/** Names of the program: of kinds, definitions and tables where they are no words, of fields, parameters and symbols. */
const ids = [
  ...definitions.kinds.keys(),
  ...[...definitions.rules, ...definitions.calculations, ...definitions.facts, ...definitions.tables].map(({ id }) => id),
].filter((id) => id.includes("-"));
const raw = new RegExp(
  [
    // The name of a file is its own.
    `(?<![\\w/-])(${ids.join("|")})(?![\\w.-])`,
    // Fields and parameters; "pH" and the like are words.
    /\b[a-z]{2,}[A-Z]\w*/u.source,
    // Paths, keys, rows and comparisons.
    /\w\[|\w#\w|<=|>=|!=|\w\|\w|\bundefined\b|\bNaN\b/u.source,
  ].join("|"),
  "u",
);

/** Sentences without what they quote: a name the reader typed is quoted back. */
const unquoted = (sentence: string) => sentence.replaceAll(/"[^"]*"|“[^”]*”/gu, '""');

test("sentences hold no names of the program", () => {
  const sentences = faults.flatMap((fault) =>
    resultOf(fault).found.flatMap(({ message, why, hint, related }) => [
      message,
      why,
      hint,
      ...related.map((one) => one.message),
    ]),
  );
  expect(new Set(sentences.filter((one) => raw.test(unquoted(one))))).toEqual(new Set());
});

describe("every check has its fault", () => {
  const planted = new Set(faults.flatMap(({ expect: wanted }) => (wanted === undefined ? [] : [wanted.rule])));
  const simple = [...definitions.rules, ...definitions.facts, ...resultChecks(definitions.kinds), ...builtInRules, ...fileRules];
  test.each(simple.map(({ id }) => id))("%s", (id) => {
    expect(planted.has(id)).toBe(true);
  });
});

/** Kinds, and lists of them, that a sheet of the maker can be made for. */
const sheetKind = definitions.kinds.get("calculation-sheet");
const sheeted = (sheetKind && fieldAt(sheetKind, "subject")?.targets) ?? [];

describe("every calculation has its faults", () => {
  test("sheets can be made for some kinds", () => expect(sheeted.length).toBeGreaterThan(5));
  const of = (rule: string) => faults.flatMap(({ expect: wanted }) => (wanted?.rule === rule ? [wanted] : []));
  const shown = definitions.calculations.flatMap(({ id, appliesTo, accept, limits, compared }) => {
    const failed = of(id).filter(({ severity }) => severity === "nonconformity");
    const outside = of(id).filter(({ severity, message }) => severity === "query" && !message.includes("second method"));
    const onSheets = sheeted.includes(appliesTo.kind);
    return [
      { what: `${id} accept`, asked: accept.length > 0, found: failed.length },
      { what: `${id} limits`, asked: limits.length > 0, found: outside.length },
      { what: `${id} inputs`, asked: onSheets, found: of(`${id}/inputs`).length },
      { what: `${id} results`, asked: onSheets && compared.length > 0, found: of(`${id}/results`).length },
    ].filter(({ asked }) => asked);
  });
  test.each(shown)("$what", ({ found }) => {
    expect(found).toBeGreaterThan(0);
  });
});

test("every rule and every calculation comes to a good end in a demonstration, or in one that a fault has changed", () => {
  const shown = new Set([...byDemonstrations(), ...faults.flatMap((fault) => resultOf(fault).shown)]);
  const idle = [...definitions.rules, ...definitions.calculations].filter(({ id }) => !shown.has(id));
  expect(idle.map(({ id }) => id)).toEqual([]);
});

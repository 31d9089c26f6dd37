import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { builtInRules } from "../../src/judge/built-in.ts";
import { resultChecks } from "../../src/plan/result-checks.ts";
import { fileRules } from "../../src/load/file-rules.ts";
import type { Finding } from "../../src/model/finding.ts";
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
  readonly changes: readonly Change[];
  /** The papers do not say the same: records are read back from them. */
  readonly papers?: true;
  /** What is changed was not compared again. */
  readonly asCompared?: true;
  readonly expect?: {
    readonly rule: string;
    readonly severity: string;
    readonly file: string;
    /** A text that stands on the line the finding points at; empty for a file without lines. */
    readonly line: string;
    readonly message: string;
  };
  /** Keys of findings that an exception among the changes lifts. */
  readonly lifts?: readonly string[];
}

const faults = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith(".json"))
  .sort()
  .flatMap((name) =>
    (JSON.parse(readFileSync(join(import.meta.dirname, name), "utf8")) as Fault[]).map((fault) => ({ name, ...fault })),
  );

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

function judgeFault({ name, changes, papers, asCompared, expect: wanted }: Named) {
  const [book, before] = bookOf(name);
  const { judged, fatal, fileOf, lineOf } = judgeChanged(book, answered(book, changes), {
    withPapers: papers === true,
    asCompared: asCompared === true,
  });
  const isNote = wanted?.severity === "note";
  // A note must come alone too; beside a finding that blocks, notes are told apart by it.
  const fresh: readonly Finding[] =
    judged === null ? fatal : isNote ? newFindings(judged, before) : newRoots(judged, before);
  // A record that is added cites a paper of the book in the place of its own, unless papers are what the fault is about.
  const borrows = changes.some((change) => "add" in change) && papers !== true && wanted?.rule !== onePaper;
  const found = borrows ? fresh.filter(({ rule }) => rule !== onePaper) : fresh;
  const lifted = judged?.findings.filter(({ exception }) => exception !== null).map(({ key }) => key) ?? [];
  return { found: found.map((finding) => ({ ...finding, file: fileOf(finding), line: lineOf(finding) })), lifted };
}

describe("one planted fault, one finding", () => {
  test.each(faults)("$name: $title", (fault) => {
    const { expect: wanted, lifts = [] } = fault;
    const { found, lifted } = resultOf(fault);
    expect(found.map(({ rule, severity, file, message }) => ({ rule, severity, file, message }))).toEqual(
      wanted === undefined
        ? []
        : [{ rule: wanted.rule, severity: wanted.severity, file: wanted.file, message: wanted.message }],
    );
    for (const { line } of found)
      if (wanted?.line === "") expect(line).toBe("");
      else expect(line).toContain(wanted?.line);
    expect(lifted).toEqual(expect.arrayContaining([...lifts]));
    // A fault that expects nothing at all would be no fault.
    expect(wanted !== undefined || lifts.length > 0).toBe(true);
  });
});

// Exceptions of issued books cite keys: a key that changes takes their answers away. DEVELOPERS.md says what a change needs.
test("keys are those that exceptions cite", async () => {
  const keys = faults.flatMap((fault) => [...resultOf(fault).found.map(({ key }) => key), ...resultOf(fault).lifted]);
  await expect(`${[...new Set(keys)].sort().join("\n")}\n`).toMatchFileSnapshot("keys.txt");
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

/** Checks that one fault cannot show: why, and the test that shows them. */
const elsewhere: Readonly<Record<string, string>> = {
  "read-back-recognised": "no demonstration has a recognised scan: tests/readback/unseen.test.ts",
  "basis-verified": "gives one gap for each basis in use, never a single one: tests/judge/profile-and-tables.test.ts",
  "tube-end-welder-role": "who is no welder lacks the qualification too: tests/books/boiler.test.ts",
};

describe("every check has its fault", () => {
  const planted = new Set(faults.flatMap(({ expect: wanted }) => (wanted === undefined ? [] : [wanted.rule])));
  const simple = [...definitions.rules, ...definitions.facts, ...resultChecks(definitions.kinds), ...builtInRules, ...fileRules];
  test.each(simple.map(({ id }) => id))("%s", (id) => {
    expect(planted.has(id)).toBe(elsewhere[id] === undefined);
  });
});

/** What the demonstration cannot show of a calculation, and why; its examples show it. */
const beyond: Readonly<Record<string, string>> = {
  "unreinforced-opening": "neither book has an opening without a branch: tests/books/plates.test.ts",
  "test-limits": "neither book has a sheet of its limits: the tests they limit are held against them",
  "tested-length": "neither book has a sheet of its limits: the extents of tests are held against them",
  "image-quality": "neither book has a sheet of its limits: the wires seen are held against them",
  "valve-settings": "neither book has a sheet of its limits: the settings of valves are held against them",
  "valve-bench-limits": "neither book has a sheet of its limits: the bench test is held against them",
  "wall-reduction inputs": "the report of the ends is its paper: it has no sheet",
  "wall-reduction results": "the report of the ends is its paper: it has no sheet",
  "heated-equipment-category accept": "the category is stated in several papers, which is said first",
  "heated-equipment-category limits": "pressure and volume are stated in several papers, which is said first",
  "access-tube limits": "what the flame heats is hotter, and its sheets say so first",
  "tube-nest limits": "tubes that overlap are said by the pull on them first",
  "flat-plate limits": "allowances as thick as the plate lie outside the plausible range, which is said first",
  "furnace-test accept": "a wall too weak for the test is too weak at the working pressure first",
  "reversal-chamber-test accept": "a wall too weak for the test is too weak at the working pressure first",
  "access-tube-test accept": "a wall too weak for the test is too weak at the working pressure first",
  "test-stress accept": "the courses are alike and have one test pressure: what fails in one fails in both",
  "test-stress limits": "the shell calculation and the drift of the hold read the same values and leave the case too",
  "test-pressure limits": "the maximum pressure is stated in seven papers, and strengths stand in tables",
  "carbon-equivalent limits": "so much manganese or chromium lies outside the grade, which is said first",
  "equipment-category limits": "the maximum pressure is stated in seven papers, which is said first",
};

describe("every calculation has its faults", () => {
  const of = (rule: string) => faults.flatMap(({ expect: wanted }) => (wanted?.rule === rule ? [wanted] : []));
  const shown = definitions.calculations.flatMap(({ id, accept, limits, compared }) => {
    const failed = of(id).filter(({ severity }) => severity === "nonconformity");
    const outside = of(id).filter(({ severity, message }) => severity === "query" && !message.includes("second method"));
    return [
      { what: `${id} accept`, asked: accept.length > 0, found: failed.length },
      { what: `${id} limits`, asked: limits.length > 0, found: outside.length },
      { what: `${id} inputs`, asked: true, found: of(`${id}/inputs`).length },
      { what: `${id} results`, asked: compared.length > 0, found: of(`${id}/results`).length },
    ].filter(({ asked }) => asked);
  });
  test.each(shown)("$what", ({ what, found }) => {
    const known = beyond[what] ?? beyond[what.split(" ")[0] ?? ""];
    expect(
      found > 0,
      found > 0 ? `${what} has a fault: take it out of "beyond"` : `${what} has no planted fault, and no reason in "beyond"`,
    ).toBe(known === undefined);
  });
});

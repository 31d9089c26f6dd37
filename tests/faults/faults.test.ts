import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { builtInRules } from "../../src/judge/built-in.ts";
import { fileRules } from "../../src/load/file-rules.ts";
import type { Finding } from "../../src/model/finding.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged, newFindings, newRoots, sound } from "../support/demo-book.ts";
import { answered } from "../support/answered.ts";

/** One planted fault: what is changed, and the one finding that must come of it. */
interface Fault {
  readonly title: string;
  readonly changes: readonly Change[];
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

describe("one planted fault, one finding", () => {
  test.each(faults)("$name: $title", ({ changes, expect: wanted, lifts = [] }) => {
    const { judged, fatal, lineOf } = judgeChanged(demoBook, answered(changes));
    const isNote = wanted?.severity === "note";
    // A note must come alone too; beside a finding that blocks, notes are told apart by it.
    const found: readonly Finding[] =
      judged === null ? fatal : isNote ? newFindings(judged, sound) : newRoots(judged, sound);
    expect(found.map(({ rule, severity, place, message }) => ({ rule, severity, file: place.file, message }))).toEqual(
      wanted === undefined
        ? []
        : [{ rule: wanted.rule, severity: wanted.severity, file: wanted.file, message: wanted.message }],
    );
    for (const finding of found)
      if (wanted?.line === "") expect(lineOf(finding)).toBe("");
      else expect(lineOf(finding)).toContain(wanted?.line);
    const lifted = judged?.findings.filter(({ exception }) => exception !== null).map(({ key }) => key) ?? [];
    expect(lifted).toEqual(expect.arrayContaining([...lifts]));
    // A fault that expects nothing at all would be no fault.
    expect(wanted !== undefined || lifts.length > 0).toBe(true);
  });
});

describe("every check has its fault", () => {
  const planted = new Set(faults.flatMap(({ expect: wanted }) => (wanted === undefined ? [] : [wanted.rule])));
  const { definitions } = sound;
  const simple = [...definitions.rules, ...definitions.facts, ...builtInRules, ...fileRules];
  test.each(simple.map(({ id }) => id))("%s", (id) => {
    expect(planted.has(id)).toBe(true);
  });
});

describe("every calculation has its faults", () => {
  const of = (id: string) => faults.flatMap(({ expect: wanted }) => (wanted?.rule === id ? [wanted] : []));
  describe.each(sound.definitions.calculations)("$id", ({ id, accept, limits, compared, title }) => {
    test.skipIf(accept.length === 0)("an acceptance that fails", () => {
      const meanings = accept.map(({ means }) => means);
      const failed = of(id).filter(({ message }) => meanings.some((means) => message.startsWith(`${means}: `)));
      expect(failed.map(({ severity }) => severity)).toContain("nonconformity");
    });
    test.skipIf(limits.length === 0)("an input outside validity is not judged", () => {
      expect(of(id).some(({ severity, message }) => severity === "query" && message.startsWith(title))).toBe(true);
    });
    test("a sheet that took over an input wrongly", () => {
      expect(of(`${id}/inputs`).length).toBeGreaterThan(0);
    });
    test.skipIf(compared.length === 0)("a sheet with a wrong result", () => {
      expect(of(`${id}/results`).length).toBeGreaterThan(0);
    });
  });
});

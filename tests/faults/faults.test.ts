import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { builtInRules } from "../../src/judge/built-in.ts";
import { fileRules } from "../../src/load/file-rules.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import type { Change } from "../support/changes.ts";
import { demoBook, judgeChanged, newRoots } from "../support/demo-book.ts";

/** One planted fault: what is changed, and the one finding that must come of it. */
interface Fault {
  readonly title: string;
  readonly changes: readonly Change[];
  readonly expect: {
    readonly rule: string;
    readonly severity: string;
    readonly file: string;
    /** A text that stands on the line the finding points at. */
    readonly line: string;
    readonly message: string;
  };
}

const faults = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith(".json"))
  .sort()
  .flatMap((name) => (JSON.parse(readFileSync(join(import.meta.dirname, name), "utf8")) as Fault[]).map((fault) => ({ name, ...fault })));

const sound = judgeBook(readBook(demoBook));

describe("one planted fault, one finding", () => {
  test.each(faults)("$name: $title", ({ changes, expect: wanted }) => {
    const { judged, fatal } = judgeChanged(demoBook, changes);
    expect(fatal).toEqual([]);
    if (judged === null) return;
    const roots = newRoots(judged, sound);
    expect(roots.map(({ rule, severity, place, message }) => ({ rule, severity, file: place.file, message }))).toEqual([
      { rule: wanted.rule, severity: wanted.severity, file: wanted.file, message: wanted.message },
    ]);
  });
});

describe("every check has its fault", () => {
  const planted = new Set(faults.map((fault) => fault.expect.rule));
  const { definitions } = sound;
  test.each([...definitions.rules, ...definitions.facts, ...definitions.calculations].map(({ id }) => id))("%s", (id) => {
    expect([...planted].some((rule) => rule === id || rule.startsWith(`${id}/`))).toBe(true);
  });
  test.each([...builtInRules, ...fileRules].map(({ id }) => id))("%s", (id) => {
    expect(planted.has(id)).toBe(true);
  });
});

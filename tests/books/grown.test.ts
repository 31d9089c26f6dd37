import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import type { Outcome } from "../../src/model/finding.ts";
import { addressOf } from "../../src/model/record.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { generateBook, pressureParts, welds } from "../bench/generate.ts";
import { boilerBook, demoBook, judgedOnce } from "../support/demo-book.ts";

const dir = mkdtempSync(join(tmpdir(), "databook-grown-"));
afterAll(() => {
  rmSync(dir, { recursive: true });
});
const grown = [
  ["receiver", demoBook, welds, []],
  ["boiler", boilerBook, pressureParts, ["dimension-check-rows-accepted"]],
] as const;

describe.each(grown)("the book the bench grows from the %s", (name, from, growth, lifted) => {
  const one = judgedOnce(from);
  const joints = one.graph.byKind.get("joint")?.size ?? 0;
  const count = generateBook(from, join(dir, name), joints + 1, growth);
  const { graph, findings, outcomes } = judgeBook(readBook(join(dir, name)));
  const copies = graph.records.filter(({ id }) => id.endsWith(".0001"));

  test("holds what was asked for and is clean", () => {
    expect([count, graph.byKind.get("joint")?.size]).toEqual([2 * joints, 2 * joints]);
    expect(findings.filter(({ exception }) => exception === null).map(({ key }) => key)).toEqual([]);
    expect(findings.map(({ rule }) => rule).sort()).toEqual(lifted);
  });

  test("judges each copy by itself, and as its original", () => {
    const verdicts = verdictsOf(outcomes);
    expect(copies.length).toBeGreaterThan(joints);
    for (const copy of copies) {
      const original = { kind: copy.kind, id: copy.id.slice(0, -".0001".length) };
      expect([addressOf(copy), verdicts.get(addressOf(copy))]).toEqual([
        addressOf(copy),
        verdicts.get(addressOf(original)),
      ]);
    }
  });

  test("links copies to copies alone, from a joint down to the heat", () => {
    // The first steps of the plan, before anything is made, are done once.
    const made = new Set(copies.map(({ kind }) => kind).filter((kind) => kind !== "inspection-step"));
    for (const copy of copies)
      for (const [pointer, { to }] of graph.out.get(copy) ?? []) {
        // Where parts stay, joints and their copies end on each other.
        if (!made.has("part") && pointer.startsWith("/crossings/")) continue;
        if (to !== undefined && made.has(to.kind)) expect(to.id).toMatch(/\.0001$/);
      }
  });
});

/** Definitions and verdicts by record; rows bear the number of the copy themselves. */
function verdictsOf(outcomes: readonly Outcome[]): ReadonlyMap<string, readonly string[]> {
  const by = new Map<string, string[]>();
  for (const { subject, definition, verdict } of outcomes) {
    if (subject === null) continue;
    const [id = "", row = ""] = subject.id.split("#");
    const key = `${subject.kind}:${id}`;
    by.set(key, [...(by.get(key) ?? []), `${definition} ${row.replace(/\.0001$/, "")}: ${verdict}`]);
  }
  return new Map([...by].map(([key, list]) => [key, list.sort()]));
}

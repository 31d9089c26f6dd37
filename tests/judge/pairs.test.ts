import type { FindingKey } from "../../src/model/finding-key.ts";
import { describe, expect, test } from "vitest";
import { blocks } from "../../src/model/finding.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { judged, open } from "../support/small-book.ts";
import { definitions, faults, plant, sound, type Planted } from "./sound-book.ts";

const roots = (book: JudgedBook): readonly FindingKey[] =>
  book.findings
    .filter(blocks)
    .map(({ key }) => key)
    .sort();
const nameOf = ({ at, ...fault }: Planted) =>
  `${at.join("/")} ${"to" in fault ? `= ${String(fault.to)}` : "taken out"}`;

test("the sound book has nothing open, and every definition passes somewhere", () => {
  const book = judged(definitions, { records: sound });
  expect(open(book)).toEqual([]);
  const passed = new Set(
    book.outcomes.filter(({ verdict }) => verdict === "passed").map(({ definition }) => definition),
  );
  for (const { id } of [...definitions.rules, ...definitions.calculations, ...definitions.facts])
    expect([...passed]).toContain(id);
  expect(book.outcomes.filter(({ verdict }) => verdict !== "passed")).toEqual([]);
});

/** Judged once: what each fault gives alone, and what it leaves unjudged. */
const alone = new Map(faults.map((fault) => [fault, judged(definitions, { records: plant([fault]) })]));
const rootsOf = new Map(faults.map((fault) => [fault, roots(alone.get(fault) as JudgedBook)]));

describe("one fault, one root", () => {
  test.each(faults.map((fault) => [nameOf(fault), fault] as const))("%s", (_, fault) => {
    expect(rootsOf.get(fault)).toHaveLength(1);
    expect(rootsOf.get(fault)?.[0]).toContain(fault.root);
  });
});

const startsWith = (long: Planted["at"], short: Planted["at"]) => short.every((step, index) => long[index] === step);
/** Neither fault changes what the other has changed or taken out. */
const apart = (a: Planted, b: Planted) => !startsWith(a.at, b.at) && !startsWith(b.at, a.at);

test("two faults: the roots of both, unless one leaves unjudged what shows the other", () => {
  let pairs = 0;
  const wrong: string[] = [];
  for (const [index, a] of faults.entries())
    for (const b of faults.slice(index + 1)) {
      if (!apart(a, b)) continue;
      pairs++;
      const book = judged(definitions, { records: plant([a, b]) });
      const found = roots(book);
      const expected = new Set([...(rootsOf.get(a) ?? []), ...(rootsOf.get(b) ?? [])]);
      const lost = [...expected].filter((key) => !found.includes(key));
      const more = found.filter((key) => !expected.has(key));
      const causeOf = (key: FindingKey) => (rootsOf.get(a)?.includes(key) === true ? a : b);
      if (found.length === 0) wrong.push(`${nameOf(a)} + ${nameOf(b)}: nothing is found`);
      for (const key of lost)
        if (!isHidden(book, key, causeOf(key)) && !emerged(book, key, causeOf(key)))
          wrong.push(`${nameOf(a)} + ${nameOf(b)}: loses ${key}, found ${found.join(", ")}`);
      if (found.length > 2) wrong.push(`${nameOf(a)} + ${nameOf(b)}: ${found.join(", ")}`);
      for (const key of more) if (lost.length === 0) wrong.push(`${nameOf(a)} + ${nameOf(b)}: more, ${key}`);
    }
  expect(wrong).toEqual([]);
  expect(pairs).toBeGreaterThan(2000);
  // Two thousand judgings: 20 s alone, minutes beside other work.
}, 300_000);

/**
 * A finding that is not there is hidden when every outcome that showed it, or waited for it, while its fault was the only
 * one, now waits for something, or its subject is gone.
 */
function isHidden(book: JudgedBook, key: FindingKey, fault: Planted): boolean {
  const before = alone.get(fault)?.outcomes ?? [];
  const showed = before.filter(
    ({ findings, because }) =>
      findings.includes(key) || (because !== undefined && because.type !== "not due" && because.keys.includes(key)),
  );
  const now = new Map(book.outcomes.map((outcome) => [nameOfOutcome(outcome), outcome.verdict]));
  return (
    showed.length > 0 &&
    showed.every((outcome) => {
      const verdict = now.get(nameOfOutcome(outcome)) ?? "not judged";
      // A fact of which one statement is left has nothing to be compared with.
      return verdict === "not judged" || (outcome.subject === null && verdict === "not applicable");
    })
  );
}

/** What waited for the finding shows the fault itself: the other fault took away what the finding was about. */
function emerged(book: JudgedBook, key: FindingKey, fault: Planted): boolean {
  const waited = (alone.get(fault)?.outcomes ?? []).filter(
    ({ because }) => because?.type === "finding" && because.keys.includes(key),
  );
  const failed = new Set(book.outcomes.filter(({ verdict }) => verdict === "failed").map(nameOfOutcome));
  return waited.some((outcome) => failed.has(nameOfOutcome(outcome)));
}

const nameOfOutcome = ({ definition, subject }: JudgedBook["outcomes"][number]) =>
  `${definition} ${subject?.kind ?? ""}:${subject?.id ?? ""}`;

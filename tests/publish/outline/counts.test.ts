import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { judgedSentence } from "../../../src/report/words.ts";
import { layOut } from "../../../src/pipeline.ts";
import { answered } from "../../support/answered.ts";
import type { Change } from "../../support/changes.ts";
import { boilerBook, demoBook, judgeChanged } from "../../support/demo-book.ts";

interface Planted {
  readonly title: string;
  readonly changes: readonly Change[];
}

const folder = join(import.meta.dirname, "../../faults");
const planted = (boiler: boolean): readonly Planted[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".json") && name.startsWith("boiler-") === boiler)
    .sort()
    .flatMap((name) => JSON.parse(readFileSync(join(folder, name), "utf8")) as Planted[]);
const everyNth = (all: readonly Planted[], nth: number) => all.filter((_, index) => index % nth === 0);

/** Every text in a page, whatever block it stands in. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  if (Array.isArray(value)) return [joined(value), ...value.flatMap(textsIn)];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** A line made of parts, as it is read. */
const joined = (parts: readonly unknown[]) => parts.filter((part) => typeof part === "string").join("");

const marks =
  "passed|failed|rejected|answered by an exception|not judged|not due|on record and judged by nothing|not applicable";
const counting = new RegExp(
  String.raw`(\d+) (?:[\p{L}’'-]{1,30} ){0,4}[\p{L}’'-]{1,30}: ((?:\d+ (?:${marks})(?:, )?){2,})`,
  "gu",
);

/** Sentences that count, of which the parts do not add up to what they count. */
function wrongIn(texts: readonly string[]): { readonly seen: number; readonly wrong: readonly string[] } {
  const found = texts.flatMap((text) => [...text.matchAll(counting)]);
  const wrong = found.flatMap(([sentence, all, parts = ""]) => {
    const sum = Array.from(parts.matchAll(/\d+/g), ([count]) => Number(count)).reduce((a, b) => a + b, 0);
    return sum === Number(all) ? [] : [sentence];
  });
  return { seen: found.length, wrong };
}

test("the reading of sentences sees one that does not add up", () => {
  expect(wrongIn(["12 checks: 10 passed, 1 failed, 1 not judged; 3 more do not apply"])).toEqual({
    seen: 1,
    wrong: [],
  });
  expect(wrongIn(["12 checks: 10 passed, 1 failed"]).wrong).toEqual(["12 checks: 10 passed, 1 failed"]);
});

describe.each([
  ["receiver", demoBook, everyNth(planted(false), 28)],
  ["boiler", boilerBook, everyNth(planted(true), 100)],
])("every count on every page of the %s adds up", (_, book, faults) => {
  test.each(faults)("$title", { timeout: 60_000 }, async ({ changes }) => {
    const { judged } = judgeChanged(book, answered(book, changes));
    if (judged === null) return;
    const { pages } = await layOut(judged);
    const { seen, wrong } = wrongIn(pages.flatMap(({ blocks }) => textsIn(blocks)));
    expect(wrong).toEqual([]);
    // An exception answers one row of the boiler, so there is always something to add up there.
    if (book === boilerBook) expect(seen).toBeGreaterThan(0);
    const said = wrongIn([judgedSentence(judged.counts)]);
    expect(said.wrong).toEqual([]);
    expect(judged.counts.failed + judged.counts.notJudged > 0 ? said.seen : 1).toBe(1);
  });
});

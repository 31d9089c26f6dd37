import { expect, test } from "vitest";
import type { Json } from "../../../src/model/json.ts";
import { figuresOf } from "../../../src/model/figures.ts";
import type { BookRecord } from "../../../src/model/record.ts";
import { layOut } from "../../../src/pipeline.ts";
import type { Page } from "../../../src/publish/publication.ts";
import { reportOf } from "../../../src/report/report.ts";
import { summaryText } from "../../../src/report/text.ts";
import { wordsIn } from "./words.ts";
import { demoBook, judgedWith, laidOutOnce, readOnce, sound } from "../../support/demo-book.ts";

const read = readOnce(demoBook);
const own = new Set(["CAL-05", "CAL-10", "CAL-14"]);
const figures = new Map(
  sound.computed.flatMap((one) =>
    one.state === "done"
      ? one.sheets.map(({ record }) => [record.id, figuresOf(sound.definitions.kinds, one)] as const)
      : [],
  ),
);
/** The receiver's book, with three sheets that adopt; the day of the last has been left out. */
const records = read.records.map((record): BookRecord => {
  if (record.kind !== "calculation-sheet" || !own.has(record.id)) return record;
  const { id, calculation = "", subject = "" } = record.value;
  const signature = { role: "design", person: "R1", ...(record.id !== "CAL-14" && { date: "2026-03-02" }) };
  const value = { id, calculation, subject, adopts: figures.get(record.id) ?? "", signatures: [signature] };
  return { ...record, value: value as Record<string, Json> };
});
const judged = judgedWith(demoBook, records);
const { pages } = await layOut(judged);

const pageAt = (url: string): Page => {
  const found = pages.find((page) => page.url === url);
  if (found === undefined) throw new Error(`no page ${url}`);
  return found;
};
const page = (url: string) => {
  const { under, blocks } = pageAt(url);
  return `${wordsIn(under)} ${wordsIn(blocks)}`;
};
const sentence =
  "3 calculations adopted: nothing independent stands beside them; nobody has signed for the figures of 1 as they are";

test("the front page and the summary of a check count them apart", () => {
  expect(page("index.html")).toContain(`${sentence}. The maker has no calculation of its own there`);
  expect(summaryText(reportOf(judged, "tool"))).toContain(`\n${sentence}\n`);
});

test("the page of a calculation says who signed for which figures, when, and that nothing stands beside it", () => {
  const text = page("calculation/cylindrical-shell.part.P01.html");
  expect(text).toContain(
    "The maker adopts this recomputation. Nothing independent stands beside it, so nothing is compared.",
  );
  expect(text).toMatch(
    /adopts the figures of digest .*, signed by R\. Vellumgate \(R1\) as design on 2026-03-02\. They are the figures of this page\./,
  );
  expect(text).not.toContain("values agree");
  expect(page("calculation/relief-capacity.equipment.TQ423-01.html")).toContain("as design, no day stated");
});

test("the table of pressure parts marks them, and no other", () => {
  const text = page("calculations.html");
  expect(text.match(/\(recomputation adopted\)/g)).toHaveLength(2);
  expect(text).toContain("Where the maker adopts the recomputation, nothing independent stands beside it.");
});

test("the page of the sheet says why nothing is compared, and what the signature is for", () => {
  const text = page("calculation-sheet/r-CAL-05.html");
  expect(text).toContain("This sheet states no figures of its own.");
  expect(text).toContain("signed for the figures adopted");
});

test("a book that adopts nothing says nothing of it", async () => {
  const front = (await laidOutOnce(demoBook)).pages.find(({ url }) => url === "index.html");
  expect(wordsIn(front?.blocks)).not.toContain("adopted:");
  expect(summaryText(reportOf(sound, "tool"))).not.toContain("adopted");
});

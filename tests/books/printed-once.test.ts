import { expect, test } from "vitest";
import { blocks } from "../../src/model/finding.ts";
import { layOut } from "../../src/pipeline.ts";
import type { Block, Inline } from "../../src/publish/blocks.ts";
import type { Page } from "../../src/publish/publication.ts";
import { demoBook, judgeChanged, laidOutOnce } from "../support/demo-book.ts";

const publication = await laidOutOnce(demoBook);
const printed = publication.pages.filter(({ screenOnly }) => screenOnly !== true);
const textOf = (part: Inline) => (typeof part === "string" ? part : "text" in part ? part.text : "");

type Brief = Extract<Block, { type: "judged" | "chain" }>;
const briefsOf = (pages: readonly Page[]): readonly Brief[] =>
  pages
    .flatMap((page) => page.blocks)
    .filter((block): block is Brief => block.type === "judged" || block.type === "chain")
    .filter(({ onPaper }) => onPaper !== undefined);

test("what stands in for a list on paper leads to a printed place that holds the list", () => {
  const briefs = briefsOf(printed);
  expect(briefs.filter(({ type }) => type === "chain").length).toBeGreaterThan(20);
  expect(briefs.filter(({ type }) => type === "judged").length).toBeGreaterThan(20);
  for (const { onPaper = [] } of briefs) {
    const link = onPaper.find((part) => typeof part !== "string" && part.type === "link");
    if (link === undefined) throw new Error(onPaper.map(textOf).join(""));
    const page = printed.find(({ url }) => url === link.to.page);
    expect(page, link.to.page).toBeDefined();
    if (link.to.anchor === undefined) continue;
    const at = page?.blocks.findIndex((block) => block.type === "anchor" && block.anchor === link.to.anchor) ?? -1;
    expect(page?.blocks[at + 1]?.type, link.to.anchor).toBe("table");
  }
});

test("only what passed is summed up", () => {
  const sums = briefsOf(publication.pages).flatMap((block) => (block.type === "judged" ? [block] : []));
  for (const { items } of sums) expect(new Set(items.map(({ mark }) => mark))).toEqual(new Set(["passed"]));
});

test("the table of a kind counts every check that its records show", () => {
  const opening = publication.pages.find(({ opening: is, title }) => is === true && title === "Welding");
  const at = opening?.blocks.findIndex((block) => block.type === "anchor" && block.anchor === "checks-weld-log") ?? -1;
  const table = opening?.blocks[at + 1];
  if (table?.type !== "table") throw new Error("there is no table of what is checked of weld logs");
  const counted = table.groups.flat().map(({ cells }) => cells[2]);
  const sum = counted.reduce((all, cell) => all + (cell?.type === "number" ? Number(cell.text) : Number.NaN), 0);
  const shown = publication.pages
    .filter(({ url }) => url.startsWith("weld-log/"))
    .flatMap((page) => page.blocks)
    .filter((block) => block.type === "judged")
    .flatMap(({ items }) => items)
    .filter(({ text }) => !text.some((part) => typeof part === "object" && part.type === "link"));
  expect(sum).toBe(shown.length);
});

test("a check that did not pass is printed where it failed", async () => {
  const { judged } = judgeChanged(demoBook, [{ set: "weld-log:WL-C2", at: "/fitUp/date", to: "2026-06-30" }]);
  if (judged === null) throw new Error("the book could not be read");
  expect(judged.findings.filter(blocks).length).toBeGreaterThan(0);
  const { pages } = await layOut(judged);
  const lists = pages
    .flatMap((page) => page.blocks)
    .filter((block) => block.type === "judged")
    .filter(({ items }) => items.some(({ mark }) => mark === "failed"));
  expect(lists.length).toBeGreaterThan(0);
  for (const { onPaper } of lists) expect(onPaper).toBeUndefined();
});

test("records that paper shows in the table of their section alone have their page on screen", () => {
  const urls = publication.pages.filter(({ screenOnly }) => screenOnly === true).map(({ url }) => url.split("/")[0]);
  expect(urls).toContain("original");
  expect(urls).toContain("calculation-sheet");
  expect(printed.some(({ url }) => url.startsWith("original/"))).toBe(false);
});

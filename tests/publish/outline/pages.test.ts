import { expect, test } from "vitest";
import { boilerBook, laidOutOnce } from "../../support/demo-book.ts";

const { pages } = await laidOutOnce(boilerBook);

test("a page says the same each time its blocks are made", () => {
  for (const page of pages) {
    const [first, second] = [JSON.stringify(page.blocks), JSON.stringify(page.blocks)];
    expect(second === first, page.url).toBe(true);
  }
});

test("tables with figures, and headings, are numbered from the first, below the number of their page", () => {
  for (const page of pages) {
    if (page.number === undefined) continue;
    const { number, opening, blocks } = page;
    const tables = blocks.flatMap((block) => (block.type === "table" || block.type === "figure" ? [block.number] : []));
    expect(tables, page.url).toEqual(tables.map((_, index) => `${number}.${index + 1}`));
    const headings = blocks.flatMap((block) => (block.type === "heading" && block.level === 2 ? [block.number] : []));
    if (opening !== true) expect(headings, page.url).toEqual(headings.map((_, index) => `${number}.${index + 1}`));
  }
});

import { expect, test } from "vitest";
import { demoBook, laidOutOnce } from "../../support/demo-book.ts";

const { pages } = await laidOutOnce(demoBook);

/** What stands in the margin of a page, by its lead. */
const notesOf = (url: string) =>
  (pages.find((page) => page.url === url)?.blocks ?? [])
    .flatMap((block) => ("notes" in block ? (block.notes ?? []) : []))
    .map(({ lead, text }) => `${lead}: ${JSON.stringify(text)}`);

test("what was read back is said of the one original, or of all together where there are several", () => {
  const [one, two] = [notesOf("pressure-test/r-HYD-01.html"), notesOf("part/r-P01.html")];
  expect(one.filter((note) => note.includes("Read back")).map((note) => note.split(":")[0])).toEqual(["Original"]);
  expect(two.filter((note) => note.startsWith("Original:")).length).toBe(2);
  expect(two.filter((note) => note.includes("Read back")).map((note) => note.split(":")[0])).toEqual(["All originals"]);
});

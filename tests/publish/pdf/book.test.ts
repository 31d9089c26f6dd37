import { createHash } from "node:crypto";
import { afterEach, expect, test } from "vitest";
import type { Publication } from "../../../src/publish/publication.ts";
import { bookPdf } from "../../../src/publish/pdf/index.ts";
import { samplePublication } from "../sample.ts";
import { pdfWith } from "./awkward.ts";
import { readBack } from "./read-back.ts";
import { runOn, testWith } from "./tools.ts";

const original = await pdfWith({ text: "certificate, first page" }, { text: "certificate, second page" });
const bookOf = (publication: Publication) => bookPdf(publication, () => original);
const final = await bookOf(samplePublication(false));
const interim = await bookOf(samplePublication(true));
const book = await readBack(final);
const printed = samplePublication(false).pages.filter((page) => page.screenOnly !== true);

const { TZ, LANG } = process.env;
afterEach(() => {
  if (TZ === undefined) delete process.env["TZ"];
  else process.env["TZ"] = TZ;
  if (LANG === undefined) delete process.env["LANG"];
  else process.env["LANG"] = LANG;
});

const hash = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

test.each(["Asia/Tokyo", "America/New_York"])("the same publication gives the same bytes, also in %s", async (zone) => {
  process.env["TZ"] = zone;
  process.env["LANG"] = "tr_TR.UTF-8";
  expect(hash(await bookOf(samplePublication(false)))).toBe(hash(final));
});

test("the identifier of the document comes from its content", async () => {
  const other = await readBack(await bookOf({ ...samplePublication(false), maker: "Other Works" }));
  expect(book.id).toMatch(/^\[ <([0-9A-F]{32})> <\1> \]$/);
  expect(other.id).not.toBe(book.id);
});

test("every page and every anchor of the publication is a destination", () => {
  for (const page of printed) expect(book.destinations.has(page.url), page.url).toBe(true);
  for (const anchor of [
    "joint/r-C2.html#welder",
    "weld-log/g-C.html#C7",
    "findings.html#f-w07",
    "calculation/r-SHELL.html#P",
  ])
    expect(book.destinations.get(anchor), anchor).toBeGreaterThan(1);
});

test("every link lands on a page of the book", () => {
  expect(book.links.length).toBeGreaterThan(80);
  for (const { dest, uri, page } of book.links) {
    if (uri !== undefined) expect(uri).toMatch(/^[A-Za-z0-9%._/-]+$/);
    else expect(book.destinations.get(dest ?? ""), `${dest ?? "no destination"} on page ${page}`).toBeGreaterThan(0);
  }
});

test("a link to what stands on screen only leads to where it is summed up, and is plain text where it is not", async () => {
  const publication = samplePublication(false);
  const [first, ...rest] = publication.pages;
  if (first === undefined) throw new RangeError("the sample has pages");
  const screen = { url: "calculation/x.html", title: "x", section: null, screenOnly: true, blocks: [] };
  const block = {
    type: "paragraph" as const,
    text: [{ type: "link" as const, to: { page: screen.url }, text: "one of many" }],
  };
  const summary = "calculation/r-SHELL.html";
  const linksTo = async (page: typeof screen & { readonly printedAt?: { readonly page: string } }) => {
    const pages = [{ ...first, blocks: [...first.blocks, block] }, ...rest, page];
    const { links, destinations } = await readBack(await bookOf({ ...publication, pages }));
    const to = links.find(({ dest }) => dest === screen.url)?.dest;
    return to === undefined ? undefined : [destinations.get(to), destinations.get(summary)];
  };
  expect(await linksTo(screen)).toBeUndefined();
  const [led, summedUp] = (await linksTo({ ...screen, printedAt: { page: summary } })) ?? [];
  expect(led).toBeGreaterThan(1);
  expect(led).toBe(summedUp);
});

test.each(["index.html#gone", "joint/r-GONE.html"])(
  "a link to %s, which is nowhere, stops the book and is named",
  async (dest) => {
    const [page = "", anchor] = dest.split("#");
    const to = anchor === undefined ? { page } : { page, anchor };
    const publication = samplePublication(false);
    const [first, ...rest] = publication.pages;
    if (first === undefined) throw new RangeError("the sample has pages");
    const block = {
      type: "paragraph" as const,
      text: [{ type: "link" as const, to, text: "x" }],
    };
    const pages = [{ ...first, blocks: [...first.blocks, block] }, ...rest];
    await expect(bookOf({ ...publication, pages })).rejects.toThrow(dest);
  },
);

test("the bookmarks follow the book: front matter, sections with their pages, originals", () => {
  const titles = book.outline.map(({ level, title }) => `${level} ${title}`);
  expect(titles.slice(0, 3)).toEqual([
    "1 Title page",
    "1 Hot water accumulator, 2500 l",
    "1 2.1 Findings, by who must act",
  ]);
  expect(titles).toContain("1 7 Welding");
  expect(titles).toContain("2 7.4 C2, shell course 1 to shell course 2");
  expect(titles.at(-1)).toBe("2 CRT-003 Inspection certificate 3.1, heat 84713");
  for (const { dest } of book.outline) expect(book.destinations.get(dest), dest).toBeGreaterThan(0);
});

test("page numbers in the contents are those of the pages", () => {
  expect(book.destinations.get("cover")).toBe(1);
  expect(book.destinations.get("files/materials/crt-003.pdf#page=2")).toBe(book.pages);
});

test("originals can be left out", async () => {
  const without = await readBack(await bookPdf(samplePublication(false), () => original, { appendOriginals: false }));
  expect(without.pages).toBe(book.pages - 3);
  expect(without.links.some(({ uri }) => uri === "files/materials/crt-003.pdf")).toBe(true);
});

testWith(["qpdf"], "the file is sound for qpdf", () => {
  expect(runOn(final, "qpdf", "--check", "@")).toContain("No syntax or stream encoding errors found");
  expect(runOn(interim, "qpdf", "--check", "@")).toContain("No syntax or stream encoding errors found");
});

testWith(["pdfinfo"], "title, maker, dates and the warning stand in the metadata, in both forms", () => {
  const info = runOn(final, "pdfinfo", "-isodates", "@");
  expect(info).toMatch(/^Title: +BH211-02 Hot water accumulator, 2500 l, revision 0, final$/m);
  expect(info).toMatch(/^Author: +Brackenholt Vessel Works$/m);
  expect(info).toMatch(/^Keywords: .*demonstration, invented data$/m);
  expect(info).toMatch(/^CreationDate: +2026-07-17T00:00:00Z$/m);
  expect(info).toMatch(new RegExp(`^Pages: +${book.pages}$`, "m"));
  expect(info).toMatch(/^JavaScript: +no$/m);
  const xmp = runOn(final, "pdfinfo", "-meta", "@");
  expect(xmp.codePointAt(xmp.indexOf('"') + 1)).toBe(0xfeff);
  expect(xmp).toContain("demonstration, invented data");
});

testWith(["pdffonts"], "every font is embedded, subset and readable", () => {
  const [, , ...fonts] = runOn(final, "pdffonts", "@").trimEnd().split("\n");
  const own = fonts.filter((line) => line.includes("Source"));
  expect(own).toHaveLength(7);
  for (const line of own) expect(line).toMatch(/^[A-Z]{6}\+\S+ +CID TrueType +Identity-H +yes yes yes/);
});

testWith(["pdftotext"], "the text layer holds the texts, with their signs as written", () => {
  const text = runOn(final, "pdftotext", "-layout", "@", "-").replace(/\u00a0/g, " ");
  for (const said of [
    "Welder W07 was not qualified on 2026-06-09.",
    "Six links: 2 passed, 1 failed, 1 not judged, 1 not applicable, 1 not due.",
    "≥ 2500 l, Ø 1200 × 8 mm, coated 160 µm",
    "Greek αβγδε",
    "Table 7.3, continued",
    "continued on the next page",
    '<script>alert("x")</script>',
    "certificate, second page",
    `page ${book.pages} of ${book.pages}`,
  ])
    expect(text).toContain(said);
});

testWith(["pdftotext"], "every page of an interim issue says so, in its head and in its margin", () => {
  const pages = runOn(interim, "pdftotext", "-raw", "@", "-").split("\f").slice(0, -1);
  expect(pages.length).toBeGreaterThan(10);
  for (const page of pages) {
    expect(page).toContain("revision P3, interim, not for acceptance");
    expect(page.replace(/\s+/g, " ")).toContain(
      "Interim issue P3, not for acceptance. Evidence recorded up to 18 June 2026.",
    );
    expect(page).toContain("demonstration, invented data");
    expect(page).toContain("3c1d 90ae 77b2 5f04");
  }
});

testWith(["mutool"], "the outline is read by another program too", () => {
  const outline = runOn(final, "mutool", "show", "@", "outline");
  expect(outline).toContain("Cylindrical shell under internal pressure");
});

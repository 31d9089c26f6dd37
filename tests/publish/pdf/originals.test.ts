import { Buffer } from "node:buffer";
import { expect, test } from "vitest";
import type { Appendix, Publication } from "../../../src/publish/publication.ts";
import { bookPdf } from "../../../src/publish/pdf/index.ts";
import { samplePublication } from "../sample.ts";
import { greyPng, pdfCut, pdfHalfBroken, pdfWith, pdfWithScripts, pdfWithStamp } from "./awkward.ts";
import { readBack } from "./read-back.ts";
import { runOn, testWith } from "./tools.ts";

const appendix = (id: string, file: string): Appendix => ({
  id,
  title: `original ${id}`,
  path: `files/${file}`,
  sha256: "ab".repeat(32),
  pages: 1,
  mediaType: "application/octet-stream",
  page: { page: "index.html" },
});

/** A book of one page with the given files as originals. */
function bookWith(files: Readonly<Record<string, Uint8Array>>): Promise<Uint8Array> {
  const sample = samplePublication(false);
  const publication: Publication = {
    ...sample,
    sections: [],
    pages: [{ url: "index.html", title: "Originals of every sort", section: null, blocks: [] }],
    originals: Object.keys(files).map((file, index) => appendix(`O-${index}`, file)),
  };
  return bookPdf(publication, (path) => files[path.replace("files/", "")] ?? new Uint8Array());
}

const textOf = (bytes: Uint8Array, page: number) =>
  runOn(bytes, "pdftotext", "-f", String(page), "-l", String(page), "@", "-").replace(/\s+/g, " ");

/** Cover, the page, the list of originals. */
const before = 3;

testWith(["pdftotext"], "pages of a PDF are shown in the frame, whatever their size and turn", async () => {
  const file = await pdfWith(
    { text: "upright" },
    { text: "turned by 90", turn: 90 },
    { text: "turned by 270", turn: 270 },
    { text: "as large as A0", width: 2384, height: 3370 },
    {},
  );
  const bytes = await bookWith({ "all.pdf": file });
  expect(textOf(bytes, before + 1)).toContain("upright");
  expect(textOf(bytes, before + 2)).toContain("turned by 90");
  expect(textOf(bytes, before + 3)).toContain("turned by 270");
  expect(textOf(bytes, before + 4)).toMatch(/Copy at 20 % of its size.*as large as A0/);
  expect(textOf(bytes, before + 5)).toContain("page 5 of 5");
  const sizes = runOn(bytes, "pdfinfo", "-f", "4", "-l", "8", "@").match(/size: +\S+ x \S+/g);
  expect(sizes?.map((size) => size.includes("841.89 x 595.28"))).toEqual([false, true, true, false, false]);
});

testWith(
  ["pdfinfo", "pdftotext"],
  "nothing that runs comes along, neither from the file nor from its pages",
  async () => {
    const bytes = await bookWith({ "scripts.pdf": await pdfWithScripts() });
    expect(runOn(bytes, "pdfinfo", "@")).toMatch(/JavaScript: +no/);
    expect(textOf(bytes, before + 1)).toContain("scripted");
  },
);

testWith(["pdfinfo", "pdftotext"], "filled fields and stamps are printed, as they look, without the form", async () => {
  const bytes = await bookWith({ "stamp.pdf": await pdfWithStamp() });
  expect(textOf(bytes, before + 1)).toMatch(/certificate.*witnessed/);
  expect(runOn(bytes, "pdfinfo", "@")).toMatch(/Form: +none/);
});

testWith(["pdftotext", "qpdf"], "a file that cannot be shown gets a page that says why", async () => {
  const locked = Buffer.from(await pdfWith({ text: "secret" }))
    .toString("latin1")
    .replace("/Root", "/Encrypt 1 0 R /Root");
  const bytes = await bookWith({
    "cut.pdf": await pdfCut(),
    "letter.docx": Buffer.from("PK"),
    "nothing.pdf": new Uint8Array(),
    "locked.pdf": Buffer.from(locked, "latin1"),
    "broken.png": greyPng(40, 30).slice(0, 60),
  });
  expect(textOf(bytes, before + 1)).toMatch(/not shown here: the file is damaged.* It lies unchanged beside the book/);
  expect(textOf(bytes, before + 2)).toMatch(/not published: the file is an Office file or an archive/);
  expect(textOf(bytes, before + 3)).toContain("not shown here: the file is empty");
  expect(textOf(bytes, before + 4)).toContain("not shown here: the file is encrypted");
  expect(textOf(bytes, before + 5)).toContain("not shown here: the file is damaged: the picture ends too early");
  expect(runOn(bytes, "qpdf", "--check", "@")).toContain("No syntax or stream encoding errors found");
});

test("a picture becomes a page; a page the record promises and the file lacks still has a place", async () => {
  const book = await readBack(await bookWith({ "grey.png": greyPng(300, 200), "none.bin": new Uint8Array(3) }));
  expect(book.pages).toBe(before + 2);
  expect(book.destinations.get("files/grey.png#page=1")).toBe(before + 1);
  expect(book.destinations.get("files/none.bin#page=1")).toBe(before + 2);
});

test("what was copied before a file failed leaves nothing behind", async () => {
  const half = await pdfHalfBroken();
  const book = await bookWith({ "half.pdf": half });
  const empty = await bookWith({ "half.pdf": new Uint8Array(3) });
  expect(half.length).toBeGreaterThan(40_000);
  expect(Math.abs(book.length - empty.length)).toBeLessThan(4000);
});

testWith(["pdftotext"], "a broken file does not disturb the ones after it", async () => {
  const bytes = await bookWith({ "cut.pdf": await pdfCut(), "good.pdf": await pdfWith({ text: "sound" }) });
  expect(textOf(bytes, before + 2)).toContain("sound");
});

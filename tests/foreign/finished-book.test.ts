import { PDFDocument } from "pdf-lib";
import { expect, test } from "vitest";
import { newBudget } from "../../src/foreign/budget.ts";
import { copyPdf } from "../../src/foreign/pdf/copy.ts";
import { bookPdf } from "../../src/publish/pdf/index.ts";
import type { Publication } from "../../src/publish/publication.ts";
import { pdfWithScripts, pdfWithStamp } from "../publish/pdf/awkward.ts";
import { readBack } from "../publish/pdf/read-back.ts";
import { runOn, testWith } from "../publish/pdf/tools.ts";
import { samplePublication } from "../publish/sample.ts";
import { actingPdf } from "./acting.ts";
import { forbiddenIn } from "./walk.ts";

function bookOf(files: Readonly<Record<string, Uint8Array>>): Promise<Uint8Array> {
  const publication: Publication = {
    ...samplePublication(false),
    sections: [],
    pages: [{ url: "index.html", title: "Originals", section: null, blocks: [] }],
    originals: Object.keys(files).map((path) => ({
      id: path,
      title: path,
      path,
      sha256: "ab".repeat(32),
      pages: 1,
      mediaType: "application/pdf",
      page: { page: "index.html" },
    })),
  };
  return bookPdf(publication, (path) => files[path] ?? new Uint8Array());
}

test("the walk finds what it looks for, where it is", async () => {
  const found = await forbiddenIn(actingPdf());
  for (const one of ["/AA", "/JS", "/EF", "/OpenAction", "/PieceInfo", "/S JavaScript", "/S Launch", "/Subtype Widget"])
    expect(found).toContain(one);
});

test("nothing forbidden can be reached in the finished book", async () => {
  const files = {
    "acting.pdf": actingPdf(),
    "scripts.pdf": await pdfWithScripts(),
    "stamp.pdf": await pdfWithStamp(),
  };
  expect(await forbiddenIn(await bookOf(files))).toEqual([]);
});

test("no script, address or file of an original stands in the book, reached or not", async () => {
  const { context } = await PDFDocument.load(await bookOf({ "acting.pdf": actingPdf() }), { updateMetadata: false });
  const all = context.enumerateIndirectObjects().map(([, object]) => String(object));
  expect(all.join("\n")).not.toMatch(/app\.alert|example\.org|a\.exe|JavaScript|Launch|Filespec/);
});

test("a plain link within the file leads to the page in the book; the others are gone", async () => {
  const book = await readBack(await bookOf({ "acting.pdf": actingPdf() }));
  expect(book.links.filter(({ page }) => page === 4).map(({ dest }) => dest)).toContain("acting.pdf#page=2");
  expect(book.links.flatMap(({ uri }) => uri ?? []).filter((uri) => uri.includes("example"))).toEqual([]);
});

test("what was left out is named by its sort", () => {
  const { leftOut } = copyPdf(actingPdf(), newBudget);
  expect(leftOut.map((sort) => sort.split(" ")[0])).toEqual([
    "scripts",
    "commands",
    "actions",
    "form",
    "links",
    "files",
    "references",
    "sound,",
    "layers",
  ]);
});

testWith(["pdftotext", "qpdf"], "the copy says so on its first page, and is sound", async () => {
  const bytes = await bookOf({ "acting.pdf": actingPdf() });
  const text = runOn(bytes, "pdftotext", "-f", "4", "-l", "4", "@", "-").replace(/\s+/g, " ");
  expect(text).toMatch(/Left out of this copy: scripts; .* The untouched file lies beside the book\./);
  expect(text).toContain("hostile");
  expect(runOn(bytes, "qpdf", "--check", "@")).toContain("No syntax or stream encoding errors found");
});

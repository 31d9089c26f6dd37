import { address } from "../support/address.ts";
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { judgeBook, layOut, readBook } from "../../src/pipeline.ts";
import type { Publication } from "../../src/publish/publication.ts";
import { siteFiles } from "../../src/publish/html/index.ts";
import { bookPdf } from "../../src/publish/pdf/index.ts";
import { allFiles } from "../support/all-files.ts";
import { copyBook } from "../support/copy-book.ts";
import { demoBook, sound } from "../support/demo-book.ts";
import { guideBlock } from "../support/guide.ts";

/** The gasket of DEVELOPERS.md: one schema file in another folder, and nothing else, is a new kind. */
const gasket = guideBlock("Add a kind", "json");

const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-kind-")));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

copyBook(demoBook, join(dir, "book"));
mkdirSync(join(dir, "schemas"));
writeFileSync(join(dir, "schemas/gasket.schema.json"), gasket);

function judgeWith(record: object) {
  writeFileSync(join(dir, "book/gaskets.json"), JSON.stringify({ kind: "gasket", records: [record] }, null, 2));
  return judgeBook(readBook(join(dir, "book"), { schemas: [join(dir, "schemas")] }));
}

const part = [...(sound.graph.byKind.get("part")?.keys() ?? [])][0] ?? "";
const good = { id: "G-01", part, designation: "DN 50 soft sheet", thickness: "2.0 mm", fitted: "2026-06-24" };

test("its records are loaded, linked both ways and owed", () => {
  const judged = judgeWith(good);
  expect(judged.findings.filter(({ severity }) => severity !== "note").map(({ message }) => message)).toEqual([]);
  expect(judged.graph.back.get(address(`part:${part}`))?.some(({ from }) => from.kind === "gasket")).toBe(true);
  const { fitted: _fitted, ...unfitted } = good;
  expect(judgeWith(unfitted).findings.map(({ key }) => key)).toContain("missing|gasket:G-01|fitted");
});

test("its values are checked: unknown field, unit, plausible range, dangling link", () => {
  const rules = (record: object) =>
    judgeWith(record)
      .findings.filter(({ severity }) => severity !== "note")
      .map(({ rule }) => rule);
  expect(rules({ ...good, colour: "grey" })).toEqual(["record-schema"]);
  expect(rules({ ...good, thickness: "2.0 kg" })).toEqual(["quantity-form"]);
  expect(rules({ ...good, thickness: "20 mm" })).toEqual(["value-plausible"]);
  expect(rules({ ...good, part: "NO-SUCH-PART-9" })).toEqual(["missing"]);
});

test("it is printed in HTML and PDF without a further line of code", async () => {
  const judged = judgeWith(good);
  const publication = await layOut(judged);
  const page = publication.pages.find(({ url }) => url === "gasket/g-G-.html" || url === "gasket/g-G.html");
  expect(page?.blocks.some((block) => block.type === "heading" && block.text.startsWith("G-01"))).toBe(true);
  const site = await allFiles(siteFiles(publication));
  expect(String(site.get(page?.url ?? ""))).toContain("DN 50 soft sheet");
  const small = {
    ...publication,
    pages: publication.pages.filter((one) => one === page || one.url === "index.html"),
    originals: [],
  };
  expect(
    (await bookPdf({ ...small, pages: withoutForeignLinks(small) }, () => new Uint8Array())).length,
  ).toBeGreaterThan(1000);
});

/** A part of a book links to pages it does not have; the PDF refuses that, so the page alone is enough here. */
function withoutForeignLinks(publication: Publication): Publication["pages"] {
  return publication.pages.map((page) => ({
    ...page,
    blocks: page.blocks.filter((block) => block.type === "heading"),
  }));
}

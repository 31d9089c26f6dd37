import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDocument } from "pdf-lib";
import { describe, expect, test } from "vitest";
import { folders } from "../../demo-data/folders.ts";
import { comparisonsOf } from "../../src/model/comparison.ts";
import { originalsAmong } from "../../src/model/read-from.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";

const root = join(import.meta.dirname, "../..");
const folderOf = (name: string) => join(root, "demo-data", name, "book");

function filesIn(dir: string): string[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(dir.length + 1)
        .replaceAll("\\", "/"),
    )
    .sort();
}

const bytes = (content: string | Uint8Array) => Buffer.from(content);

describe.each(folders)("$folder is made by the script of facts", ({ folder: name, make }) => {
  const folder = join(root, "demo-data", name);

  test("byte for byte, nothing more and nothing less", async () => {
    const made = await make();
    expect(filesIn(folder)).toEqual([...made.keys()].sort());
    const differing = [...made].filter(([path, content]) => !bytes(content).equals(readFileSync(join(folder, path))));
    expect(differing.map(([path]) => path)).toEqual([]);
    // Two hundred papers are drawn; a busy machine takes minutes.
  }, 240_000);

  test("every original says that its data are invented, and is drawn sparingly: 20 kB each, one with another", async () => {
    const originals = filesIn(folder).filter((path) => path.startsWith("files/"));
    let size = 0;
    for (const path of originals) {
      const content = readFileSync(join(folder, path));
      size += content.length;
      const document = await PDFDocument.load(content, { updateMetadata: false });
      expect(document.getSubject()).toBe("Demonstration, invented data");
      expect(document.getPageCount()).toBeGreaterThan(0);
    }
    expect(originals.length).toBeGreaterThan(8);
    expect(size / originals.length).toBeLessThan(20_000);
  });
});

/** Kinds that have no paper of their own. */
const withoutPaper = ["book", "issue", "organisation", "original", "person"];

test.each(["air-receiver", "boiler"])("every record of the %s names its page, and who compared the two", (name) => {
  const { records, kinds } = readBook(folderOf(name));
  const originals = originalsAmong(records);
  const bare = records
    .filter(({ kind }) => !withoutPaper.includes(kind))
    .filter((record) => {
      // A part may be read from its drawing and, for its measured wall, from a report.
      const stands = new Set(comparisonsOf(record, kinds.get(record.kind), originals).map(({ state }) => state));
      return record.value["source"] === undefined || [...stands].join() !== "compared";
    });
  expect(bare.map(({ kind, id }) => `${kind} ${id}`)).toEqual([]);
});

test("the interim book holds records of the final one only", () => {
  const last = new Set(readBook(folderOf("air-receiver")).records.map(({ kind, id }) => `${kind} ${id}`));
  const early = readBook(folderOf("air-receiver-interim")).records.map(({ kind, id }) => `${kind} ${id}`);
  expect(early.filter((address) => !last.has(address))).toEqual([]);
  expect(early.length).toBeLessThan(last.size);
});

test("the starter is sound in form, and lacks its equipment first", () => {
  const read = readBook(join(root, "records"));
  expect([...read.fatal, ...read.findings]).toEqual([]);
  const { findings, counts } = judgeBook(read);
  expect(counts.nonconformity).toBe(0);
  expect(findings.some(({ key }) => key.includes("equipment"))).toBe(true);
});

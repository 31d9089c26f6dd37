import { existsSync, mkdtempSync, readdirSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PDFDocument } from "pdf-lib";
import { afterAll, describe, expect, test } from "vitest";
import { blocks } from "../../src/model/finding.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import { judgeBook, publishBook, readBook } from "../../src/pipeline.ts";
import { newSeal } from "../../src/publish/issue/hash-list.ts";
import { reportedBook } from "../../src/report/report.ts";
import { allFiles } from "../support/all-files.ts";
import { copyBook } from "../support/copy-book.ts";
import { boilerBook, demoBook } from "../support/demo-book.ts";
import { mutateBook } from "../support/mutations.ts";

/** How many mutated books of each sort are published; a search by hand sets more. */
const runs = Number(process.env["MUTATED_BOOKS"] ?? 2);
const first = Number(process.env["MUTATED_FROM"] ?? 1);
const starter = join(import.meta.dirname, "../../records");

const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-mutated-")));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

async function publishMutated(book: string, seed: number): Promise<void> {
  const copy = join(dir, String(seed));
  copyBook(book, copy);
  // A few originals are enough: that the others are missing is one more thing to say.
  for (const [at, name] of (existsSync(join(copy, "files"))
    ? readdirSync(join(copy, "files"), { withFileTypes: true })
    : []
  ).entries())
    if (at > 2) rmSync(join(copy, "files", name.name), { recursive: true });
  const done = mutateBook(copy, seed);
  try {
    const read = readBook(copy);
    if (read.fatal.length > 0) return;
    const judged = judgeBook(read);
    const files = await allFiles(publishBook(judged));
    const { number, revision, state, fingerprint } = reportedBook(judged);
    const seal = newSeal({ format: 1, holds: "issue", number, revision, state, fingerprint, tool: "t" });
    for (const file of files) seal.add(file);
    expect(seal.close().hashes.has("index.html")).toBe(true);
    expectCounts(judged, files);
    await PDFDocument.load(files.get("book.pdf") as Uint8Array, { updateMetadata: false });
  } catch (error) {
    throw new Error(
      `seed ${seed} (${done.join("; ")}): ${error instanceof Error ? (error.stack ?? "").slice(0, 1500) : String(error)}`,
      { cause: error },
    );
  } finally {
    rmSync(copy, { recursive: true });
  }
}

/** What the pages print of the findings is what was judged: each once, and the counts that are said. */
function expectCounts(judged: JudgedBook, files: ReadonlyMap<string, Uint8Array | string>): void {
  const text = (path: string) => Buffer.from(files.get(path) ?? "").toString("utf8");
  const report = JSON.parse(text("findings.json")) as {
    readonly findings: readonly unknown[];
    readonly counts: JudgedBook["counts"];
  };
  expect(report.findings).toHaveLength(judged.findings.length);
  expect(report.counts).toEqual(judged.counts);
  const printed = Array.from(text("findings.html").matchAll(/<article class="find" id="(f-[^"]*)"/g), ([, id]) => id);
  expect(printed).toHaveLength(judged.findings.length);
  expect(new Set(printed).size).toBe(printed.length);
  const open = judged.findings.filter(blocks);
  const sorts = (["nonconformity", "gap", "query"] as const).map(
    (severity) => open.filter((finding) => finding.severity === severity).length,
  );
  expect(sorts).toEqual([judged.counts.nonconformity, judged.counts.gap, judged.counts.query]);
  const under = /<p class="under">([^<]*)/.exec(text("findings.html"))?.[1] ?? "";
  for (const count of sorts.filter((one) => one > 0)) expect(under).toContain(`${count} `);
}

describe.each([
  ["starter", starter, 3],
  ["receiver", demoBook, 1],
  ["boiler", boilerBook, 0.3],
])("a mutated book of the %s is published", (_name, book, share) => {
  test.each(Array.from({ length: Math.ceil(runs * share) }, (_, at) => first + at))(
    "%i",
    { timeout: 120_000 },
    async (seed) => {
      await publishMutated(book, seed);
    },
  );
});

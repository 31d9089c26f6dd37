import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { copyBook } from "../support/copy-book.ts";
import { runReal } from "../support/real.ts";

let cwd: string;
beforeAll(() => {
  cwd = mkdtempSync(join(tmpdir(), "databook-sheet-"));
  copyBook("demo-data/air-receiver-interim/book", join(cwd, "book"));
});
afterAll(() => {
  rmSync(cwd, { recursive: true, force: true });
});

const run = (...words: readonly string[]) => runReal(cwd, ...words);

test("a record that is there and misses something is not called missing", async () => {
  const at = join(cwd, "book/welding/seams.json");
  const before = readFileSync(at, "utf8");
  writeFileSync(at, before.replace(/,\s*"source": \{[^}]*\}/, ""));
  expect((await run("sheet", "weld-log", "--owed", "--book", "book", "--out", "partly.xlsx")).out).toBe(
    "written partly.xlsx: 8 rows that the book misses, 1 row of records that are there and miss something: original\n",
  );
  writeFileSync(at, before);
});

test("what the book misses is written as a sheet, and read back without a map", async () => {
  expect(await run("sheet", "weld-log", "--owed", "--book", "book")).toMatchObject({
    exit: 0,
    out: "written weld-log-owed.xlsx: 8 rows that the book misses\n",
  });
  const first = readFileSync(join(cwd, "weld-log-owed.xlsx"));
  expect((await run("sheet", "weld-log", "--owed", "--book", "book", "--out", "again.xlsx")).exit).toBe(0);
  expect(readFileSync(join(cwd, "again.xlsx")).equals(first)).toBe(true);
  const wrote = await run("import", "weld-log-owed.xlsx", "--book", "book", "--write");
  expect(wrote).toMatchObject({ exit: 0 });
  expect(wrote.out).toContain("8 new");
  expect(existsSync(join(cwd, "book/imports"))).toBe(false);
  const written = readFileSync(join(cwd, "book/sheets/weld-log-owed/weld-log.json"), "utf8");
  expect(written).toContain('"joint": "C2"');
  expect(written).toContain('"sheet": "weld-log"');
});

test("a file that is there, another ending and a kind that is none are refused", async () => {
  writeFileSync(join(cwd, "kept.xlsx"), "kept");
  expect((await run("sheet", "joint", "--book", "book", "--out", "kept.xlsx")).exit).toBe(2);
  expect(readFileSync(join(cwd, "kept.xlsx"), "utf8")).toBe("kept");
  expect((await run("sheet", "joint", "--book", "book", "--out", "kept.ods")).exit).toBe(2);
  expect((await run("sheet", "jiont", "--book", "book")).err).toContain("nearest: joint");
  expect((await run("sheet", "heat", "--book", "book")).exit).toBe(2);
});

test("without a row it is a form, and what the records say stands in it otherwise", async () => {
  expect((await run("sheet", "part", "--blank", "--book", "book", "--out", "form.xlsx")).out).toContain("no rows");
  expect((await run("sheet", "part", "--book", "book", "--out", "parts.xlsx")).exit).toBe(0);
  const again = await run("import", "parts.xlsx", "--book", "book");
  expect(again).toMatchObject({ exit: 0 });
  expect(again.out).toMatch(/ 0 new, 0 changed, \d+ unchanged/);
});

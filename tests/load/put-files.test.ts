import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import type * as Promises from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { NotWritten, putFiles } from "../../src/load/put-files.ts";

/** What renaming fails with, by the end of the name it would give. */
let fails: Readonly<Record<string, string>> = {};
vi.mock(import("node:fs/promises"), async (original) => {
  const real: typeof Promises = await original();
  return {
    ...real,
    rename: async (from, to) => {
      const code = Object.entries(fails).find(([end]) => String(to).endsWith(end))?.[1];
      if (code !== undefined) throw Object.assign(new Error(code), { code });
      await real.rename(from, to);
    },
  };
});

let dir: string;
beforeEach(() => {
  dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-put-")));
  fails = {};
});
afterEach(() => {
  rmSync(dir, { recursive: true, force: true });
});
const all = () => readdirSync(dir, { recursive: true }).map(String).sort();
const read = (path: string) => readFileSync(join(dir, path), "utf8");

const two = [
  { path: "parts.json", before: "old", after: "new" },
  { path: "sheets/weld-log/weld-log.json", before: undefined, after: "new" },
];

test("all are written, and nothing else is left", async () => {
  writeFileSync(join(dir, "parts.json"), "old");
  await putFiles(dir, two);
  expect(all()).toEqual(["parts.json", "sheets", "sheets/weld-log", "sheets/weld-log/weld-log.json"]);
  expect([read("parts.json"), read("sheets/weld-log/weld-log.json")]).toEqual(["new", "new"]);
});

test("when the second cannot be written, the first gets back what it held", async () => {
  writeFileSync(join(dir, "parts.json"), "old");
  fails = { "weld-log.json": "EIO" };
  await expect(putFiles(dir, two)).rejects.toThrow("EIO");
  expect(all()).toEqual(["parts.json"]);
  expect(read("parts.json")).toBe("old");
});

test("a file that another program holds is named, and nothing is written", async () => {
  writeFileSync(join(dir, "parts.json"), "old");
  fails = { "weld-log.json": "EBUSY" };
  await expect(putFiles(dir, two)).rejects.toThrow(
    new NotWritten(
      '"sheets/weld-log/weld-log.json" cannot be written: another program holds it, or it is not yours to write; nothing was written, close it there and run it again',
    ),
  );
  expect(all()).toEqual(["parts.json"]);
  expect(read("parts.json")).toBe("old");
});

test("a file that was changed since it was read is not overwritten", async () => {
  writeFileSync(join(dir, "parts.json"), "by hand");
  await expect(putFiles(dir, two)).rejects.toThrow(
    '"parts.json" was changed meanwhile; nothing was written, run it again',
  );
  expect([all(), read("parts.json")]).toEqual([["parts.json"], "by hand"]);
});

test("a folder that leads out of the book is not followed, and nothing is made behind it", async () => {
  const away = mkdtempSync(join(tmpdir(), "databook-away-"));
  mkdirSync(join(dir, "book"));
  symlinkSync(away, join(dir, "book", "sheets"));
  await expect(putFiles(join(dir, "book"), two.slice(1))).rejects.toThrow(
    '"sheets/weld-log" leads out of the book; put a folder in its place',
  );
  expect(readdirSync(away)).toEqual([]);
  rmSync(away, { recursive: true });
});

import { join } from "node:path";
import { expect, test } from "vitest";
import { addOriginals, renameOriginal } from "../../src/load/originals-add.ts";
import { reviewOriginals } from "../../src/load/originals-review.ts";
import { loadBook } from "../../src/load/book-files.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { writeIssue } from "../../src/publish/issue/index.ts";
import { corpus } from "../foreign/hostile.ts";
import { greyPng } from "../publish/pdf/awkward.ts";
import { freshFolder, put, sampleFiles, sampleMarker } from "../publish/issue/folders.ts";

const kinds = loadKinds([join(import.meta.dirname, "../../schemas")]);

async function book(): Promise<string> {
  const dir = await freshFolder();
  await put(dir, {
    "book.json": JSON.stringify({ kind: "book", format: 1, id: "TQ423", number: "TQ423-01", title: "Book" }),
    "issue.json": JSON.stringify({
      kind: "issue",
      id: "ISSUE",
      revision: "0",
      state: "interim",
      issueDate: "2026-06-30",
      dataCutOff: "2026-06-18",
    }),
    "files/scans/crt 012.png": greyPng(3, 2),
    "files/notes.txt": "seen",
  });
  return dir;
}

test("records that originals --add writes are read back without objection, and nothing is left to add", async () => {
  const dir = await book();
  const before = loadBook(dir, kinds);
  const { unrecorded } = await reviewOriginals(before);
  expect(unrecorded.map(({ id, path }) => [id, path])).toEqual([
    ["NOTES", "files/notes.txt"],
    ["CRT-012", "files/scans/crt 012.png"],
  ]);
  await addOriginals(dir, unrecorded);
  const after = loadBook(dir, kinds);
  expect(after.findings).toEqual(before.findings);
  expect(after.records.filter(({ kind }) => kind === "original").map(({ id, faulty }) => [id, faulty])).toEqual([
    ["CRT-012", false],
    ["NOTES", false],
  ]);
  expect(await reviewOriginals(after)).toMatchObject({ unrecorded: [], changed: [], missing: [], sound: 2 });
});

test("of hostile and damaged files none is recorded that a check would refuse, whatever name it is given", async () => {
  const dir = await book();
  await put(dir, Object.fromEntries(corpus.map(({ name, bytes }) => [`files/${name}`, bytes])));
  await put(dir, { "files/photo (1).png": greyPng(5, 4), "files/photo (2).pdf": greyPng(6, 4) });
  const { unrecorded, notAdded } = await reviewOriginals(loadBook(dir, kinds));
  for (const { from, path } of unrecorded) if (from !== undefined) await renameOriginal(dir, from, path);
  await addOriginals(dir, unrecorded);
  const after = loadBook(dir, kinds);
  const recorded = new Set(unrecorded.map(({ path }) => path));
  expect([...recorded]).toContain("files/photo-1.png");
  const originals = after.files.filter(({ role }) => role === "original");
  expect(originals.filter(({ path }) => recorded.has(path)).map(({ path, nature }) => [path, nature?.fault])).toEqual(
    [...recorded].sort().map((path) => [path, null]),
  );
  expect(notAdded.map(({ path }) => path).sort()).toEqual(
    originals.flatMap(({ path }) => (recorded.has(path) ? [] : [path])).sort(),
  );
  expect(notAdded.length).toBeGreaterThan(corpus.length / 2);
}, 60_000);

test("issues and findings reports written inside a book are no part of it", async () => {
  const dir = await book();
  const before = loadBook(dir, kinds);
  const series = { type: "series", root: join(dir, "out") } as const;
  await writeIssue(sampleFiles(), sampleMarker(), series, dir);
  await writeIssue(new Map([["findings.json", "{}"]]), sampleMarker(sampleFiles(), { holds: "findings" }), series, dir);
  const after = loadBook(dir, kinds);
  expect(after.files).toEqual(before.files);
  expect(after.findings).toEqual(before.findings);
});

import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { writeIssue } from "../../../src/publish/issue/index.ts";
import { contents, freshFolder, put, sampleFiles, sampleMarker } from "./folders.ts";

const failing = vi.hoisted(() => ({ path: "", rename: "" }));

vi.mock("node:fs/promises", async (original) => {
  const real = await original<typeof import("node:fs/promises")>();
  const writeFile: typeof real.writeFile = (file, ...rest) =>
    failing.path !== "" && typeof file === "string" && file.endsWith(failing.path)
      ? Promise.reject(Object.assign(new Error("no space left on device"), { code: "ENOSPC" }))
      : real.writeFile(file, ...rest);
  const rename: typeof real.rename = (from, to) =>
    failing.rename !== "" && typeof from === "string" && from.includes(failing.rename)
      ? Promise.reject(Object.assign(new Error("busy"), { code: "EBUSY" }))
      : real.rename(from, to);
  return { ...real, writeFile, rename };
});

afterEach(() => {
  failing.path = "";
  failing.rename = "";
});

test("a disk that fills up leaves no trace and no half issue", async () => {
  const root = await freshFolder();
  await put(root, { "records/book.json": "{}" });
  failing.path = "files/crt-012.pdf";
  await expect(
    writeIssue(sampleFiles(), sampleMarker(), { type: "series", root: join(root, "out") }, join(root, "records")),
  ).rejects.toThrow("no space");
  expect(await readdir(root)).toEqual(["records"]);
});

test("an earlier issue comes back when the new one cannot take its place", async () => {
  const root = await freshFolder();
  await put(root, { "records/book.json": "{}" });
  const target = { type: "folder", dir: join(root, "issue") } as const;
  await writeIssue(sampleFiles(), sampleMarker(sampleFiles(), { state: "interim" }), target, join(root, "records"));
  const before = await contents(target.dir);
  failing.rename = ".databook-writing-issue-";
  await expect(
    writeIssue(
      sampleFiles({ "x.html": "x" }),
      sampleMarker(sampleFiles(), { state: "interim" }),
      target,
      join(root, "records"),
    ),
  ).rejects.toThrow("busy");
  expect(await contents(target.dir)).toEqual(before);
  expect((await readdir(root)).sort()).toEqual(["issue", "records"]);
});

import { mkdir, rename, rm, symlink } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { IssueError, sha256, verifyIssue, writeIssue } from "../../../src/publish/issue/index.ts";
import { hashLines } from "../../../src/model/fingerprint.ts";
import { parseHashList } from "../../../src/publish/issue/hash-list.ts";
import { contents, freshFolder, pagePrinting, put, sampleFiles, sampleMarker } from "./folders.ts";

async function published(): Promise<string> {
  const root = await freshFolder();
  const dir = join(root, "issue");
  await put(root, { "records/book.json": "{}" });
  await writeIssue(sampleFiles(), sampleMarker(), { type: "folder", dir }, join(root, "records"));
  return dir;
}

/** Changes files of an issue, and their lines in its hash list alike. */
async function forge(dir: string, files: Readonly<Record<string, string>>): Promise<void> {
  await put(dir, files);
  const list = parseHashList((await contents(dir))["hashes.sha256"] ?? "").files;
  const lines = new Map(list.map(({ path, sha256: hash }) => [path, hash]));
  for (const [path, text] of Object.entries(files)) lines.set(path, sha256(text));
  await put(dir, { "hashes.sha256": hashLines([...lines].map(([path, hash]) => ({ path, sha256: hash }))) });
}

describe("verify", () => {
  test("an untouched issue is sound, also after it was moved", async () => {
    const dir = await published();
    const moved = join(await freshFolder(), "stick");
    await rename(dir, moved);
    const { fingerprint } = sampleMarker();
    expect(await verifyIssue(moved)).toEqual({
      marker: sampleMarker(),
      listed: sampleFiles().size + 1,
      changed: [],
      missing: [],
      extra: [],
      emptyFolders: [],
      faults: [],
      fingerprint: { recorded: fingerprint, recomputed: fingerprint },
      issueFingerprint: sha256((await contents(moved))["hashes.sha256"] ?? ""),
      sound: true,
    });
  });

  test("one flipped bit of a page", async () => {
    const dir = await published();
    await put(dir, { "joint/r-L1.html": "<p>L1 Ù</p>\n" });
    expect(await verifyIssue(dir)).toMatchObject({
      changed: ["joint/r-L1.html"],
      missing: [],
      extra: [],
      faults: [],
      sound: false,
    });
  });

  test("a changed record changes the fingerprint as well", async () => {
    const dir = await published();
    await put(dir, { "evidence/book.json": `{"kind":"Book"}\n` });
    const result = await verifyIssue(dir);
    expect(result.changed).toEqual(["evidence/book.json"]);
    expect(result.fingerprint?.recomputed).not.toBe(result.fingerprint?.recorded);
    expect(result.faults).toEqual([
      "the evidence gives another fingerprint than published.json states",
      "the evidence gives another fingerprint than the page index.html prints",
    ]);
  });

  test("a changed original whose hash was forged in the list is found by the fingerprint", async () => {
    const dir = await published();
    await put(dir, { "files/crt-012.pdf": "forged" });
    const list = (await contents(dir))["hashes.sha256"] ?? "";
    await put(dir, {
      "hashes.sha256": list.replace(/[0-9a-f]{64} {2}files\/crt-012.pdf/, `${sha256("forged")}  files/crt-012.pdf`),
    });
    const result = await verifyIssue(dir);
    expect(result).toMatchObject({ changed: [], missing: [], extra: [], sound: false });
    expect(result.faults).toHaveLength(2);
  });

  test("a removed file and an added one", async () => {
    const dir = await published();
    await rm(join(dir, "joint/r-L1.html"));
    await put(dir, { "joint/r-L2.html": "new" });
    expect(await verifyIssue(dir)).toMatchObject({
      changed: [],
      missing: ["joint/r-L1.html"],
      extra: ["joint/r-L2.html"],
      sound: false,
    });
  });

  test("a link instead of a file is not followed", async () => {
    const dir = await published();
    await rm(join(dir, "index.html"));
    await symlink("joint/r-L1.html", join(dir, "index.html"));
    const result = await verifyIssue(dir);
    expect(result.missing).toEqual(["index.html"]);
    expect(result.faults).toEqual(["index.html is a link or no plain file: it is not read"]);
  });

  test("a damaged marker, a missing marker, a missing list: each is said", async () => {
    const dir = await published();
    await put(dir, { "published.json": "{" });
    expect(await verifyIssue(dir)).toMatchObject({
      marker: null,
      changed: ["published.json"],
      faults: ["published.json is not JSON"],
      sound: false,
    });
    await rm(join(dir, "published.json"));
    expect(await verifyIssue(dir)).toMatchObject({
      missing: ["published.json"],
      faults: ["it holds no published.json"],
      sound: false,
    });
    const other = await published();
    await rm(join(other, "hashes.sha256"));
    const result = await verifyIssue(other);
    expect(result.sound).toBe(false);
    expect(result.faults).toContain("hashes.sha256 is missing: no file can be compared");
  });

  test("a marker that states another fingerprint", async () => {
    const dir = await published();
    const marker = JSON.stringify({ ...sampleMarker(), fingerprint: "0".repeat(64) });
    const list = hashLines(
      Object.entries({ ...(await contents(dir)), "published.json": marker })
        .filter(([path]) => path !== "hashes.sha256" && path !== "files/crt-012.pdf")
        .map(([path, text]) => ({ path, sha256: sha256(text) })),
    );
    await put(dir, { "published.json": marker, "hashes.sha256": list });
    const result = await verifyIssue(dir);
    expect(result.fingerprint).toEqual({ recorded: "0".repeat(64), recomputed: sampleMarker().fingerprint });
    expect(result.faults).toEqual(["the evidence gives another fingerprint than published.json states"]);
  });

  test("a page that prints another fingerprint, though its line in the list says so too", async () => {
    const dir = await published();
    await forge(dir, { "index.html": pagePrinting("a".repeat(64)) });
    const result = await verifyIssue(dir);
    expect(result).toMatchObject({ changed: [], missing: [], extra: [], sound: false });
    expect(result.faults).toEqual(["the evidence gives another fingerprint than the page index.html prints"]);
    await forge(dir, { "index.html": "<p>no fingerprint at all" });
    expect((await verifyIssue(dir)).faults).toEqual(["index.html prints no evidence fingerprint to compare with"]);
  });

  test.each(["joint/r-L1.html", "findings.json", "book.pdf"])(
    "%s changed together with its line in the list moves the issue's fingerprint and nothing else",
    async (path) => {
      const dir = await published();
      const before = await verifyIssue(dir);
      await forge(dir, { [path]: "forged" });
      const after = await verifyIssue(dir);
      expect(after).toMatchObject({ sound: true, fingerprint: before.fingerprint });
      expect(after.issueFingerprint).not.toBe(before.issueFingerprint);
    },
  );

  test("an added empty folder", async () => {
    const dir = await published();
    await mkdir(join(dir, "notes/deep"), { recursive: true });
    expect(await verifyIssue(dir)).toMatchObject({ extra: [], emptyFolders: ["notes/deep"], sound: false });
  });

  test("a hash list that points out of the folder reads nothing there", async () => {
    const dir = await published();
    await put(dir, { "hashes.sha256": `${"a".repeat(64)}  ../records/book.json\n` });
    const result = await verifyIssue(dir);
    expect(result).toMatchObject({ listed: 0, changed: [], missing: [], sound: false });
    expect(result.faults[0]).toMatch(/^hashes.sha256:1: path has the step "\.\."/);
  });

  test("a findings report has hashes, but no evidence to fingerprint", async () => {
    const root = await freshFolder();
    const marker = sampleMarker(sampleFiles(), { holds: "findings" });
    await put(root, { "records/book.json": "{}" });
    const { dir } = await writeIssue(
      new Map([["findings.json", "{}"]]),
      marker,
      { type: "folder", dir: join(root, "a") },
      join(root, "records"),
    );
    expect(await verifyIssue(dir)).toMatchObject({ fingerprint: null, sound: true, listed: 2 });
  });

  test("what is no issue is refused", async () => {
    const root = await freshFolder();
    await mkdir(join(root, "empty"));
    await put(root, { file: "x" });
    for (const name of ["empty", "absent", "file"])
      await expect(verifyIssue(join(root, name))).rejects.toThrow(IssueError);
  });
});

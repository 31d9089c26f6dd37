import { address } from "../support/address.ts";
import { mkdir, readdir, symlink } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { verifyIssue } from "../../src/publish/issue/index.ts";
import { finding, judgedBook, lapsed, type Sample } from "../report/judged.ts";
import { contents, freshFolder, put, sampleMarker } from "../publish/issue/folders.ts";
import { runOn } from "./fakes.ts";

const note = finding({ key: "n", severity: "note" });
const lifted = finding({ key: "l", exception: address("deviation:DV-01") });

async function desk(sample: Sample = {}) {
  const cwd = await freshFolder();
  await put(cwd, { "records/book.json": "{}" });
  // The fake engine publishes the sample issue, so the judged book states that issue's evidence.
  const judged = { ...judgedBook(sample), fingerprint: sampleMarker().fingerprint };
  return { cwd, judged, mark: judged.fingerprint.slice(0, 8) };
}

describe("check", () => {
  test.each([
    ["a nonconformity", [lapsed], 1],
    ["a gap", [finding({ severity: "gap" })], 1],
    ["an open query", [finding({ severity: "query" })], 1],
    ["a gap in an interim issue", [finding({ severity: "gap" })], 1, "interim"],
    ["a note", [note], 0],
    ["an answered nonconformity", [lifted], 0],
    ["nothing", [], 0],
  ] as const)("%s: exit %#", async (_, findings, exit, state: "interim" | "final" = "final") => {
    const ran = await runOn(await desk({ findings, state }), "check");
    expect(ran.exit).toBe(exit);
    expect(ran.err).toBe("");
    expect(ran.stages).toEqual(["reading", "judging"]);
  });

  test("text, json and sarif go to standard output", async () => {
    const setting = await desk();
    expect((await runOn(setting, "check", "records")).out).toContain(
      "\nweld-log/seams.json:41:7 nonconformity welder-qualified\n",
    );
    const json = JSON.parse((await runOn(setting, "check", "records", "--format", "json")).out) as Record<
      string,
      unknown
    >;
    expect(Object.keys(json)).toEqual(["tool", "format", "book", "counts", "adopted", "findings"]);
    const sarif = JSON.parse((await runOn(setting, "check", "--format", "sarif")).out) as Record<string, unknown>;
    expect(sarif["version"]).toBe("2.1.0");
  });

  test("--short and --since: one line each, and what changed since an issue of the same book", async () => {
    const setting = await desk();
    const { out } = await runOn(setting, "check", "--format", "json");
    await put(setting.cwd, {
      "earlier.json": out,
      "other.json": out.replaceAll("TQ423-01", "TQ500-01"),
      "notes.txt": "gone",
    });
    expect((await runOn(setting, "check", "--short")).out).toMatch(/^shop \(1\)\n {2}nonconformity: welder W07 /);
    const ran = await runOn(setting, "check", "--since", "earlier.json", "--short");
    expect(ran).toMatchObject({ exit: 1, err: "" });
    expect(ran.out).toContain("0 new, 1 still open, 0 gone, no findings are answered by an exception now\n");
    for (const [words, message] of [
      [["--since", "lost.json"], '--since "lost.json" is not there; '],
      [["--since", "records"], '--since "records" is no file; '],
      [["--since", "notes.txt"], '--since "notes.txt" is not JSON; '],
      [["--since", "other.json"], '--since "other.json" is of book TQ500-01 (id TQ423), this one is TQ423-01 '],
      [["--since", "earlier.json", "--format", "sarif"], "--since compares in text or json"],
      [["--short", "--format", "json"], "--short is a form of the text"],
    ] as const) {
      const refused = await runOn(setting, "check", ...words);
      expect(refused).toMatchObject({ exit: 2, out: "" });
      expect(refused.err).toContain(message);
    }
  });

  test("no folder, or a book that cannot be judged: exit 2, nothing on standard output", async () => {
    const setting = await desk();
    expect(await runOn(setting, "check", "recrods")).toMatchObject({
      exit: 2,
      out: "",
      err: `there is no folder "recrods"; name the folder that holds book.json\n`,
    });
    expect(await runOn({ ...setting, cwd: await freshFolder() }, "check")).toMatchObject({ exit: 2 });
    const fatal = await runOn(
      { ...setting, fatal: [finding({ rule: "book-present", message: "book.json is missing" })] },
      "check",
    );
    expect(fatal).toMatchObject({ exit: 2, out: "" });
    expect(fatal.err).toContain("book.json is missing");
  });
});

describe("which book", () => {
  test("none named: the book one stands in, from any folder of it, before a folder called records", async () => {
    const setting = await desk({ findings: [note] });
    await put(setting.cwd, { "my-book/book.json": "{}", "my-book/records/shop/x.json": "{}" });
    for (const below of ["", "/records", "/records/shop"]) {
      const ran = await runOn({ ...setting, cwd: join(setting.cwd, "my-book", below) }, "build");
      expect(ran.exit).toBe(0);
      expect(await readdir(setting.cwd)).toContain("out");
    }
    expect(await readdir(join(setting.cwd, "my-book"))).not.toContain("out");
  });

  test("results go beside the book, wherever one stands, and a link to the book leads to the same place", async () => {
    const setting = await desk({ findings: [note] });
    const books = join(setting.cwd, "books");
    await put(books, { "receiver/book.json": "{}" });
    await symlink(join(books, "receiver"), join(setting.cwd, "linked"));
    const elsewhere = { ...setting, cwd: await freshFolder() };
    const first = await runOn(elsewhere, "build", join(books, "receiver"));
    expect(first).toMatchObject({ exit: 0, out: `${books}/out/TQ423-01/0-final-${setting.mark}/index.html\n` });
    expect(await readdir(elsewhere.cwd)).toEqual([]);
    const again = await runOn(setting, "build", "linked");
    expect(again.err).toContain("issue unchanged");
    expect(again.out).toBe(`books/out/TQ423-01/0-final-${setting.mark}/index.html\n`);
    expect((await readdir(setting.cwd)).sort()).toEqual(["books", "linked", "records"]);
  });
});

describe("build", () => {
  test("a sound final book: issue on the shelf, its page on standard output, the same again unchanged", async () => {
    const setting = await desk({ findings: [note] });
    const first = await runOn(setting, "build");
    expect(first).toMatchObject({ exit: 0, out: `out/TQ423-01/0-final-${setting.mark}/index.html\n` });
    expect(first.err).toContain("nothing blocks this final issue\nissue written\nevidence fingerprint ");
    expect((await verifyIssue(join(setting.cwd, "out/TQ423-01", `0-final-${setting.mark}`))).sound).toBe(true);
    const again = await runOn(setting, "build");
    expect(again).toMatchObject({ exit: 0, out: first.out });
    expect(again.err).toContain("issue unchanged");
  });

  test("a blocked final book publishes nothing: a findings report stands beside the earlier issue", async () => {
    const sound = await desk({ findings: [] });
    await runOn(sound, "build");
    const before = await contents(join(sound.cwd, "out/TQ423-01", `0-final-${sound.mark}`));
    let published = 0;
    const ran = await runOn(
      { ...sound, judged: { ...judgedBook(), fingerprint: "b".repeat(64) }, onPublish: () => (published += 1) },
      "build",
    );
    expect(ran).toMatchObject({ exit: 1, out: "out/TQ423-01/findings-bbbbbbbb/findings.html\n" });
    expect(ran.err).toContain("not issued");
    expect(published).toBe(0);
    expect(await contents(join(sound.cwd, "out/TQ423-01", `0-final-${sound.mark}`))).toEqual(before);
    const report = await contents(join(sound.cwd, "out/TQ423-01/findings-bbbbbbbb"));
    expect(Object.keys(report).sort()).toEqual(["findings.html", "findings.json", "hashes.sha256", "published.json"]);
    expect(report["findings.json"]).toContain(`"key": "${lapsed.key}"`);
    expect((await contents(join(sound.cwd, "out/TQ423-01")))["current.html"]).toContain(sound.mark);
  });

  test("a blocked interim book is published all the same, with exit 1", async () => {
    const setting = await desk({ state: "interim" });
    const ran = await runOn(setting, "build");
    expect(ran).toMatchObject({ exit: 1, out: `out/TQ423-01/0-interim-${setting.mark}/index.html\n` });
    expect(ran.err).toContain("1 finding blocks release");
  });

  test("--out writes exactly there; a blocked final leaves it and writes beside it", async () => {
    const setting = await desk({ findings: [] });
    expect(await runOn(setting, "build", "--out", "issue")).toMatchObject({ exit: 0, out: "issue/index.html\n" });
    const before = await contents(join(setting.cwd, "issue"));
    const blocked = await runOn({ ...setting, judged: judgedBook() }, "build", "--out", "issue");
    expect(blocked).toMatchObject({ exit: 1, out: "issue-findings/findings.html\n" });
    expect(await contents(join(setting.cwd, "issue"))).toEqual(before);
    expect((await readdir(setting.cwd)).sort()).toEqual(["issue", "issue-findings", "records"]);
  });

  test.each(["records", "records/out", "."])("--out %s is refused before anything is judged", async (out) => {
    const setting = await desk();
    const before = await contents(setting.cwd);
    const ran = await runOn(setting, "build", "--out", out);
    expect(ran).toMatchObject({ exit: 2, out: "", stages: [] });
    expect(ran.err).toMatch(/^the folder ".*" (is the book itself|lies inside the book|holds the book)/);
    expect(await contents(setting.cwd)).toEqual(before);
  });

  test("--out into a folder of other things is exit 2", async () => {
    const setting = await desk({ findings: [] });
    await put(setting.cwd, { "mine/thesis.txt": "years" });
    expect(await runOn(setting, "build", "--out", "mine")).toMatchObject({ exit: 2, out: "" });
    expect(await contents(join(setting.cwd, "mine"))).toEqual({ "thesis.txt": "years" });
  });

  test("other bytes under the name of an issue are exit 2, and named", async () => {
    const setting = await desk({ findings: [] });
    await runOn(setting, "build");
    await put(setting.cwd, { [`out/TQ423-01/0-final-${setting.mark}/index.html`]: "touched" });
    const ran = await runOn(setting, "build");
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("index.html differs");
  });

  test("both fingerprints are printed, and the line that the history of the next revision needs", async () => {
    const setting = await desk({ findings: [] });
    const { err } = await runOn(setting, "build");
    const { issueFingerprint } = await verifyIssue(join(setting.cwd, "out/TQ423-01", `0-final-${setting.mark}`));
    const grouped = (hash: string) => hash.replaceAll(/(.{4})(?=.)/g, "$1 ");
    expect(err).toContain(`evidence fingerprint ${grouped(setting.judged.fingerprint)}\n`);
    expect(err).toContain(`issue's fingerprint  ${grouped(issueFingerprint ?? "")}\n`);
    expect(err).toContain(`"revision":"0","state":"final"`);
    expect(err).toContain(`"fingerprint":"${setting.judged.fingerprint}"`);
  });

  test("a final revision with other evidence is refused before it is printed, also into another folder", async () => {
    const setting = await desk({ findings: [] });
    await runOn(setting, "build");
    const before = await contents(setting.cwd);
    let published = 0;
    const changed = {
      ...setting,
      judged: { ...setting.judged, fingerprint: "c".repeat(64) },
      onPublish: () => (published += 1),
    };
    for (const words of [["build"], ["build", "--out", "elsewhere"]]) {
      const ran = await runOn(changed, ...words);
      expect(ran).toMatchObject({ exit: 2, out: "" });
      expect(ran.err).toContain(setting.judged.fingerprint);
      expect(ran.err).toContain("c".repeat(64));
      expect(ran.err).toContain("raise the revision in issue.json");
    }
    expect(published).toBe(0);
    expect(await contents(setting.cwd)).toEqual(before);
  });

  test("--format json says what was done and where", async () => {
    const setting = await desk({ findings: [] });
    const { out } = await runOn(setting, "build", "--format", "json");
    expect(JSON.parse(out)).toEqual({
      tool: "databook 0.1.0",
      format: 1,
      holds: "issue",
      outcome: "written",
      path: `out/TQ423-01/0-final-${setting.mark}`,
      issueFingerprint: (await verifyIssue(join(setting.cwd, "out/TQ423-01", `0-final-${setting.mark}`)))
        .issueFingerprint,
      book: { number: "TQ423-01", revision: "0", state: "final", fingerprint: setting.judged.fingerprint },
      counts: setting.judged.counts,
    });
  });

  test("a fault of the program shows its stack, exit 2", async () => {
    const setting = await desk({ findings: [] });
    const fault = () => {
      throw new TypeError("page without blocks");
    };
    const ran = await runOn({ ...setting, onPublish: fault }, "build");
    expect(ran.exit).toBe(2);
    expect(ran.err).toMatch(/this is a fault of the program, not of the book:\nTypeError: page without blocks\n +at /);
    await mkdir(join(setting.cwd, "x"));
    expect(await readdir(setting.cwd)).toEqual(["records", "x"]);
  });
});

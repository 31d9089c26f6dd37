import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { mkdir, readdir, readFile, rename, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  checkTarget,
  IssueError,
  refuseSecond,
  seriesOf,
  verifyIssue,
  writeIssue,
  type Marker,
} from "../../../src/publish/issue/index.ts";
import { clearLeftovers } from "../../../src/publish/issue/leftovers.ts";
import { contents, freshFolder, put, sampleFiles, sampleMarker } from "./folders.ts";

const mark = sampleMarker().fingerprint.slice(0, 8);

async function place() {
  const root = await freshFolder();
  const book = join(root, "records");
  await put(book, { "book.json": "{}", "issue.json": "{}" });
  const series = { type: "series", root: join(root, "out") } as const;
  return { root, book, series, issue: join(root, "out/TQ423-01", `0-final-${mark}`) };
}

/** Number of a process that has ended. */
const ended = () => spawnSync("true").pid;

const folder = (dir: string) => ({ type: "folder", dir }) as const;

async function refusal(work: Promise<unknown>): Promise<IssueError> {
  const error: unknown = await work.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  if (!(error instanceof IssueError)) throw new Error(`expected an IssueError, got ${String(error)}`);
  return error;
}

const interim = (changes: Partial<Marker> = {}) => sampleMarker(sampleFiles(), { state: "interim", ...changes });

const findings: ReadonlyMap<string, string> = new Map([
  ["findings.json", "{}"],
  ["findings.html", "<p>"],
]);
const findingsMarker = (): Marker => sampleMarker(sampleFiles(), { holds: "findings" });

describe("in the series", () => {
  test("an issue stands whole under revision, state and fingerprint, and current.html leads to it", async () => {
    const { book, series, issue, root } = await place();
    expect(await writeIssue(sampleFiles(), sampleMarker(), series, book)).toMatchObject({
      dir: issue,
      outcome: "written",
    });
    expect((await verifyIssue(issue)).sound).toBe(true);
    const current = (await contents(join(root, "out/TQ423-01")))["current.html"];
    expect(current).toContain(`content="0; url=0-final-${mark}/index.html"`);
    expect(current).toContain(`<a href="0-final-${mark}/index.html">TQ423-01, revision 0, final</a>`);
    expect((await readdir(join(root, "out/TQ423-01"))).sort()).toEqual([`0-final-${mark}`, "current.html"]);
  });

  test("the same bytes again are success and change nothing", async () => {
    const { book, series, issue, root } = await place();
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    const before = await contents(root);
    expect(await writeIssue(sampleFiles(), sampleMarker(), series, book)).toMatchObject({
      dir: issue,
      outcome: "unchanged",
    });
    expect(await contents(root)).toEqual(before);
  });

  test("other bytes under the same name are refused, and named", async () => {
    const { book, series, issue } = await place();
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    await put(issue, { "joint/r-L1.html": "touched", "notes.txt": "mine" });
    const before = await contents(issue);
    const error = await refusal(writeIssue(sampleFiles(), sampleMarker(), series, book));
    expect(error.code).toBe("differs");
    expect(error.message).toContain("joint/r-L1.html differs, notes.txt is extra");
    expect(await contents(issue)).toEqual(before);
  });

  test("a new revision stands beside the earlier one, and current.html follows", async () => {
    const { book, series, issue, root } = await place();
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    const before = await contents(issue);
    await writeIssue(sampleFiles(), sampleMarker(sampleFiles(), { revision: "1" }), series, book);
    expect(await contents(issue)).toEqual(before);
    expect((await contents(join(root, "out/TQ423-01")))["current.html"]).toContain(`url=1-final-${mark}/`);
  });

  test("current.html escapes what the records say", async () => {
    const { book, series, root } = await place();
    await writeIssue(sampleFiles(), sampleMarker(sampleFiles(), { number: `A"><script>` }), series, book);
    const current = (await contents(join(root, "out/A-script")))["current.html"];
    expect(current).toContain("A&quot;&gt;&lt;script&gt;");
    expect(current).not.toContain("<script>");
  });

  test("what interrupted runs left is removed, whatever they wrote; what a running process holds is not", async () => {
    const { book, series, issue, root } = await place();
    const parent = join(root, "out/TQ423-01");
    const dead = `.databook-writing-0-final-${mark}-${ended()}-0a1b2cAbCdEf`;
    const alive = `.databook-writing-0-final-${mark}-${process.ppid}-0a1b2cAbCdEf`;
    const earlierRun = `.databook-writing-0-final-${mark}-${process.pid}-0a1b2cAbCdEf`;
    const other = `.databook-writing-1-final-${mark}-${ended()}-0a1b2cAbCdEf`;
    for (const name of [dead, alive, earlierRun, other]) await put(parent, { [`${name}/index.html`]: "half" });
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    const left = (await readdir(parent)).filter((name) => name.startsWith("."));
    expect(left).toEqual([alive]);
    expect((await verifyIssue(issue)).sound).toBe(true);
  });

  test("two runs at once give one issue", async () => {
    const { book, series, issue, root } = await place();
    const both = await Promise.all([1, 2].map(() => writeIssue(sampleFiles(), sampleMarker(), series, book)));
    expect(both.map(({ outcome }) => outcome).sort()).toEqual(["unchanged", "written"]);
    expect((await verifyIssue(issue)).sound).toBe(true);
    expect((await readdir(join(root, "out/TQ423-01"))).filter((name) => name.startsWith("."))).toEqual([]);
  });

  test("a series that a link leads elsewhere is refused", async () => {
    const { book, series, root } = await place();
    await mkdir(join(root, "out"));
    await symlink(book, join(root, "out/TQ423-01"));
    const before = await contents(book);
    expect((await refusal(writeIssue(sampleFiles(), sampleMarker(), series, book))).message).toContain("is a link");
    expect(await contents(book)).toEqual(before);
  });

  test("a series inside the book's folder is fine", async () => {
    const { book } = await place();
    const series = { type: "series", root: join(book, "out") } as const;
    const { dir } = await writeIssue(sampleFiles(), sampleMarker(), series, book);
    expect((await verifyIssue(dir)).sound).toBe(true);
  });

  test("a path that leaves the issue is refused before anything is written", async () => {
    const { book, series, root } = await place();
    const before = await contents(root);
    const error = await refusal(writeIssue(sampleFiles({ "../../escaped.html": "x" }), sampleMarker(), series, book));
    expect(error.code).toBe("path");
    expect(await contents(root)).toEqual(before);
  });
});

describe("a final revision is issued once", () => {
  const other = sampleFiles({ "evidence/book.json": `{"kind":"book","other":true}\n` });

  test("with other evidence it is refused in the series; both fingerprints are named, nothing is left", async () => {
    const { book, series, root } = await place();
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    const before = await contents(root);
    const error = await refusal(writeIssue(other, sampleMarker(other), series, book));
    expect(error.code).toBe("issued");
    expect(error.message).toContain(`evidence fingerprint ${sampleMarker().fingerprint}`);
    expect(error.message).toContain(`evidence fingerprint ${sampleMarker(other).fingerprint}`);
    expect(error.message).toContain("raise the revision in issue.json, and say in its history why");
    expect(await contents(root)).toEqual(before);
  });

  test("so it is in a named folder, and another revision there is replaced", async () => {
    const { book, root } = await place();
    const dir = join(root, "issue");
    await writeIssue(sampleFiles(), sampleMarker(), folder(dir), book);
    expect((await refusal(writeIssue(other, sampleMarker(other), folder(dir), book))).code).toBe("issued");
    const next = sampleMarker(other, { revision: "1" });
    expect(await writeIssue(other, next, folder(dir), book)).toMatchObject({ outcome: "replaced" });
  });

  test("the series is asked also where the issue goes elsewhere", async () => {
    const { book, series, root } = await place();
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    const target = folder(join(root, "elsewhere"));
    const shelfHere = seriesOf(series.root, "TQ423-01");
    expect((await refusal(refuseSecond(sampleMarker(other), target, shelfHere))).code).toBe("issued");
    await refuseSecond(sampleMarker(), target, shelfHere);
    await refuseSecond(sampleMarker(other, { revision: "1" }), target, shelfHere);
    await refuseSecond(sampleMarker(other, { number: "TQ423-02" }), target, shelfHere);
    await refuseSecond(sampleMarker(other, { state: "interim" }), target, shelfHere);
  });

  test("in a named folder the same evidence with other pages is refused while the issue there is untouched", async () => {
    const { book, root } = await place();
    const dir = join(root, "issue");
    await writeIssue(sampleFiles(), sampleMarker(), folder(dir), book);
    const pages = sampleFiles({ "joint/r-L1.html": "<p>other</p>" });
    const error = await refusal(writeIssue(pages, sampleMarker(), folder(dir), book));
    expect(error.message).toContain(`issue's fingerprint ${(await verifyIssue(dir)).issueFingerprint ?? ""}`);
    await put(dir, { "joint/r-L1.html": "damaged" });
    expect(await writeIssue(pages, sampleMarker(), folder(dir), book)).toMatchObject({ outcome: "replaced" });
  });
});

describe("an interim issue in the series", () => {
  test("with other bytes is replaced, and current.html leads to a whole issue at every moment", async () => {
    const { book, series, root } = await place();
    const parent = join(root, "out/TQ423-01");
    await writeIssue(sampleFiles({ "old.html": "old" }), interim(), series, book);
    const seen: boolean[] = [];
    let running = true;
    const watch = (async () => {
      while (running) {
        const page = await readFile(join(parent, "current.html"), "utf8");
        const name = /url=([^"]*)\/index.html/.exec(page)?.[1] ?? "";
        // The page may be exchanged between the two looks; what it says then must stand.
        const stands = existsSync(join(parent, name, "index.html"));
        if (stands || (await readFile(join(parent, "current.html"), "utf8")) === page) seen.push(stands);
      }
    })();
    for (let n = 0; n < 10; n++)
      expect(await writeIssue(sampleFiles({ "n.html": String(n) }), interim(), series, book)).toMatchObject({
        dir: join(parent, `0-interim-${mark}`),
        outcome: "replaced",
      });
    running = false;
    await watch;
    expect(seen.length).toBeGreaterThan(10);
    expect(seen).not.toContain(false);
    expect((await readdir(parent)).sort()).toEqual([`0-interim-${mark}`, "current.html"]);
    expect(await contents(join(parent, `0-interim-${mark}`))).not.toHaveProperty("old.html");
  });

  test("one that somebody put a file into is refused, and named", async () => {
    const { book, series, root } = await place();
    await writeIssue(sampleFiles(), interim(), series, book);
    await put(join(root, "out/TQ423-01", `0-interim-${mark}`), { "notes.txt": "mine" });
    const error = await refusal(writeIssue(sampleFiles({ "x.html": "x" }), interim(), series, book));
    expect(error.message).toContain("notes.txt");
  });

  test("a run that ended half-way is mended by the next, whatever its stage", async () => {
    const { book, series, root } = await place();
    const parent = join(root, "out/TQ423-01");
    const name = `0-interim-${mark}`;
    await writeIssue(sampleFiles(), interim(), series, book);
    const before = await contents(join(parent, name));
    const tail = `${name}-${ended()}-0a1b2cAbCdEf`;
    await rename(join(parent, name), join(parent, `.databook-aside-${tail}`));
    await put(parent, {
      [`.databook-current-${tail}/index.html`]: "whole",
      "current.html": `<a href=".databook-current-${tail}/index.html">`,
    });
    await clearLeftovers(join(parent, "0-interim-ffffffff"));
    expect(await contents(join(parent, name))).toEqual(before);
    expect((await readdir(parent)).sort()).toEqual([name, "current.html"]);
    expect((await contents(parent))["current.html"]).toContain(`"${name}/index.html"`);
  });
});

describe("what an issue folder is like", () => {
  test("it has the mode the user's folders have", async () => {
    const { book, series, issue, root } = await place();
    await mkdir(join(root, "usual"));
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    expect(statSync(issue).mode).toBe(statSync(join(root, "usual")).mode);
    expect(statSync(join(issue, "joint")).mode).toBe(statSync(join(root, "usual")).mode);
  });

  test.each(["out", "out/TQ423-01", `out/TQ423-01/0-final-${mark}`])(
    "a file in the place of %s is a clear refusal and leaves nothing",
    async (path) => {
      const { book, series, root } = await place();
      await put(root, { [path]: "a file" });
      const before = await contents(root);
      const error = await refusal(writeIssue(sampleFiles(), sampleMarker(), series, book));
      expect(error.message).toContain(`"${join(root, path)}" is `);
      expect(error.message).toContain("move it away");
      expect(await contents(root)).toEqual(before);
    },
  );

  test("a folder in the place of current.html is a clear refusal before anything is written", async () => {
    const { book, series, root } = await place();
    await mkdir(join(root, "out/TQ423-01/current.html"), { recursive: true });
    expect((await refusal(writeIssue(sampleFiles(), sampleMarker(), series, book))).message).toContain("current.html");
    expect(await readdir(join(root, "out/TQ423-01"))).toEqual(["current.html"]);
  });

  test("a number without a letter or digit still gives a folder", async () => {
    const { book, series } = await place();
    const { dir } = await writeIssue(sampleFiles(), interim({ number: "帳", revision: "" }), series, book);
    expect(dir).toMatch(/out\/unnamed-[0-9a-f]{8}\/unnamed-e3b0c442-interim-[0-9a-f]{8}$/);
  });
});

describe("in a named folder", () => {
  test("a new or an empty folder gets exactly the issue", async () => {
    const { book, root } = await place();
    expect(await writeIssue(sampleFiles(), sampleMarker(), folder(join(root, "a/b")), book)).toMatchObject({
      outcome: "written",
    });
    await mkdir(join(root, "empty"));
    expect(await writeIssue(sampleFiles(), sampleMarker(), folder(join(root, "empty")), book)).toMatchObject({
      outcome: "written",
    });
    for (const name of ["a/b", "empty"]) expect((await verifyIssue(join(root, name))).sound).toBe(true);
    expect((await readdir(root)).sort()).toEqual(["a", "empty", "records"]);
  });

  test("an earlier issue there is replaced whole, and left alone when equal", async () => {
    const { book, root } = await place();
    const dir = join(root, "issue");
    await writeIssue(sampleFiles({ "old.html": "old" }), interim(), folder(dir), book);
    expect(await writeIssue(sampleFiles(), interim(), folder(dir), book)).toMatchObject({ dir, outcome: "replaced" });
    expect(Object.keys(await contents(dir))).not.toContain("old.html");
    expect((await verifyIssue(dir)).sound).toBe(true);
    expect(await writeIssue(sampleFiles(), interim(), folder(dir), book)).toMatchObject({ dir, outcome: "unchanged" });
    expect((await readdir(root)).sort()).toEqual(["issue", "records"]);
  });

  test("anything else there is refused and stays", async () => {
    const { book, root } = await place();
    await put(join(root, "mine"), { "thesis.txt": "years" });
    await put(join(root, "fake"), { "published.json": `{"name":"something else"}`, "x.txt": "y" });
    await writeFile(join(root, "file"), "text");
    await symlink(join(root, "mine"), join(root, "link"));
    for (const name of ["mine", "fake", "file", "link"]) {
      const before = await contents(root);
      const error = await refusal(writeIssue(sampleFiles(), sampleMarker(), folder(join(root, name)), book));
      expect(error.code).toBe("target");
      expect(await contents(root)).toEqual(before);
    }
  });

  test("a file somebody put into an earlier issue is never thrown away", async () => {
    const { book, root } = await place();
    const dir = join(root, "issue");
    await writeIssue(sampleFiles(), sampleMarker(), folder(dir), book);
    await put(dir, { "comments/review.txt": "mine" });
    const error = await refusal(writeIssue(sampleFiles({ "new.html": "new" }), sampleMarker(), folder(dir), book));
    expect(error.message).toContain("comments/review.txt");
    expect((await contents(dir))["comments/review.txt"]).toBe("mine");
  });

  test.each(["records", "records/issue", "records/deep/er", ".", "link", "link/issue"])(
    "the book itself, a place inside or around it is refused: %s",
    async (name) => {
      const { book, root } = await place();
      await symlink(book, join(root, "link"));
      const before = await contents(root);
      const error = await refusal(writeIssue(sampleFiles(), sampleMarker(), folder(join(root, name)), book));
      expect(error.message).toMatch(/is the book itself|lies inside the book|holds the book/);
      expect((await refusal(checkTarget(folder(join(root, name)), book))).code).toBe("target");
      expect(await contents(root)).toEqual(before);
    },
  );

  test("a folder whose name only begins like the book's is another", async () => {
    const { book, root } = await place();
    expect(await writeIssue(sampleFiles(), sampleMarker(), folder(join(root, "records-issue")), book)).toMatchObject({
      outcome: "written",
    });
  });

  test("an earlier issue that an interrupted run had moved aside comes back before anything else happens", async () => {
    const { book, root } = await place();
    const dir = join(root, "issue");
    await writeIssue(sampleFiles(), sampleMarker(), folder(dir), book);
    const before = await contents(dir);
    await rename(dir, join(root, `.databook-aside-issue-${ended()}-0a1b2cAbCdEf`));
    await put(root, { [`.databook-writing-issue-${ended()}-0a1b2cAbCdEf/index.html`]: "half" });
    await checkTarget(folder(dir), book);
    expect(await contents(dir)).toEqual(before);
    expect((await readdir(root)).sort()).toEqual(["issue", "records"]);
  });

  test("when the new issue already stands, the earlier one left aside is removed", async () => {
    const { book, root } = await place();
    const dir = join(root, "issue");
    await writeIssue(sampleFiles(), sampleMarker(), folder(dir), book);
    await put(root, { [`.databook-aside-issue-${ended()}-0a1b2cAbCdEf/index.html`]: "old" });
    await writeIssue(sampleFiles(), sampleMarker(), folder(dir), book);
    expect((await readdir(root)).sort()).toEqual(["issue", "records"]);
  });
});

describe("findings report of a final issue that did not pass", () => {
  test("stands beside the issues in the series, replaces its like, and touches neither issue nor current.html", async () => {
    const { book, series, issue, root } = await place();
    await writeIssue(sampleFiles(), sampleMarker(), series, book);
    const before = {
      issue: await contents(issue),
      current: (await contents(join(root, "out/TQ423-01")))["current.html"],
    };
    const first = await writeIssue(findings, findingsMarker(), series, book);
    expect(first).toMatchObject({ dir: join(root, "out/TQ423-01", `findings-${mark}`), outcome: "written" });
    const changed = new Map([...findings, ["findings.json", "[]"]]);
    expect(await writeIssue(changed, findingsMarker(), series, book)).toMatchObject({ outcome: "replaced" });
    expect((await contents(first.dir))["findings.json"]).toBe("[]");
    const after = {
      issue: await contents(issue),
      current: (await contents(join(root, "out/TQ423-01")))["current.html"],
    };
    expect(after).toEqual(before);
    expect(await readdir(first.dir)).toContain("published.json");
  });

  test("stands beside a named folder, whose issue stays", async () => {
    const { book, root } = await place();
    const dir = join(root, "issue");
    await writeIssue(sampleFiles(), sampleMarker(), folder(dir), book);
    const before = await contents(dir);
    expect(await writeIssue(findings, findingsMarker(), folder(`${dir}/`), book)).toMatchObject({
      dir: `${dir}-findings`,
      outcome: "written",
    });
    expect(await contents(dir)).toEqual(before);
    await put(root, { "other-findings/mine.txt": "x" });
    expect((await refusal(writeIssue(findings, findingsMarker(), folder(join(root, "other")), book))).code).toBe(
      "target",
    );
  });
});

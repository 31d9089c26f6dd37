import { execFileSync, spawnSync } from "node:child_process";
import {
  mkdtempSync,
  readFileSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { publishedPath } from "../../src/model/record.ts";
import { sha256 } from "../../src/model/fingerprint.ts";
import { copyBook } from "../support/copy-book.ts";
import { demoBook, interimBook, sound } from "../support/demo-book.ts";

/** The command as a reader runs it, on the compiled program: `npm test` builds it first. */
const cli = join(import.meta.dirname, "../../dist/src/bundled/cli.js");
const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-issue-")));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

function databook(args: readonly string[], environment: Readonly<Record<string, string>> = {}) {
  return spawnSync(process.execPath, [cli, ...args], {
    encoding: "utf8",
    env: { ...process.env, ...environment },
    cwd: dir,
  });
}

const has = (tool: string) => spawnSync("which", [tool]).status === 0;
/** A system tool that is absent skips its test by name; in CI nothing may be skipped. */
const withTool = (tool: string) => test.skipIf(!has(tool) && process.env["CI"] === undefined);

function filesIn(at: string): Map<string, Buffer> {
  const walk = (folder: string): string[] =>
    readdirSync(folder).flatMap((name) =>
      statSync(join(folder, name)).isDirectory() ? walk(join(folder, name)) : [join(folder, name)],
    );
  return new Map(walk(at).map((path) => [relative(at, path), readFileSync(path)]));
}

const issue = join(dir, "issue");
const pdf = join(issue, "book.pdf");

beforeAll(() => {
  const done = databook(["build", demoBook, "--out", issue]);
  expect(done.stderr + done.stdout).toContain("issue");
  expect(done.status).toBe(0);
});

describe("the issue of the demonstration", () => {
  test("is verified by its own command and by sha256sum", () => {
    expect(databook(["verify", issue]).status).toBe(0);
    expect(() => execFileSync("sha256sum", ["-c", "--quiet", "hashes.sha256"], { cwd: issue })).not.toThrow();
  });

  test("has the same bytes whatever the time zone and the locale", () => {
    const other = join(dir, "other");
    expect(
      databook(["build", demoBook, "--out", other], {
        TZ: "Pacific/Auckland",
        LANG: "tr_TR.UTF-8",
        LC_ALL: "tr_TR.UTF-8",
      }).status,
    ).toBe(0);
    const [first, second] = [filesIn(issue), filesIn(other)];
    expect([...second.keys()].sort()).toEqual([...first.keys()].sort());
    expect(
      [...first].filter(([path, bytes]) => second.get(path)?.equals(bytes) !== true).map(([path]) => path),
    ).toEqual([]);
  });

  test("holds every page of every record, and the originals byte for byte", () => {
    const files = filesIn(issue);
    expect(files.has("index.html")).toBe(true);
    const originals = sound.loaded.files.filter(({ role }) => role === "original");
    expect(originals.length).toBeGreaterThan(60);
    const differs = originals.filter((file) => {
      const bytes = readFileSync(join(sound.loaded.dir, file.lies ?? file.path));
      return files.get(publishedPath(file))?.equals(bytes) !== true;
    });
    expect(differs.map(({ path }) => path)).toEqual([]);
  });

  withTool("qpdf")("has a PDF that qpdf finds sound", () => {
    expect(execFileSync("qpdf", ["--check", pdf], { encoding: "utf8" })).toContain(
      "No syntax or stream encoding errors found",
    );
  });

  withTool("pdftotext")("has a PDF that poppler reads: cover, calculation sheets, page x of y", () => {
    const text = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8", maxBuffer: 1 << 28 });
    for (const wanted of [
      "TQ423-01",
      "Cylindrical shell under internal pressure",
      "demonstration, invented data",
      "page 2 of",
    ])
      expect(text).toContain(wanted);
    const fonts = execFileSync("pdffonts", [pdf], { encoding: "utf8" }).split("\n").slice(2).filter(Boolean);
    expect(fonts.length).toBeGreaterThan(3);
  });

  withTool("mutool")("has a PDF that mupdf reads without complaint, with bookmarks", () => {
    const outline = spawnSync("mutool", ["show", pdf, "outline"], { encoding: "utf8" });
    expect(outline.stderr).toBe("");
    expect(outline.stdout).toContain("Welding");
  });
});

test("the interim issue says so on every page and is published although evidence is not due", () => {
  const out = join(dir, "interim");
  expect(databook(["build", interimBook, "--out", out]).status).toBe(0);
  const pages = [...filesIn(out)].filter(([path]) => path.endsWith(".html"));
  expect(
    pages.filter(([, bytes]) => !bytes.toString("utf8").includes("not for acceptance")).map(([path]) => path),
  ).toEqual([]);
});

test("an interim book with a scan lost and one badly named is issued, and says so in their place", () => {
  const book = join(dir, "lost");
  copyBook(interimBook, book);
  const originals = [...filesIn(join(book, "files")).keys()].filter((path) => path.endsWith(".pdf"));
  const [lost = "", other = ""] = originals;
  rmSync(join(book, "files", lost));
  renameSync(join(book, "files", other), join(book, "files/Scan (1).pdf"));
  const out = join(dir, "lost-issue");
  const done = databook(["build", book, "--out", out]);
  expect(done.stderr).not.toContain("fault of the program");
  expect(done.status).toBe(1);
  const pages = [...filesIn(out)].filter(([path]) => path.endsWith(".html")).map(([, bytes]) => bytes.toString("utf8"));
  for (const path of [lost, other]) {
    const named = pages.filter((page) => page.includes(`<code>files/${path}</code>`));
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((page) => !page.includes("The file is not in this book."))).toEqual([]);
  }
  expect(readFileSync(join(out, "integrity.html"), "utf8")).toMatch(
    /files\/Scan \(1\)\.pdf<\/a>, which lies here as files\/Scan-1-[0-9a-f]{8}\.pdf/,
  );
  expect(databook(["verify", out]).status).toBe(0);
});

test("verify reads the fingerprint the pages print, and --expect tells a page changed with its line in the list", () => {
  const copy = join(dir, "copy");
  execFileSync("cp", ["-r", issue, copy]);
  const fingerprint = sha256(readFileSync(join(copy, "hashes.sha256")));
  expect(databook(["verify", copy, "--expect", fingerprint]).status).toBe(0);
  const forge = (path: string, text: string) => {
    const list = readFileSync(join(copy, "hashes.sha256"), "utf8");
    const line = list.split("\n").find((one) => one.endsWith(`  ${path}`)) ?? "";
    writeFileSync(join(copy, path), text);
    writeFileSync(join(copy, "hashes.sha256"), list.replace(line, `${sha256(text)}  ${path}`));
  };
  const front = readFileSync(join(copy, "index.html"), "utf8");
  forge("index.html", front.replace("Manufacturing data book", "Manufacturing data-book"));
  expect(databook(["verify", copy]).status).toBe(0);
  expect(databook(["verify", copy, "--expect", fingerprint]).status).toBe(1);
  const [first = ""] = /(?<=<li>)[0-9a-f]{4}(?=<\/li>)/.exec(front) ?? [];
  forge("index.html", front.replace(`<li>${first}</li>`, "<li>0000</li>"));
  const page = databook(["verify", copy]);
  expect(page.status).toBe(1);
  expect(page.stdout).toContain("the evidence gives another fingerprint than the page index.html prints");
});

test("a final revision with other evidence is refused where the first stands, with both fingerprints", () => {
  const book = join(dir, "again");
  copyBook(demoBook, book);
  writeFileSync(join(book, "files/note.txt"), "one more original");
  const before = filesIn(issue);
  const done = databook(["build", book, "--out", issue]);
  expect(done.status).toBe(2);
  expect(done.stderr.match(/evidence fingerprint [0-9a-f]{64}/g)).toHaveLength(2);
  expect(done.stderr).toContain("raise the revision in issue.json");
  expect([...filesIn(issue)].filter(([path, bytes]) => before.get(path)?.equals(bytes) !== true)).toEqual([]);
});

test("a final book with a gap leaves the earlier issue untouched and writes a findings report beside it", () => {
  const book = join(dir, "broken");
  copyBook(demoBook, book);
  rmSync(join(book, "files"), { recursive: true });
  const before = filesIn(issue);
  const done = databook(["build", book, "--out", issue]);
  expect(done.status).toBe(1);
  expect([...filesIn(issue)].filter(([path, bytes]) => before.get(path)?.equals(bytes) !== true)).toEqual([]);
  expect(filesIn(`${issue}-findings`).has("findings.html")).toBe(true);
});

import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { listBook } from "../../src/load/walk.ts";
import { folder } from "./folder.ts";

const brief = (dir: string, most?: number) =>
  listBook(dir, most === undefined ? {} : { most }).findings.map(
    ({ place, rule, message }) => `${place.file}: ${rule}: ${message}`,
  );

describe("a book folder", () => {
  it("is listed in code-point order, without what is none of its evidence", () => {
    const dir = folder({
      "book.json": "{}",
      "b/2.json": "{}",
      "b/10.json": "{}",
      "B/x.JSON": "{}",
      "a.json": "{}",
      ".git/x.json": "{}",
      ".hidden.json": "{}",
      "node_modules/p/package.json": "{}",
      "b/node_modules/p/package.json": "{}",
      "signing/s.json": "{}",
      "out/current.html": "",
      "issued/published.json": "{}",
      "issued/evidence/a.json": "{}",
      "README.md": "",
      "b/notes.txt": "",
      "list.CSV": "",
      "files/b.pdf": "b",
      "files/a/c.json": "{}",
      "sub/files/d.json": "{}",
      "sub/signing/e.json": "{}",
    });
    const { records, originals, unreadable } = listBook(dir);
    expect(records).toEqual([
      "B/x.JSON",
      "a.json",
      "b/10.json",
      "b/2.json",
      "book.json",
      "sub/files/d.json",
      "sub/signing/e.json",
    ]);
    expect(originals).toEqual(["files/a/c.json", "files/b.pdf"]);
    expect(unreadable).toEqual([]);
    expect(brief(dir)).toEqual(['b: file-path: "b" and "B" differ only by case']);
  });
  it("says what it does not read", () => {
    const dir = folder({ "scan.pdf": "", "old.json.bak": "", "guide.md": "" });
    expect(listBook(dir).findings.map(({ severity, message }) => [severity, message])).toEqual([
      ["note", '"old.json.bak" is not read'],
      ["note", '"scan.pdf" is not read'],
    ]);
  });
  it("holds no marker of a published issue, at its top or among the originals", () => {
    expect(brief(folder({ "published.json": "{}", "a.json": "{}" }))).toEqual([
      "published.json: file-path: published.json stands in the book",
    ]);
    expect(brief(folder({ "files/old/published.json": "{}" }))).toEqual([
      "files/old/published.json: file-path: files/old/published.json stands in the book",
    ]);
  });
  it("has at most so many files", () => {
    const dir = folder({ "a.json": "{}", "b.json": "{}", "files/c.pdf": "", "files/d.pdf": "" });
    expect(brief(dir, 4)).toEqual([]);
    expect(brief(dir, 2)).toEqual(["files/c.pdf: file-readable: the book holds more than 2 files"]);
    expect(listBook(dir, { most: 2 }).unreadable).toEqual(["files/c.pdf"]);
  });
});

describe("names", () => {
  it.each([
    ["ä.json", '"ä" (U+00E4)'],
    ["a:b.json", '":" (U+003A)'],
    ["a\u202eb.json", "U+202E"],
    ["a\nb.json", "U+000A"],
    ["🙂.json", '"🙂" (U+1F642)'],
    [" a.json", "begins or ends with a space"],
    ["NUL.json", "device"],
    ["com1", "device"],
    ["end.", "ends with a point"],
  ])("that are not portable are findings: %j", (name, why) => {
    const found = listBook(folder({ [`files/${name}`]: "" })).findings;
    expect(found.map(({ rule, place }) => [rule, place.file])).toEqual([["file-path", `files/${name}`]]);
    expect(found[0]?.why).toContain(why);
    expect(found[0]?.message).not.toMatch(/[\n\u202e]/);
  });
  it.each(["a b.json", "W-07_2.x.json", "null.json", "com10.json", "console.json"])(
    "that are portable are not: %s",
    (name) => {
      expect(brief(folder({ [name]: "{}" }))).toEqual([]);
    },
  );
  it("of a folder are said once, its files are read all the same", () => {
    const { records, findings } = listBook(folder({ "ü/a.json": "{}", "ü/b.json": "{}" }));
    expect([records.length, findings.length]).toEqual([2, 1]);
  });
  it("make no path of more than 200 signs", () => {
    const long = `${"d".repeat(99)}/${"e".repeat(95)}`;
    expect(brief(folder({ [`${long}.json`]: "{}" }))).toEqual([]);
    expect(brief(folder({ [`${long}f.json`]: "{}" }))[0]).toMatch(/has 201 signs; expected at most 200$/);
  });
});

describe("links", () => {
  const linked = (make: (dir: string, outside: string) => void) => {
    const dir = folder({ "a/x.json": "{}", "files/s.pdf": "" });
    make(dir, folder({ "secret.json": "{}" }));
    const { findings, unreadable, records } = listBook(dir);
    expect(records).toEqual(["a/x.json"]);
    expect(unreadable).toEqual(findings.map(({ place }) => place.file));
    return findings.map(({ place, rule, message }) => `${place.file}: ${rule}: ${message}`);
  };
  it("out of the book are refused, to files and to folders", () => {
    expect(linked((dir, outside) => symlinkSync(join(outside, "secret.json"), join(dir, "l.json")))).toEqual([
      "l.json: file-link: a link leads out of the book",
    ]);
    expect(linked((dir, outside) => symlinkSync(outside, join(dir, "files", "l")))).toEqual([
      "files/l: file-link: a link leads out of the book",
    ]);
  });
  it("to a folder whose name only begins like the book's lead out of it", () => {
    const dir = folder({ "book/a.json": "{}", "book-2/b.json": "{}" });
    symlinkSync(join(dir, "book-2"), join(dir, "book", "l"));
    expect(brief(join(dir, "book"))).toEqual(["l: file-link: a link leads out of the book"]);
  });
  it("in a circle end", () => {
    expect(linked((dir) => symlinkSync("..", join(dir, "a", "up")))).toEqual([
      'a/up: file-link: a link leads back to the folder "." it stands in',
    ]);
    expect(linked((dir) => symlinkSync("self", join(dir, "self")))).toEqual([
      "self: file-link: a link leads nowhere: its links lead in a circle",
    ]);
  });
  it("within the book and to nowhere are refused", () => {
    expect(linked((dir) => symlinkSync("a/x.json", join(dir, "y.json")))).toEqual([
      'y.json: file-link: a link leads to "a/x.json", which is in the book already',
    ]);
    expect(linked((dir) => symlinkSync("a", join(dir, "b")))).toEqual([
      'b: file-link: a link leads to "a", which is in the book already',
    ]);
    expect(linked((dir) => symlinkSync("gone", join(dir, "b")))).toEqual([
      "b: file-link: a link leads nowhere: it is no longer there",
    ]);
  });
  it("are not the only things that are no files", () => {
    const dir = folder({ "a.json": "{}" });
    execFileSync("mkfifo", [join(dir, "pipe.json")]);
    expect(brief(dir)).toEqual(['pipe.json: file-link: "pipe.json" is a device or a pipe']);
  });
});

it("a folder that cannot be read is a finding, the others are read", () => {
  const dir = folder({ "a.json": "{}", "z.json": "{}" });
  // A name that is no UTF-8 comes back from the system changed, and so cannot be opened, whoever runs this.
  const name = Buffer.concat([Buffer.from(`${dir}/`), Buffer.from([0x66, 0xff])]);
  mkdirSync(name);
  writeFileSync(Buffer.concat([name, Buffer.from("/b.json")]), "{}");
  const { records, unreadable, findings } = listBook(dir);
  expect(records).toEqual(["a.json", "z.json"]);
  expect(unreadable).toEqual(["f\ufffd"]);
  expect(findings.map(({ rule }) => rule)).toEqual(["file-path", "file-readable"]);
});

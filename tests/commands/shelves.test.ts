import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { runIn, runReal } from "../support/real.ts";
import { sha256 } from "../../src/model/fingerprint.ts";

const root = join(import.meta.dirname, "../..");
const made: string[] = [];
afterAll(() => {
  for (const dir of made) rmSync(dir, { recursive: true, force: true });
});

let cwd = "";
const put = (path: string, content: unknown) => {
  mkdirSync(dirname(join(cwd, path)), { recursive: true });
  writeFileSync(join(cwd, path), typeof content === "string" ? content : `${JSON.stringify(content, null, 2)}\n`);
};

/** The starter's book, with a person on a shelf who is named by the book. */
beforeEach(() => {
  cwd = realpathSync(mkdtempSync(join(tmpdir(), "databook-shelf-")));
  made.push(cwd);
  cpSync(join(root, "records"), join(cwd, "book"), { recursive: true });
  const book = JSON.parse(readFileSync(join(cwd, "book/book.json"), "utf8")) as object;
  put("book/book.json", { ...book, maker: "MAKER", shelves: [{ name: "shop", folder: "../shop" }] });
  put("shop/maker.json", { kind: "organisation", id: "MAKER", name: "Maker Ltd", attachments: ["SCAN"] });
  put("shop/scan.json", {
    kind: "original",
    id: "SCAN",
    path: "files/a.txt",
    sha256: sha256("a"),
    mediaType: "text/plain",
    pages: 1,
    title: "a",
  });
  put("shop/files/a.txt", "a");
});

describe("originals", () => {
  test("of a book lists those of its shelves that are changed or missing, and writes nothing there", async () => {
    put("shop/files/new.txt", "new");
    put("shop/files/a.txt", "b");
    const { exit, out } = await runReal(cwd, "originals", "book", "--add");
    expect(exit).toBe(1);
    expect(out).toContain("changed      shelves/shop/files/a.txt: SCAN records ");
    expect(out).not.toContain("new.txt");
    expect(existsSync(join(cwd, "shop/originals"))).toBe(false);
    rmSync(join(cwd, "shop/files/a.txt"));
    expect((await runReal(cwd, "originals", "book")).out).toContain(
      "missing      shelves/shop/files/a.txt: SCAN names it",
    );
  });

  test("of a shelf that is named itself records its new files there", async () => {
    put("shop/files/new.txt", "new");
    const { exit, out } = await runReal(cwd, "originals", "shop", "--add");
    expect(out).toContain("added        files/new.txt as NEW");
    expect(exit).toBe(0);
    expect(JSON.parse(readFileSync(join(cwd, "shop/originals/added-1.json"), "utf8"))).toMatchObject({
      kind: "original",
      records: [{ id: "NEW", path: "files/new.txt", sha256: sha256("new") }],
    });
  });

  test("of a book whose shelf is not there says so, and so does every command that answers about what is absent", async () => {
    renameSync(join(cwd, "shop"), join(cwd, "away"));
    const clause = 'the shelf "shop" is not there: there is no folder "../shop"';
    const line = `not read: ${clause}; what stands there is not known here\n`;
    const originals = await runReal(cwd, "originals", "book");
    expect([originals.exit, originals.out]).toEqual([1, expect.stringContaining(`0 missing\n${line}`)]);
    const json = JSON.parse((await runReal(cwd, "originals", "book", "--format", "json")).out) as object;
    expect(json).toMatchObject({ notRead: [clause] });
    const sheet = await runReal(cwd, "sheet", "person", "--owed", "--book", "book");
    expect(sheet.out).toContain(
      `whether the book misses any person cannot be known while not all of it is read\n${line}`,
    );
    const refused = `; it may stand where nothing was read: ${clause}\n`;
    for (const [words, message] of [
      [["trace", "organisation", "MAKER", "--book", "book"], "the book holds no organisation"],
      [["compared", "SCAN", "--by", "P", "--on", "2026-01-12", "--book", "book"], 'there is no original "SCAN"'],
    ] as const) {
      const { exit, err } = await runReal(cwd, ...words);
      expect([exit, err]).toEqual([2, expect.stringContaining(message)]);
      expect(err.endsWith(refused), err).toBe(true);
    }
    expect((await runReal(cwd, "owed", "book", "--owner", "testing")).out).toContain(line);
    put("parts.csv", "Id,Name\nP01,Shell\n");
    const imported = await runReal(cwd, "import", "parts.csv", "--book", "book", "--kind", "part");
    expect([imported.exit, imported.err]).toEqual([
      2,
      expect.stringContaining(`as what it holds is not known: ${clause}`),
    ]);
    put("book/people.json", "{");
    expect((await runReal(cwd, "originals", "book")).out).toContain("not read: people.json cannot be read: ");
  });

  test("takes no folder without records for a shelf", async () => {
    put("empty/files/new.txt", "new");
    const { exit, err } = await runReal(cwd, "originals", "empty", "--add");
    expect(exit).toBe(2);
    expect(err).toContain("there is no book.json in the folder");
  });
});

test("check prints a fault at its place on the shelf, and what is not reached as a note", async () => {
  put("shop/maker.json", { kind: "organisation", id: "MAKER", nam: "Maker Ltd" });
  put("shop/other.json", { kind: "person", id: "X1", nam: "x" });
  const { out } = await runReal(cwd, "check", "book");
  expect(out).toMatch(/^shelves\/shop\/maker\.json:4:10 nonconformity record-schema$/m);
  expect(out).toMatch(/^shelves\/shop\/other\.json:4:10 note record-schema$/m);
  expect(out).toContain("nothing in this book reaches the record");
});

test("build writes nothing into a shelf", async () => {
  const { exit, err } = await runReal(cwd, "build", "book", "--out", "shop/issue");
  expect(exit).toBe(2);
  expect(err).toContain('lies inside the shelf "shop"');
  expect((await runReal(cwd, "build", "book", "--out", "shop")).exit).toBe(2);
  expect(existsSync(join(cwd, "shop/issue"))).toBe(false);
});

test("watch judges again when something on a shelf is saved", async () => {
  const [out, err]: [string[], string[]] = [[], []];
  let stop: () => void = () => undefined;
  const stopped = new Promise<void>((resolve) => (stop = resolve));
  const ended = runIn(
    { cwd, out, err, interrupted: (failed) => Promise.race([failed, stopped]) },
    ...["watch", "book", "--port", "18620"],
  );
  const until = async (text: string) => {
    for (let tries = 0; tries < 400 && !out.join("").includes(text); tries++)
      await new Promise((resolve) => setTimeout(resolve, 50));
    expect(out.join("")).toContain(text);
  };
  await until("open ");
  // The system needs a moment from being told of a folder to watching it.
  await new Promise((resolve) => setTimeout(resolve, 1000));
  put("shop/maker.json", { kind: "organisation", id: "MAKER", name: "Maker Ltd", nam: "x" });
  await until("shelves/shop/maker.json:5:10 nonconformity");
  stop();
  await ended;
}, 60_000);

test("the next book names the same shelves, from where it stands, and takes nothing off them", async () => {
  const { exit, out } = await runReal(
    cwd,
    ...["new", "jobs/next", "--from", "book", "--order-date", "2026-09-01", "--number", "N-2", "--title", "Next"],
  );
  expect([exit, out]).toEqual([
    exit,
    expect.stringContaining("of these organisation 1 · original 1 stay on the shelves"),
  ]);
  expect(JSON.parse(readFileSync(join(cwd, "jobs/next/book.json"), "utf8"))).toMatchObject({
    maker: "MAKER",
    shelves: [{ name: "shop", folder: "../../shop" }],
  });
  expect(existsSync(join(cwd, "jobs/next/shelves"))).toBe(false);
  expect((await runReal(cwd, "check", "jobs/next")).out).toContain("shelves/shop/maker.json:1:1 gap missing");
});

test("no book is begun from one whose shelf is away: what it would take from there is not known", async () => {
  renameSync(join(cwd, "shop"), join(cwd, "elsewhere"));
  const { exit, out, err } = await runReal(
    cwd,
    ...["new", "next", "--from", "book", "--order-date", "2026-09-01", "--number", "N-2", "--title", "Next"],
  );
  expect([exit, out, existsSync(join(cwd, "next"))]).toEqual([2, "", false]);
  expect(err).toContain(
    'the shelf "shop" is not there: there is no folder "../shop": what the next book takes from there is not known, and nothing was written',
  );
});

test("what comes along of the record of the book is said, but for what was chosen here", async () => {
  const { out } = await runReal(
    cwd,
    ...["new", "next", "--from", "book", "--order-date", "2026-09-01", "--profile", "cautious"],
  );
  expect(out).toMatch(/^ {2}of the record of the book: register unfired-vessel · maker MAKER$/m);
  expect(out).not.toMatch(/of the record of the book:.*profile/);
});

test("the next book of one that holds a copy of a shelf holds that copy too", async () => {
  mkdirSync(join(cwd, "book/shelves"));
  renameSync(join(cwd, "shop"), join(cwd, "book/shelves/shop"));
  await runReal(
    cwd,
    ...["new", "next", "--from", "book", "--order-date", "2026-09-01", "--number", "N-2", "--title", "Next"],
  );
  expect(readFileSync(join(cwd, "next/files/shelves/shop/a.txt"), "utf8")).toBe("a");
  const { out } = await runReal(cwd, "check", "next");
  expect(out).toContain("found: no nonconformities, 6 gaps, no queries, no notes");
});

test("a shelf of which nothing comes along, that of the last order say, is none of the next book's", async () => {
  const book = JSON.parse(readFileSync(join(cwd, "book/book.json"), "utf8")) as { shelves: readonly object[] };
  put("book/book.json", { ...book, shelves: [...book.shelves, { name: "order", folder: "../order" }] });
  put("order/mark.json", { kind: "piece-mark", id: "MK-1" });
  await runReal(
    cwd,
    ...["new", "next", "--from", "book", "--order-date", "2026-09-01", "--number", "N-2", "--title", "Next"],
  );
  expect(JSON.parse(readFileSync(join(cwd, "next/book.json"), "utf8"))).toMatchObject({
    shelves: [{ name: "shop", folder: "../shop" }],
  });
});

test("a sheet that says otherwise than a record on a shelf is refused: nothing is written there for one book", async () => {
  put("firms.csv", "id,name\nMAKER,Another Ltd\n");
  const { exit, out } = await runReal(
    cwd,
    "import",
    "firms.csv",
    "--kind",
    "organisation",
    "--book",
    "book",
    "--write",
  );
  expect(out).toContain('MAKER stands on the shelf "shop", and the sheet says otherwise');
  expect(exit).toBe(1);
  expect(existsSync(join(cwd, "book/sheets"))).toBe(false);
  expect(readFileSync(join(cwd, "shop/maker.json"), "utf8")).toContain("Maker Ltd");
});

import { mkdirSync, renameSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { loadBook, type BookOnDisk } from "../../src/load/book-files.ts";
import { publishedPath } from "../../src/model/record.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { bookFile, folder, issueFile, ref, schemaFiles, schemaOf, type Files } from "./folder.ts";

const kinds = loadKinds([
  folder(schemaFiles),
  folder({
    "original.schema.json": schemaOf("original", {
      path: ref("shortText", { description: "Path." }),
      sha256: ref("shortText", { description: "Hash." }),
    }),
    "paper.schema.json": schemaOf("paper", {
      about: ref("link", { description: "Part it is about.", "x-link": ["part", "step"], "x-belongs": ["part"] }),
      scan: ref("link", { description: "Scan.", "x-link": ["original"] }),
    }),
    "waiver.schema.json": schemaOf("waiver", { reason: ref("shortText", { description: "Reason." }) }),
  }),
]);

const shop = [{ name: "shop", folder: "../shop" }];
const part = (id: string, more: object = {}) => ({ id, name: `part ${id}`, ...more });
const parts = (...records: object[]) => ({ kind: "part", records: records as never });

/** A book in `book/` with shelves, beside other folders. */
const dirOf = (files: Files, shelves: unknown = shop) =>
  join(
    folder({ "book/book.json": { ...bookFile, shelves: shelves as never }, "book/issue.json": issueFile, ...files }),
    "book",
  );
const load = (files: Files, shelves?: unknown) => loadBook(dirOf(files, shelves), kinds);

const taken = (book: BookOnDisk) =>
  book.records.filter(({ file }) => file.startsWith("shelves/")).map(({ kind, id, file }) => `${kind} ${id} ${file}`);
const found = (book: BookOnDisk) => book.findings.map(({ rule, message }) => `${rule}: ${message}`);
const asides = (book: BookOnDisk) =>
  (book.aside ?? []).map(({ rule, severity, place, message }) => `${rule} ${severity} ${place.file}: ${message}`);

describe("what is reached of a shelf", () => {
  test("is named by the book's own records, and so on; what belongs to it comes with it; the rest stays away", () => {
    const book = load({
      "book/step.json": { kind: "step", id: "S1", records: ["P1"] },
      "shop/parts.json": parts(part("P1", { joins: ["part:P2"] }), part("P2"), part("P3")),
      "shop/papers.json": {
        kind: "paper",
        records: [
          { id: "A1", about: "part:P2", scan: "O1" },
          { id: "A3", about: "part:P3" },
          { id: "A4", about: "step:S1" },
        ],
      },
      "shop/originals.json": {
        kind: "original",
        records: [
          { id: "O1", path: "files/a.txt", sha256: "0" },
          { id: "O2", path: "files/b.txt", sha256: "0" },
        ],
      },
      "shop/files/a.txt": "a",
      "shop/files/b.txt": "b",
    });
    expect(taken(book)).toEqual([
      "original O1 shelves/shop/original/r-O1.json",
      "paper A1 shelves/shop/paper/r-A1.json",
      "part P1 shelves/shop/part/r-P1.json",
      "part P2 shelves/shop/part/r-P2.json",
    ]);
    expect(book.findings).toEqual([]);
    expect(book.aside).toEqual([]);
    expect(
      book.files.filter(({ path }) => path.startsWith("shelves/")).map((file) => `${file.path} ${publishedPath(file)}`),
    ).toEqual([
      "shelves/shop/files/a.txt files/shelves/shop/a.txt",
      "shelves/shop/original/r-O1.json shelves/shop/original/r-O1.json",
      "shelves/shop/paper/r-A1.json shelves/shop/paper/r-A1.json",
      "shelves/shop/part/r-P1.json shelves/shop/part/r-P1.json",
      "shelves/shop/part/r-P2.json shelves/shop/part/r-P2.json",
    ]);
  });

  test("belongs to a record of the book itself, and leads from one shelf to another", () => {
    const book = load(
      {
        "book/parts.json": parts(part("P1")),
        "shop/paper.json": { kind: "paper", id: "A1", about: "part:P1", scan: "O1" },
        "order/original.json": { kind: "original", id: "O1", path: "files/a.txt", sha256: "0" },
      },
      [...shop, { name: "order", folder: "../order" }],
    );
    expect(taken(book)).toEqual([
      "original O1 shelves/order/original/r-O1.json",
      "paper A1 shelves/shop/paper/r-A1.json",
    ]);
  });

  test("is cited as it will stand in an issue, and found where it is written", () => {
    const book = load({
      "book/step.json": { kind: "step", id: "S1", records: ["P2"] },
      "shop/parts.json":
        '{ "kind": "part", "records": [\n{ "id": "P1", "name": "x" },\n{ "form": "slab", "id": "P2",\n "name": "y" } ] }',
    });
    const [fault] = book.findings;
    expect(fault?.place).toEqual({ file: "shelves/shop/part/r-P2.json", pointer: "/form" });
    const place = fault?.place ?? { file: "", pointer: "" };
    expect(book.locator.line(place.file, book.locator.position(place).line)).toBe('  "form": "slab"');
    const written = book.locator.written?.(place) ?? place;
    expect(written).toEqual({ file: "shelves/shop/parts.json", pointer: "/records/1/form" });
    expect(book.locator.position(written)).toMatchObject({ line: 3 });
    expect(book.text("shelves/shop/part/r-P2.json")).toBe(
      '{\n  "kind": "part",\n  "id": "P2",\n  "name": "y",\n  "form": "slab"\n}\n',
    );
  });

  test("does not rest on how the shelf arranges its records", () => {
    const values = (files: Files) =>
      load({ "book/step.json": { kind: "step", id: "S1", records: ["P1"] }, ...files }).files.filter(({ path }) =>
        path.startsWith("shelves/"),
      );
    const one = values({ "shop/parts.json": parts(part("P0"), { name: "part P1", id: "P1" }) });
    expect(values({ "shop/a/P1.json": { kind: "part", $schema: "x", ...part("P1") } })).toEqual(one);
  });
});

describe("ids on both sides", () => {
  test("that clash are both taken in, named or not; what nearly bears a name that is missing too", () => {
    const clash = load({ "book/parts.json": parts(part("P1")), "shop/parts.json": parts(part("P1"), part("P2")) });
    expect(taken(clash)).toEqual(["part P1 shelves/shop/part/r-P1.json"]);
    const near = load({
      "book/step.json": { kind: "step", id: "S1", records: ["P01"] },
      "shop/parts.json": parts(part("P1")),
    });
    expect(taken(near)).toEqual(["part P1 shelves/shop/part/r-P1.json"]);
  });
  test("that stand twice on one shelf get a file each", () => {
    const book = load({
      "book/step.json": { kind: "step", id: "S1", records: ["P1"] },
      "shop/parts.json": parts(part("P1"), part("P1")),
    });
    expect(taken(book)).toEqual(["part P1 shelves/shop/part/r-P1.json", "part P1 shelves/shop/part/r-P1_2.json"]);
  });
  test("that look alike and are not reached are a note", () => {
    const book = load({ "book/parts.json": parts(part("P1")), "shop/parts.json": parts(part("PI")) });
    expect(taken(book)).toEqual([]);
    expect(asides(book)).toEqual([
      'id-distinct note shelves/shop/parts.json: part "P1" and "PI" differ only by case, hyphen, zeros or look-alike signs',
    ]);
  });
});

describe("what is wrong on a shelf", () => {
  test("with a record that is not reached is a note, and blocks nothing", () => {
    const book = load({
      "shop/parts.json": parts({ ...part("P1"), form: "slab" }),
      "shop/step.json": { kind: "step", id: "S1", records: ["p1"] },
    });
    expect(book.findings).toEqual([]);
    expect(asides(book).sort()).toEqual([
      expect.stringMatching(/^link-form note shelves\/shop\/step.json: /u),
      expect.stringMatching(/^record-schema note shelves\/shop\/parts.json: /u),
    ]);
  });
  test("with a file that cannot be read blocks: what is missing may stand in it", () => {
    const book = load({ "shop/a.json": "{", "shop/b.json": { kind: "part", records: [{ name: "no id" }] as never } });
    expect(found(book).map((one) => one.split(":")[0])).toEqual(["file-syntax", "file-record"]);
    expect(book.unreadable).toEqual(["shelves/shop/a.json", "shelves/shop/b.json"]);
  });
  test("is said of a book, an issue, an exception and a further shelf at their places", () => {
    const book = load({
      "shop/book.json": { ...bookFile, id: "B2", shelves: shop as never },
      "shop/issue.json": issueFile,
      "shop/w.json": { kind: "waiver", id: "W1", reason: "x" },
      "shop/shelves/x/p.json": { kind: "part", ...part("P1") },
    });
    expect(found(book)).toEqual([
      'shelf-holds: the shelf "shop" holds a folder of shelves',
      'shelf-holds: the shelf "shop" holds the book "B2"',
      'shelf-holds: the shelf "shop" holds the issue "ISSUE"',
      'shelf-holds: the shelf "shop" holds the waiver "W1"',
    ]);
    expect(taken(book)).toEqual([]);
  });
});

describe("the folder of a shelf", () => {
  const refused = (where: string, files: Files = {}) => found(load(files, [{ name: "shop", folder: where }]));
  test.each([
    ["../shop", 'the shelf "shop" is not there: there is no folder "../shop"'],
    [".", 'the shelf "shop" is the folder of the book itself'],
    ["../book", 'the shelf "shop" is the folder of the book itself'],
    ["..", 'the shelf "shop" holds the book, as it is ".."'],
    ["../../..", 'the shelf "shop" holds the book, as it is "../../.."'],
    ["people", 'the shelf "shop" lies in the book, in "people"'],
    ["../book/people", 'the shelf "shop" lies in the book, in "../book/people"'],
    ["/", 'the shelf "shop" names the folder "/", which is no way from the book; expected one such as "../shop"'],
    [
      "C:/shop",
      'the shelf "shop" names the folder "C:/shop", which is no way from the book; expected one such as "../shop"',
    ],
    [
      "..\\shop",
      'the shelf "shop" names the folder "..\\\\shop", which is no way from the book; expected one such as "../shop"',
    ],
    [
      "../a\u0000b",
      'the shelf "shop" names the folder "../a\\u0000b", which is no way from the book; expected one such as "../shop"',
    ],
    ["../\u202ex", 'the shelf "shop" is not there: there is no folder "../\\u202ex"'],
  ])("%j", (where, message) => {
    const book = found(load({}, [{ name: "shop", folder: where }]));
    expect(book).toContain(`shelf-folder: ${message}`);
  });
  test("that is a file", () => {
    expect(refused("../shop", { shop: "x" })).toEqual([
      'shelf-folder: the shelf "shop" is no folder: "../shop" is a file',
    ]);
  });
  test("named twice", () => {
    const two = [...shop, { name: "again", folder: "../x/../shop" }];
    expect(found(load({ "shop/p.json": parts(part("P1")) }, two))).toEqual([
      'shelf-folder: the shelves "shop" and "again" are one folder',
    ]);
  });
  test("behind a link, or itself one", () => {
    const dir = dirOf({ "real/p.json": parts(part("P1")), "real/in/p.json": parts(part("P2")) });
    symlinkSync(join(dir, "../real"), join(dir, "../shop"));
    expect(found(loadBook(dir, kinds))).toEqual(['shelf-folder: the shelf "shop" lies behind a link, in "../shop"']);
    const deep = dirOf({ "real/in/p.json": parts(part("P2")) }, [{ name: "shop", folder: "../shop/in" }]);
    symlinkSync(join(deep, "../real"), join(deep, "../shop"));
    expect(found(loadBook(deep, kinds))).toEqual([
      'shelf-folder: the shelf "shop" lies behind a link, in "../shop/in"',
    ]);
  });
  test("with a link in it: what stands behind it is not read, and that blocks", () => {
    const dir = dirOf({ "shop/p.json": parts(part("P1")), "real/p.json": parts(part("P2")) });
    symlinkSync(join(dir, "../real"), join(dir, "../shop/more"));
    const book = loadBook(dir, kinds);
    expect(found(book)).toEqual(["file-link: a link leads out of the book"]);
    expect(book.unreadable).toEqual(["shelves/shop/more"]);
  });
});

describe("a copy in the book", () => {
  const files: Files = {
    "book/step.json": { kind: "step", id: "S1", records: ["P1"] },
    "shop/parts.json": parts(part("P1"), part("P2")),
    "shop/paper.json": { kind: "paper", id: "A1", about: "part:P1", scan: "O1" },
    "shop/original.json": { kind: "original", id: "O1", path: "files/in/a.txt", sha256: "0" },
    "shop/files/in/a.txt": "a",
  };
  const plain = ({ records, files: all, findings }: BookOnDisk) => ({
    records,
    files: all.map(({ path, publishedAs, sha256 }) => ({ path, publishedAs, sha256 })),
    findings,
  });
  test("is read in place of the folder, whole or as an issue holds it", () => {
    const dir = dirOf(files);
    const before = plain(loadBook(dir, kinds));
    mkdirSync(join(dir, "shelves"));
    renameSync(join(dir, "../shop"), join(dir, "shelves/shop"));
    const whole = loadBook(dir, kinds);
    expect(plain(whole)).toEqual(before);
    expect(whole.aside).toEqual([]);
    mkdirSync(join(dir, "files/shelves"), { recursive: true });
    renameSync(join(dir, "shelves/shop/files"), join(dir, "files/shelves/shop"));
    expect(plain(loadBook(dir, kinds))).toEqual(before);
  });
  test("is said where the folder is there too", () => {
    const both = load({ ...files, "book/shelves/shop/parts.json": parts(part("P1")) });
    expect(asides(both)).toEqual([
      'shelf-folder note shelves/shop: the copy of the shelf "shop" in the book is read, not the folder "../shop"',
    ]);
    expect(taken(both)).toEqual(["part P1 shelves/shop/part/r-P1.json"]);
  });
  test("of a shelf that nobody names is not read, and that blocks", () => {
    const book = load({ ...files, "book/shelves/old/parts.json": parts(part("P1")) });
    expect(found(book)).toEqual(['shelf-listed: "shelves/old" belongs to no shelf that book.json names']);
    expect(book.unreadable).toEqual(["shelves/old"]);
  });
  test("has its place in files/ to itself", () => {
    const book = load({ ...files, "book/files/shelves/shop/own.txt": "x" });
    expect(found(book)).toEqual([
      'shelf-listed: "files/shelves/shop/own.txt" stands where the originals of the shelf "shop" go in an issue',
    ]);
  });
});

test("shelves that are no list, or whose entries are odd, are the schema's to refuse, and read by nobody", () => {
  for (const shelves of [
    "shop",
    { name: "shop" },
    [null],
    [{ name: 1, folder: 2 }],
    [{ name: "..", folder: "../x" }],
    [{ name: "SHOP", folder: "../shop" }],
  ])
    expect(load({ "shop/p.json": parts(part("P1")) }, shelves).findings.map(({ rule }) => rule)).toContain(
      "record-schema",
    );
});

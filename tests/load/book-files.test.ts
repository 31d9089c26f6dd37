import { createHash } from "node:crypto";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { loadBook } from "../../src/load/book-files.ts";
import { fileRules, withOwnKeys } from "../../src/load/file-rules.ts";
import { readRecords } from "../../src/load/record-file.ts";
import { bookFile, brief, folder, issueFile, kinds, load } from "./folder.ts";

const parts = (count: number, from = 0) =>
  Array.from({ length: count }, (_, index) => ({ id: `P${from + index}`, name: `part ${from + index}` }));

describe("a sound book", () => {
  const book = load({
    "a/parts.json": { kind: "part", records: parts(2) },
    "p9.json": { kind: "part", id: "P9", name: "end" },
    "files/scan.pdf": "%PDF",
    "README.md": "x",
  });
  it("gives its records with their places, sorted by kind and id", () => {
    expect(book.findings).toEqual([]);
    expect(book.fatal).toEqual([]);
    expect(book.unreadable).toEqual([]);
    expect(
      book.records.map(({ kind, id, file, pointer, faulty }) => `${kind} ${id} ${file}${pointer} ${faulty}`),
    ).toEqual([
      "book B1 book.json false",
      "issue ISSUE issue.json false",
      "part P0 a/parts.json/records/0 false",
      "part P1 a/parts.json/records/1 false",
      "part P9 p9.json false",
    ]);
    expect([book.book?.id, book.issue?.id]).toEqual(["B1", "ISSUE"]);
  });
  it("gives its files with their hashes", () => {
    expect(book.files.map(({ path, role, size }) => `${path} ${role} ${size > 0}`)).toEqual([
      "a/parts.json record true",
      "book.json record true",
      "files/scan.pdf original true",
      "issue.json record true",
      "p9.json record true",
    ]);
    expect(book.files.find(({ path }) => path === "files/scan.pdf")?.sha256).toBe(
      createHash("sha256").update("%PDF").digest("hex"),
    );
  });
  it("finds any place again", () => {
    const { locator } = book;
    expect(locator.position({ file: "a/parts.json", pointer: "/records/1/name" })).toEqual({
      line: 10,
      column: 15,
      length: 8,
    });
    expect(locator.line("a/parts.json", 10)).toBe('      "name": "part 1"');
    expect(locator.position({ file: "a/parts.json", pointer: "/records/1/thickness" })).toMatchObject({ line: 8 });
    expect(locator.position({ file: "files/scan.pdf", pointer: "" })).toEqual({ line: 1, column: 1, length: 0 });
    expect(locator.line("files/scan.pdf", 1)).toBeUndefined();
    expect(locator.position({ file: "none.json", pointer: "/x" })).toEqual({ line: 1, column: 1, length: 0 });
    expect(book.text("p9.json")).toContain('"end"');
    expect(book.text("files/scan.pdf")).toBeUndefined();
  });
  it("is the same however its records are arranged in files", () => {
    const other = load({
      "z.json": { kind: "part", records: [{ id: "P9", name: "end" }, ...parts(2).reverse()] },
      "files/scan.pdf": "%PDF",
    });
    const values = (one: typeof book) => one.records.map(({ kind, id, value }) => [kind, id, value["name"]]);
    expect(values(other)).toEqual(values(book));
  });
});

describe("one broken file leaves the others judged", () => {
  const sound = {
    "sound.json": {
      kind: "part",
      records: [
        { id: "P1", name: "a" },
        { id: "P2", name: 2 },
      ],
    },
  };
  const fault = 'sound.json:10:15 record-schema "name" is 2; expected text, such as "…"';
  it.each<[string, string | Uint8Array, string]>([
    [
      "a missing comma",
      '{"kind": "part"\n "id": "P3"}',
      "broken.json:1:16 file-syntax a comma is missing behind this value",
    ],
    ["no end", '{"kind": "part", "records": [', "broken.json:1:29 file-syntax the list opened here is never closed"],
    ["nothing", "", "broken.json:1:1 file-readable the file is empty"],
    ["blanks", "\n\n", "broken.json:3:1 file-syntax the file holds no value"],
    ["a byte order mark", "\ufeff{}", "broken.json:1:1 file-readable the file begins with a byte order mark"],
    [
      "UTF-16",
      Buffer.from('{"kind": "part"}', "utf16le"),
      "broken.json:1:1 file-readable the file is written in UTF-16 (little-endian); expected UTF-8",
    ],
    [
      "Latin-1",
      Buffer.from('{"kind": "part",\n "name": "20 °C"}', "latin1"),
      'broken.json:2:14 file-readable byte 31 of the file, 0xB0, which is "°" in Latin-1, is not UTF-8',
    ],
    ["a zero byte", '{"kind": "part\0"}', "broken.json:1:15 file-readable byte 15 of the file is zero"],
    [
      "deep nesting",
      `${"[".repeat(100)}${"]".repeat(100)}`,
      "broken.json:1:65 file-syntax objects and lists stand more than 64 deep in each other",
    ],
    [
      "very deep nesting",
      "[".repeat(3_000_000),
      "broken.json:1:65 file-syntax objects and lists stand more than 64 deep in each other",
    ],
    ["a list", "[]", "broken.json:1:1 file-record the file holds a list; expected an object"],
    ["a number", "17", "broken.json:1:1 file-record the file holds a single value; expected an object"],
    ["no kind", '{"id": "P3"}', 'broken.json:1:1 file-record the file states no "kind"'],
    ["a number as kind", '{"kind": 3}', "broken.json:1:10 file-record kind is not text"],
    [
      "an unknown kind",
      '{"kind": "parts", "records": []}',
      'broken.json:1:10 file-record kind is "parts"; there is no kind of that name',
    ],
    [
      "records of another form",
      '{"kind": "part", "records": {}}',
      "broken.json:1:29 file-record records is not a list",
    ],
    [
      "a record that is none",
      '{"kind": "part", "records": ["P1"]}',
      "broken.json:1:30 file-record entry 1 of records is no object",
    ],
    [
      "a record without id",
      '{"kind": "part", "records": [{"name": "cap"}]}',
      'broken.json:1:30 file-record the part has no "id" (the record whose name is "cap")',
    ],
    [
      "a record with an unusable id",
      '{"kind": "part", "id": "../p", "name": "cap"}',
      'broken.json:1:1 file-record "id" is "../p"; expected 1 to 40 capital letters, digits, "." and "-", a letter or digit first (the record whose name is "cap")',
    ],
  ])("%s", (_name, content, said) => {
    const book = load({ ...sound, "broken.json": content });
    expect(brief(book)).toEqual([said, fault]);
    expect(book.unreadable).toEqual(["broken.json"]);
    expect(book.records.filter(({ kind }) => kind === "part").map(({ id, faulty }) => [id, faulty])).toEqual([
      ["P1", false],
      ["P2", true],
    ]);
    expect(book.fatal).toEqual([]);
  });
  it("too large", () => {
    const book = load(
      { ...sound, "broken.json": `{"kind": "part", "remarks": "${"x".repeat(3000)}"}` },
      { maxFileBytes: 2000 },
    );
    expect(brief(book)).toEqual([
      "broken.json:1:1 file-readable the file holds 0.0 MB; expected at most 0.0 MB",
      fault,
    ]);
  });
  it("of which the name of the nearest kind is hinted", () => {
    expect(load({ "x.json": { kind: "Parts", records: [] } }).findings[0]?.hint).toBe('write "part"');
    expect(load({ "x.json": { kind: "welder", records: [] } }).findings[0]?.hint).toMatch(/explain/);
  });
});

describe("names that stand twice", () => {
  it("in a record accuse their place, and show where they stood first", () => {
    const book = load({
      "p.json":
        '{"kind": "part", "records": [\n {"id": "P1", "name": "a"},\n {"id": "P2", "name": "b", "readings": [{"point": "A", "value": "8.0 mm",\n "value": "9.0 mm"}]}]}',
    });
    expect(brief(book)).toEqual(['p.json:4:2 file-duplicate-key "value" stands twice in one object']);
    const [finding] = book.findings;
    expect(finding).toMatchObject({
      subject: { kind: "part", id: "P2" },
      key: "file-duplicate-key|part:P2|readings (A) value",
      accuses: ["part:P2/readings/0/value"],
    });
    expect(finding?.related.map(({ place, message }) => [book.locator.position(place), message])).toEqual([
      [{ line: 3, column: 56, length: 7 }, "first written here"],
    ]);
    expect(book.records.filter(({ kind }) => kind === "part").map(({ faulty }) => faulty)).toEqual([false, true]);
    expect(book.unreadable).toEqual([]);
  });
  it("that hide records or ids keep absences from being judged", () => {
    const twice = load({ "p.json": '{"kind": "part", "records": [{"id": "P1", "name": "a"}], "records": []}' });
    expect(brief(twice)).toEqual(['p.json:1:58 file-duplicate-key "records" stands twice in one object']);
    expect(twice.unreadable).toEqual(["p.json"]);
    expect(load({ "p.json": '{"kind": "part", "id": "P1", "id": "P2", "name": "a"}' }).unreadable).toEqual(["p.json"]);
  });
  it("three times are one finding", () => {
    expect(
      load({ "p.json": '{"kind": "part", "id": "P1", "name": "a", "name": "b", "name": "c"}' }).findings,
    ).toHaveLength(1);
  });
});

describe("the two shapes of a file", () => {
  it("are told apart where a kind has records of its own", () => {
    const book = load({
      "s.json": { kind: "step", id: "S1", records: ["P1"] },
      "t.json": { kind: "step", records: [{ id: "S2", records: ["P2"] }] },
      "p.json": { kind: "part", records: parts(3) },
    });
    expect(brief(book)).toEqual([]);
    expect(book.records.filter(({ kind }) => kind === "step").map(({ id, value }) => [id, value["records"]])).toEqual([
      ["S1", ["P1"]],
      ["S2", ["P2"]],
    ]);
  });
  it("hold nothing beside a list of records", () => {
    const book = load({ "p.json": { $schema: "x", kind: "part", form: "plate", records: parts(1) } });
    expect(brief(book)).toEqual(['p.json:4:11 record-schema "form" stands beside "records"']);
    expect(book.records).toHaveLength(3);
  });
});

describe("a folder that is no book", () => {
  const fatal = (files: Parameters<typeof folder>[0]) =>
    loadBook(folder(files), kinds).fatal.map(({ message }) => message);
  it("is said to be none", () => {
    expect(fatal({})).toEqual(["there is no book.json in the folder", "there is no issue.json in the folder"]);
    expect(fatal({ "book.json": bookFile })).toEqual(["there is no issue.json in the folder"]);
    expect(fatal({ "book.json": "{", "issue.json": issueFile })).toEqual(["the object opened here is never closed"]);
    expect(fatal({ "book.json": { ...bookFile, id: "b" }, "issue.json": issueFile })[0]).toMatch(
      /^"id" is "b"; expected/,
    );
    expect(fatal({ "book.json": issueFile, "issue.json": issueFile })).toEqual(["book.json holds no book record"]);
    expect(fatal({ "book.json": { ...bookFile, format: 2 }, "issue.json": issueFile })).toEqual([
      "format is 2; expected 1",
    ]);
    expect(fatal({ "book.json": { kind: "book", id: "B1", title: "T" }, "issue.json": issueFile })).toEqual([
      "book.json states no format",
    ]);
  });
  it("or is not there, or a file", () => {
    const dir = folder({ "a.json": "{}" });
    expect(loadBook(join(dir, "none"), kinds).fatal[0]?.message).toMatch(/is no book folder: it is no longer there$/);
    expect(loadBook(join(dir, "a.json"), kinds).fatal[0]?.message).toMatch(/is no book folder: it is a file$/);
  });
  it("holds one book and one issue record, where they belong", () => {
    const book = load({ "old/book.json": { ...bookFile, id: "B0" }, "issue-1.json": { ...issueFile, id: "OLD" } });
    expect(brief(book)).toEqual([
      'old/book.json:1:1 file-book book "B0" is not the one in book.json',
      'issue-1.json:1:1 file-book issue "OLD" is not the one in issue.json',
    ]);
    expect([book.book?.id, book.issue?.id]).toEqual(["B1", "ISSUE"]);
  });
});

describe("findings", () => {
  const many = load({
    "a.json":
      '{"kind": "part", "records": [{"id": "P1", "name": 1, "x": 1, "form": "a"}, {"name": "b", "pieces": 0}, {"id": "p", "name": "c"}, 4, "s"], "z": 1}',
    "b.json": '{"kind": "part", "id": "P7", "id": "P7", "name": "a", "name": "b", "readings": [{}, {"value": 1}]}',
    "c.json": "{",
    "ä.json": "{}",
    "files/aux": "",
    "left.doc": "",
  });
  it("have keys of their own, a known rule, and its severity and basis", () => {
    expect(new Set(many.findings.map(({ key }) => key)).size).toBe(many.findings.length);
    for (const finding of many.findings) {
      const rule = fileRules.find(({ id }) => id === finding.rule);
      expect([finding.severity, finding.basis]).toEqual([rule?.severity, rule?.basis]);
      expect(finding).toMatchObject({
        verdict: "failed",
        owner: "document control",
        due: null,
        exception: null,
        waiting: [],
      });
      expect(finding.digest).toMatch(/^[0-9a-f]{16}$/);
      expect(finding.message).not.toMatch(/\.$|invalid|^[A-Z]/);
      expect(finding.key.startsWith(`${finding.rule}|`)).toBe(true);
    }
    expect(new Set(many.findings.map(({ rule }) => rule))).toEqual(
      new Set(["file-record", "record-schema", "file-duplicate-key", "file-syntax", "file-path", "file-not-read"]),
    );
  });
  it("have keys of their own even where an id or a row name is borne twice", () => {
    const twice = {
      id: "P1",
      name: 1,
      readings: [
        { point: "A", value: "?" },
        { point: "A", value: "!" },
      ],
    };
    const book = load({ "a.json": { kind: "part", records: [twice, twice] }, "b.json": { kind: "part", ...twice } });
    expect(book.findings.map(({ key }) => key.replace("record-schema|part:P1|", ""))).toEqual([
      ...["name", "readings (A) value", "readings (A) value (2)"],
      ...["name (2)", "readings (A) value (3)", "readings (A) value (4)"],
      ...["name (3)", "readings (A) value (5)", "readings (A) value (6)"],
    ]);
  });
  it("change their digest with what they object to", () => {
    const digest = (name: number) => load({ "p.json": { kind: "part", id: "P1", name } }).findings[0]?.digest;
    expect(digest(1)).toBe(digest(1));
    expect(digest(1)).not.toBe(digest(2));
  });
  it("keep their key when a row is put before", () => {
    const key = (rows: object[]) =>
      load({
        "p.json": { kind: "part", id: "P1", name: "a", readings: [...rows, { point: "B", value: "?" }] as never },
      }).findings[0]?.key;
    expect(key([])).toBe("record-schema|part:P1|readings (B) value");
    expect(key([{ point: "A" }])).toBe(key([]));
  });
});

describe("size", () => {
  it("of ten thousand records in one file, with a fault in the last", () => {
    const book = load({ "p.json": { kind: "part", records: [...parts(9_999), { id: "LAST", name: "z", form: "x" }] } });
    expect(book.records).toHaveLength(10_002);
    expect(brief(book)).toEqual([
      'p.json:40003:15 record-schema "form" is "x"; expected one of "plate", "tube", "forging"',
    ]);
  });
});

describe("nothing that stands in a file makes reading fail", () => {
  const never = (text: string) => {
    const { records, findings, sound, whole } = readRecords("x.json", text, kinds);
    if (!sound) expect([records.length, findings.length, whole]).toEqual([0, 1, false]);
    for (const { key, place } of findings) expect([key.length > 0, place.file]).toEqual([true, "x.json"]);
    expect(new Set(withOwnKeys(findings).map(({ key }) => key)).size).toBe(findings.length);
  };
  it("any JSON", () => {
    fc.assert(fc.property(fc.json({ maxDepth: 4 }), never));
  });
  it("any JSON as records, or as properties of one", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 3 }), (value) => never(JSON.stringify({ kind: "part", records: value }))),
    );
    const names = fc.constantFrom(
      "id",
      "name",
      "form",
      "nominalThickness",
      "made",
      "joins",
      "readings",
      "sources",
      "records",
      "__proto__",
      "x",
    );
    fc.assert(
      fc.property(fc.dictionary(names, fc.jsonValue({ maxDepth: 3 })), (value) =>
        never(JSON.stringify({ kind: "part", id: "P1", ...value })),
      ),
    );
  });
  it("a sound file with bytes changed", () => {
    const sound = Buffer.from(
      JSON.stringify({
        kind: "part",
        records: [{ id: "P1", name: "a", readings: [{ point: "A", value: "8.0 mm" }], sources: { "/name": 1 } }],
      }),
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(sound.length - 1), fc.nat(255)), { minLength: 1, maxLength: 4 }),
        (changes) => {
          const bytes = Buffer.from(sound);
          for (const [at, byte] of changes) bytes[at] = byte;
          never(bytes.toString("utf8"));
        },
      ),
      { numRuns: 1000 },
    );
  });
  it("any bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const book = load({ "x.json": bytes });
        expect(book.unreadable).toEqual(["x.json"]);
        for (const { place } of book.findings) expect(book.locator.position(place).line).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
});

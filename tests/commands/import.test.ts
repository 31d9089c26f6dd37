import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { runReal } from "../support/real.ts";

let root: string;
let cwd: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "databook-import-"));
});
beforeEach(() => {
  cwd = mkdtempSync(join(root, "here-"));
  mkdirSync(join(cwd, "book"));
  cpSync("demo-data/air-receiver/book/issue.json", join(cwd, "book/issue.json"));
  // Without the shelves: no sheet is compared with a book of which a part is not read.
  const whole = JSON.parse(readFileSync("demo-data/air-receiver/book/book.json", "utf8")) as object;
  const { shelves: _, ...own } = whole as { shelves?: unknown };
  writeFileSync(join(cwd, "book/book.json"), JSON.stringify(own, null, 2));
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

const run = (...words: readonly string[]) => runReal(cwd, ...words);

const at = (path: string) => join(cwd, path);
const read = (path: string) => readFileSync(at(path), "utf8");
const put = (path: string, text: string) => {
  mkdirSync(join(at(path), ".."), { recursive: true });
  writeFileSync(at(path), text);
};

/** A shop's parts list: own headings, decimal commas, days first. Lines end as RFC 4180 has them. */
const parts = (...rows: readonly string[]) =>
  ["Pos.;Benennung;Wanddicke [mm];Menge;Zuletzt geprüft", ...rows].map((line) => `${line}\r\n`).join("");
const map = {
  kind: "part",
  id: "P{Pos.:2}",
  decimal: ",",
  dates: "day-month-year",
  columns: { Benennung: { to: "name" }, Wanddicke: { to: "nominalThickness" }, Menge: { to: "quantity" } },
  ignore: ["Zuletzt geprüft"],
};
/** One grey point. */
const picture = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==",
  "base64",
);
const putMap = (change: object = {}) => {
  put("book/imports/parts.json", JSON.stringify({ ...map, ...change }, null, 2));
};

describe("a first import", () => {
  test("of a workbook proposes a map for each sheet whose kind is named, and says which sheet there is not", async () => {
    cpSync("tests/rebuild/sheets/ndt.xlsx", at("ndt.xlsx"));
    const kinds = "Reports=ndt-report,NCR=nonconformity-report";
    await run("import", "ndt.xlsx", "--book", "book", "--kind", kinds, "--write");
    const maps = JSON.parse(read("book/imports/ndt.json")) as readonly { readonly [name: string]: unknown }[];
    expect(maps.map(({ kind, sheet, head }) => [kind, sheet, head])).toEqual([
      ["ndt-report", "Reports", 3],
      ["nonconformity-report", "NCR", 1],
    ]);
    const wrong = await run("import", "ndt.xlsx", "--book", "book", "--map", "m", "--kind", "NDT=ndt-report");
    expect([wrong.exit, wrong.err]).toEqual([2, expect.stringContaining('no sheet "NDT"') as unknown]);
  });

  test("proposes a map, says what it could not settle, and writes the map alone", async () => {
    put("parts.csv", "Id,Name,Nominal thickness [mm],Prüfer\r\nP01,Shell,8.0,Huber\r\n");
    const shown = await run("import", "parts.csv", "--book", "book", "--kind", "part");
    expect(shown.exit).toBe(1);
    expect(shown.out).toContain('"Nominal thickness [mm]": { "to": "nominalThickness" }');
    expect(shown.out).toContain(`"decimal": ".", because of "8.0"`);
    expect(shown.out).toContain('parts.csv, row 1, column D "Prüfer": what "Prüfer" means is not settled');
    expect(existsSync(at("book/imports"))).toBe(false);
    const wrote = await run("import", "parts.csv", "--book", "book", "--kind", "part", "--write");
    expect(wrote.exit).toBe(1);
    expect(readdirSync(at("book")).sort()).toEqual(["book.json", "imports", "issue.json"]);
    put(
      "book/imports/parts.json",
      read("book/imports/parts.json").replace('"Prüfer": { "to": "" }', '"Prüfer": { "to": "remarks" }'),
    );
    expect(await run("import", "parts.csv", "--book", "book", "--write")).toMatchObject({ exit: 0 });
    expect(JSON.parse(read("book/sheets/parts/part.json"))).toMatchObject({
      kind: "part",
      records: [{ id: "P01", name: "Shell", nominalThickness: "8.0 mm", remarks: "Huber" }],
    });
  });
  test("asks which kind is meant where the headings leave a doubt", async () => {
    put("parts.csv", parts("1;Mantel;8,0;1;12.01.2026"));
    expect(await run("import", "parts.csv", "--book", "book")).toMatchObject({
      exit: 1,
      out: expect.stringContaining("--kind") as unknown,
    });
  });
});

describe("with a map", () => {
  test("shows, writes, and finds the same again; the written file has the same bytes", async () => {
    putMap();
    put("parts.csv", parts("2;Boden;10,0;2;12.01.2026", "1;Mantel;8,0;1;"));
    const shown = await run("import", "parts.csv", "--book", "book");
    expect(shown).toMatchObject({ exit: 0, err: "" });
    expect(shown.out).toContain("new        parts, row 3  part P01");
    expect(shown.out).toContain("2 rows read, 2 new, 0 changed, 0 unchanged");
    expect(existsSync(at("book/sheets"))).toBe(false);
    expect((await run("import", "parts.csv", "--book", "book", "--write")).exit).toBe(0);
    const first = read("book/sheets/parts/part.json");
    expect(first).toContain('"nominalThickness": "8.0 mm"');
    expect((await run("import", "parts.csv", "--book", "book", "--write")).out).toContain(
      "0 new, 0 changed, 2 unchanged",
    );
    expect(read("book/sheets/parts/part.json")).toBe(first);
    expect(readdirSync(at("book/sheets/parts"))).toEqual(["part.json"]);
  });
  test("one cell that cannot be read keeps all from being written", async () => {
    putMap();
    put("parts.csv", parts("1;Mantel;8,0;1;", "2;Boden;1.234;2;"));
    const wrote = await run("import", "parts.csv", "--book", "book", "--write");
    expect(wrote.exit).toBe(1);
    expect(wrote.out).toContain('parts.csv, row 3, column C "Wanddicke [mm]": "1.234" is no number');
    expect(existsSync(at("book/sheets"))).toBe(false);
  });
  test("a record that stands elsewhere is changed where it stands, and nothing else of its file", async () => {
    putMap();
    const typed =
      '{"kind": "part", "records": [\n    {"id": "P01", "role": "shell-course"},\n    {"id": "P09",   "name": "Foot"}\n]}\n';
    put("book/parts/all.json", typed);
    put("parts.csv", parts("1;Mantel;8,0;1;"));
    expect((await run("import", "parts.csv", "--book", "book", "--write")).exit).toBe(0);
    const now = read("book/parts/all.json");
    expect(now).toContain('{"id": "P09",   "name": "Foot"}\n]}\n');
    expect(JSON.parse(now)).toMatchObject({
      records: [{ id: "P01", name: "Mantel", role: "shell-course" }, { id: "P09" }],
    });
    expect(existsSync(at("book/sheets"))).toBe(false);
  });
  test("a value changed by hand is a conflict that only --overwrite writes, and its comparison goes with it", async () => {
    putMap();
    put("parts.csv", parts("1;Mantel;8,0;1;", "2;Boden;10,0;2;"));
    await run("import", "parts.csv", "--book", "book", "--write");
    const file = "book/sheets/parts/part.json";
    put(
      file,
      read(file).replace(
        '"nominalThickness": "8.0 mm"',
        '"nominalThickness": "8.1 mm",\n      "source": {"original": "LIST"}',
      ),
    );
    put(
      "book/people.json",
      '{"kind": "person", "records": [{"id": "P-01", "name": "A. One"}, {"id": "P-02", "name": "B. Two"}]}',
    );
    mkdirSync(at("book/files"));
    writeFileSync(at("book/files/list.png"), picture);
    await run("originals", "book", "--add");
    const compare = ["compared", "LIST", "--by", "P-02", "--typed-by", "P-01", "--on", "2026-07-01", "--book", "book"];
    const day = [...compare.slice(0, 7), "2026-12-01", ...compare.slice(8)];
    const early = await run(...day);
    expect(early.out).toContain("but        in the future: 2026-12-01, today is 2026-11-30; it is not written");
    expect(early.out).toMatch(/but {8}2026-12-01 lies after the data cut-off, 2026-\d\d-\d\d: check objects/);
    expect(await run(...day, "--write")).toMatchObject({
      exit: 2,
      err: expect.stringContaining("2026-12-01 lies in the future, today is 2026-11-30") as unknown,
    });
    const compared = await run(...compare, "--write");
    expect(compared).toMatchObject({ exit: 0, err: "" });
    expect(compared.out).toContain("compared     LIST, 1 record: part P01");
    const original = "book/originals/added-1.json";
    expect(read(original)).toMatch(/"[0-9a-f]{16} part:P01"/);
    put("parts.csv", parts("1;Mantel;8,2;1;", "2;Boden;10,5;2;"));
    const shown = await run("import", "parts.csv", "--book", "book", "--write");
    expect(shown.exit).toBe(1);
    expect(shown.out).toContain("conflict   parts, row 2  part P01");
    expect(shown.out).toContain("nominal thickness: 8.1 mm becomes 8.2 mm");
    expect(shown.out).toContain("its values were changed by hand since they were imported");
    expect(shown.out).toContain("it was compared with original LIST by P-02 on 2026-07-01");
    expect(read(file)).toContain("8.1 mm");
    expect(read(file)).toContain("10.5 mm");
    expect(shown.out).toContain("1 changed, 0 unchanged, 1 conflict, not written, ");
    expect(shown.out).toContain("written    sheets/parts/part.json: 1 changed\n");
    const over = await run("import", "parts.csv", "--book", "book", "--write", "--overwrite");
    expect(over.exit).toBe(0);
    expect(over.out).toContain("the comparison of part P01 was taken out of original LIST");
    expect(read(file)).toContain("8.2 mm");
    expect(over.out).toContain("1 conflict, written over, ");
    expect(over.out).toContain("written    sheets/parts/part.json: 1 written over\n");
    expect(JSON.parse(read(original))).toMatchObject({
      records: [{ id: "LIST", transcription: { enteredBy: ["P-01"] } }],
    });
    expect(read(original)).not.toContain("P-02");
  });
  test("a row that is gone is listed, and its record stays", async () => {
    putMap();
    put("parts.csv", parts("1;Mantel;8,0;1;", "2;Boden;10,0;2;"));
    await run("import", "parts.csv", "--book", "book", "--write");
    put("parts.csv", parts("1;Mantel;8,0;1;"));
    const again = await run("import", "parts.csv", "--book", "book", "--write");
    expect(again).toMatchObject({ exit: 0 });
    expect(again.out).toContain("gone       part P02, read before from parts.csv, row 3");
    expect(read("book/sheets/parts/part.json")).toContain("P02");
  });
  test("json says the same", async () => {
    putMap();
    put("parts.csv", parts("1;Mantel;8,0;1;", "x;Boden;10,0;zwei;"));
    const shown = await run("import", "parts.csv", "--book", "book", "--format", "json");
    expect(JSON.parse(shown.out)).toMatchObject({
      map: "imports/parts.json",
      records: [{ kind: "part", id: "P01", state: "new", rows: [2] }],
      faults: [{ sheet: "parts", row: 3, column: "D", heading: "Menge" }],
      written: [],
    });
  });
});

describe("what cannot be used at all is exit 2, and nothing is written", () => {
  test.each([
    [
      { columns: { Benennung: { to: "nam" } } },
      'imports/parts.json:8:13 part has no field "nam"\n  hint   nearest: "name"',
    ],
    [{ kind: "parts" }, 'there is no kind "parts" to import'],
  ])("a map that names what is not there: %j", async (change, message) => {
    putMap(change);
    put("parts.csv", parts("1;Mantel;8,0;1;"));
    const wrote = await run("import", "parts.csv", "--book", "book", "--write");
    expect(wrote.exit).toBe(2);
    expect(wrote.err).toContain(message);
    expect(existsSync(at("book/sheets"))).toBe(false);
  });
  test("a file that is not there, a folder, a file that is no sheet, a book that cannot be read whole", async () => {
    expect(await run("import", "no.csv", "--book", "book")).toMatchObject({
      exit: 2,
      err: expect.stringContaining("there is no file") as unknown,
    });
    mkdirSync(at("folder.xlsx"));
    expect((await run("import", "folder.xlsx", "--book", "book")).exit).toBe(2);
    put("x.xlsx", "no workbook");
    expect((await run("import", "x.xlsx", "--book", "book")).exit).toBe(2);
    put("parts.csv", parts("1;Mantel;8,0;1;"));
    put("book/broken.json", '{"kind": "part"');
    const refused = await run("import", "parts.csv", "--book", "book");
    expect(refused).toMatchObject({ exit: 2, err: expect.stringContaining("broken.json cannot be read") as unknown });
  });
  test("--overwrite without --write", async () => {
    expect((await run("import", "parts.csv", "--book", "book", "--overwrite")).exit).toBe(2);
  });
});

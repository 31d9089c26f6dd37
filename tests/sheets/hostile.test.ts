import { Buffer } from "node:buffer";
import { strToU8 } from "fflate";
import { describe, expect, test } from "vitest";
import type { SheetFault } from "../../src/sheets/cells.ts";
import { usualSheetLimits, type SheetLimits } from "../../src/sheets/limits.ts";
import { unpack } from "../../src/sheets/pack.ts";
import { readBytes } from "../../src/sheets/read-bytes.ts";
import { readSheetFile } from "../../src/sheets/read.ts";
import { data, exchanged, rawXlsx, rawZip, type RawWorkbook } from "./raw-xlsx.ts";

const read = (bytes: Uint8Array, name = "log.xlsx", limits: Partial<SheetLimits> = {}) =>
  readBytes(bytes, name, {}, { ...usualSheetLimits, ...limits });

const fault = async (bytes: Uint8Array, name?: string, limits?: Partial<SheetLimits>): Promise<SheetFault> => {
  const answer = await read(bytes, name, limits);
  if ("sheets" in answer) throw new Error("the file was read");
  for (const text of [answer.message, answer.why, answer.hint]) expect(text).not.toBe("");
  return answer;
};
const raw = (workbook: RawWorkbook, limits?: Partial<SheetLimits>) => fault(rawXlsx(workbook), "log.xlsx", limits);

const good = rawXlsx({ sheet: data("<c><v>8.5</v></c>") });

/** The head of a compound file, and the names of its streams as it holds them. */
const compound = (stream: string) =>
  Buffer.concat([
    Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
    Buffer.alloc(504),
    Buffer.from(stream, "utf16le"),
  ]);

describe("a file of another form is said to be one", () => {
  test.each([
    ["under a password", compound("EncryptedPackage"), "log.xlsx", "the file is under a password"],
    [".xls", compound("Workbook"), "log.xls", "the old form .xls"],
    [".ods", rawZip([["mimetype", "application/vnd.oasis.opendocument.spreadsheet"]]), "log.xlsx", "OpenDocument"],
    [".xlsb", rawZip([["xl/workbook.bin", "x"]]), "log.xlsx", "a binary workbook (.xlsb)"],
    [
      "a letter",
      rawXlsx({ parts: { "xl/workbook.xml": "<document/>" } }),
      "log.xlsx",
      "an Office document of another sort",
    ],
    ["an archive", rawZip([["a.txt", "x"]]), "log.xlsx", "an archive without an Office document"],
    ["a page of the web", strToU8("<html><table>"), "log.xlsx", "a page of the web"],
    ["a text named workbook", strToU8("a,b"), "log.xlsx", "it is no archive, as workbooks are"],
    ["a workbook named text", good, "log.csv", "it is an archive, as workbooks are"],
    ["nothing", new Uint8Array(), "log.xlsx", "it has no bytes"],
    ["another name", strToU8("a,b"), "log.pdf", "its name ends neither in .xlsx nor in .csv"],
  ])("%s", async (_, bytes, name, words) => {
    const { message, why } = await fault(bytes, name);
    expect(`${message}: ${why}`).toContain(words);
  });

  test("macros and embedded programs are refused", async () => {
    for (const part of ["xl/vbaProject.bin", "xl/macrosheets/sheet1.xml", "xl/embeddings/oleObject1.bin"])
      expect((await raw({ parts: { [part]: "x" } })).message).toBe("the workbook holds macros or embedded programs");
  });
});

/** Place of a part in the list of parts at the end (APPNOTE 6.3, 4.3.12), from where its fields are counted. */
const centralOf = (bytes: Buffer, name = "xl/worksheets/sheet1.xml") => bytes.lastIndexOf(name) - 46;

/** A workbook whose sheet says that it unpacks to so many bytes. */
function declaring(size: number): Buffer {
  const bytes = Buffer.from(rawXlsx({ sheet: " ".repeat(900) }, true));
  bytes.writeUInt32LE(size, centralOf(bytes) + 24);
  return bytes;
}

describe("a damaged archive", () => {
  test("cut off anywhere, it is refused", async () => {
    for (let length = 4; length < good.length; length += 97)
      expect((await fault(good.slice(0, length))).message, `${length} bytes`).toMatch(/damaged|no workbook/);
  });

  test("a digit changed under its check sum is refused", async () => {
    expect(await fault(exchanged(good, "<v>8.5", "<v>9.5"))).toMatchObject({
      message: "the file is damaged",
      why: "the check sum of its part xl/worksheets/sheet1.xml is another than it says",
    });
  });

  test("a part that unpacks to more or less than it says is refused", async () => {
    for (const size of [10, 50_000]) {
      const found = await fault(declaring(size));
      expect(found).toMatchObject({ message: "the file is damaged" });
      expect(found.why).toContain("xl/worksheets/sheet1.xml cannot be unpacked");
    }
  });

  test("one name twice, also in other capitals, is refused", async () => {
    const doubled = rawXlsx({ parts: { "XL/Workbook.xml": "<workbook/>" } });
    expect((await fault(doubled)).why).toContain("twice");
    const same = exchanged(
      rawXlsx({ parts: { "xl/workbooq.xml": "<workbook/>" } }),
      "xl/workbooq.xml",
      "xl/workbook.xml",
      true,
    );
    expect((await fault(same)).why).toContain("it holds the part xl/workbook.xml twice");
  });

  test("names that lead out of the archive are refused", async () => {
    for (const name of ["../../x", "/etc/passwd", "C:\\x.xml", "a/../../b"])
      expect((await raw({ parts: { [name]: "x" } })).message, name).toBe("the file is damaged");
  });

  test("a relation that leads out of the archive leads to nothing", async () => {
    const parts = {
      "xl/_rels/workbook.xml.rels":
        '<Relationships><Relationship Id="r1" Type="x/worksheet" Target="../../../../etc/passwd"/></Relationships>',
    };
    expect((await raw({ parts })).why).toBe("its part etc/passwd is missing");
    const outside = {
      "xl/_rels/workbook.xml.rels":
        '<Relationships><Relationship Id="r1" Type="x/worksheet" Target="http://127.0.0.1/sheet1.xml" TargetMode="External"/></Relationships>',
    };
    expect((await raw({ parts: outside })).place).toBe("sheet Log");
  });

  test("parts under a password are said", async () => {
    const locked = declaring(1000);
    const central = centralOf(locked);
    locked.writeUInt16LE(locked.readUInt16LE(central + 8) | 1, central + 8);
    expect((await fault(locked)).message).toBe("the file is under a password");
  });
});

describe("XML that no spreadsheet program writes", () => {
  const bomb =
    '<!DOCTYPE x [<!ENTITY a "lol"><!ENTITY b "&a;&a;&a;&a;">]><worksheet><sheetData><row><c t="str"><v>&b;</v></c></row></sheetData></worksheet>';
  test("entities of its own, of its own or from outside", async () => {
    for (const part of [bomb, '<!DOCTYPE x SYSTEM "http://127.0.0.1/x.dtd"><worksheet/>'])
      expect((await raw({ parts: { "xl/worksheets/sheet1.xml": part } })).message).toBe(
        "the file declares entities of its own",
      );
  });

  test.each([
    ["not well formed", "<worksheet><sheetData></worksheet>"],
    ["cut off", "<worksheet><sheetData><row><c><v>1"],
    ["an entity that is none", "<worksheet>&x;</worksheet>"],
    ["nothing", ""],
  ])("%s", async (_, part) => {
    expect((await raw({ parts: { "xl/worksheets/sheet1.xml": part } })).why).toContain("is no well-formed XML");
  });

  test("not in UTF-8", async () => {
    const bytes = exchanged(rawXlsx({ sheet: data("<c t='str'><v>QQ</v></c>") }), "QQ", "\u00ff\u00fe");
    expect((await fault(bytes)).message).toBe("the file is damaged");
  });

  test.each([
    ["a shared text that is missing", data('<c t="s"><v>7</v></c>'), "shared text 7", "sheet Log, cell A1"],
    ["a style that is missing", data('<c s="7"><v>1</v></c>'), "the style 7", "sheet Log, cell A1"],
    ["a row beyond the last", '<sheetData><row r="4000000000"/></sheetData>', "4000000000", "sheet Log"],
    ["rows out of order", '<sheetData><row r="2"/><row r="1"/></sheetData>', "the number 1 after row 2", "sheet Log"],
    ["a column beyond the last", '<sheetData><row r="1"><c r="ZZZZ1"/></row></sheetData>', "ZZZZ1", "sheet Log"],
    ["a cell twice", '<sheetData><row r="1"><c r="A1"/><c r="A1"/></row></sheetData>', "A1 out of order", "sheet Log"],
    ["a cell of another row", '<sheetData><row r="1"><c r="A2"/></row></sheetData>', "A2 out of order", "sheet Log"],
    ["a type that is none", data('<c t="x"><v>1</v></c>'), "the type x", "sheet Log, cell A1"],
    ["a merged range that cannot be", '<mergeCells><mergeCell ref="B2:A1"/></mergeCells>', "no address", "sheet Log"],
  ])("%s", async (_, sheet, words, place) => {
    const found = await raw({ sheet });
    expect(found.message).toBe("the file is damaged");
    expect(found.why).toContain(words);
    expect(found.place).toBe(place);
  });
});

describe("bounds", () => {
  test.each<[string, RawWorkbook, Partial<SheetLimits>, string]>([
    ["cells", { sheet: data("<c><v>1</v></c>".repeat(11)) }, { cells: 10 }, "more than 10 cells"],
    ["rows", { sheet: data("", "", "") }, { rows: 2 }, "more than 2 rows"],
    ["texts", { strings: "<si/>".repeat(3) }, { strings: 2 }, "more than 2 texts"],
    ["styles", { styles: `<cellXfs>${"<xf/>".repeat(3)}</cellXfs>` }, { styles: 2 }, "more than 2 cell styles"],
    ["depth", { sheet: "<a>".repeat(9) + "</a>".repeat(9) }, { depth: 8 }, "more than 8 deep"],
    ["a text", { sheet: data(`<c t="str"><v>${"x".repeat(30)}</v></c>`) }, { text: 20 }, "more than 20 signs"],
    ["all texts", { strings: "<si><t>12345</t></si>".repeat(3) }, { signs: 12 }, "more than 12 signs of text"],
    ["parts", { parts: { a: "", b: "" } }, { parts: 6 }, "more than 6 parts"],
    [
      "merged ranges",
      { sheet: `<mergeCells>${'<mergeCell ref="A1:B1"/>'.repeat(3)}</mergeCells>` },
      { ranges: 2 },
      "more than 2 ranges",
    ],
    ["one part", { sheet: " ".repeat(3 << 20) }, { part: 2 << 20 }, "a part that unpacks to more than 2 MB"],
    ["all parts", { sheet: " ".repeat(3 << 20) }, { expanded: 2 << 20 }, "unpacks to more than 2 MB"],
    ["the file", { sheet: " ".repeat(3 << 20) }, { bytes: 2 << 20 }, "is larger than 2 MB"],
  ])("%s", async (_, workbook, limits, words) => {
    expect((await raw(workbook, limits)).message).toContain(words);
  });

  test("a bomb is refused by what its parts declare, before any is unpacked", async () => {
    expect((await fault(declaring(300 << 20))).message).toContain("a part that unpacks to more than 256 MB");
    const many = Object.fromEntries(["a", "b", "c"].map((name) => [name, " ".repeat(200)]));
    const bytes = Buffer.from(rawXlsx({ parts: many }, true));
    for (const name of ["a", "b", "c"]) bytes.writeUInt32LE(200 << 20, centralOf(bytes, name) + 24);
    expect((await fault(bytes)).message).toContain("unpacks to more than 512 MB");
  });

  test("ranges over the whole sheet take no time", async () => {
    const sheet =
      '<cols><col min="1" max="2000000000" hidden="1"/></cols><sheetData><row r="1"><c r="A1"><v>1</v></c></row>' +
      '<row r="1048576"><c r="XFD1048576"><v>2</v></c></row></sheetData>' +
      '<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>';
    const answer = await read(rawXlsx({ sheet }));
    const [one] = "sheets" in answer ? unpack(answer).sheets : [];
    expect(one?.rows.map(({ cells }) => cells.length)).toEqual([16_384, 16_384]);
    expect(one?.hiddenColumns.length).toBe(16_384);
  });

  test("many ranges one over another are refused", async () => {
    const sheet =
      `<sheetData>${"<row><c><v>1</v></c></row>".repeat(600)}</sheetData>` +
      `<mergeCells>${'<mergeCell ref="A1:XFD1048576"/>'.repeat(9000)}</mergeCells>`;
    expect((await raw({ sheet })).message).toContain("more than 2\u00a0500\u00a0000 cells");
    const arrays = data('<c><f t="array" ref="A1:B1048576">x</f><v>1</v></c>'.repeat(300));
    expect((await raw({ sheet: arrays })).message).toContain("formulas that fill the same rows");
  });

  test("work that takes too long is ended, and said", async () => {
    const bytes = rawXlsx({ sheet: data("<c><v>1</v></c>".repeat(1000)) });
    expect(await readSheetFile(bytes, "log.xlsx", {}, { seconds: 0.001, megabytes: 512 })).toMatchObject({
      message: "the work on the file was ended",
      why: "it took longer than 0.001 s",
    });
  });
});

test("what is left unread is said", async () => {
  const parts = {
    "xl/externalLinks/externalLink1.xml": "<x/>",
    "xl/connections.xml": "<x/>",
    "xl/media/image1.png": "x",
    "xl/comments1.xml": "<x/>",
  };
  expect(await read(rawXlsx({ sheet: data("<c><v>1</v></c>"), parts }))).toMatchObject({
    leftOut: ["links to other workbooks", "connections to data elsewhere", "pictures and charts", "notes on cells"],
  });
});

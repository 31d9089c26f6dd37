import { Buffer } from "node:buffer";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { ReadOptions, SheetFault } from "../../src/sheets/cells.ts";
import { newSheetBudget, usualSheetLimits } from "../../src/sheets/limits.ts";
import { unpack } from "../../src/sheets/pack.ts";
import { readBytes } from "../../src/sheets/read-bytes.ts";

const bytesOf = (text: string | Uint8Array) => (typeof text === "string" ? new Uint8Array(Buffer.from(text)) : text);

/** Rows as `line: fields`, each blank one left out. */
async function rows(text: string | Uint8Array, options?: ReadOptions): Promise<readonly string[]> {
  const read = await readBytes(bytesOf(text), "log.csv", options);
  if ("hint" in read) throw new Error(`${read.message}: ${read.why}`);
  const [sheet] = unpack(read).sheets;
  return (sheet?.rows ?? []).map(
    ({ line, cells }) => `${line ?? 0}: ${cells.map(({ column, shown }) => `${column}=${shown ?? "-"}`).join("|")}`,
  );
}

const fault = async (text: string | Uint8Array, options?: ReadOptions): Promise<SheetFault> =>
  (await readBytes(bytesOf(text), "log.csv", options)) as SheetFault;

describe("RFC 4180, section 2", () => {
  // The examples of items 1, 2, 4, 5, 6 and 7, as printed there.
  test.each([
    [
      "1: records end with a line break",
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      ["1: 1=aaa|2=bbb|3=ccc", "2: 1=zzz|2=yyy|3=xxx"],
    ],
    ["2: the last may have none", "aaa,bbb,ccc\r\nzzz,yyy,xxx", ["1: 1=aaa|2=bbb|3=ccc", "2: 1=zzz|2=yyy|3=xxx"]],
    [
      "5: fields may be in quotes",
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      ["1: 1=aaa|2=bbb|3=ccc", "2: 1=zzz|2=yyy|3=xxx"],
    ],
    [
      "6: with line breaks in them",
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      ["1: 1=aaa|2=b\r\nbb|3=ccc", "3: 1=zzz|2=yyy|3=xxx"],
    ],
    ["7: a quote is written twice", '"aaa","b""bb","ccc"', ['1: 1=aaa|2=b"bb|3=ccc']],
    ["4: blanks are part of a field", "aaa, bbb ,ccc", ["1: 1=aaa|2= bbb |3=ccc"]],
  ])("%s", async (_, text, expected) => {
    expect(await rows(text)).toEqual(expected);
  });
});

test("the line is the one where a record begins, whatever ends the lines, blank ones counted", async () => {
  expect(await rows('a,b\n\n"x\ny\nz",1\rc,d\r\n"e\r\nf",2\n3,4')).toEqual([
    "1: 1=a|2=b",
    "3: 1=x\ny\nz|2=1",
    "6: 1=c|2=d",
    "7: 1=e\r\nf|2=2",
    "9: 1=3|2=4",
  ]);
});

describe("the delimiter", () => {
  test.each([
    [
      "semicolons beside decimal commas",
      "Mark;Thickness\nS1;8,0\nS2;10,5",
      ["1: 1=Mark|2=Thickness", "2: 1=S1|2=8,0", "3: 1=S2|2=10,5"],
    ],
    ["tabs", "Mark\tThickness\nS1\t8,0", ["1: 1=Mark|2=Thickness", "2: 1=S1|2=8,0"]],
    ["a comma in one heading", "Thickness, nominal;Mark\n8.0;S1", ["1: 1=Thickness, nominal|2=Mark", "2: 1=8.0|2=S1"]],
    ["one column", "Mark\nS1\n", ["1: 1=Mark", "2: 1=S1"]],
    [
      "declared by the first line",
      "sep=;\r\nThickness, nominal;Mark\r\n8,0;S1",
      ["2: 1=Thickness, nominal|2=Mark", "3: 1=8,0|2=S1"],
    ],
    ["quotes tell", '"a;b",c\n"1;2",3', ["1: 1=a;b|2=c", "2: 1=1;2|2=3"]],
  ])("%s", async (_, text, expected) => {
    expect(await rows(text)).toEqual(expected);
  });

  test("a doubt is a fault that says what to declare, and declaring it helps", async () => {
    const text = "Thickness, nominal;Mark\n8,0;S1";
    expect(await fault(text)).toEqual({
      message: "the sign between the fields is in doubt",
      why: "the comma and the semicolon each divide all records into as many fields",
      hint: "declare the delimiter (comma, semicolon or tab); or import the workbook the file was exported from",
    });
    expect(await rows(text, { delimiter: ";" })).toEqual(["1: 1=Thickness, nominal|2=Mark", "2: 1=8,0|2=S1"]);
    expect((await fault("Thickness\n8,0\n9,0")).why).toBe(
      "neither comma, semicolon nor tab divides all records into as many fields",
    );
    expect((await fault("sep=,\na;b", { delimiter: ";" })).message).toBe("two delimiters are declared");
  });
});

describe("encodings", () => {
  const text = "Mark;Prüfer\nS1;Müller";
  const utf16 = Buffer.from(`\ufeff${text}`, "utf16le");
  test.each([
    ["UTF-8", Buffer.from(text)],
    ["UTF-8 with its mark", Buffer.from(`\ufeff${text}`)],
    ["UTF-16, little end first", utf16],
    ["UTF-16, big end first", Buffer.from(utf16).swap16()],
  ])("%s", async (_, bytes) => {
    expect(await rows(bytes)).toEqual(["1: 1=Mark|2=Prüfer", "2: 1=S1|2=Müller"]);
  });

  test("another is said, with what the bytes look like and what to do", async () => {
    expect(await fault(Buffer.from("Mark;Joint\nS1;Müller und Söhne", "latin1"))).toEqual({
      message: "the file is not in UTF-8",
      why: "its byte FC is no UTF-8; in Windows-1252 there would stand “Müller”",
      hint: "save the sheet anew in the encoding UTF-8 (in a spreadsheet program: “CSV UTF-8”), or import the workbook itself",
      place: "line 2",
    });
    expect((await fault(Buffer.from(text, "utf16le"))).message).toMatch(/not in UTF-8|no text/);
    expect((await fault(Buffer.from("a;b\n1;2", "utf16le"))).why).toContain("UTF-16 without its mark");
    expect((await fault(Buffer.from([0xff, 0xfe, 0x00, 0xd8, 0x41, 0x00]))).message).toBe("the file is not in UTF-16");
    expect((await fault(Buffer.from([0x61, 0xc3]))).place).toBe("line 1");
  });
});

test("quotes that do not hold are a fault at the record where they begin", async () => {
  expect(await fault('a,b\n1,2\n3,"4\n5,6\n')).toMatchObject({
    message: "a quote is opened and never closed",
    place: "line 3",
  });
  expect(await fault('a,b\n1,2"x\n')).toMatchObject({ message: "a quote stands within a field", place: "line 2" });
  expect(await fault('a,b\n"1"x,2\n')).toMatchObject({ message: "a quote stands within a field", place: "line 2" });
});

test("what a spreadsheet program mangled before it exported is a fault of the cell", async () => {
  const read = await readBytes(
    bytesOf("a,b,c,d,e,f,g\n1E+05,1.2346E+11,#####,#N/A,Err:510,M\ufffdller,1E5\n"),
    "log.csv",
  );
  const faults = "hint" in read ? [] : (unpack(read).sheets[0]?.rows[1]?.cells ?? []).map(({ fault }) => fault);
  expect(faults.map((fault) => fault?.split(/[:,] /)[0])).toEqual([
    "shows 1E+05",
    "shows 1.2346E+11",
    "shows #### because its column was too narrow",
    "shows an error",
    "shows an error",
    "holds the sign \ufffd",
    undefined,
  ]);
});

test("a file larger than any is read no further", async () => {
  const limits = { ...usualSheetLimits, cells: 10, text: 20 };
  const long = await readBytes(bytesOf(`a,b\n${"x".repeat(21)},1`), "log.csv", {}, limits);
  expect(long).toMatchObject({ message: "the file holds a text of more than 20 signs", place: "line 2" });
  const many = await readBytes(bytesOf("a,b\n".repeat(6)), "log.csv", {}, limits);
  expect(many).toMatchObject({ message: "the file holds more than 10 cells" });
  expect(newSheetBudget().limits.bytes).toBe(64 * 1024 * 1024);
});

test("what LibreOffice Calc exported reads as it was shown", async () => {
  const folder = join(import.meta.dirname, "fixtures");
  const comma = await rows(readFileSync(join(folder, "calc-comma.csv")));
  expect(comma.slice(0, 6)).toEqual([
    "1: 1=8.0|2=eight, one decimal|3=in a hidden column",
    "2: 1=1,234.50",
    "3: 1=14.1%",
    "4: 1=1.00E+05",
    "5: 1=12.01.2026",
    "6: 1=2026-01-12",
  ]);
  expect(comma[9]).toBe("10: 1=of 8.0 mm\nsecond line");
  expect(comma[10]).toBe("12: 1=TRUE");
  expect(await rows(readFileSync(join(folder, "calc-semicolon.csv")))).toEqual(comma);
});

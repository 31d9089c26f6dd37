import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { isSheetFault, type SheetFault, type SheetToWrite, type Workbook } from "../../src/sheets/cells.ts";
import { unpack } from "../../src/sheets/pack.ts";
import { readBytes } from "../../src/sheets/read-bytes.ts";
import { writeCsv } from "../../src/sheets/write/csv.ts";
import { writeWorkbook } from "../../src/sheets/write/workbook.ts";
import { packageRoot } from "../../src/root.ts";
import { bookInWords } from "./in-words.ts";
import { awkward, many, ours as sheet } from "./ours.ts";
import { partOf } from "./parts.ts";

const written = async (sheets: readonly SheetToWrite[]) => {
  const bytes = await writeWorkbook(sheets);
  if (isSheetFault(bytes)) throw new Error(bytes.message);
  return bytes;
};

async function readBack(bytes: Uint8Array, name: string): Promise<Workbook> {
  const read = await readBytes(bytes, name);
  if ("hint" in read) throw new Error(`${read.message}: ${read.why}`);
  return unpack(read);
}

describe("a workbook", () => {
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = await written([sheet]);
  });

  test("reads back as it was written, every cell as text", async () => {
    const book = await readBack(bytes, "out.xlsx");
    const [first, choices] = book.sheets;
    const cells = first?.rows.map((row) => row.cells.map(({ shown }) => shown));
    expect(cells).toEqual([
      sheet.columns.map(({ heading }) => heading),
      ["WL-1", "8.0", "accepted"],
      ...awkward.map((text) => [text]),
    ]);
    for (const row of first?.rows ?? [])
      for (const cell of row.cells) expect(cell).toMatchObject({ type: "text", format: "@" });
    expect([choices?.name, choices?.hidden, choices?.rows.length]).toEqual(["Choices", true, many.length]);
  });

  test("keeps its headings in sight, has notes, lists to choose from, and columns of text", () => {
    const part = partOf(bytes, "xl/worksheets/sheet1.xml");
    expect(part).toMatch(/<pane [^>]*ySplit="1"[^>]*state="frozen"/);
    expect(part).toMatch(/sqref="C2:C1048576"[^>]*>\s*<formula1>Choices!\$A\$1:\$A\$2</);
    expect(part).toMatch(/sqref="D2:D1048576"[^>]*>\s*<formula1>Choices!\$B\$1:\$B\$60</);
    expect(part).toMatch(/errorStyle="warning"/);
    expect(part).toMatch(/<col style="2" min="2" max="2" width="14"/);
    expect(part).toMatch(/<c r="A2" t="s" s="2">/);
    expect(partOf(bytes, "xl/comments1.xml")).toContain("What is stamped.\nIn capitals.");
  });

  test("is the same to the byte in another time zone, another locale, and later", () => {
    const program = `
      import { writeWorkbook } from ${JSON.stringify(join(packageRoot, "dist/src/sheets/write/workbook.js"))};
      import { createHash } from "node:crypto";
      const bytes = await writeWorkbook(${JSON.stringify([sheet])});
      console.log(createHash("sha256").update(bytes).digest("hex"));`;
    const hash = createHash("sha256").update(bytes).digest("hex");
    for (const [zone, locale] of [
      ["Asia/Tokyo", "de_DE.UTF-8"],
      ["America/New_York", "C"],
    ] as const) {
      const env = { ...process.env, TZ: zone, LANG: locale };
      const out = execFileSync(process.execPath, ["--input-type=module", "-e", program], { env, encoding: "utf8" });
      expect(out.trim()).toBe(hash);
    }
  });
});

const faults: readonly (readonly [what: string, sheets: readonly SheetToWrite[], message: string, place?: string])[] = [
  ["half a sign", [{ ...sheet, rows: [["\ud800"]] }], "a text cannot be stored", "sheet weld-log, cell A2"],
  [
    "a sign that is none",
    [{ ...sheet, rows: [["a", "\uffff"]] }],
    "a text cannot be stored",
    "sheet weld-log, cell B2",
  ],
  [
    "a text too long",
    [{ ...sheet, rows: [["x".repeat(32_768)]] }],
    "a text cannot be stored",
    "sheet weld-log, cell A2",
  ],
  [
    "a note that cannot be stored",
    [{ name: "weld-log", columns: [{ heading: "A", note: "\ufffe" }], rows: [] }],
    "a text cannot be stored",
    "sheet weld-log, column A, its note",
  ],
  ["a name of signs that names do not hold", [{ ...sheet, name: "a/b" }], "a sheet cannot bear the name “a/b”"],
  ["two sheets of one name", [sheet, { ...sheet, name: "Weld-Log" }], "a sheet cannot bear the name “Weld-Log”"],
  ["a sheet named like the lists", [{ ...sheet, name: "choices" }], "a sheet cannot bear the name “Choices”"],
  ["a row without heading", [{ name: "a", columns: [], rows: [["x"]] }], "sheet a has cells without a heading"],
  ["nothing", [], "there is no sheet to write"],
];

describe("what a spreadsheet cannot hold is refused in words", () => {
  for (const [what, sheets, message, place] of faults)
    test(what, async () => {
      const fault = (await writeWorkbook(sheets)) as SheetFault;
      expect(fault.message).toContain(message);
      expect(fault.place).toBe(place);
    });
});

describe("CSV", () => {
  const plain: SheetToWrite = {
    name: "owed",
    columns: [{ heading: "What" }, { heading: "Due; by" }],
    rows: [["a, b", "two\r\nlines"], ['say "8.0 mm"', "-10 °C"], ["", { text: "+5" }], ["0042"], ["−", "µ"]],
  };

  test("is written by RFC 4180 and reads back the same", async () => {
    const bytes = writeCsv(plain);
    if (isSheetFault(bytes)) throw new Error(bytes.message);
    // RFC 4180, section 2, items 5 to 7: fields in quotes, a quote within is written twice, lines end with CR LF.
    expect(new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes)).toBe(
      '\ufeff"What","Due; by"\r\n"a, b","two\r\nlines"\r\n"say ""8.0 mm""","-10 °C"\r\n"","+5"\r\n"0042",""\r\n"−","µ"\r\n',
    );
    expect(bookInWords(await readBack(bytes, "owed.csv"))).toEqual({
      owed: {
        A1: "text What",
        B1: "text Due; by",
        A2: "text a, b",
        B2: "text two\r\nlines",
        A3: 'text say "8.0 mm"',
        B3: "text -10 °C",
        B4: "text +5",
        A5: "text 0042",
        A6: "text −",
        B6: "text µ",
      },
    });
  });

  test("a text that begins like a formula is refused, never changed", () => {
    for (const text of ["=1+1", "+1+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "- none"])
      expect(writeCsv({ ...plain, rows: [["x", text]] }), text).toMatchObject({
        message: "a text begins like a formula, which a program would calculate on opening a CSV file",
        place: "sheet owed, cell B2",
      });
  });
});

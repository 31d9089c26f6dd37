import { describe, expect, test } from "vitest";
import { unpack } from "../../src/sheets/pack.ts";
import { readBytes } from "../../src/sheets/read-bytes.ts";
import { sheetInWords } from "./in-words.ts";
import { data, rawXlsx, type RawWorkbook } from "./raw-xlsx.ts";

async function words(raw: RawWorkbook): Promise<Readonly<Record<string, string>>> {
  const read = await readBytes(rawXlsx(raw), "raw.xlsx");
  if ("hint" in read) throw new Error(`${read.message}: ${read.why}`);
  const [sheet] = unpack(read).sheets;
  return sheet === undefined ? {} : sheetInWords(sheet);
}

/** A cell with a style that has this number format. */
const formatted = (code: string, value: string, type = "n") =>
  words({
    sheet: data(`<c s="1" t="${type}"><v>${value}</v></c>`),
    styles: `<numFmts><numFmt numFmtId="170" formatCode="${code}"/></numFmts><cellXfs><xf/><xf numFmtId="170"/></cellXfs>`,
  }).then(({ A1 = "" }) => A1);

describe("the ways in which programs write the same (ECMA-376 part 1, 18.3 and 18.4)", () => {
  test("rows and cells without address follow each other; gaps are kept", async () => {
    expect(
      await words({
        sheet: `<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c r="C5"><v>3</v></c><c><v>4</v></c></row></sheetData>`,
      }),
    ).toEqual({ A1: "number 1 = 1", B1: "number 2 = 2", C5: "number 3 = 3", D5: "number 4 = 4" });
  });

  test("elements with a prefix, targets from the root, parts under other names and capitals", async () => {
    const x = 'xmlns:x="http://purl.oclc.org/ooxml/spreadsheetml/main"';
    const rel = "http://purl.oclc.org/ooxml/officeDocument/relationships";
    expect(
      await words({
        parts: {
          "xl/worksheets/sheet1.xml": null,
          "_rels/.rels": `<Relationships><Relationship Id="a" Type="${rel}/officeDocument" Target="/data/Book.xml"/></Relationships>`,
          "xl/workbook.xml": null,
          "xl/_rels/workbook.xml.rels": null,
          "data/Book.xml": `<x:workbook ${x}><x:sheets><x:sheet name="Log" d3p1:id="s" xmlns:d3p1="${rel}"/></x:sheets></x:workbook>`,
          "data/_rels/Book.xml.rels": `<Relationships><Relationship Id="s" Type="${rel}/worksheet" Target="/Data/My%20Sheet.xml"/></Relationships>`,
          "data/my sheet.xml": `<x:worksheet ${x}><x:sheetData><x:row r="1"><x:c r="A1" t="inlineStr"><x:is><x:t>W07</x:t></x:is></x:c></x:row></x:sheetData></x:worksheet>`,
        },
      }),
    ).toEqual({ A1: "text W07" });
  });

  test("shared texts: runs are joined, how they are spoken is left out, escaped signs are read", async () => {
    const strings =
      "<si><r><t>8</t></r><r><rPr><b/></rPr><t xml:space='preserve'>.0 </t></r><rPh><t>acht</t></rPh></si>" +
      "<si><t>a_x000A_b_x005F_x0041_</t></si><si><t><![CDATA[<W07>]]> &amp; &#xD8;</t></si><si/>";
    const cells = [0, 1, 2, 3].map((index) => `<c t="s"><v>${index}</v></c>`).join("");
    expect(await words({ sheet: data(cells), strings })).toEqual({
      A1: "text 8.0 ",
      B1: "text a\nb_x0041_",
      C1: "text <W07> & Ø",
    });
  });

  test("formulas: shared, over a range, from another workbook, without result, with an empty one", async () => {
    const cells =
      '<c><f t="shared" ref="A1:B1" si="0">1+1</f><v>2</v></c><c><f t="shared" si="0"/><v>3</v></c>' +
      '<c><f t="array" ref="C1:D1">x</f><v>4</v></c><c><v>5</v></c><c><v>6</v></c>' +
      '<c><f>[1]Log!A1</f><v>7</v></c><c><f>1+1</f></c><c t="str"><f>""</f><v></v></c><c t="str"><v></v></c>';
    const result = "* is the result that is stored with a formula";
    const found = await words({ sheet: data(cells) });
    const missing =
      "text - {1+1} ! holds a formula without its result: open the sheet in a spreadsheet program, save it there, and import that";
    expect(found).toEqual({
      A1: `number 2 = 2 {1+1} ${result} and is not calculated anew`,
      B1: `number 3 = 3 {} ${result} and is not calculated anew`,
      C1: `number 4 = 4 {x} ${result} and is not calculated anew`,
      D1: `number 5 = 5 {} ${result} and is not calculated anew`,
      E1: "number 6 = 6",
      F1: `number 7 = 7 {[1]Log!A1} ${result}, which reads another workbook, and is not calculated anew`,
      G1: missing,
      H1: `text  {""} ${result} and is not calculated anew`,
    });
  });

  test("days as ISO 8601 writes them, and the epoch of 1904 written in words", async () => {
    expect(await formatted("dd.mm.yyyy", "2026-01-12T00:00:00", "d")).toBe("date 12.01.2026 = 2026-01-12");
    expect(await formatted("dd.mm.yyyy", "2026-01-12T10:30:00", "d")).toContain("is shown as no plain day");
    expect(await formatted("dd.mm.yyyy", "2026-13-12", "d")).toContain("is shown as no plain day");
    const styles = '<cellXfs><xf/><xf numFmtId="15"/></cellXfs>';
    expect(
      await words({ sheet: data('<c s="1"><v>0</v></c>'), styles, workbook: '<workbookPr date1904="true"/>' }),
    ).toEqual({ A1: "date 1-Jan-04 = 1904-01-01" });
  });

  test("blank cells are not listed, whatever their form", async () => {
    const cells =
      '<c s="0"/><c><v></v></c><c t="s"><v>0</v></c><c t="inlineStr"><is><t></t></is></c><c t="inlineStr"/>';
    expect(await words({ sheet: data(cells), strings: "<si><t></t></si>" })).toEqual({});
  });

  test("elements of other names within a cell, and of the same name elsewhere, are none of it", async () => {
    const cells = "<c><v>1</v><extLst><ext><t>x</t></ext></extLst></c>";
    const after = '<extLst><ext><xm:f xmlns:xm="m">Log!A1</xm:f><c r="Z9"><v>9</v></c></ext></extLst>';
    expect(await words({ sheet: data(cells) + after })).toEqual({ A1: "number 1 = 1" });
  });
});

describe("number formats", () => {
  // Display as ECMA-376 part 1, 18.8.30 and 18.8.31 have it.
  test.each([
    ["General", "8.0", "number 8 = 8"],
    ["General", "1.4000000000000001", "number 1.4 = 1.4"],
    ["General", "-0.5", "number -0.5 = -0.5"],
    ["0.0", "8", "number 8.0 = 8.0"],
    ["0.00", "0.14099999999999999", "number 0.14 = 0.14 * shows 0.14, and holds 0.141"],
    ["0.000", "0.14099999999999999", "number 0.141 = 0.141"],
    ["0000", "42", "number 0042 = 0042"],
    ["#,##0", "1234567", "number 1,234,567 = 1234567"],
    ["0.0%", "0.141", "number 14.1% = 14.1 %"],
    ["0.0\\ %", "0.141", "number 14.1 % = 14.1 %"],
    ["[$-407]0.00", "8", "number 8.00 = 8.00"],
    ["0.0", "1.4E-1", "number 0.1 = 0.1 * shows 0.1, and holds 0.14"],
    ["yyyy\\-mm\\-dd", "46034", "date 2026-01-12 = 2026-01-12"],
    ["[$-F800]dddd\\,\\ mmmm\\ dd\\,\\ yyyy", "46034", "date 2026-01-12 = 2026-01-12 * is the day 2026-01-12"],
    ["dd.mm.yyyy;@", "46034.999", "date 12.01.2026 = 2026-01-12"],
  ])("%s of %s shows as %s", async (code, value, text) => {
    expect(await formatted(code, value)).toContain(text);
  });

  test.each([
    ["0.0;[Red]-0.0", "8", "a number in a form of its own"],
    [";;;", "8", "a number in a form of its own"],
    ["0.0_ ", "8", "a number in a form of its own"],
    ["0.###", "8", "a number in a form of its own"],
    ["# ??/??", "0.5", "a fraction"],
    ["0.0E+00", "8", "a power of ten"],
    ["[h]:mm", "1.5", "a time or a length of time"],
    ["d. mmm", "46034", "a day without its year"],
    ["mmm yy", "46034", "a month without its day"],
    ["dd.mm.yyyy hh:mm", "46034.5", "a day with a time"],
    ["General", "1E+20", "shows 1E+20 or fewer digits"],
    ["General", "123456.7890123", "shows 123456.789 or fewer digits, and holds 123456.7890123"],
    ["0", "12345678901234567890", "more digits than a spreadsheet program keeps"],
    ["0.0", "-0.01", "shows zero, with its sign in some programs only"],
    ["dd.mm.yyyy", "-1", "shows ##### instead of a day"],
    ["dd.mm.yyyy", "2958466", "shows ##### instead of a day"],
    ["dd.mm.yyyy", "59", "a day before March 1900"],
    ["0.0", "0x1F", "which is no number"],
    ["0.0", "1e999", "larger than any program keeps"],
    ["0.0", "eight", "which is no number"],
  ])("%s of %s is a fault of its cell", async (code, value, fault) => {
    const text = await formatted(code, value);
    expect(text).toMatch(/^(?:number|date) - ! /);
    expect(text).toContain(fault);
  });

  test("a built-in format that is another in each language is a fault", async () => {
    const styles = '<cellXfs><xf/><xf numFmtId="30"/></cellXfs>';
    const { A1 } = await words({ sheet: data('<c s="1"><v>46034</v></c>'), styles });
    expect(A1).toContain("shows what is another in each language, by format 30");
  });
});

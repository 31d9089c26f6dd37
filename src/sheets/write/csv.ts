import { Buffer } from "node:buffer";
import { stringify } from "csv-stringify/sync";
import type { SheetFault, SheetToWrite } from "../cells.ts";
import { cellTexts, textOf, unstorableIn } from "./storable.ts";

/**
 * Writes a sheet as CSV by RFC 4180: commas, CR LF, every field in quotes so that no other delimiter could be meant; in
 * UTF-8 with its mark, without which spreadsheet programs take it for something else. A text that begins like a formula
 * is a fault: a CSV file cannot say that it is text, and an apostrophe before it would be another text.
 */
export function writeCsv(sheet: SheetToWrite): Uint8Array | SheetFault {
  const fault = unstorableIn([sheet]) ?? formulaIn(sheet);
  if (fault !== undefined) return fault;
  const { columns, rows } = sheet;
  const lines = rows.map((line) => columns.map((_, index) => textOf(line[index])));
  const text = stringify([columns.map(({ heading }) => heading), ...lines], {
    record_delimiter: "windows",
    quoted: true,
    quoted_empty: true,
    bom: true,
  });
  return new Uint8Array(Buffer.from(text, "utf8"));
}

/** A number with or without a unit after it: no program takes it for more. */
const harmless = /^[+-]?\d+(?:[.,]\d+)*\s?[^=+\-*/^&|!()'"<>:]{0,12}$/;

function formulaIn(sheet: SheetToWrite): SheetFault | undefined {
  for (const { text, place } of cellTexts(sheet))
    if (/^[=+\-@\t\r]/.test(text) && !harmless.test(text))
      return {
        message: "a text begins like a formula, which a program would calculate on opening a CSV file",
        why: `it is “${text.length > 60 ? `${text.slice(0, 60)}…` : text}”`,
        hint: "write a workbook (.xlsx), in which it stays text",
        place,
      };
  return undefined;
}

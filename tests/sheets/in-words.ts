import { cellName } from "../../src/sheets/addresses.ts";
import type { Cell, Sheet, Workbook } from "../../src/sheets/cells.ts";

/** A cell in one line: `number 8.0 = 8.0`, `date 12.01.2026 = 2026-01-12`, `error #N/A ! shows the error …`. */
export function cellInWords({ type, shown, figure, day, formula, fault, note }: Cell): string {
  const taken = figure ?? day;
  return [
    type,
    shown ?? "-",
    ...(taken === undefined ? [] : ["=", taken]),
    ...(formula === undefined ? [] : [`{${formula}}`]),
    ...(fault === undefined ? [] : ["!", fault]),
    ...(note === undefined ? [] : ["*", note]),
  ].join(" ");
}

/** A sheet as its cells by address, and what is hidden or merged. */
export function sheetInWords(sheet: Sheet): Readonly<Record<string, string>> {
  const cells = sheet.rows.flatMap(({ cells }) =>
    cells.map((cell) => [cellName(cell.row, cell.column), cellInWords(cell)] as const),
  );
  const about: [string, string][] = [
    ["hidden", sheet.hidden ? "yes" : ""],
    ["hidden rows", sheet.hiddenRows.join(" ")],
    ["hidden columns", sheet.hiddenColumns.join(" ")],
    ["merged", sheet.merges.map(({ text }) => text).join(" ")],
  ];
  return Object.fromEntries([...about.filter(([, text]) => text !== ""), ...cells]);
}

export const bookInWords = (book: Workbook): Readonly<Record<string, Readonly<Record<string, string>>>> =>
  Object.fromEntries(book.sheets.map((sheet) => [sheet.name, sheetInWords(sheet)]));

import { expect, test } from "vitest";
import { cellAt, cellName, columnName, lastColumn, rangeAt } from "../../src/sheets/addresses.ts";

test("columns are named as a spreadsheet program names them", () => {
  expect([1, 26, 27, 52, 53, 702, 703, lastColumn].map(columnName)).toEqual([
    "A",
    "Z",
    "AA",
    "AZ",
    "BA",
    "ZZ",
    "AAA",
    "XFD",
  ]);
  for (const column of [1, 26, 27, 702, 703, lastColumn])
    expect(cellAt(cellName(7, column))).toEqual({ row: 7, column });
});

test("an address outside the sheet, or of another form, is none", () => {
  for (const text of ["", "A", "7", "A0", "a1", "XFE1", "A1048577", "A01", "ZZZZ1", "A1:B2"])
    expect(cellAt(text), text).toBeUndefined();
  expect(cellAt("$C$12")).toEqual({ row: 12, column: 3 });
});

test("a range has both its ends, in order", () => {
  expect(rangeAt("B2:C4")).toEqual({ text: "B2:C4", rows: [2, 4], columns: [2, 3] });
  expect(rangeAt("B2")).toEqual({ text: "B2", rows: [2, 2], columns: [2, 2] });
  for (const text of ["B4:B2", "B2:", "B2:C3:D4", ""]) expect(rangeAt(text), text).toBeUndefined();
});

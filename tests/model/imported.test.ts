import { expect, test } from "vitest";
import { rowWords, sheetPlaces, sheetWords } from "../../src/model/imported.ts";

const hash = "0".repeat(64);
const imported = { file: "weld-log.xlsx", sha256: hash, sheet: "Shell", row: 14, map: "weld-log", fields: "0" };

test("a row of a sheet is said by file, sheet and number", () => {
  expect(sheetWords(imported)).toBe("weld-log.xlsx, Shell, row 14");
  expect(sheetWords({ ...imported, rows: [14, 15, 16, 20] })).toBe("weld-log.xlsx, Shell, rows 14 to 16, 20");
  expect(sheetWords({ file: "ndt.csv", sha256: hash, row: 2, map: "ndt", fields: "0" })).toBe("ndt.csv, row 2");
});

test("a record of one file and a record of a list are found by any place in them", () => {
  const of = (file: string, pointer: string, value: { readonly row: number } | null) => ({
    kind: "weld-log",
    id: "WL-1",
    file,
    pointer,
    value: value === null ? {} : { imported: { ...imported, ...value } },
    faulty: false,
  });
  const at = sheetPlaces([
    of("one.json", "", { row: 3 }),
    of("many.json", "/records/0", null),
    of("many.json", "/records/10", { row: 12 }),
  ]);
  expect(at({ file: "one.json", pointer: "/runs/0/date" })).toBe("weld-log.xlsx, Shell, row 3");
  expect(at({ file: "many.json", pointer: "/records/10/runs/0" })).toBe("weld-log.xlsx, Shell, row 12");
  expect(at({ file: "many.json", pointer: "/records/1/runs/0" })).toBeUndefined();
  expect(at({ file: "many.json", pointer: "" })).toBeUndefined();
  expect(at({ file: "other.json", pointer: "" })).toBeUndefined();
});

test("what was not imported, or says so in another form, names no sheet", () => {
  expect(sheetWords(undefined)).toBeUndefined();
  expect(sheetWords("weld-log.xlsx")).toBeUndefined();
  expect(sheetWords({ file: 3 })).toBeUndefined();
  expect(rowWords([4, 5, 9])).toBe("rows 4, 5, 9");
});

import { describe, expect, test } from "vitest";
import { misplaced, type Taken } from "../../src/readback/misplaced.ts";
import type { Pages } from "../../src/readback/search.ts";
import type { Row, Transcribed } from "../../src/readback/values.ts";
import { ofQuantity, ofText } from "../../src/readback/wanted.ts";
import { page } from "./page.ts";

const quantity = { name: "value", type: "quantity", title: "Value", description: "", required: false } as const;

const valueAt = (pointer: string, rows: readonly Row[], value: string): Transcribed => ({
  pointer,
  rows,
  field: quantity,
  value,
  parts: value.includes(" ") ? ofQuantity(value) : ofText(value),
});

/** A record of rows, each with its fields in the order given. */
function rowsOf(on: Pages, fields: readonly string[], rows: readonly (readonly string[])[]): Taken {
  const values = rows.flatMap((row, index) => {
    const own = { pointer: `/rows/${index}`, key: String(index) };
    return row.map((value, field) => valueAt(`${own.pointer}/${fields[field] ?? ""}`, [own], value));
  });
  return { kind: "log", id: "L1", values, labels: () => [], on };
}

const saidOf = (...taken: readonly Taken[]) =>
  [...misplaced(taken)].map(([{ pointer, value }, word]) => `${pointer} ${value}: ${word}`);

describe("a table of rows", () => {
  const table = page(
    "Run   Current   Speed   Interpass",
    "R-1   118 A     147     150 °C",
    "R-2   121 A     174     162 °C",
    "R-3   124 A     158     144 °C",
    "R-4   119 A     161     158 °C",
    "R-5   123 A     166     147 °C",
  );
  const fields = ["run", "current", "speed", "interpass"];
  const honest = [
    ["R-1", "118 A", "147 mm/min", "150 °C"],
    ["R-2", "121 A", "174 mm/min", "162 °C"],
    ["R-3", "124 A", "158 mm/min", "144 °C"],
    ["R-4", "119 A", "161 mm/min", "158 °C"],
    ["R-5", "123 A", "166 mm/min", "147 °C"],
  ];
  const changed = (row: number, column: number, value: string) =>
    honest.map((cells, index) => (index === row ? cells.with(column, value) : cells));

  test("as it is printed", () => expect(saidOf(rowsOf(table, fields, honest))).toEqual([]));

  test.each([
    [0, 2, "174 mm/min", "/rows/0/speed 174 mm/min: 147"],
    [1, 2, "147 mm/min", "/rows/1/speed 147 mm/min: 174"],
    [2, 2, "161 mm/min", "/rows/2/speed 161 mm/min: 158"],
  ])("row %i: another row's value is not this row's", (row, column, value, said) =>
    expect(saidOf(rowsOf(table, fields, changed(row, column, value)))).toEqual([said]),
  );

  test("what stands there once more, where no value is known to stand, is left alone", () => {
    const noted = page(
      "Run   Current",
      "R-1   118 A",
      "R-2   121 A",
      "R-3   124 A",
      "R-4   119 A",
      "R-1 corrected: 121 A",
    );
    const rows = [
      ["R-1", "121 A"],
      ["R-2", "121 A"],
      ["R-3", "124 A"],
      ["R-4", "119 A"],
    ];
    expect(saidOf(rowsOf(noted, fields, rows))).toEqual([]);
  });

  test("three rows prove nothing", () => {
    const small = page("R-1   118 A", "R-2   181 A", "R-3   124 A");
    const rows = [
      ["R-1", "181 A"],
      ["R-2", "181 A"],
      ["R-3", "124 A"],
    ];
    expect(saidOf(rowsOf(small, fields, rows))).toEqual([]);
  });

  test("a value printed once for several rows", () => {
    const once = page(
      "R-1   20 °C   118 A",
      "R-2           121 A",
      "R-3           124 A",
      "R-4   21 °C   119 A",
      "R-5           123 A",
    );
    const rows = [
      ["R-1", "20 °C", "118 A"],
      ["R-2", "20 °C", "121 A"],
      ["R-3", "20 °C", "124 A"],
      ["R-4", "21 °C", "119 A"],
      ["R-5", "21 °C", "123 A"],
    ];
    expect(saidOf(rowsOf(once, ["run", "preheat", "current"], rows))).toEqual([]);
  });

  test("values of a list in another order", () => {
    const lines = page(
      "T-1   68   86   75",
      "T-2   91   84   88",
      "T-3   66   68   71",
      "T-4   79   86   72",
      "T-5   77   73   90",
    );
    const rows = [
      ["T-1", "68 J", "86 J", "75 J"],
      ["T-2", "91 J", "84 J", "88 J"],
      ["T-3", "68 J", "66 J", "71 J"],
      ["T-4", "79 J", "86 J", "72 J"],
      ["T-5", "77 J", "73 J", "90 J"],
    ];
    expect(saidOf(rowsOf(lines, ["test", "values/0", "values/1", "values/2"], rows))).toEqual([]);
  });
});

describe("an analysis: values under the symbols of elements", () => {
  const sheet = page(
    "Heat       C     Si     Mn     Cr     Cu     Mo   Cr+Cu+Mo",
    "84126   0.14   0.24   1.16   0.05   0.10   0.01       0.16",
  );
  const symbols = ["C", "Si", "Mn", "Cr", "Cu", "Mo"];
  const analysis = (values: readonly string[]): Taken => {
    const rows = symbols.map((key, index) => ({ pointer: `/chemistry/${index}`, key }));
    return {
      kind: "certificate",
      id: "C1",
      values: rows.map((row, index) => valueAt(`${row.pointer}/value`, [row], values[index] ?? "")),
      labels: () => rows.map((row) => ({ pointer: `${row.pointer}/element`, rows: [row], parts: ofText(row.key) })),
      on: sheet,
    };
  };

  test("as it is printed", () =>
    expect(saidOf(analysis(["0.14 %", "0.24 %", "1.16 %", "0.05 %", "0.10 %", "0.01 %"]))).toEqual([]));
  test("0.01 of copper stands there for molybdenum alone", () =>
    expect(saidOf(analysis(["0.14 %", "0.24 %", "1.16 %", "0.05 %", "0.01 %", "0.01 %"]))).toEqual([
      "/chemistry/4/value 0.01 %: 0.10",
    ]));
  test("0.10 of molybdenum stands there for copper alone", () =>
    expect(saidOf(analysis(["0.14 %", "0.24 %", "1.16 %", "0.05 %", "0.10 %", "0.10 %"]))).toEqual([
      "/chemistry/5/value 0.10 %: 0.01",
    ]));
});

import { describe, expect, test } from "vitest";
import { cellValue } from "../../src/imports/cell-value.ts";
import type { ColumnReading } from "../../src/imports/read-cell.ts";
import { headingOf } from "../../src/imports/heading.ts";
import { joinCell, splitCell } from "../../src/imports/split.ts";
import { fill, foldId, templateOf } from "../../src/imports/template.ts";
import { readDate } from "../../src/imports/written-date.ts";
import { readNumber } from "../../src/imports/written-number.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { fieldAt, type Field } from "../../src/model/kind.ts";
import type { Cell } from "../../src/sheets/cells.ts";
import { day, number, type Given } from "./tables.ts";

const kinds = loadKinds(["schemas"]);
const words = new Map<string, string>();

describe("numbers written as text", () => {
  test.each([
    ["8,0", { decimal: "," }, "8.0"],
    ["1.234,50", { decimal: ",", grouping: "." }, "1234.50"],
    ["1 234 567,8", { decimal: ",", grouping: " " }, "1234567.8"],
    ["1'234.5", { decimal: ".", grouping: "'" }, "1234.5"],
    ["-0,5", { decimal: "," }, "-0.5"],
    ["−0,5", { decimal: "," }, "-0.5"],
    ["12", {}, "12"],
    ["007", {}, "007"],
  ])("%s", (text, reading, figure) => {
    expect(readNumber(text, { ...reading, words })).toEqual({ figure });
  });
  test.each([
    ["1.234", {}],
    ["1,234", {}],
    ["8,0", {}],
    ["1.234", { decimal: "," }],
    ["1,2,3", { decimal: "," }],
    ["12.34,5", { decimal: ",", grouping: "." }],
    ["1E+05", { decimal: "." }],
    ["8,0 / 8,2", { decimal: "," }],
    ["8,", { decimal: "," }],
  ])("%s with %j is not guessed", (text, reading) => {
    expect(readNumber(text, { ...reading, words })).toHaveProperty("fault");
  });
});

describe("dates written as text", () => {
  test.each([
    ["2026-01-12", {}, "2026-01-12"],
    ["12.01.2026", { dates: "day-month-year" }, "2026-01-12"],
    ["1/2/2026", { dates: "month-day-year" }, "2026-01-02"],
    ["2026/2/1", { dates: "year-month-day" }, "2026-02-01"],
    ["12.01.2026 14:30", { dates: "day-month-year", offset: "+01:00" }, "2026-01-12T14:30+01:00"],
  ] as const)("%s", (text, reading, date) => {
    expect(readDate(text, { ...reading, words })).toEqual({ date });
  });
  test.each([
    ["01/02/2026", {}],
    ["12.01.26", { dates: "day-month-year" }],
    ["31.02.2026", { dates: "day-month-year" }],
    ["13/13/2026", { dates: "day-month-year" }],
    ["12.01.2026 14:30", { dates: "day-month-year" }],
    ["Q1 2026", { dates: "day-month-year" }],
  ] as const)("%s with %j is not guessed", (text, reading) => {
    expect(readDate(text, { ...reading, words })).toHaveProperty("fault");
  });
  test.each([
    ["18.20.2026", "day-month-year", '"18.20.2026" is no date in the order day-month-year: there is no month 20'],
    [
      "18.03.2026",
      "year-month-day",
      '"18.03.2026" is not written in the order year-month-day: its year does not stand first',
    ],
    [
      "2026/03/18",
      "day-month-year",
      '"2026/03/18" is not written in the order day-month-year: its year does not stand last',
    ],
    ["18.03.26", "day-month-year", '"18.03.26" has no year of four digits in the order day-month-year'],
  ] as const)("%s in the order %s: the fault is the true one", (text, dates, fault) => {
    expect(readDate(text, { dates, decimal: ".", words })).toMatchObject({ fault });
  });
});

const plainReading: ColumnReading = {
  decimal: ",",
  words,
  columnWords: words,
  asShown: false,
  csv: false,
  kindsOf: (id) => {
    const all = new Set({ "WL-L1": ["weld-log"], C2: ["joint", "repair"], BOWLTHORNE: ["organisation"] }[id] ?? []);
    return { all, meant: all };
  },
};
const cell = (given: Given): Cell => ({
  row: 2,
  column: 1,
  type: "text",
  shown: typeof given === "string" ? given : null,
  raw: typeof given === "string" ? given : null,
  format: "@",
  ...(typeof given === "string" ? {} : given),
});
const field = (kind: string, path: string): Field => {
  const found = fieldAt(kinds.get(kind) ?? { fields: new Map() }, path);
  if (found === undefined) throw new Error(path);
  return found;
};
const readAs = (kind: string, path: string, given: Given, reading: Partial<ColumnReading> = {}) => {
  const read = cellValue(cell(given), field(kind, path), { ...plainReading, ...reading }, () => undefined);
  return read.type === "value" ? read.value : read.type === "fault" ? `fault: ${read.fault}` : "blank";
};

describe("what a cell says in a field", () => {
  test.each([
    ["part", "nominalThickness", number("8.0", "0.0"), { unit: "mm" }, "8.0 mm"],
    ["part", "nominalThickness", "8,0", { unit: "mm" }, "8.0 mm"],
    ["part", "nominalThickness", "8,0 mm", {}, "8.0 mm"],
    ["part", "nominalThickness", "8mm", {}, "8 mm"],
    ["part", "nominalThickness", "0,5 in", { unit: "mm" }, "0.5 in"],
    ["material-certificate", "rows[].chemistry[].value", "<0,003", { unit: "%" }, "<0.003 %"],
    ["material-certificate", "rows[].chemistry[].value", number("14.1%", "0.0%"), {}, "14.1 %"],
    ["material-certificate", "issued", day("2026-01-12", "12.01.2026"), {}, "2026-01-12"],
    ["material-certificate", "rows[].heat", number("00771", "00000"), {}, "00771"],
    ["material-certificate", "rows[].heat", number("771"), { asShown: true }, "771"],
    ["material-certificate", "pages", number("3"), {}, 3],
    ["material-certificate", "statesCompliance", "Yes", {}, true],
    ["weld-log", "runs[].layer", "Root", {}, "root"],
    ["weld-log", "joint", "1.2", { form: "L-{}" }, "L-1.2"],
    ["dimension-check", "rows[].nominal", "0,85 [1]", {}, "0.85"],
    ["inspection-step", "records[]", "WL-L1", {}, "weld-log:WL-L1"],
    ["inspection-step", "records[]", "joint:C9", {}, "joint:C9"],
    ["material-certificate", "mill", "Bowlthorne", {}, "BOWLTHORNE"],
  ])(
    "%s %s",
    (kind, path, given, { form, ...reading }: { form?: string } & Partial<Omit<ColumnReading, "form">>, expected) => {
      const template = form === undefined ? undefined : templateOf(form);
      if (template !== undefined && "fault" in template) throw new Error(template.fault);
      expect(readAs(kind, path, given, { ...reading, ...(template !== undefined && { form: template }) })).toEqual(
        expected,
      );
    },
  );
  test.each([
    ["part", "nominalThickness", "8,0", /no unit/],
    ["part", "nominalThickness", "8,0 bar", /a unit of length/],
    ["part", "nominalThickness", "8-10 mm", /no value/],
    ["part", "nominalThickness", day("2026-03-01", "01.03.2026"), /the day 2026-03-01/],
    ["dimension-check", "rows[].nominal", "14", /no unit/],
    ["material-certificate", "rows[].heat", number("771"), /zeros before it/],
    ["material-certificate", "rows[].heat", day("2026-03-01"), /such as 3-1/],
    ["material-certificate", "issued", "01/02/2026", /which is the day/],
    ["material-certificate", "issued", number("46000"), /where a date is expected/],
    ["material-certificate", "type", "3.11", /no value of this field/],
    ["material-certificate", "statesCompliance", "x", /neither yes nor no/],
    ["material-certificate", "pages", "2,5", /no whole number/],
    ["weld-log", "joint", "l 1", /no link/],
    ["inspection-step", "records[]", "C2", /may be "joint:C2" or "repair:C2"/],
    ["material-certificate", "mill", "Bowlthorn", /no link/],
    ["inspection-step", "records[]", "C9", /neither the book nor this workbook/],
    ["part", "name", { type: "error", shown: "#N/A", fault: "shows the error #N/A" } as const, /#N\/A/],
  ])("%s %s %j is a finding of the cell", (kind, path, given, message) => {
    expect(readAs(kind, path, given)).toMatch(message);
  });
  test("words have the meaning the map gives them, where a choice is asked for", () => {
    const meaning = new Map([
      ["OK", "accepted"],
      ["-", ""],
    ]);
    expect(readAs("ndt-report", "rows[].result", "OK", { words: meaning })).toBe("accepted");
    expect(readAs("part", "name", "OK", { words: meaning })).toBe("OK");
    expect(readAs("part", "name", "-", { words: meaning })).toBe("blank");
    expect(readAs("part", "name", "OK", { columnWords: meaning })).toBe("accepted");
  });
});

describe("ids made of cells", () => {
  const made = (form: string, cells: Readonly<Record<string, string>>) => {
    const template = templateOf(form);
    if ("fault" in template) return template;
    return fill(template, (heading) => cells[heading], true);
  };
  test("are folded to the alphabet of ids, and padded where the map says so", () => {
    expect(made("CRT-{No.}", { "No.": "901/a b" })).toEqual({ text: "CRT-901-A-B" });
    expect(made("L{Seam:2}", { Seam: "7" })).toEqual({ text: "L07" });
    expect(made("CRT-{C}#{Heat}", { C: "9", Heat: "a 1" })).toEqual({ text: "CRT-9#a 1" });
    expect(made("L{Seam}", {})).toEqual({ blank: ["Seam"] });
    expect(made("L{Seam}", { Seam: "Ø7" })).toHaveProperty("fault");
    expect(made("L{Seam", {})).toHaveProperty("fault");
    expect(foldId(" 3.1 / 2 ")).toBe("3.1-2");
  });
});

test("a heading has a unit only where its brackets hold one", () => {
  expect(headingOf("Thickness [mm]")).toMatchObject({ name: "Thickness", unit: "mm" });
  expect(headingOf("Rm\n(N/mm²)")).toMatchObject({ text: "Rm (N/mm²)", name: "Rm", unit: "N/mm²" });
  expect(headingOf("Temp. (°C)")).toMatchObject({ name: "Temp.", unit: "°C" });
  expect(headingOf("Name (short)")).toEqual({ text: "Name (short)", name: "Name (short)" });
  expect(headingOf("values[]")).toEqual({ text: "values[]", name: "values[]" });
});

test("several values of a cell are joined so that they are parted again", () => {
  for (const values of [["S1", "S2"], ["a; b", 'say "x"', " c "], ["one"]])
    expect(splitCell(joinCell(values, ";"), ";")).toEqual(values);
  expect(splitCell("S1 / S2 /", "/")).toEqual(["S1", "S2"]);
});

import { describe, expect, test } from "vitest";
import { stands } from "../../src/readback/search.ts";
import { ofDate, ofNumber, ofQuantity, ofText, type Part } from "../../src/readback/wanted.ts";
import { page } from "./page.ts";

const found = (parts: readonly Part[], ...lines: readonly string[]) => {
  const on = page(...lines);
  return parts.length > 0 && parts.every((part) => stands(part, on));
};

describe("a number in the forms papers print it in", () => {
  test.each([
    ["0.147 %", "C  0.147"],
    ["0.147 %", "C  0,147 %"],
    ["12.0 mm", "12,0mm"],
    ["1975 mm", "Length  1 975 mm"],
    ["1975 mm", "1,975 mm"],
    ["1234.5 kg", "1.234,5 kg"],
    ["1234.5 kg", "1'234.5 kg"],
    ["-20 °C", "\u221220 °C"],
    ["<0.003 %", "Nb  < 0,003"],
    ["1.013 bar(a)", "1.013 bar"],
    ["51 mm", "Ø 51 × 3.6"],
  ])("%s in %j", (value, line) => expect(found(ofQuantity(value), line)).toBe(true));

  test.each([
    ["0.14 %", "0.147"],
    ["0.147 %", "10.147"],
    ["12.0 mm", "12.05 mm"],
    ["12 mm", "12.0 mm"],
    ["12.0 mm", "12.0 bar"],
    ["20 °C", "-20 °C"],
    ["975 mm", "1975 mm"],
  ])("%s is not in %j", (value, line) => expect(found(ofQuantity(value), line)).toBe(false));

  test("a count", () => {
    expect(found(ofNumber(50), "50 ends")).toBe(true);
    expect(found(ofNumber(5), "50 ends")).toBe(false);
  });
});

describe("a day in the forms papers print it in", () => {
  test.each(["2026-01-12", "12.01.2026", "12. 1. 2026", "12/01/26", "12 January 2026", "Jan. 12, 2026", "20260112"])(
    "%s",
    (line) => expect(found(ofDate("2026-01-12"), `issued ${line}`)).toBe(true),
  );
  test("under a heading that names the year", () => {
    expect(found(ofDate("2026-01-12T08:20+01:00"), "Days of 2026", "01-12 08:20")).toBe(true);
    expect(found(ofDate("2026-01-12T08:20+01:00"), "Days of 2025", "01-12 08:20")).toBe(false);
  });
  test("another day is none of them", () => expect(found(ofDate("2026-01-21"), "12.01.2026")).toBe(false));
  test("the time must stand there too", () =>
    expect(found(ofDate("2026-01-12T08:20+01:00"), "12.01.2026, 08:02")).toBe(false));
});

describe("a name or number of a thing", () => {
  test.each([
    ["GV-26-00417", "No. GV 26 00417"],
    ["GV-26-00417", "(GV\u201326\u201300417)"],
    ["P265GH", "EN 10028-2:2017 P265GH +N"],
    ["2017", "EN 10028-2:2017"],
    ["Mn", "C  Si  Mn  P"],
  ])("%s in %j", (value, line) => expect(found(ofText(value), line)).toBe(true));
  test.each([
    ["417-L1-2", "417-L1-21"],
    ["P265GH", "P265GH1"],
    ["10028", "EN 100287"],
  ])("%s is not in %j", (value, line) => expect(found(ofText(value), line)).toBe(false));
  test("what a paper says in other words is not looked for", () =>
    expect(ofText("seam tracking lost for a hand's breadth")).toEqual([]));
});

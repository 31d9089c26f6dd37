import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measure, parseQuantity, type Expected, type Measure, type ValueProblem } from "../../src/model/quantity.ts";
import { unitGroups } from "../../src/model/unit-list.ts";
import { exampleOf } from "../../src/model/quantity-problem.ts";

function problemOf(text: string, expected: Expected): ValueProblem {
  const parsed = parseQuantity(text, expected);
  if (parsed.ok) throw new Error(`"${text}" was read`);
  return parsed.problem;
}

function read(text: string, unit: string): Measure {
  const parsed = parseQuantity(text, { unit });
  if (!parsed.ok) throw new Error(parsed.problem.hint);
  return measure(parsed.quantity, unit);
}

describe("what is read", () => {
  test("text, sign, digits and unit as written", () => {
    expect(parseQuantity("14.0 mm", { unit: "mm" })).toEqual({
      ok: true,
      quantity: { text: "14.0 mm", sign: "=", number: 14, decimals: 1, unit: "mm" },
    });
    expect(parseQuantity("<0.003 %", { unit: "%" })).toMatchObject({
      quantity: { sign: "<", number: 0.003, decimals: 3 },
    });
    expect(parseQuantity(">-20 °C", { unit: "°C" })).toMatchObject({
      quantity: { sign: ">", number: -20, decimals: 0 },
    });
    expect(parseQuantity("0.85", { unit: "1" })).toMatchObject({ quantity: { number: 0.85, unit: "1" } });
  });

  test("any listed unit of the dimension, kept as written", () => {
    expect(parseQuantity("1.85 MPa", { unit: "bar" })).toMatchObject({ quantity: { unit: "MPa", number: 1.85 } });
    expect(parseQuantity("85 %", { unit: "1" })).toMatchObject({ quantity: { unit: "%" } });
    expect(read("1.85 MPa", "bar")).toMatchObject({ value: 18.5, low: 18.5, high: 18.5, text: "1.85 MPa" });
  });

  test("any unit at all where rows are of mixed dimension", () => {
    expect(parseQuantity("12 bar(a)", { unit: "any" })).toMatchObject({ quantity: { unit: "bar(a)" } });
    expect(parseQuantity("0.85", { unit: "any" })).toMatchObject({ quantity: { unit: "1" } });
    expect(problemOf("5 furlong", { unit: "any" }).hint).toBe('"furlong" is no unit known here');
  });

  test("K is a difference where one is declared, else a temperature", () => {
    for (const expected of [{ unit: "ΔK" }, { unit: "K", difference: true }])
      expect(parseQuantity("15 K", expected)).toMatchObject({ quantity: { unit: "ΔK" } });
    expect(parseQuantity("300 K", { unit: "°C" })).toMatchObject({ quantity: { unit: "K" } });
    expect(problemOf("15 °C", { unit: "ΔK" }).hint).toBe('a temperature difference is written in "K"');
  });

  test("the example of every unit is read where that unit is expected", () => {
    for (const unit of unitGroups.flatMap((group) => Object.keys(group.units)))
      expect(parseQuantity(exampleOf(unit), { unit }).ok, unit).toBe(true);
  });
});

describe("what is refused", () => {
  test("a decimal comma is never guessed at", () => {
    expect(problemOf("1,85 MPa", { unit: "bar" })).toEqual({
      found: "1,85 MPa",
      expected: "a number and a unit of gauge pressure or stress (bar, MPa, N/mm², kPa, Pa or mbar)",
      example: "11.0 bar",
      hint: "a comma may be a decimal point or part the thousands: write the digits with a decimal point only",
    });
  });

  test("a missing, unknown or wrong unit says what is expected", () => {
    expect(problemOf("14", { unit: "mm" })).toMatchObject({
      expected: "a number and a unit of length (mm, m, cm, in or µm)",
      example: "14.0 mm",
      hint: "state the unit the document states: a number alone is not taken to be in any unit",
    });
    expect(problemOf("14 mm", { unit: "bar" }).hint).toBe('"mm" is a unit of length, not of gauge pressure or stress');
    expect(problemOf("8 zoll", { unit: "mm" }).hint).toBe('"zoll" is no unit known here');
    expect(problemOf("10 barg", { unit: "bar" }).hint).toBe('a gauge pressure is written "bar"');
    expect(problemOf("14 mm", { unit: "1" }).hint).toBe('a pure number is expected, and "mm" is a unit of length');
    expect(problemOf("0.85 1", { unit: "1" }).hint).toBe("write a pure number without unit");
    expect(problemOf("0.85", { unit: "%" })).toMatchObject({ expected: "a number in % or ppm" });
  });

  test("gauge and absolute pressure are never taken for each other", () => {
    expect(problemOf("10 bar", { unit: "bar(a)" }).hint).toContain("not of absolute pressure");
    expect(problemOf("10 bar(a)", { unit: "bar" }).hint).toContain("not of gauge pressure");
    expect(problemOf("210 HV", { unit: "MPa" }).hint).toContain("unit of Vickers hardness");
  });

  const forms: readonly (readonly [text: string, hint: RegExp])[] = [
    ["14mm", /one space between/],
    ["14  mm", /exactly one plain space/],
    ["14\u00a0mm", /exactly one plain space/],
    [" 14 mm", /space before or after/],
    ["14 mm ", /space before or after/],
    ["1 200 mm", /without spaces or marks/],
    ["1'200 mm", /without spaces or marks/],
    ["1.2e3 mm", /without exponent/],
    ["≤14 mm", /"<" or ">"/],
    ["<=14 mm", /"<" or ">"/],
    ["max. 14 mm", /"<" or ">"/],
    ["< 14 mm", /no space after/],
    ["14 ±0.5 mm", /tolerances/],
    ["−5 mm", /minus sign/],
    ["++5 mm", /a number of at most 15 digits, one space/],
    ["10-14 mm", /not a range/],
    ["10 to 14 mm", /not a range/],
    [".5 mm", /both sides/],
    ["5. mm", /both sides/],
    ["5 ml / 100 g", /without spaces in it/],
    ["approx", /as a number/],
    ["", /as a number/],
    ["1234567890123456 mm", /15 digits/],
    [`${"9".repeat(400)} mm`, /15 digits/],
    ["--5 mm", /a number of at most 15 digits, one space/],
  ];
  for (const [text, hint] of forms)
    test(`"${text.slice(0, 30)}"`, () => {
      expect(problemOf(text, { unit: "mm" }).hint).toMatch(hint);
      expect(problemOf(text, { unit: "any" }).hint).toMatch(hint);
    });

  test("any text gets an answer, and what is read has exactly one form", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 80 }), (text) => {
        const parsed = parseQuantity(text, { unit: "any" });
        expect(parsed.ok ? /^[<>]?-?\d+(\.\d+)?( \S+)?$/.test(text) : parsed.problem.found === text).toBe(true);
      }),
    );
  });
});

describe("measure", () => {
  test("a value is one point, with half a unit of its last digit in the unit asked for", () => {
    expect(read("14.0 mm", "m")).toEqual({
      text: "14.0 mm",
      unit: "m",
      value: 0.014,
      low: 0.014,
      high: 0.014,
      openLow: false,
      openHigh: false,
      halfUnit: 0.00005,
      decimals: 1,
    });
    expect(read("20 °C", "K")).toMatchObject({ value: 293.15, halfUnit: 0.5 });
  });

  test("a bound is an interval without its end", () => {
    expect(read("<0.003 %", "%")).toMatchObject({ low: 0, high: 0.003, openLow: false, openHigh: true, value: 0.003 });
    expect(read(">50 %", "1")).toMatchObject({ low: 0.5, high: Infinity, openLow: true, openHigh: true, value: 0.5 });
  });

  test("below ends at nothing only where nothing is less", () => {
    expect(read("<5 mm", "mm").low).toBe(0);
    expect(read("<5 bar(a)", "bar(a)").low).toBe(0);
    for (const [text, unit] of [
      ["<5 bar", "bar"],
      ["<5 °C", "°C"],
      ["<5 K", "ΔK"],
      ["<0 mm", "mm"],
      ["<-1 mm", "mm"],
    ] as const)
      expect(read(text, unit), text).toMatchObject({ low: -Infinity, openLow: true });
  });

  test("in a unit of another dimension is a mistake in the program", () => {
    const parsed = parseQuantity("5 K", { unit: "any" });
    expect(() => parsed.ok && measure(parsed.quantity, "ΔK")).toThrow("K cannot be converted to ΔK");
  });

  test("the written number lies in its interval or at its end, in every unit", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("", "<", ">"),
        fc.integer({ min: -1e6, max: 1e6 }),
        fc.constantFrom("mm", "m", "in", "µm"),
        (sign, number, unit) => {
          const { low, high, value, openLow, openHigh } = read(`${sign}${number} ${unit}`, "mm");
          expect(low <= value && value <= high).toBe(true);
          expect(low < high).toBe(sign !== "");
          expect(openLow || openHigh).toBe(sign !== "");
        },
      ),
    );
  });
});

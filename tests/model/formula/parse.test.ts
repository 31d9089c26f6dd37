import { describe, expect, test } from "vitest";
import { formulaFunctions, formulaSymbols, type Formula } from "../../../src/model/formula/ast.ts";
import { evaluate, governing, type Scope } from "../../../src/model/formula/evaluate.ts";
import { parseFormula } from "../../../src/model/formula/parse.ts";

const values = new Map(
  Object.entries({ p: 1.1, Di: 1000, f: 170, z: 0.85, a: 2, b: 3, c: 5, Rp02_t: 205, σ: 4, πr: 3 }),
);
const value = (text: string, scope: Scope = { values }) => evaluate(parseFormula(text), scope);

describe("value", () => {
  const table: readonly (readonly [text: string, value: number])[] = [
    ["p*Di / (2*f*z - p)", (1.1 * 1000) / (2 * 170 * 0.85 - 1.1)],
    ["1 + 2*3", 7],
    ["(1 + 2)*3", 9],
    ["7 - 2 - 1", 4],
    ["24/4/2", 3],
    ["24/4*2", 12],
    ["2^3^2", 512],
    ["(2^3)^2", 64],
    ["-a^2", -4],
    ["(-a)^2", 4],
    ["2^-a", 0.25],
    ["a*-b", -6],
    ["a - -b", 5],
    ["--a", 2],
    ["-a + b", 1],
    ["a·b − c", 1],
    ["'3 mm' + a", 5],
    ["0.5*σ", 2],
    ["Rp02_t/1.5", 205 / 1.5],
    ["sqrt(16) + abs(-3)", 7],
    ["exp(0) + ln(exp(2)) + log10(1000)", 6],
    ["sin(0) + cos(0) + tan(0)", 1],
    ["asin(1)*2 - acos(-1)", 0],
    ["max(a, b, c) - min(a, b, c)", 3],
    ["max(a)", 2],
    ["π*a^2/4", Math.PI],
    ["2*πr", 6],
    ["  a\t*\n b ", 6],
  ];
  for (const [text, expected] of table)
    test(text.trim(), () => {
      expect(value(text)).toBeCloseTo(expected, 12);
    });

  test("is not finite where the mathematics fail", () => {
    expect(value("a/(b - 3)")).toBe(Infinity);
    expect(value("sqrt(a - b)")).toBeNaN();
    expect(value("ln(a - b)")).toBeNaN();
  });
});

describe("functions of a calculation", () => {
  const rows = new Map([["readings", [3, 4, 5]]]);
  const sum = (list: number | readonly number[], factor: number | readonly number[] = 1) =>
    typeof list === "number" || typeof factor !== "number" ? Number.NaN : factor * list.reduce((a, b) => a + b, 0);
  const scope: Scope<readonly number[]> = { values, rows, functions: new Map([["total", sum]]) };

  test("take lists and numbers", () => {
    expect(evaluate(parseFormula("total(readings)/3 + a"), scope)).toBe(6);
    expect(evaluate(parseFormula("total(readings, a + b)"), scope)).toBe(60);
  });

  test("a list has no value of its own", () => {
    expect(() => evaluate(parseFormula("readings + 1"), scope)).toThrow('the formula has no value for "readings"');
    expect(() => evaluate(parseFormula("max(readings)"), scope)).toThrow('the formula has no value for "readings"');
  });

  test("what nobody declared is a mistake in the program", () => {
    expect(() => value("q + 1")).toThrow('the formula has no value for "q"');
    expect(() => value("mean(a)")).toThrow('the formula calls "mean", which is no known function');
    expect(() => value("sqrt(a, b)")).toThrow('the formula calls "sqrt" with 2 arguments instead of 1');
    expect(() => value("constructor(a)")).toThrow('the formula calls "constructor", which is no known function');
  });
});

describe("what is no formula", () => {
  const table: readonly (readonly [text: string, message: string])[] = [
    ["", 'expected a value, found the end at sign 1 of the formula ""'],
    ["a +", 'expected a value, found the end at sign 4 of the formula "a +"'],
    ["(a", 'expected ")", found the end at sign 3 of the formula "(a"'],
    ["a)", 'expected an operator, found ")" at sign 2 of the formula "a)"'],
    ["2 a", 'expected an operator, found "a" at sign 3 of the formula "2 a"'],
    ["1,5*a", 'expected an operator, found "," at sign 2 of the formula "1,5*a"'],
    ["a*/b", 'expected a value, found "/" at sign 3 of the formula "a*/b"'],
    ["+a", 'expected a value, found "+" at sign 1 of the formula "+a"'],
    ["max(a; b)", 'cannot read ";" at sign 6 of the formula "max(a; b)"'],
    ["max(a b)", 'expected "," or ")", found "b" at sign 7 of the formula "max(a b)"'],
    ["max()", 'expected a value, found ")" at sign 5 of the formula "max()"'],
    ["a = b", 'cannot read "=" at sign 3 of the formula "a = b"'],
    ["D² + 1", 'cannot read "²" at sign 2 of the formula "D² + 1"'],
    ["a'3 mm'", `expected an operator, found "3 mm" at sign 2 of the formula "a'3 mm'"`],
    ["2*'3'", `expected a number, a space and a unit in the quotes, found "3" at sign 3 of the formula "2*'3'"`],
    ["'3 mm", `cannot read "'" at sign 1 of the formula "'3 mm"`],
    ["1.5.2", 'cannot read "." at sign 4 of the formula "1.5.2"'],
    ["a + 𝄞", 'cannot read "𝄞" at sign 5 of the formula "a + 𝄞"'],
  ];
  for (const [text, message] of table) test(`"${text}"`, () => expect(() => parseFormula(text)).toThrow(message));
});

describe("names", () => {
  test("symbols and functions, each once, in order of appearance", () => {
    const formula = parseFormula("max(p*Di/(2*f - p), e_min, total(rows)) + α1");
    expect(formulaSymbols(formula)).toEqual(["p", "Di", "f", "e_min", "rows", "α1"]);
    expect(formulaFunctions(formula)).toEqual(["max", "total"]);
  });
});

describe("which one governs", () => {
  const valueOf = (argument: Formula) => evaluate(argument, { values });
  const of = (text: string) => governing(parseFormula(text), valueOf);

  test("the greater or smaller, the first of equals", () => {
    expect(of("max(a, c, b)")).toEqual({ of: "max", index: 1, values: [2, 5, 3] });
    expect(of("min(b, a + 1, a)")).toEqual({ of: "min", index: 2, values: [3, 3, 2] });
    expect(of("min(b, a + 1)")?.index).toBe(0);
  });

  test("only where it is the whole formula, and only of numbers", () => {
    expect(of("max(a, b) + 1")).toBeUndefined();
    expect(of("abs(a)")).toBeUndefined();
    expect(of("max(a, sqrt(a - b))")).toBeUndefined();
  });
});

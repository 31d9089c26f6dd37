import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Formula, Operator } from "../../../src/model/formula/ast.ts";
import { evaluate } from "../../../src/model/formula/evaluate.ts";
import { parseFormula } from "../../../src/model/formula/parse.ts";
import { plainText } from "../../../src/model/formula/plain-text.ts";
import { related, substitute, symbolDisplay, typeset, type Display } from "../../../src/model/formula/typeset.ts";

const line = (text: string) => plainText(typeset(parseFormula(text)));

describe("symbols", () => {
  test("by the rule: letters, then the index", () => {
    expect(symbolDisplay("Di")).toEqual({ type: "symbol", base: "Di" });
    expect(symbolDisplay("e_min")).toEqual({ type: "symbol", base: "e", sub: "min" });
    expect(symbolDisplay("p1")).toEqual({ type: "symbol", base: "p", sub: "1" });
    expect(symbolDisplay("Rp02_t")).toEqual({ type: "symbol", base: "Rp", sub: "02,t" });
    expect(symbolDisplay("σ_a_b")).toEqual({ type: "symbol", base: "σ", sub: "a,b" });
    expect(symbolDisplay("_x")).toEqual({ type: "symbol", base: "_x" });
  });

  test("by a form of its own", () => {
    expect(symbolDisplay("Rp02", "Rp0.2/t")).toEqual({ type: "symbol", base: "R", sub: "p0.2/t" });
    expect(symbolDisplay("Rp02", "R_p0.2/t")).toEqual({ type: "symbol", base: "R", sub: "p0.2/t" });
    expect(symbolDisplay("x", "σ_e^20")).toEqual({ type: "symbol", base: "σ", sub: "e", sup: "20" });
    expect(symbolDisplay("x", "V^*")).toEqual({ type: "symbol", base: "V", sup: "*" });
    expect(symbolDisplay("x", "Re_")).toEqual({ type: "symbol", base: "Re" });
    expect(symbolDisplay("x", "p")).toEqual({ type: "symbol", base: "p" });
  });
});

describe("setting", () => {
  test("a quotient is a fraction, without the brackets it makes needless", () => {
    expect(typeset(parseFormula("p*Di/(2*f - p)"))).toEqual({
      type: "fraction",
      numerator: {
        type: "row",
        items: [
          { type: "symbol", base: "p" },
          { type: "operator", text: "·" },
          { type: "symbol", base: "Di" },
        ],
      },
      denominator: {
        type: "row",
        items: [
          { type: "number", text: "2" },
          { type: "operator", text: "·" },
          { type: "symbol", base: "f" },
          { type: "operator", text: "−" },
          { type: "symbol", base: "p" },
        ],
      },
    } satisfies Display);
  });

  test("inside a fraction a plain quotient is set in line, a larger one as a fraction", () => {
    expect(typeset(parseFormula("a/(b/c)"))).toMatchObject({ type: "fraction", denominator: { type: "row" } });
    expect(typeset(parseFormula("a/(b/(c + d))"))).toMatchObject({
      type: "fraction",
      denominator: { type: "fraction", denominator: { type: "row" } },
    });
  });

  test("an exponent is set in line", () => {
    expect(typeset(parseFormula("a^(k/(k - 1))"))).toMatchObject({ type: "power", exponent: { type: "row" } });
  });

  test("root, amount and other functions", () => {
    expect(typeset(parseFormula("sqrt(a)"))).toEqual({ type: "root", body: { type: "symbol", base: "a" } });
    expect(typeset(parseFormula("abs(a)"))).toMatchObject({ type: "group", fence: "bars" });
    expect(typeset(parseFormula("log10(a)"))).toMatchObject({ type: "call", name: "lg" });
    expect(typeset(parseFormula("hold(rows, '3 min')"), new Map([["hold", "hold time"]]))).toMatchObject({
      type: "call",
      name: "hold time",
      args: [{ base: "rows" }, { type: "number", text: "3\u00a0min" }],
    });
  });

  test("a sign between two settings", () => {
    const left = symbolDisplay("t");
    expect(plainText(related(left, "=", typeset(parseFormula("a - b"))))).toBe("t = a − b");
    expect(plainText(related(left, "≤", typeset(parseFormula("-b"))))).toBe("t ≤ −b");
  });
});

describe("one line of text, with the brackets it needs and no others", () => {
  const table: readonly (readonly [formula: string, text: string])[] = [
    ["p*Di / (2*f*z - p)", "p·Di/(2·f·z − p)"],
    ["a - (b - c)", "a − (b − c)"],
    ["(a - b) - c", "a − b − c"],
    ["a + (b - c)", "a + b − c"],
    ["a*(b + c)", "a·(b + c)"],
    ["a*(b*c)", "a·b·c"],
    ["a*(b/c)", "a·(b/c)"],
    ["(a/b)*c", "a/b·c"],
    ["a/(b*c)", "a/(b·c)"],
    ["(a + b)/c", "(a + b)/c"],
    ["a/b/c", "(a/b)/c"],
    ["a/(b/c)", "a/(b/c)"],
    ["a*-b", "a·(−b)"],
    ["a - -b*c", "a − (−b·c)"],
    ["-(a + b)", "−(a + b)"],
    ["-a*b", "−a·b"],
    ["(-a)^2", "(−a)^2"],
    ["-a^2", "−a^2"],
    ["(a^b)^c", "(a^b)^c"],
    ["a^b^c", "a^(b^c)"],
    ["a^-1", "a^(−1)"],
    ["(a*b)^0.5", "(a·b)^0.5"],
    ["(a/b)^2", "(a/b)^2"],
    ["a^(k/(k - 1))", "a^(k/(k − 1))"],
    ["sqrt(a/b)", "√(a/b)"],
    ["abs(a - b)", "|a − b|"],
    ["max(a, b + 1)", "max(a, b + 1)"],
    ["e_min + p1", "emin + p1"],
    ["'3 mm'^2", "(3\u00a0mm)^2"],
  ];
  for (const [formula, text] of table) test(formula, () => expect(line(formula)).toBe(text));

  test("words and upper indices", () => {
    expect(plainText({ type: "words", text: "the greater of" })).toBe("the greater of");
    expect(plainText(symbolDisplay("x", "σ_e^20"))).toBe("σe^20");
  });
});

describe("with values put in", () => {
  const put = (text: string, values: Readonly<Record<string, string>>) =>
    plainText(substitute(parseFormula(text), new Map(Object.entries(values))));

  test("numbers stand where the symbols stood", () => {
    expect(put("p*R / (S*E - 0.6*p)", { p: "1", R: "600", S: "138", E: "0.85" })).toBe("1·600/(138·0.85 − 0.6·1)");
    expect(put("max(a, b)", { a: "3.0", b: "12\u00a0345" })).toBe("max(3.0, 12\u00a0345)");
  });

  test("what has no value stays a symbol", () => {
    expect(put("hold(rows) + a", { a: "3" })).toBe("hold(rows) + 3");
  });

  test("a negative value is bracketed where its sign would meet another", () => {
    for (const minus of ["-", "−"]) {
      const negative = `${minus}5`;
      expect(put("a + b", { a: "1", b: negative })).toBe(`1 + (${negative})`);
      expect(put("a - b*c", { a: "1", b: negative, c: "2" })).toBe(`1 − (${negative}·2)`);
      expect(put("a*b", { a: "2", b: negative })).toBe(`2·(${negative})`);
      expect(put("a^2", { a: negative })).toBe(`(${negative})^2`);
      expect(put("-a", { a: negative })).toBe(`−(${negative})`);
      expect(put("a + b", { a: negative, b: "1" })).toBe(`${negative} + 1`);
    }
  });
});

const names = ["a", "b", "x", "y"] as const;
const leaf: fc.Arbitrary<Formula> = fc.oneof(
  fc.constantFrom(...names).map((name): Formula => ({ type: "symbol", name })),
  fc.integer({ min: 0, max: 99 }).map((n): Formula => ({ type: "number", value: n / 10, text: String(n / 10) })),
);
const { formula: anyFormula } = fc.letrec<{ formula: Formula }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 5, depthSize: "small" },
    leaf,
    tie("formula").map((operand): Formula => ({ type: "negate", operand })),
    fc
      .tuple(fc.constantFrom<Operator>("+", "-", "*", "/", "^"), tie("formula"), tie("formula"))
      .map(([operator, left, right]): Formula => ({ type: "binary", operator, left, right })),
    fc
      .tuple(fc.constantFrom("sqrt", "exp", "max"), tie("formula"))
      .map(([name, arg]): Formula => ({ type: "call", name, args: [arg] })),
  ),
}));

describe("the text of a setting", () => {
  const values = new Map([
    ["a", 1.25],
    ["b", 2.5],
    ["x", -0.75],
    ["y", 3],
  ]);
  const readBack = (text: string) => evaluate(parseFormula(text.replaceAll("√(", "sqrt(")), { values });
  const agrees = (a: number, b: number) =>
    Object.is(a, b) || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

  /** Sums and products may be read back in another order; where that decides over the digits, nothing is compared. */
  const isSteady = (formula: Formula): boolean => {
    const value = evaluate(formula, { values });
    return Number.isFinite(value) && Math.abs(value) > 1e-6 && Math.abs(value) < 1e6 && partsAreSteady(formula);
  };
  const partsAreSteady = (formula: Formula): boolean => {
    switch (formula.type) {
      case "negate":
        return isSteady(formula.operand);
      case "binary":
        // A power of a negative base exists for whole exponents only, which the last digit of a sum may not be.
        return (
          isSteady(formula.left) &&
          isSteady(formula.right) &&
          (formula.operator !== "^" || formula.right.type === "number" || evaluate(formula.left, { values }) > 0)
        );
      case "call":
        return formula.args.every(isSteady);
      default:
        return true;
    }
  };

  test("read again, has the same value", () => {
    fc.assert(
      fc.property(anyFormula, (formula) => {
        fc.pre(isSteady(formula));
        expect(agrees(readBack(plainText(typeset(formula))), evaluate(formula, { values }))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test("with values put in, has the same value", () => {
    const texts = new Map([...values].map(([name, value]) => [name, String(value)]));
    fc.assert(
      fc.property(anyFormula, (formula) => {
        fc.pre(isSteady(formula));
        expect(agrees(readBack(plainText(substitute(formula, texts))), evaluate(formula, { values }))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

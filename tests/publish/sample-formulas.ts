import type { Display } from "../../src/model/formula/typeset.ts";

/** Display trees written out, so that the sample depends on their form only and not on parser or typesetter. */
const number = (text: string): Display => ({ type: "number", text });
const operator = (text: string): Display => ({ type: "operator", text });
export const symbol = (base: string, sub?: string, sup?: string): Display => ({
  type: "symbol",
  base,
  ...(sub !== undefined && { sub }),
  ...(sup !== undefined && { sup }),
});
const row = (...parts: readonly Display[]): Display => ({ type: "row", items: parts });
const over = (top: Display, bottom: Display): Display => ({
  type: "fraction",
  numerator: top,
  denominator: bottom,
});
const words = (text: string): Display => ({ type: "words", text });

export const formulas = {
  stress: row(
    symbol("f"),
    operator("="),
    words("the smaller of"),
    over(symbol("R", "p0.2/t"), number("1.5")),
    words("and"),
    over(symbol("R", "m"), number("2.4")),
  ),
  stressValues: row(
    symbol("f"),
    operator("="),
    words("the smaller of"),
    over(number("253.0"), number("1.5")),
    words("and"),
    over(number("410"), number("2.4")),
  ),
  thickness: row(
    symbol("e"),
    operator("="),
    over(
      row(symbol("P"), operator("·"), symbol("D", "e")),
      row(number("2"), operator("·"), symbol("f"), operator("·"), symbol("z"), operator("+"), symbol("P")),
    ),
  ),
  thicknessValues: row(
    symbol("e"),
    operator("="),
    over(
      row(number("1.1"), operator("·"), number("1200")),
      row(
        number("2"),
        operator("·"),
        number("168.666 667"),
        operator("·"),
        number("0.85"),
        operator("+"),
        number("1.1"),
      ),
    ),
  ),
  root: row(
    symbol("d"),
    operator("="),
    { type: "root", body: row(over(symbol("A", "min"), symbol("π")), operator("+"), symbol("ε")) },
    operator("−"),
    { type: "power", base: symbol("k"), exponent: number("2") },
  ),
  long: row(
    symbol("p", "max"),
    operator("="),
    { type: "call", name: "exp", args: [row(number("1"), operator("−"), over(symbol("σ"), symbol("σ", "0")))] },
    operator("·"),
    {
      type: "group",
      fence: "round",
      body: row(
        symbol("D", "e"),
        operator("−"),
        symbol("e", "a"),
        operator("+"),
        number("1 234.567 89"),
        operator("·"),
        symbol("L", "unsupported"),
        operator("+"),
        symbol("δ", "e"),
        operator("+"),
        symbol("c"),
      ),
    },
  ),
} as const satisfies Record<string, Display>;

import { describe, expect, test } from "vitest";
import type { Display } from "../../../src/model/formula/typeset.ts";
import { openFonts } from "../../../src/publish/pdf/fonts.ts";
import { newCanvas } from "../../../src/publish/pdf/canvas.ts";
import { displayBox, displayLines } from "../../../src/publish/pdf/formula.ts";
import { upright } from "../../../src/publish/pdf/measures.ts";

const fonts = openFonts();
const symbol = (base: string, sub?: string): Display => ({ type: "symbol", base, ...(sub !== undefined && { sub }) });
const number = (text: string): Display => ({ type: "number", text });
const operator = (text: string): Display => ({ type: "operator", text });
const row = (...items: readonly Display[]): Display => ({ type: "row", items });
const box = (display: Display) => displayBox(fonts, display, 10);

/** Texts a formula prints, with their places. */
function printed(display: Display) {
  const shown: { readonly text: string; readonly x: number; readonly y: number; readonly size: number }[] = [];
  const canvas = newCanvas(fonts, upright);
  displayBox(fonts, display, 10).draw(
    { ...canvas, text: (x, y, _face, size, text) => void shown.push({ text, x, y, size }) },
    100,
    200,
  );
  return shown;
}

describe("parts of a formula", () => {
  test("a fraction sets one over the other, centred, and grows both ways", () => {
    const [top, bottom] = printed({ type: "fraction", numerator: number("1.1"), denominator: number("1200") });
    expect(top?.y).toBeLessThan(200);
    expect(bottom?.y).toBeGreaterThan(200);
    expect(top?.x).toBeGreaterThan(bottom?.x ?? 0);
    const fraction = box({ type: "fraction", numerator: symbol("P"), denominator: symbol("D") });
    expect(fraction.ascent).toBeGreaterThan(box(symbol("P")).ascent);
    expect(fraction.descent).toBeGreaterThan(box(symbol("P")).descent);
  });

  test("an index stands low, an exponent high, both smaller", () => {
    const [letter, index] = printed(symbol("D", "e"));
    expect(index?.y).toBeGreaterThan(letter?.y ?? 0);
    expect(index?.size).toBeLessThan(letter?.size ?? 0);
    const [base, exponent] = printed({ type: "power", base: symbol("k"), exponent: number("2") });
    expect(exponent?.y).toBeLessThan(base?.y ?? 0);
  });

  test("a root is drawn higher than what it holds", () => {
    expect(box({ type: "root", body: symbol("A") }).ascent).toBeGreaterThan(box(symbol("A")).ascent);
  });

  test("brackets grow with a fraction and are letters around plain signs", () => {
    const tall: Display = { type: "fraction", numerator: symbol("a"), denominator: symbol("b") };
    expect(printed({ type: "group", fence: "round", body: tall }).map(({ text }) => text)).toEqual(["a", "b"]);
    expect(printed({ type: "group", fence: "round", body: symbol("a") }).map(({ text }) => text)).toEqual([
      "(",
      "a",
      ")",
    ]);
    expect(printed({ type: "group", fence: "bars", body: symbol("a") }).map(({ text }) => text)).toEqual([
      "|",
      "a",
      "|",
    ]);
  });

  test("letters stand side by side, figures are kept apart by a cross, words by a point", () => {
    const product = (left: Display, right: Display) =>
      printed(row(left, operator("·"), right))
        .map(({ text }) => text)
        .join("");
    expect(product(symbol("P"), symbol("D", "e"))).toBe("PDe");
    expect(product(number("2"), symbol("f"))).toBe("2f");
    expect(product(number("2"), number("0.85"))).toBe("2×0.85");
    expect(product(symbol("PS"), symbol("V"))).toBe("PS·V");
    expect(product(symbol("z"), { type: "group", fence: "round", body: symbol("a") })).toBe("z·(a)");
  });

  test("a call prints its name and its arguments in brackets", () => {
    expect(
      printed({ type: "call", name: "exp", args: [symbol("x"), symbol("y")] })
        .map(({ text }) => text)
        .join(""),
    ).toBe("exp(x, y)");
  });
});

test("a long formula is cut before its signs, and no line is wider than its column", () => {
  const sum = row(
    symbol("s"),
    operator("="),
    ...Array.from({ length: 30 }, (_, index) => [operator("+"), symbol("L", `unsupported ${index}`)]).flat(),
  );
  const lines = displayLines(fonts, sum, 10.5, 340);
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(line.width).toBeLessThanOrEqual(340);
});

test("a fraction too wide for its column is set smaller until it fits", () => {
  const wide: Display = { type: "fraction", numerator: number("1".repeat(90)), denominator: number("2") };
  const [line] = displayLines(fonts, wide, 10.5, 340);
  expect(line?.width).toBeLessThanOrEqual(340);
  expect(line?.width).toBeGreaterThan(300);
});

import { Buffer } from "node:buffer";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import fontkit from "@pdf-lib/fontkit";
import { expect, test } from "vitest";
import { openFonts } from "../../../src/publish/pdf/fonts.ts";
import { subsetFont } from "../../../src/publish/pdf/subset-font.ts";

const require = createRequire(import.meta.url);
const fileOf = (path: string) => readFileSync(require.resolve(`@expo-google-fonts/${path}.ttf`));
const sans = fileOf("source-sans-3/400Regular/SourceSans3_400Regular");

test("figures are of one width in text and tables, and of several as old-style figures", () => {
  const fonts = openFonts();
  const widths = (face: "serif" | "sans" | "serif-old") =>
    new Set(Array.from("0123456789", (digit) => fonts.width(face, 10, digit))).size;
  expect(widths("serif")).toBe(1);
  expect(widths("sans")).toBe(1);
  expect(widths("serif-old")).toBeGreaterThan(1);
});

test("width grows with the size, and pairs are kerned", () => {
  const fonts = openFonts();
  expect(fonts.width("serif", 20, "Welder")).toBeCloseTo(2 * fonts.width("serif", 10, "Welder"), 9);
  expect(fonts.width("serif", 10, "AV")).toBeLessThan(fonts.width("serif", 10, "A") + fonts.width("serif", 10, "V"));
  expect(fonts.show("serif", "AV")).toMatch(/^\[\(.*\)\d+\(.*\)\]TJ$/s);
  expect(fonts.show("mono", "AV")).toMatch(/^\(.*\)Tj$/s);
});

test("a sign no font has is named, one with a look-alike is printed, and each reads back as written", () => {
  const fonts = openFonts();
  const reads = (text: string) => {
    fonts.show("sans", text);
    return fonts.used
      .find(({ name }) => name === "D")
      ?.characters.map(({ reads }) => reads)
      .join("");
  };
  expect(reads("\u{1F525}")).toBe("U+1F525");
  expect(reads("\u2300")).toBe("U+1F525\u2300");
  expect(fonts.width("sans", 10, "\u2300")).toBe(fonts.width("sans", 10, "Ø"));
  expect(fonts.width("sans", 10, "\u202e")).toBe(fonts.width("sans", 10, "U+202E"));
});

test("µ and μ share a glyph but stay two characters", () => {
  const fonts = openFonts();
  fonts.show("serif", "µμ");
  const [micro, mu] = fonts.used[0]?.characters ?? [];
  expect([micro?.reads, mu?.reads]).toEqual(["\u00b5", "\u03bc"]);
  expect(fonts.show("serif", "\u00b5")).not.toBe(fonts.show("serif", "\u03bc"));
});

test("a subset keeps the outline and advance of every glyph, also where the file's data have odd lengths", () => {
  const whole = fontkit.create(sans);
  const glyphs = Array.from("Welder W07: ÅÄé ½ ≥ 8.0 mm² (passed)", (sign) =>
    whole.glyphForCodePoint(sign.codePointAt(0) ?? 0),
  );
  const { bytes, numbers } = subsetFont(
    sans,
    glyphs.map(({ id }) => id),
  );
  const part = fontkit.create(bytes);
  expect(part.numGlyphs).toBe(numbers.size);
  for (const glyph of glyphs) {
    const copy = part.getGlyph(numbers.get(glyph.id) ?? 0);
    expect(copy.path.toSVG()).toBe(glyph.path.toSVG());
    expect(copy.advanceWidth).toBe(glyph.advanceWidth);
  }
  expect(bytes.length).toBeLessThan(sans.length / 5);
});

test("a subset is a font file whose checksums add up", () => {
  const { bytes } = subsetFont(sans, [1, 2, 3]);
  let sum = 0;
  for (let at = 0; at + 4 <= bytes.length; at += 4) sum = (sum + bytes.readUInt32BE(at)) >>> 0;
  expect(bytes.length % 4).toBe(0);
  expect(sum).toBe(0xb1b0afba);
});

test("a file that lacks a table is refused with its name", () => {
  expect(() => subsetFont(Buffer.alloc(12), [1])).toThrow('the font has no table "head"');
});

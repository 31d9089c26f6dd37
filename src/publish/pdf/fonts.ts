import type { Buffer } from "node:buffer";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import fontkit, { type Font, type Glyph } from "@pdf-lib/fontkit";

/** One cut of a family, or the serif with the old-style figures of section numbers. */
export type Face =
  "serif" | "serif-italic" | "serif-strong" | "serif-old" | "sans" | "sans-italic" | "sans-strong" | "mono";

/** A font file as it goes into the book, with the glyphs used so far. */
export interface UsedFont {
  /** Resource name in content streams. */
  readonly name: string;
  readonly font: Font;
  readonly file: Buffer;
  /** By character id, from 1: glyph of the file, what it reads, how wide it is in thousandths of an em. */
  readonly characters: { readonly glyph: number; readonly reads: string; readonly width: number }[];
}

interface Sign {
  /** Two escaped bytes for each character id. */
  readonly code: string;
  readonly width: number;
  /** Whether pairs with it are looked up in the kerning table. */
  readonly kerns: boolean;
}

interface FaceState {
  readonly used: UsedFont;
  readonly features: readonly "onum"[] | readonly ("onum" | "pnum")[];
  /** Signs by code point: those of the first plane's beginning in a list, since nearly all text is made of them. */
  readonly near: (Sign | undefined)[];
  readonly far: Map<number, Sign>;
  /** Kerning by left sign and right sign, the same two ways. */
  readonly nearPairs: Int16Array;
  readonly farPairs: Map<number, number>;
}

const nearEnd = 256;
const notLookedUp = -32768;

/** Measures and encodes text; the only way any character reaches the book. */
export interface Fonts {
  /** Width in points. */
  width(face: Face, size: number, text: string): number;
  /** Text-showing operator for the text. */
  show(face: Face, text: string): string;
  /** Resource name of the font file behind a face. */
  resource(face: Face): string;
  readonly used: readonly UsedFont[];
}

const files: readonly (readonly [string, string, readonly Face[]])[] = [
  ["A", "source-serif-4/400Regular/SourceSerif4_400Regular.ttf", ["serif", "serif-old"]],
  ["B", "source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf", ["serif-italic"]],
  ["C", "source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf", ["serif-strong"]],
  ["D", "source-sans-3/400Regular/SourceSans3_400Regular.ttf", ["sans"]],
  ["E", "source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf", ["sans-italic"]],
  ["F", "source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf", ["sans-strong"]],
  ["G", "source-code-pro/400Regular/SourceCodePro_400Regular.ttf", ["mono"]],
];

/** Signs the families lack, printed by a glyph of the same look; the text layer keeps the sign that was written. */
const lookAlikes: ReadonlyMap<number, string> = new Map([
  [0x2300, "Ø"],
  [0x2205, "Ø"],
  [0x2103, "°C"],
  [0x2010, "-"],
  [0x2011, "-"],
  [0x2002, " "],
  [0x2003, " "],
  [0x2009, " "],
  [0x0009, " "],
  [0x000a, " "],
  [0x000d, " "],
]);

const byteOf = (value: number) =>
  value === 13 ? "\\r" : (value === 40 || value === 41 || value === 92 ? "\\" : "") + String.fromCharCode(value);

/** Opens the seven font files, nothing used yet. */
export function openFonts(): Fonts {
  const require = createRequire(import.meta.url);
  const faces = new Map<Face, FaceState>();
  const all = files.map(([name, path, printed]): UsedFont => {
    const file = readFileSync(require.resolve(`@expo-google-fonts/${path}`));
    const font = fontkit.create(file);
    const used: UsedFont = { name, font, file, characters: [] };
    for (const face of printed)
      faces.set(face, {
        used,
        features: face === "serif-old" ? ["onum", "pnum"] : [],
        near: new Array<Sign | undefined>(nearEnd).fill(undefined),
        far: new Map(),
        nearPairs: new Int16Array(nearEnd * nearEnd).fill(notLookedUp),
        farPairs: new Map(),
      });
    return used;
  });
  const stateOf = (face: Face): FaceState => {
    const state = faces.get(face);
    if (state === undefined) throw new RangeError(`no font file for face "${face}"`);
    return state;
  };
  return {
    used: all,
    resource: (face) => stateOf(face).used.name,
    width(face, size, text) {
      const state = stateOf(face);
      let total = 0;
      let before = 0;
      let kerned = false;
      for (let at = 0; at < text.length; at++) {
        const codePoint = text.codePointAt(at) ?? 0;
        if (codePoint > 0xffff) at++;
        const sign = signOf(state, codePoint);
        if (kerned && sign.kerns) total += kerning(state, before, codePoint);
        total += sign.width;
        before = codePoint;
        kerned = sign.kerns;
      }
      return (total * size) / 1000;
    },
    show(face, text) {
      const state = stateOf(face);
      let out = "(";
      let adjusted = false;
      let before = 0;
      let kerned = false;
      for (let at = 0; at < text.length; at++) {
        const codePoint = text.codePointAt(at) ?? 0;
        if (codePoint > 0xffff) at++;
        const sign = signOf(state, codePoint);
        if (kerned && sign.kerns) {
          const by = kerning(state, before, codePoint);
          if (by !== 0) {
            out += `)${String(-by)}(`;
            adjusted = true;
          }
        }
        out += sign.code;
        before = codePoint;
        kerned = sign.kerns;
      }
      return adjusted ? `[${out})]TJ` : `${out})Tj`;
    },
  };
}

function signOf(state: FaceState, codePoint: number): Sign {
  const known = codePoint < nearEnd ? state.near[codePoint] : state.far.get(codePoint);
  if (known !== undefined) return known;
  const sign = learn(state, codePoint);
  if (codePoint < nearEnd) state.near[codePoint] = sign;
  else state.far.set(codePoint, sign);
  return sign;
}

function learn(state: FaceState, codePoint: number): Sign {
  const { font } = state.used;
  const text = String.fromCodePoint(codePoint);
  const plain = codePoint >= 0x20 && font.hasGlyphForCodePoint(codePoint);
  if (plain) return take(state, [glyphOf(state, codePoint)], text, /[\p{L}\p{P}]/u.test(text));
  const alike = lookAlikes.get(codePoint);
  // A sign that cannot be printed is named, so that nothing written disappears.
  const shown = alike ?? `U+${codePoint.toString(16).toUpperCase().padStart(4, "0")}`;
  const glyphs = Array.from(shown, (sign) => font.glyphForCodePoint(sign.codePointAt(0) ?? 0));
  return take(state, glyphs, alike === undefined ? shown : text, false);
}

function glyphOf(state: FaceState, codePoint: number): Glyph {
  const { font } = state.used;
  if (state.features.length === 0) return font.glyphForCodePoint(codePoint);
  return font.layout(String.fromCodePoint(codePoint), [...state.features]).glyphs[0] ?? font.getGlyph(0);
}

/** One character id for each glyph: two characters that share a glyph (µ and μ) still read back as written. */
function take({ used }: FaceState, glyphs: readonly Glyph[], reads: string, kerns: boolean): Sign {
  let code = "";
  let width = 0;
  const letters = glyphs.length === 1 ? [reads] : Array.from(reads);
  glyphs.forEach((glyph, index) => {
    const wide = (glyph.advanceWidth * 1000) / used.font.unitsPerEm;
    used.characters.push({ glyph: glyph.id, reads: letters[index] ?? "", width: wide });
    const id = used.characters.length;
    code += byteOf(id >> 8) + byteOf(id & 255);
    width += wide;
  });
  return { code, width, kerns };
}

function kerning(state: FaceState, left: number, right: number): number {
  if (left < nearEnd && right < nearEnd) {
    const at = left * nearEnd + right;
    const known = state.nearPairs[at] ?? notLookedUp;
    if (known !== notLookedUp) return known;
    return (state.nearPairs[at] = kerningOf(state, left, right));
  }
  const key = left * 0x10000 + right;
  const known = state.farPairs.get(key);
  if (known !== undefined) return known;
  const by = kerningOf(state, left, right);
  state.farPairs.set(key, by);
  return by;
}

function kerningOf({ used: { font } }: FaceState, left: number, right: number): number {
  const run = font.layout(String.fromCodePoint(left, right), { liga: false, clig: false, calt: false });
  const [first] = run.glyphs;
  const [place] = run.positions;
  return run.glyphs.length === 2 && first !== undefined && place !== undefined
    ? Math.round(((place.xAdvance - first.advanceWidth) * 1000) / font.unitsPerEm)
    : 0;
}

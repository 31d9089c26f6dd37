import type { Display } from "../../model/formula/typeset.ts";
import type { Canvas } from "./canvas.ts";
import type { Face, Fonts } from "./fonts.ts";

/** Something with a baseline that draws itself; points. */
export interface Box {
  readonly width: number;
  readonly ascent: number;
  readonly descent: number;
  draw(canvas: Canvas, x: number, baseline: number): void;
}

/** Shares of the type size. */
const capital = 0.68;
const depth = 0.22;
const axis = 0.25;
export const indexSize = 0.7;
const fractionGap = 0.16;

/** What every part of a formula is set with. */
export interface Setting {
  readonly fonts: Fonts;
  readonly size: number;
  /** Face of figures, signs and words. */
  readonly plain: Face;
}

/** Text of one face. */
export function glyphs({ fonts, size }: Setting, face: Face, text: string): Box {
  const width = fonts.width(face, size, text);
  return {
    width,
    ascent: size * capital,
    descent: /[,;()gjpqyß]/.test(text) ? size * depth : size * 0.03,
    draw: (canvas, x, baseline) => canvas.text(x, baseline, face, size, text),
  };
}

/** A slanted letter, or an upright word, with its indices. */
export function symbolBox(setting: Setting, { base, sub, sup }: Extract<Display, { type: "symbol" }>): Box {
  const upright = /^[\d\s]|\p{L}{3,}/u.test(base);
  const letter = glyphs(setting, upright ? setting.plain : "serif-italic", base);
  const index = { ...setting, size: setting.size * indexSize };
  const low = sub === undefined ? undefined : glyphs(index, setting.plain, sub);
  const high = sup === undefined ? undefined : glyphs(index, setting.plain, sup);
  const drop = setting.size * 0.2;
  const rise = setting.size * 0.36;
  const after = letter.width + setting.size * 0.03;
  return {
    width: after + Math.max(low?.width ?? 0, high?.width ?? 0) + ((low ?? high) ? setting.size * 0.05 : 0),
    ascent: Math.max(letter.ascent, high === undefined ? 0 : rise + high.ascent),
    descent: Math.max(letter.descent, low === undefined ? 0 : drop + low.descent),
    draw(canvas, x, baseline) {
      letter.draw(canvas, x, baseline);
      low?.draw(canvas, x + after, baseline + drop);
      high?.draw(canvas, x + after, baseline - rise);
    },
  };
}

/** One over the other, a rule between. */
export function fractionBox({ size }: Setting, top: Box, bottom: Box): Box {
  const pad = size * 0.12;
  const width = Math.max(top.width, bottom.width) + 2 * pad;
  const up = size * (axis + fractionGap) + top.descent;
  const down = size * (fractionGap - axis) + bottom.ascent;
  return {
    width: width + size * 0.12,
    ascent: up + top.ascent,
    descent: down + bottom.descent,
    draw(canvas, x, baseline) {
      const left = x + size * 0.06;
      const bar = baseline - size * axis;
      top.draw(canvas, left + (width - top.width) / 2, baseline - up);
      canvas.line([left, bar], [left + width, bar], { weight: size * 0.055 });
      bottom.draw(canvas, left + (width - bottom.width) / 2, baseline + down);
    },
  };
}

/** A root sign over what it holds. */
export function rootBox({ size }: Setting, body: Box): Box {
  const hook = size * 0.55;
  const above = size * 0.16;
  return {
    width: hook + body.width + size * 0.12,
    ascent: body.ascent + above + size * 0.08,
    descent: body.descent,
    draw(canvas, x, baseline) {
      const top = baseline - body.ascent - above;
      const low = baseline + Math.max(body.descent, size * 0.1);
      const tick = low - (low - top) * 0.42;
      canvas.path(
        [
          [x + size * 0.04, tick + size * 0.06],
          [x + size * 0.16, tick],
          [x + size * 0.3, low],
          [x + size * 0.48, top],
          [x + hook + body.width + size * 0.08, top],
        ],
        { weight: size * 0.055 },
      );
      body.draw(canvas, x + hook, baseline);
    },
  };
}

/** Brackets or bars as tall as what they hold; a plain line of signs takes the font's own brackets. */
export function fenced(setting: Setting, body: Box, fence: "round" | "bars"): Box {
  const { size } = setting;
  const tall = body.ascent > size * 0.8 || body.descent > size * 0.45;
  if (!tall) {
    const [left, right] = fence === "round" ? ["(", ")"] : ["|", "|"];
    return side([glyphs(setting, setting.plain, left), body, glyphs(setting, setting.plain, right)]);
  }
  const room = size * (fence === "round" ? 0.32 : 0.26);
  return {
    width: body.width + 2 * room,
    ascent: body.ascent,
    descent: body.descent,
    draw(canvas, x, baseline) {
      const top = baseline - body.ascent;
      const low = baseline + body.descent;
      for (const [at, bow] of [
        [x + size * 0.24, -1],
        [x + body.width + 2 * room - size * 0.24, 1],
      ] as const)
        canvas.path(bowed(at, top, low, fence === "round" ? bow * size * 0.18 : 0), { weight: size * 0.055 });
      body.draw(canvas, x + room, baseline);
    },
  };
}

/** A bracket as a chain of short lines on a parabola. */
function bowed(x: number, top: number, low: number, bow: number): readonly (readonly [number, number])[] {
  const steps = bow === 0 ? 1 : 12;
  return Array.from({ length: steps + 1 }, (_, index) => {
    const share = index / steps;
    return [x + bow * 4 * share * (1 - share), top + (low - top) * share] as const;
  });
}

/** An exponent at the upper right of its base. */
export function raised(base: Box, exponent: Box, rise: number): Box {
  return {
    width: base.width + exponent.width,
    ascent: Math.max(base.ascent, rise + exponent.ascent),
    descent: base.descent,
    draw(canvas, x, baseline) {
      base.draw(canvas, x, baseline);
      exponent.draw(canvas, x + base.width, baseline - rise);
    },
  };
}

/** Boxes side by side on one baseline. */
export function side(boxes: readonly Box[]): Box {
  return {
    width: boxes.reduce((sum, box) => sum + box.width, 0),
    ascent: Math.max(0, ...boxes.map((box) => box.ascent)),
    descent: Math.max(0, ...boxes.map((box) => box.descent)),
    draw(canvas, x, baseline) {
      let at = x;
      for (const box of boxes) {
        box.draw(canvas, at, baseline);
        at += box.width;
      }
    },
  };
}

/** Room before and after. */
export function padded(box: Box, before: number, after: number): Box {
  return {
    ...box,
    width: box.width + before + after,
    draw: (canvas, x, baseline) => box.draw(canvas, x + before, baseline),
  };
}

/** The same room on both sides. */
export const spaced = (box: Box, by: number) => padded(box, by, by);

import type { Text } from "../blocks.ts";
import { wordsOf, type Atom, type Word } from "./atoms.ts";
import type { Canvas, LinkTo } from "./canvas.ts";
import type { Fonts } from "./fonts.ts";
import type { TextStyle } from "./measures.ts";

/** Text of one face on a line, or a box, from its left end. */
interface Run extends Atom {
  readonly x: number;
}

export interface Line {
  readonly runs: readonly Run[];
  readonly width: number;
  /** Width of its widest word: below it the line cannot be set without breaking one. */
  readonly least: number;
  /** Distance from the baseline up and down that anything on it needs. */
  readonly ascent: number;
  readonly descent: number;
}

/** What a line is set with: the fonts, and which destinations are in this book. */
export interface Setter {
  readonly fonts: Fonts;
  readonly known: (dest: string) => boolean;
}

/**
 * Sets running text in lines of at most `width` points; a word wider than that is broken where it must. The first line
 * begins `indent` points in, after something else that stands there.
 */
export function setLines(setter: Setter, text: Text, style: TextStyle, width: number, indent = 0): readonly Line[] {
  const words = wordsOf(setter.fonts, text, style, setter.known);
  const lines: Line[] = [];
  let row: Word[] = [];
  let used = indent;
  const close = () => {
    if (row.length > 0) lines.push(lineOf(setter.fonts, row, lines.length === 0 ? indent : 0));
    row = [];
    used = 0;
  };
  for (const word of words) {
    if (row.length > 0 && used + word.space + word.width > width + 0.01) close();
    if (word.width > width + 0.01) {
      for (const piece of broken(setter.fonts, word, width)) {
        close();
        row.push(piece);
        used = piece.width;
      }
      continue;
    }
    used += (row.length === 0 ? 0 : word.space) + word.width;
    row.push(word);
  }
  close();
  return lines;
}

/** One line, however long. */
export function setLine(setter: Setter, text: Text, style: TextStyle): Line {
  return setLines(setter, text, style, Infinity)[0] ?? { runs: [], width: 0, least: 0, ascent: 0, descent: 0 };
}

function lineOf(fonts: Fonts, words: readonly Word[], indent: number): Line {
  const runs: Run[] = [];
  let last: OpenRun | undefined;
  let x = indent;
  let ascent = 0;
  let descent = 0;
  // A run is measured when nothing more joins it: word by word, a line would be measured as often as it has words.
  const close = () => {
    if (last === undefined) return;
    if (last.joined) {
      last.width = fonts.width(last.face, last.size, last.text);
      x = last.x + last.width;
    }
    runs.push(last);
  };
  words.forEach((word, index) => {
    const space = index === 0 ? 0 : word.space;
    word.atoms.forEach((atom, at) => {
      const gap = at === 0 ? space : 0;
      if (atom.box !== undefined) {
        ascent = Math.max(ascent, atom.box.ascent);
        descent = Math.max(descent, atom.box.descent);
      }
      if (last !== undefined && joins(last, atom) && (gap === 0 || word.linked || atom.link === undefined)) {
        last.text += gap === 0 ? atom.text : ` ${atom.text}`;
        last.joined = true;
        return;
      }
      close();
      const before = last;
      // The space is printed at the end of the run before, so that text taken from the page keeps its words apart.
      const apart = gap > 0 && before !== undefined;
      const bare = before?.box === undefined && before?.link === undefined;
      if (apart && bare) before.text += " ";
      const spaced = apart && !bare && atom.link === undefined && atom.box === undefined;
      last = spaced
        ? { ...atom, x, text: ` ${atom.text}`, width: gap + atom.width, joined: false }
        : { ...atom, x: x + gap, joined: false };
      x += gap + atom.width;
    });
  });
  close();
  return { runs, width: x, least: Math.max(0, ...words.map(({ width }) => width)), ascent, descent };
}

/** The run that the next atom may still join. */
type OpenRun = { -readonly [Key in keyof Run]: Run[Key] } & { joined: boolean };

const joins = (a: Atom, b: Atom) =>
  a.box === undefined &&
  b.box === undefined &&
  a.face === b.face &&
  a.size === b.size &&
  a.soft === b.soft &&
  a.link === b.link;

/** A word too wide for its line, in pieces; after a sign that divides where there is one, else after any character. */
function broken(fonts: Fonts, word: Word, width: number): readonly Word[] {
  const pieces: Word[] = [];
  let atoms: Atom[] = [];
  let used = 0;
  const close = () => {
    if (atoms.length > 0)
      pieces.push({ atoms, width: used, space: pieces.length === 0 ? word.space : 0, linked: false });
    atoms = [];
    used = 0;
  };
  for (const atom of word.atoms) {
    let rest = atom;
    while (rest.box === undefined && used + rest.width > width + 0.01) {
      const cut = fitting(fonts, rest, width - used);
      if (cut === 0 && used > 0) {
        close();
        continue;
      }
      const head = rest.text.slice(0, Math.max(cut, String.fromCodePoint(rest.text.codePointAt(0) ?? 0).length));
      const tail = rest.text.slice(head.length);
      atoms.push({ ...rest, text: head, width: fonts.width(rest.face, rest.size, head) });
      close();
      rest = { ...rest, text: tail, width: fonts.width(rest.face, rest.size, tail) };
      if (tail === "") break;
    }
    if (rest.text === "" && rest.box === undefined) continue;
    if (used > 0 && used + rest.width > width) close();
    atoms.push(rest);
    used += rest.width;
  }
  close();
  return pieces;
}

/** How many characters of an atom fit, preferring to end after a sign that divides. */
function fitting(fonts: Fonts, atom: Atom, room: number): number {
  let end = 0;
  let divided = 0;
  let width = 0;
  for (const sign of atom.text) {
    width += fonts.width(atom.face, atom.size, sign);
    if (width > room) break;
    end += sign.length;
    if (/[-/_.:,;]/.test(sign)) divided = end;
  }
  return divided > end / 2 ? divided : end;
}

/** Draws a line with its left end at `x`; links get their underline and their area. */
export function drawLine(canvas: Canvas, line: Line, x: number, baseline: number): void {
  for (const run of line.runs) {
    const at = x + run.x;
    if (run.box === undefined) canvas.text(at, baseline, run.face, run.size, run.text, run.soft);
    else run.box.draw(canvas, at, baseline);
    if (run.link !== undefined) drawLink(canvas, at, baseline, run.width, run.size, run.link);
  }
}

/** Underline and area of a link whose text stands on the baseline. */
export function drawLink(canvas: Canvas, x: number, baseline: number, width: number, size: number, to: LinkTo): void {
  const under = baseline + size * 0.15 + 0.3;
  canvas.line([x, under], [x + width, under], { weight: 0.25 });
  canvas.link({ x, y: baseline - size * 0.85, width, height: size * 1.15, to });
}

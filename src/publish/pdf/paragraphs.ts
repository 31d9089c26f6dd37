import type { Note, Text } from "../blocks.ts";
import type { Canvas } from "./canvas.ts";
import type { Drawn, Piece } from "./flow.ts";
import { mm, noteWidth, styles, textWidth, type TextStyle } from "./measures.ts";
import { drawLine, setLines, type Line, type Setter } from "./text.ts";

/** What a block of one page is set with. */
export interface PageSetter extends Setter {
  /** Name of the destination of an anchor on this page. */
  readonly destOf: (anchor: string) => string;
  /** Whether the pages of an original are appended to the book. */
  readonly copied: (path: string) => boolean;
}

/** Distance from the top of a line to its baseline. */
export const baselineIn = (style: TextStyle): number =>
  style.leading / 2 + style.size * (style.family === "serif" ? 0.35 : 0.31);

/** Height of a line: its leading, or more where a fraction or a root needs it. */
export function lineHeight(line: Line, style: TextStyle): number {
  return style.leading + above(line, style) + Math.max(0, line.descent - (style.leading - baselineIn(style)) + 1);
}

const above = (line: Line, style: TextStyle) => Math.max(0, line.ascent - baselineIn(style) + 1);

/** Lines below each other as one drawing. */
export function stack(lines: readonly Line[], style: TextStyle): Drawn {
  return {
    height: lines.reduce((sum, line) => sum + lineHeight(line, style), 0),
    draw(canvas, x, y) {
      let top = y;
      for (const line of lines) {
        drawLine(canvas, line, x, top + above(line, style) + baselineIn(style));
        top += lineHeight(line, style);
      }
    },
  };
}

/** Drawings below each other as one. */
export function pile(parts: readonly Drawn[], gap = 0): Drawn {
  return {
    height: parts.reduce((sum, part) => sum + part.height, 0) + gap * Math.max(0, parts.length - 1),
    draw(canvas, x, y) {
      let top = y;
      for (const part of parts) {
        part.draw(canvas, x, top);
        top += part.height + gap;
      }
    },
  };
}

/** The same drawing further right. */
export const shifted = (part: Drawn, by: number): Drawn => ({
  height: part.height,
  draw: (canvas, x, y) => part.draw(canvas, x + by, y),
});

/** Empty height. */
export const blank = (height: number): Drawn => ({ height, draw: () => undefined });

/** Pieces of a paragraph: at least two lines stay together at either end. */
export function linePieces(lines: readonly Line[], style: TextStyle, left = 0): readonly Piece[] {
  if (lines.length <= 3) return [shifted(stack(lines, style), left)];
  return lines.map((line, index) => ({
    ...shifted(stack([line], style), left),
    keep: index === 0 || index === lines.length - 2,
  }));
}

/** Notes of a block, set for the margin; undefined when there are none. */
export function layNotes(setter: Setter, notes: readonly Note[] | undefined): Drawn | undefined {
  if (notes === undefined || notes.length === 0) return undefined;
  const set = notes.map((note) => noteLines(setter, note, noteWidth));
  return pile([blank(mm(0.6)), pile(set, mm(1))]);
}

function noteLines(setter: Setter, { lead, text }: Note, width: number): Drawn {
  const led: Text = lead === undefined ? text : [{ type: "strong", text: lead }, " ", ...text];
  return stack(setLines(setter, led, styles.note, width), styles.note);
}

/** Notes of something that runs across the margin: set below it. */
export function notesBelow(setter: Setter, notes: readonly Note[] | undefined): readonly Piece[] {
  return (notes ?? []).map((note) => ({ space: mm(1), ...noteLines(setter, note, textWidth) }));
}

/** The first piece, with notes standing beside it. Notes taller than half a sheet go below the block instead. */
export function withNotes(
  setter: Setter,
  pieces: readonly Piece[],
  notes: readonly Note[] | undefined,
): readonly Piece[] {
  const laid = layNotes(setter, notes);
  const [first, ...rest] = pieces;
  if (laid === undefined || first === undefined) return pieces;
  if (laid.height > mm(120)) return [...pieces, ...notesBelow(setter, notes)];
  return [{ ...first, notes: laid }, ...rest];
}

/** A rule across a width at the top of a piece. */
export function drawRule(canvas: Canvas, x: number, y: number, width: number, weight: number, hair = false): void {
  canvas.line([x, y], [x + width, y], { weight, hair });
}

/** Kept together with what follows, for all but the last. */
export const together = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.map((piece, index) => (index < pieces.length - 1 ? { ...piece, keep: true } : piece));

/** Space before the first piece. */
export function spaced(pieces: readonly Piece[], space: number): readonly Piece[] {
  const [first, ...rest] = pieces;
  return first === undefined ? [] : [{ ...first, space }, ...rest];
}

/** Destinations on the first piece. */
export function landing(setter: PageSetter, pieces: readonly Piece[], anchor: string | undefined): readonly Piece[] {
  const [first, ...rest] = pieces;
  if (anchor === undefined || first === undefined) return pieces;
  return [{ ...first, dests: [...(first.dests ?? []), setter.destOf(anchor)] }, ...rest];
}

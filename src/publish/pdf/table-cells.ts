import type { Cell, Column, Text } from "../blocks.ts";
import type { Canvas } from "./canvas.ts";
import { drawMark, markWidth } from "./marks.ts";
import type { TextStyle } from "./measures.ts";
import { baselineIn, lineHeight, type PageSetter } from "./paragraphs.ts";
import { drawRange, rangeWidth } from "./ranges.ts";
import { drawLine, setLine, setLines, type Line } from "./text.ts";

/** Type sizes of one table; smaller ones serve tables that would not fit otherwise. */
export interface TableType {
  readonly body: TextStyle;
  readonly head: TextStyle;
}

/** Widths a column asks for, in points. */
export interface Wish {
  readonly natural: number;
  /** Narrowest without breaking a word. */
  readonly least: number;
  /** Widest part before and after the decimal point of its numbers. */
  readonly whole: number;
  readonly decimals: number;
}

/** Set lines of cells that hold nothing but plain text: most cells of a log repeat. */
export type LineCache = Map<string, Line>;

const becauseWidth = 125;

/** One line of a text cell, taken from the cache where it was set before. */
function cellLine(setter: PageSetter, text: Text, type: TableType, cache: LineCache): Line {
  const [only] = text;
  if (text.length !== 1 || typeof only !== "string") return setLine(setter, text, type.body);
  const known = cache.get(only);
  if (known !== undefined) return known;
  const line = setLine(setter, text, type.body);
  cache.set(only, line);
  return line;
}

/** Width of a number before its decimal point, and from it on. */
export function numberParts({ fonts }: PageSetter, text: string, { body }: TableType): readonly [number, number] {
  const point = text.lastIndexOf(".");
  const [whole, rest] = point < 0 ? [text, ""] : [text.slice(0, point), text.slice(point)];
  return [fonts.width("sans", body.size, whole), fonts.width("sans", body.size, rest)];
}

/** Natural and least width of what a cell holds; numbers are measured by their column. */
export function cellWidths(
  setter: PageSetter,
  cell: Cell,
  type: TableType,
  cache: LineCache,
): readonly [number, number] {
  switch (cell.type) {
    case "text": {
      const line = cellLine(setter, cell.text, type, cache);
      return [line.width, line.least];
    }
    case "mark": {
      const mark = markWidth(setter.fonts, cell.mark, type.body.size);
      if (cell.because === undefined) return [mark, mark];
      const line = setLine(setter, cell.because, type.head);
      return [Math.max(mark, Math.min(line.width, becauseWidth)), Math.max(mark, line.least)];
    }
    case "range":
      return [rangeWidth, rangeWidth];
    case "ditto":
      return [type.body.size * 0.5, type.body.size * 0.5];
    case "number":
    case "empty":
      return [0, 0];
  }
}

/** A cell ready to be drawn in its column. */
export interface SetCell {
  readonly lines: readonly Line[];
  readonly height: number;
  draw(canvas: Canvas, x: number, y: number): void;
}

/** Sets a cell in a column of a width. */
export function setCell(
  setter: PageSetter,
  cell: Cell,
  column: { readonly column: Column; readonly width: number; readonly wish: Wish },
  type: TableType,
  cache: LineCache,
): SetCell {
  const { body } = type;
  const down = baselineIn(body);
  const { width, wish } = column;
  switch (cell.type) {
    case "text": {
      const line = cellLine(setter, cell.text, type, cache);
      const lines =
        line.width <= width + 0.01 ? (line.runs.length === 0 ? [] : [line]) : setLines(setter, cell.text, body, width);
      return textCell(lines, body, column.column.align === "number" ? width : undefined);
    }
    case "number": {
      const [whole] = numberParts(setter, cell.text, type);
      const back = width - wish.decimals - whole;
      return fixed(body.leading, (canvas, x, y) => canvas.text(x + back, y + down, "sans", body.size, cell.text));
    }
    case "mark": {
      const lines = cell.because === undefined ? [] : setLines(setter, cell.because, type.head, width);
      return fixed(body.leading + lines.length * type.head.leading, (canvas, x, y) => {
        drawMark(canvas, x, y + down, cell.mark, body.size);
        lines.forEach((line, index) =>
          drawLine(canvas, line, x, y + body.leading + index * type.head.leading + baselineIn(type.head)),
        );
      });
    }
    case "ditto":
      return fixed(body.leading, (canvas, x, y) => canvas.text(x, y + down, "sans", body.size, "″", true));
    case "range":
      return fixed(body.leading, (canvas, x, y) => drawRange(canvas, x, y + body.leading / 2, cell));
    case "empty":
      return fixed(0, () => undefined);
  }
}

const fixed = (height: number, draw: SetCell["draw"]): SetCell => ({ lines: [], height, draw });

/** Lines of text; right aligned where a column of numbers holds words. */
export function textCell(lines: readonly Line[], style: TextStyle, right: number | undefined): SetCell {
  return {
    lines,
    height: lines.reduce((sum, line) => sum + lineHeight(line, style), 0),
    draw(canvas, x, y) {
      let top = y;
      for (const line of lines) {
        const height = lineHeight(line, style);
        const raised = line.ascent === 0 ? 0 : Math.max(0, line.ascent - baselineIn(style) + 1);
        drawLine(canvas, line, right === undefined ? x : x + right - line.width, top + raised + baselineIn(style));
        top += height;
      }
    },
  };
}

import { ProgramError } from "../../model/program-error.ts";
import type { Face, Fonts } from "./fonts.ts";
import type { SheetShape } from "./measures.ts";

/** Where a link leads: a named destination of this book, or a file beside it. */
export type LinkTo = { readonly dest: string } | { readonly file: string };

export interface LinkArea {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly to: LinkTo;
}

export interface Pen {
  readonly weight: number;
  /** Grey hairline; it carries no meaning. */
  readonly hair?: boolean;
  readonly broken?: boolean;
  readonly dotted?: boolean;
}

/** Draws with the page on which a destination lies, counted from 1. */
export type LateDrawing = (canvas: Canvas, pageOf: (dest: string) => number | undefined) => void;

type Point = readonly [number, number];

/** One sheet being drawn. Points, from the top left corner, y downwards. */
export interface Canvas {
  readonly shape: SheetShape;
  readonly links: readonly LinkArea[];
  /** Text on a baseline. */
  text(x: number, y: number, face: Face, size: number, text: string, soft?: boolean): void;
  /** Text read from below. */
  turnedText(x: number, y: number, face: Face, size: number, text: string): void;
  line(from: Point, to: Point, pen: Pen): void;
  path(points: readonly Point[], pen: Pen, closed?: boolean): void;
  ring(at: Point, radius: number, pen: Pen, filled?: boolean): void;
  /** Lines at 45 degrees within a rectangle. */
  hatch(x: number, y: number, width: number, height: number, pen: Pen): void;
  link(area: LinkArea): void;
  /** A form drawn through a matrix (in PDF coordinates), clipped to nothing but its own box. */
  form(name: string, matrix: readonly number[]): void;
  /** Leaves room that is drawn when every page number is known. */
  later(draw: LateDrawing): void;
  readonly lateDrawings: readonly LateDrawing[];
  /** Content stream of everything drawn so far. */
  content(): string;
}

function number(value: number): string {
  if (!Number.isFinite(value)) throw new ProgramError(`a drawing asks for the position ${value}`);
  return String(Math.round(value * 100) / 100);
}

/** Bézier handle of a quarter circle of radius 1. */
const quarter = 0.552285;

export function newCanvas(fonts: Fonts, shape: SheetShape): Canvas {
  const texts: string[] = [];
  const strokes = new Map<string, string[]>();
  const others: string[] = [];
  const links: LinkArea[] = [];
  const lateDrawings: LateDrawing[] = [];
  let font = "";
  let isSoft = false;
  // Moves are relative to the last text, in whole hundredths, so that they add up without drift.
  let lastX = 0;
  let lastY = 0;
  const point = ([x, y]: Point) => `${number(x)} ${number(shape.height - y)}`;
  const stroke = (pen: Pen, path: string) => {
    const key = setting(pen);
    const known = strokes.get(key);
    if (known === undefined) strokes.set(key, [path]);
    else known.push(path);
  };
  return {
    shape,
    links,
    lateDrawings,
    later: (draw) => void lateDrawings.push(draw),
    text(x, y, face, size, text, soft = false) {
      if (text === "") return;
      const wanted = `/${fonts.resource(face)} ${number(size)} Tf`;
      if (wanted !== font) texts.push(wanted);
      if (soft !== isSoft) texts.push(soft ? "0.235 g" : "0 g");
      font = wanted;
      isSoft = soft;
      const atX = Math.round(x * 100);
      const atY = Math.round((shape.height - y) * 100);
      texts.push(`${String((atX - lastX) / 100)} ${String((atY - lastY) / 100)} Td ${fonts.show(face, text)}`);
      lastX = atX;
      lastY = atY;
    },
    turnedText(x, y, face, size, text) {
      const at = point([x, y]);
      others.push(`BT /${fonts.resource(face)} ${number(size)} Tf 0 1 -1 0 ${at} Tm ${fonts.show(face, text)} ET`);
    },
    line: (from, to, pen) => stroke(pen, `${point(from)} m ${point(to)} l`),
    path(points, pen, closed = false) {
      const [first, ...rest] = points;
      if (first === undefined) return;
      stroke(pen, `${point(first)} m ${rest.map((to) => `${point(to)} l`).join(" ")}${closed ? " h" : ""}`);
    },
    ring(at, radius, pen, filled = false) {
      const circle = circlePath(at, radius, point);
      if (filled) others.push(`0 g ${circle} f`);
      else stroke(pen, circle);
    },
    hatch(x, y, width, height, pen) {
      const step = 5;
      for (let start = x - height + step; start < x + width; start += step) {
        const left = Math.max(start, x);
        const right = Math.min(start + height, x + width);
        if (right > left)
          stroke(
            pen,
            `${point([left, y + height - (left - start)])} m ${point([right, y + height - (right - start)])} l`,
          );
      }
    },
    link: (area) => void links.push(area),
    form: (name, matrix) => void others.push(`q ${matrix.map(fine).join(" ")} cm /${name} Do Q`),
    content() {
      // Hairlines lie below the rules they touch.
      const ordered = [...strokes].sort(([a], [b]) => Number(isHair(b)) - Number(isHair(a)));
      const lines = ordered.map(([key, paths]) => `${key}\n${paths.join("\n")}\nS`);
      const drawn = [...others, ...(lines.length === 0 ? [] : [`q ${lines.join("\n")}\nQ`])];
      return [...drawn, ...(texts.length === 0 ? [] : [`BT\n${texts.join("\n")}\nET`])].join("\n");
    },
  };
}

/** Numbers of a matrix need more places than positions: they are multiplied by the size of a drawing. */
const fine = (value: number) => String(Math.round(value * 1e5) / 1e5);

const isHair = (setting: string) => setting.includes(" 0.6 G ");

function setting({ weight, hair, broken, dotted }: Pen): string {
  const dash = broken === true ? "[3 1.6]" : dotted === true ? "[0.01 2.2]" : "[]";
  return `${number(weight)} w ${hair === true ? "0.6" : "0"} G ${dash} 0 d ${dotted === true ? "1" : "0"} J`;
}

function circlePath([x, y]: Point, r: number, point: (at: Point) => string): string {
  const k = r * quarter;
  const curve = (a: Point, b: Point, c: Point) => `${point(a)} ${point(b)} ${point(c)} c`;
  return [
    `${point([x + r, y])} m`,
    curve([x + r, y + k], [x + k, y + r], [x, y + r]),
    curve([x - k, y + r], [x - r, y + k], [x - r, y]),
    curve([x - r, y - k], [x - k, y - r], [x, y - r]),
    curve([x + k, y - r], [x + r, y - k], [x + r, y]),
    "h",
  ].join(" ");
}

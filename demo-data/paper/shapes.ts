import { rgb, type RGB } from "pdf-lib";
import { label, polyline, type Frame } from "./figures.ts";
import { black, height, widthOf, write } from "./paper.ts";

type Point = readonly [x: number, y: number];

const white = rgb(1, 1, 1);
export const shade: RGB = rgb(0.88, 0.89, 0.91);

/** A circle with its centre at a point in mm. */
export function circle(
  { sheet, x, y, scale }: Frame,
  [atX, atY]: Point,
  radius: number,
  thickness = 0.6,
  color?: RGB,
): void {
  sheet.page.drawCircle({
    x: x + atX * scale,
    y: height - y - atY * scale,
    size: radius * scale,
    borderWidth: thickness,
    borderColor: black,
    ...(color !== undefined && { color }),
  });
}

/** A rectangle between two corners in mm, filled where a colour is given. */
export function box({ sheet, x, y, scale }: Frame, from: Point, to: Point, thickness = 0.6, color?: RGB): void {
  const [left, top] = [Math.min(from[0], to[0]), Math.min(from[1], to[1])];
  const [right, bottom] = [Math.max(from[0], to[0]), Math.max(from[1], to[1])];
  sheet.page.drawRectangle({
    x: x + left * scale,
    y: height - y - bottom * scale,
    width: (right - left) * scale,
    height: (bottom - top) * scale,
    borderWidth: thickness,
    borderColor: black,
    ...(color !== undefined && { color }),
  });
}

/** A centre line: long and short dashes. */
export function centreLine({ sheet, x, y, scale }: Frame, from: Point, to: Point): void {
  sheet.page.drawLine({
    start: { x: x + from[0] * scale, y: height - y - from[1] * scale },
    end: { x: x + to[0] * scale, y: height - y - to[1] * scale },
    thickness: 0.3,
    color: black,
    dashArray: [9, 2, 2, 2],
  });
}

/** A dashed line: an edge that is hidden, or a level. */
export function dashed({ sheet, x, y, scale }: Frame, from: Point, to: Point, thickness = 0.5): void {
  sheet.page.drawLine({
    start: { x: x + from[0] * scale, y: height - y - from[1] * scale },
    end: { x: x + to[0] * scale, y: height - y - to[1] * scale },
    thickness,
    color: black,
    dashArray: [4, 2.5],
  });
}

/** The two axes of a circle, a little longer than its diameter. */
export function axes(frame: Frame, [x, y]: Point, radius: number): void {
  const reach = radius + 8 / frame.scale;
  centreLine(frame, [x - reach, y], [x + reach, y]);
  centreLine(frame, [x, y - reach], [x, y + reach]);
}

const tick = 2;

/** A dimension across: its line at a height, end ticks, the text above it on white. */
export function across(frame: Frame, text: string, from: number, to: number, at: number): void {
  const end = tick / frame.scale;
  polyline(
    frame,
    [
      [from, at],
      [to, at],
    ],
    0.35,
  );
  for (const x of [from, to]) {
    polyline(
      frame,
      [
        [x, at - 1.6 * end],
        [x, at + 1.6 * end],
      ],
      0.35,
    );
    polyline(
      frame,
      [
        [x - end, at + end],
        [x + end, at - end],
      ],
      0.6,
    );
  }
  label(frame, text, [(from + to) / 2, at - 3.6 / frame.scale], 7);
}

/** A dimension upright: its line at a place across, end ticks, the text beside its middle on white. */
export function upright(frame: Frame, text: string, from: number, to: number, at: number): void {
  const end = tick / frame.scale;
  polyline(
    frame,
    [
      [at, from],
      [at, to],
    ],
    0.35,
  );
  for (const y of [from, to]) {
    polyline(
      frame,
      [
        [at - 1.6 * end, y],
        [at + 1.6 * end, y],
      ],
      0.35,
    );
    polyline(
      frame,
      [
        [at - end, y + end],
        [at + end, y - end],
      ],
      0.6,
    );
  }
  onWhite(frame, text, [at, (from + to) / 2], 7);
}

/** A text in the middle of a white ground, so that lines under it do not cross it. */
export function onWhite(frame: Frame, text: string, [x, y]: Point, size = 7): void {
  const { sheet, scale } = frame;
  const half = widthOf(sheet.paper.regular, text, size) / 2 + 1.5;
  sheet.page.drawRectangle({
    x: frame.x + x * scale - half,
    y: height - frame.y - y * scale - size * 0.55,
    width: 2 * half,
    height: size * 1.1,
    color: white,
  });
  label(frame, text, [x, y], size);
}

/** A note with a line to what it names. */
export function leader(frame: Frame, text: string, at: Point, to: Point, size = 7): void {
  polyline(frame, [at, to], 0.35);
  const { sheet, x, y, scale } = frame;
  const wide = widthOf(sheet.paper.regular, text, size);
  const before = at[0] < to[0];
  write(sheet, text, x + at[0] * scale + (before ? -wide - 2 : 2), y + at[1] * scale + size / 3, { size });
}

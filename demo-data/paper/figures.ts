import { rgb } from "pdf-lib";
import { black, height, rule, widthOf, write, type Sheet } from "./paper.ts";

/** Maps a drawing in mm to the page: origin in points from the top left, points per mm. */
export interface Frame {
  readonly sheet: Sheet;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** Straight lines through points in mm. */
export function polyline(
  { sheet, x, y, scale }: Frame,
  points: readonly (readonly [number, number])[],
  thickness = 0.8,
): void {
  points.slice(1).forEach(([x2, y2], index) => {
    const [x1, y1] = points[index] ?? [x2, y2];
    rule(sheet, x + x1 * scale, y + y1 * scale, x + x2 * scale, y + y2 * scale, thickness);
  });
}

/** Straight lines through points in mm, written "x y, x y". */
export function outline(frame: Frame, points: string, thickness = 0.8): void {
  const pairs = points.split(", ").map((pair) => {
    const [x = 0, y = 0] = pair.split(" ").map(Number);
    return [x, y] as const;
  });
  polyline(frame, pairs, thickness);
}

/** A text whose middle or start lies at a point in mm. */
export function label(
  { sheet, x, y, scale }: Frame,
  text: string,
  [atX, atY]: readonly [number, number],
  size = 7,
  middle = true,
): void {
  const wide = widthOf(sheet.paper.regular, text, size);
  write(sheet, text, x + atX * scale - (middle ? wide / 2 : 0), y + atY * scale + size / 3, { size });
}

/** A number in a circle, with a line to what it names. */
export function balloon(
  frame: Frame,
  text: string,
  at: readonly [number, number],
  to: readonly [number, number],
): void {
  const { sheet, x, y, scale } = frame;
  polyline(frame, [at, to], 0.4);
  const size = 8.5;
  sheet.page.drawCircle({
    x: x + at[0] * scale,
    y: height - y - at[1] * scale,
    size,
    color: rgb(1, 1, 1),
    borderColor: black,
    borderWidth: 0.5,
  });
  label(frame, text, at, text.length > 2 ? 6 : 7);
}

/** A dimension with end ticks, drawn below or above what it measures. */
export function dimension(frame: Frame, text: string, from: number, to: number, at: number): void {
  polyline(
    frame,
    [
      [from, at],
      [to, at],
    ],
    0.35,
  );
  for (const end of [from, to]) {
    polyline(
      frame,
      [
        [end, at - 22],
        [end, at + 22],
      ],
      0.35,
    );
    polyline(
      frame,
      [
        [end - 14, at + 14],
        [end + 14, at - 14],
      ],
      0.6,
    );
  }
  label(frame, text, [(from + to) / 2, at - 26], 7);
}

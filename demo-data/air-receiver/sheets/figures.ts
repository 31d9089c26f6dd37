import { rgb } from "pdf-lib";
import { sequenceOf } from "../../paper/marks.ts";
import { black, grey, height, left, right, rule, widthOf, write, type Sheet } from "../../paper/paper.ts";

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

/** A weld preparation with its runs. */
export function bevel(sheet: Sheet, branch: boolean): void {
  const frame: Frame = { sheet, x: left + 60, y: sheet.y + 12, scale: 5 };
  const plate = (points: readonly (readonly [number, number])[]) => {
    polyline(frame, [...points, points[0] ?? [0, 0]], 0.9);
  };
  if (branch) {
    plate([
      [0, 6],
      [24, 6],
      [28.4, 14],
      [0, 14],
    ]);
    plate([
      [30.4, 0],
      [36, 0],
      [36, 18],
      [30.4, 18],
    ]);
    polyline(
      frame,
      [
        [22.5, 6],
        [26, 3.4],
        [30.4, 1.6],
      ],
      0.5,
    );
    label(frame, "nozzle set in, root gap 2 mm,", [46, 7], 8, false);
    label(frame, "bevel 30° in the shell", [46, 10], 8, false);
  } else {
    plate([
      [0, 6],
      [24, 6],
      [28.4, 13],
      [28.4, 14],
      [0, 14],
    ]);
    plate([
      [35.2, 6],
      [60, 6],
      [60, 14],
      [30.8, 14],
      [30.8, 13],
    ]);
    polyline(
      frame,
      [
        [22.8, 6],
        [27, 4.8],
        [32.6, 4.8],
        [36.4, 6],
      ],
      0.5,
    );
    polyline(
      frame,
      [
        [26.4, 9.8],
        [29.6, 9.2],
        [33, 9.8],
      ],
      0.5,
    );
    polyline(
      frame,
      [
        [28, 14],
        [29.6, 15.4],
        [31.2, 14],
      ],
      0.5,
    );
    for (const [text, y] of [
      ["3", 7.4],
      ["2", 10.8],
      ["1", 13.4],
    ] as const)
      label(frame, text, [29.6, y], 7);
    label(frame, "60°, gap 2.5 mm, land 1 mm", [66, 9], 8, false);
    label(frame, "1 root, 2 fill, 3 cap", [66, 12], 8, false);
  }
  sheet.y += 112;
}

export interface FilmView {
  readonly mark: string;
  readonly from: string;
  readonly to: string;
  readonly wire: string;
  /** Place of a defect as shares of the length: start and length. */
  readonly defect?: readonly [number, number];
}

/** A radiograph as it is seen on the viewer: dark parent metal, lighter weld, numbers of lead, wires. */
export function radiograph(sheet: Sheet, { mark, from, to, wire, defect }: FilmView): void {
  const wide = right - left - 20;
  const tall = 92;
  const x = left + 10;
  const top = sheet.y + 4;
  const { page } = sheet;
  const at = (down: number) => height - top - down;
  const shade = (value: number) => rgb(value, value, value * 1.03);
  page.drawRectangle({ x, y: at(tall), width: wide, height: tall, color: shade(0.2) });
  page.drawRectangle({ x, y: at(62), width: wide, height: 32, color: shade(0.33) });
  const next = sequenceOf(mark);
  for (let step = 0; step < 74; step++) {
    const along = x + (wide * step) / 74;
    page.drawLine({
      start: { x: along, y: at(31 + next() * 2.5) },
      end: { x: along + wide / 74, y: at(61 - next() * 2.5) },
      thickness: 2.2,
      color: shade(0.35 + next() * 0.1),
    });
  }
  page.drawLine({ start: { x, y: at(46) }, end: { x: x + wide, y: at(46.6) }, thickness: 1.6, color: shade(0.46) });
  if (defect !== undefined) {
    const start = x + wide * defect[0];
    page.drawLine({
      start: { x: start, y: at(41.5) },
      end: { x: start + wide * defect[1], y: at(40.6) },
      thickness: 1.3,
      color: shade(0.06),
    });
    page.drawEllipse({
      x: start + (wide * defect[1]) / 2,
      y: at(41),
      xScale: wide * defect[1] * 0.62,
      yScale: 9,
      borderColor: rgb(0.95, 0.9, 0.5),
      borderWidth: 0.8,
    });
  }
  for (let index = 0; index < 7; index++)
    page.drawLine({
      start: { x: x + wide * 0.72 + index * 7, y: at(26) },
      end: { x: x + wide * 0.72 + index * 7, y: at(66) },
      thickness: 1.1 - index * 0.14,
      color: shade(0.56),
    });
  const lead = shade(0.78);
  write(sheet, mark, x + 14, top + 16, { size: 11, bold: true, color: lead });
  write(sheet, `10 FE EN   ${wire}`, x + wide * 0.7, top + 16, { size: 8, color: lead });
  write(sheet, from, x + 6, top + 82, { size: 9, color: lead });
  write(sheet, to, x + wide - 12 - widthOf(sheet.paper.regular, to, 9), top + 82, { size: 9, color: lead });
  write(sheet, "GT", x + wide / 2, top + 82, { size: 9, bold: true, color: lead });
  sheet.y += tall + 14;
}

export interface Series {
  readonly name: string;
  readonly points: readonly (readonly [number, number])[];
  readonly dashed?: boolean;
}

export interface ChartForm {
  readonly across: readonly { readonly at: number; readonly label: string }[];
  readonly up: readonly number[];
  readonly unit: string;
  readonly tall: number;
  readonly series: readonly Series[];
  readonly band?: readonly [from: number, to: number, least: number];
}

/** A chart of one or more series over time, with its axes. */
export function chart(sheet: Sheet, { across, up, unit, tall, series, band }: ChartForm): void {
  const x0 = left + 34;
  const wide = right - x0 - 70;
  const top = sheet.y + 14;
  const first = across[0]?.at ?? 0;
  const last = across.at(-1)?.at ?? 1;
  const least = up[0] ?? 0;
  const most = up.at(-1) ?? 1;
  const px = (value: number) => x0 + ((value - first) / (last - first)) * wide;
  const py = (value: number) => top + tall - ((value - least) / (most - least)) * tall;
  write(sheet, unit, left, top - 4, { size: 8 });
  for (const value of up) {
    rule(sheet, x0, py(value), x0 + wide, py(value), 0.25, grey);
    write(sheet, String(value), x0 - 6 - widthOf(sheet.paper.regular, String(value), 8), py(value) + 3, { size: 8 });
  }
  for (const { at, label: text } of across) {
    rule(sheet, px(at), top + tall, px(at), top + tall + 4, 0.5);
    write(sheet, text, px(at) - widthOf(sheet.paper.regular, text, 7.5) / 2, top + tall + 13, { size: 7.5 });
  }
  if (band !== undefined) {
    const [from, to, low] = band;
    sheet.page.drawRectangle({
      x: px(from),
      y: height - py(low),
      width: px(to) - px(from),
      height: py(low) - py(most),
      color: rgb(0.9, 0.9, 0.86),
    });
    rule(sheet, px(from), py(low), px(to), py(low), 0.9);
    write(sheet, `hold, at least ${low} ${unit}`, px(from) + 3, py(low) + 10, { size: 7 });
  }
  rule(sheet, x0, top, x0, top + tall, 0.7);
  rule(sheet, x0, top + tall, x0 + wide, top + tall, 0.7);
  series.forEach(({ name, points, dashed }, row) => {
    points.slice(1).forEach(([at, value], index) => {
      const [before, from] = points[index] ?? [at, value];
      sheet.page.drawLine({
        start: { x: px(before), y: height - py(from) },
        end: { x: px(at), y: height - py(value) },
        thickness: 1,
        color: black,
        ...(dashed === true && { dashArray: [3, 2] }),
      });
    });
    for (const [at, value] of points)
      sheet.page.drawCircle({
        x: px(at),
        y: height - py(value),
        size: 1.4,
        color: dashed === true ? rgb(1, 1, 1) : black,
        borderColor: black,
        borderWidth: 0.5,
      });
    const y = top + 10 + row * 14;
    sheet.page.drawLine({
      start: { x: x0 + wide + 8, y: height - y },
      end: { x: x0 + wide + 24, y: height - y },
      thickness: 1,
      color: black,
      ...(dashed === true && { dashArray: [3, 2] }),
    });
    write(sheet, name, x0 + wide + 28, y + 3, { size: 8 });
  });
  sheet.y = top + tall + 24;
}

import { rgb } from "pdf-lib";
import { black, grey, height, left, right, rule, widthOf, write, type Sheet } from "./paper.ts";

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

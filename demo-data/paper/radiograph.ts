import { rgb } from "pdf-lib";
import { sequenceOf } from "./marks.ts";
import { height, left, right, widthOf, write, type Sheet } from "./paper.ts";

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

import { degrees, rgb, type RGB } from "pdf-lib";
import { grey, height, left, pen, right, write, type Sheet } from "./paper.ts";

/** A number sequence that depends on a text alone. */
export function sequenceOf(text: string): () => number {
  let state = 2166136261;
  for (const sign of text) state = Math.imul(state ^ (sign.codePointAt(0) ?? 0), 16777619) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** A signature in ink: always the same for one name. */
export function signature(sheet: Sheet, name: string, x: number, y: number, long = 88): void {
  const next = sequenceOf(name);
  const tall = 9 + next() * 6;
  const count = 6 + Math.floor(next() * 4);
  const step = long / (count + 2);
  let path = `M 0 ${(-tall * 0.2).toFixed(1)} C ${(step * 0.3).toFixed(1)} ${(-tall * 1.5).toFixed(1)} ${step.toFixed(1)} ${(-tall * 1.2).toFixed(1)} ${(step * 0.8).toFixed(1)} 0`;
  for (let index = 1; index <= count; index++) {
    const at = step * (0.8 + index);
    const up = tall * (0.25 + next() * (index % 3 === 0 ? 1 : 0.45));
    path += ` S ${(at - step * (0.2 + next() * 0.5)).toFixed(1)} ${(-up).toFixed(1)} ${at.toFixed(1)} ${((next() - 0.4) * 4).toFixed(1)}`;
  }
  path += ` S ${(long * 0.5).toFixed(1)} ${(4 + next() * 4).toFixed(1)} ${(long * 0.2).toFixed(1)} ${(5 + next() * 2).toFixed(1)}`;
  sheet.page.drawSvgPath(path, { x, y: height - y, borderColor: pen, borderWidth: 0.9 });
}

export interface Signed {
  readonly role: string;
  readonly name: string;
  readonly date: string;
  readonly stamp?: string;
}

/** A row of signature fields. */
export function signatures(sheet: Sheet, signed: readonly Signed[]): void {
  const box = (right - left) / Math.max(2, signed.length);
  const tall = 58;
  signed.forEach(({ role, name, date, stamp }, index) => {
    const x = left + index * box;
    const y = sheet.y;
    sheet.page.drawRectangle({ x, y: height - y - tall, width: box, height: tall, borderColor: grey, borderWidth: 0.4 });
    write(sheet, role, x + 4, y + 9, { size: 7, color: grey });
    if (stamp !== undefined) roundStamp(sheet, stamp, x + box - 34, y + 30);
    signature(sheet, name, x + 8, y + 36, Math.min(96, box - 50));
    write(sheet, `${name}, ${date}`, x + 4, y + tall - 5, { size: 7.5 });
  });
  sheet.y += tall + 8;
}

const stampInk: RGB = rgb(0.42, 0.16, 0.36);

/** A round stamp, a little askew. */
export function roundStamp(sheet: Sheet, text: string, x: number, y: number): void {
  const { page, paper } = sheet;
  page.drawCircle({ x, y: height - y, size: 24, borderColor: stampInk, borderWidth: 1.1, borderOpacity: 0.75 });
  page.drawCircle({ x, y: height - y, size: 20, borderColor: stampInk, borderWidth: 0.5, borderOpacity: 0.75 });
  const lines = text.split("\n");
  lines.forEach((line, index) => {
    const size = 6.2;
    const wide = paper.bold.widthOfTextAtSize(line, size);
    const down = (index - (lines.length - 1) / 2) * 8 + 2;
    page.drawText(line, {
      x: x - wide / 2 + down * 0.14,
      y: height - y - down - wide * 0.07,
      size,
      font: paper.bold,
      color: stampInk,
      opacity: 0.8,
      rotate: degrees(8),
    });
  });
}

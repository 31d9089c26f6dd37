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

/** A signature in ink: always the same for one name. A capital with a loop, small strokes, and a tail that runs its own way. */
export function signature(sheet: Sheet, name: string, x: number, y: number, long = 88): void {
  const next = sequenceOf(`signature of ${name}`);
  for (let skipped = 0; skipped < 5; skipped++) next();
  const n = (value: number) => value.toFixed(1);
  const tall = 10 + next() * 9;
  const lean = (next() - 0.35) * 5;
  const capital = 8 + next() * 12;
  let path = `M ${n(next() * 6)} ${n(-tall * next())}`;
  path += ` C ${n(capital * next())} ${n(-tall * (1 + next() * 0.6))} ${n(capital * (1 + next()))} ${n(-tall)} ${n(capital * 0.6 + lean)} ${n(next() * 5)}`;
  if (next() > 0.45)
    path += ` C ${n(-capital * next() * 0.6)} ${n(7 * next())} ${n(-4)} ${n(-tall * 0.7)} ${n(capital * 1.1)} ${n(-tall * next() * 0.4)}`;
  const count = 3 + Math.floor(next() * 6);
  const step = (long * (0.55 + next() * 0.3) - capital) / count;
  const flat = 0.25 + next() * 0.45;
  for (let index = 1; index <= count; index++) {
    const at = capital + step * index;
    const up = tall * (next() > 0.82 ? 0.9 : flat * (0.4 + next() * 0.6));
    path += ` S ${n(at - step * (0.3 + next() * 0.5) + lean)} ${n(-up)} ${n(at)} ${n((next() - 0.3) * 3)}`;
  }
  const end = capital + step * count;
  const tail = next();
  if (tail < 0.35) path += ` S ${n(end + 14)} ${n(6)} ${n(long)} ${n(-3 - next() * 4)}`;
  else if (tail < 0.7)
    path += ` C ${n(end + 16)} ${n(9)} ${n(end * 0.4)} ${n(9 + next() * 3)} ${n(capital * 0.4)} ${n(5 + next() * 3)}`;
  else path += ` L ${n(end + 6)} ${n(-tall * 0.8)} M ${n(end * 0.3)} ${n(4)} L ${n(long * 0.9)} ${n(2 + next() * 3)}`;
  sheet.page.drawSvgPath(path, { x, y: height - y, borderColor: pen, borderWidth: 0.7 + next() * 0.5 });
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
    sheet.page.drawRectangle({
      x,
      y: height - y - tall,
      width: box,
      height: tall,
      borderColor: grey,
      borderWidth: 0.4,
    });
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

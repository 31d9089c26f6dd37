import type { Publication } from "../publication.ts";
import type { Canvas } from "./canvas.ts";
import type { Fonts } from "./fonts.ts";
import { mm, rules } from "./measures.ts";

const headSize = 8;
const headBaseline = 8;
const footBaseline = 8;

/** Running head, foot and, in an interim issue, the mark in the left margin. `page` counts from 1. */
export function drawFrame(
  canvas: Canvas,
  fonts: Fonts,
  book: Publication,
  foot: string,
  page: number,
  pages: number,
): void {
  drawHead(canvas, fonts, book);
  drawFoot(canvas, fonts, book, foot, `page ${page} of ${pages}`);
  if (book.interim) drawMargin(canvas, fonts, book.interimLine ?? "Interim issue, not for acceptance.");
}

function drawHead(canvas: Canvas, fonts: Fonts, book: Publication): void {
  const { left, right, headTop, headRule } = canvas.shape;
  const y = headTop + headBaseline;
  const middle = book.interim ? `${book.state}, ` : book.state;
  const warning = book.interim ? "not for acceptance" : "";
  const middleWidth = fonts.width("sans", headSize, middle) + fonts.width("sans-strong", headSize, warning);
  const middleAt = (left + right - middleWidth) / 2;
  const number = fonts.width("sans-strong", headSize, book.number);
  canvas.text(left, y, "sans-strong", headSize, book.number);
  const room = middleAt - left - number - mm(6);
  canvas.text(left + number + 3, y, "sans", headSize, shortened(fonts, book.title, room));
  canvas.text(middleAt, y, "sans", headSize, middle);
  canvas.text(middleAt + fonts.width("sans", headSize, middle), y, "sans-strong", headSize, warning);
  if (book.demonstration) {
    const text = "demonstration, invented data";
    canvas.text(right - fonts.width("sans-italic", headSize, text), y, "sans-italic", headSize, text);
  }
  canvas.line([left, headRule], [right, headRule], { weight: rules.frame });
}

function drawFoot(canvas: Canvas, fonts: Fonts, book: Publication, foot: string, page: string): void {
  const { left, right, foot: top } = canvas.shape;
  const y = top + footBaseline;
  const label = "fingerprint ";
  const groups = (book.fingerprint.slice(0, 16).match(/.{1,4}/g) ?? []).join(" ");
  canvas.text(left, y, "sans", 7.5, label);
  canvas.text(left + fonts.width("sans", 7.5, label), y, "mono", 6.8, groups);
  const shown = shortened(fonts, foot, mm(62));
  canvas.text((left + right - fonts.width("sans", 7.5, shown)) / 2, y, "sans", 7.5, shown);
  canvas.text(right - fonts.width("sans", 9, page), y, "sans", 9, page);
}

function drawMargin(canvas: Canvas, fonts: Fonts, text: string): void {
  const { top, bottom } = canvas.shape;
  const length = fonts.width("sans-strong", 8, text);
  canvas.turnedText(mm(11) + 7, (top + bottom + length) / 2, "sans-strong", 8, text);
}

/** As much of a text as fits, with an ellipsis where something is left out. */
function shortened(fonts: Fonts, text: string, room: number): string {
  if (fonts.width("sans", headSize, text) <= room) return text;
  let shown = text;
  while (shown !== "" && fonts.width("sans", headSize, `${shown}…`) > room) shown = shown.slice(0, -1);
  return `${shown.trimEnd()}…`;
}

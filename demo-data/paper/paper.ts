import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { createRequire } from "node:module";
import fontkit from "@pdf-lib/fontkit";
import { evenFont } from "./even-font.ts";
import { PDFDocument, rgb, type PDFFont, type PDFPage, type RGB } from "pdf-lib";

/** How the papers of one organisation look: its letterhead, its type, its paper. */
export interface Look {
  readonly name: string;
  readonly address: string;
  readonly type: "sans" | "serif" | "mono";
  /** Colour of rules and headings. */
  readonly ink: RGB;
  readonly paper: RGB;
}

/** A document being drawn. */
export interface Paper {
  readonly document: PDFDocument;
  readonly look: Look;
  readonly title: string;
  readonly number: string;
  readonly regular: PDFFont;
  readonly bold: PDFFont;
  readonly pages: PDFPage[];
  /** On which page the data of a record begin, as noted while drawing. */
  readonly found: Map<string, number>;
  /** On which page they end, where that was noted. */
  readonly ends: Map<string, number>;
}

/** A page being filled from the top; `y` is where the next block begins, in points from the top. */
export interface Sheet {
  readonly paper: Paper;
  readonly page: PDFPage;
  readonly title: string;
  y: number;
}

export const black: RGB = rgb(0.1, 0.1, 0.1);
export const grey: RGB = rgb(0.45, 0.45, 0.45);
export const pen: RGB = rgb(0.1, 0.18, 0.5);

/** A4 in points, and the margins. */
export const width = 595.28;
export const height = 841.89;
export const left = 50;
export const right = width - 45;

const resolve = createRequire(import.meta.url).resolve;
const files = {
  sans: ["source-sans-3", "400Regular/SourceSans3_400Regular", "600SemiBold/SourceSans3_600SemiBold"],
  serif: ["source-serif-4", "400Regular/SourceSerif4_400Regular", "600SemiBold/SourceSerif4_600SemiBold"],
  mono: ["source-code-pro", "400Regular/SourceCodePro_400Regular", "600SemiBold/SourceCodePro_600SemiBold"],
} as const;

const opened = new Map<string, Uint8Array>();

function fontBytes(type: Look["type"], which: 1 | 2): Uint8Array {
  const [family] = files[type];
  const path = join(dirname(resolve(`@expo-google-fonts/${family}/package.json`)), `${files[type][which]}.ttf`);
  const bytes = opened.get(path) ?? evenFont(readFileSync(path));
  opened.set(path, bytes);
  return bytes;
}

/** Begins a document; `day` becomes its date, so that its bytes depend on nothing else. */
export async function newPaper(look: Look, title: string, number: string, day: string): Promise<Paper> {
  const document = await PDFDocument.create();
  document.registerFontkit(fontkit);
  const date = new Date(`${day}T12:00:00Z`);
  document.setTitle(title);
  document.setAuthor(look.name);
  document.setSubject("Demonstration, invented data");
  document.setProducer("demo-data");
  document.setCreator("demo-data");
  document.setCreationDate(date);
  document.setModificationDate(date);
  document.setLanguage("en");
  const regular = await document.embedFont(fontBytes(look.type, 1), { subset: true });
  const bold = await document.embedFont(fontBytes(look.type, 2), { subset: true });
  return { document, look, title, number, regular, bold, pages: [], found: new Map(), ends: new Map() };
}

/** Width of a line of text in points. */
export const widthOf = (font: PDFFont, text: string, size: number): number => font.widthOfTextAtSize(text, size);

/** Draws one line; `y` counts from the top of the page to the baseline. */
export function write(
  sheet: Sheet,
  text: string,
  x: number,
  y: number,
  { size = 9, bold = false, color = black }: { size?: number; bold?: boolean; color?: RGB } = {},
): void {
  if (text === "") return;
  sheet.page.drawText(text, { x, y: height - y, size, font: bold ? sheet.paper.bold : sheet.paper.regular, color });
}

/** Draws a straight rule; coordinates from the top left. */
export function rule(
  sheet: Sheet,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  thickness = 0.5,
  color: RGB = black,
): void {
  sheet.page.drawLine({ start: { x: x1, y: height - y1 }, end: { x: x2, y: height - y2 }, thickness, color });
}

/** Breaks a text into lines that fit a width. */
export function wrap(font: PDFFont, text: string, size: number, available: number): string[] {
  const lines: string[] = [];
  for (const part of text.split("\n")) {
    let line = "";
    for (const word of part.split(" ")) {
      const longer = line === "" ? word : `${line} ${word}`;
      if (line !== "" && widthOf(font, longer, size) > available) {
        lines.push(line);
        line = word;
      } else line = longer;
    }
    lines.push(line);
  }
  return lines;
}

/** Two letters that stand before a firm's name: those its first two words begin with. */
function initialsOf(name: string): string {
  const [first = "", second] = name.split(/[^\p{L}]+/u).filter((word) => word !== "");
  return (second === undefined ? first.slice(0, 2) : `${first.charAt(0)}${second.charAt(0)}`).toUpperCase();
}

/** Begins a page with letterhead, title and number. */
export function newSheet(paper: Paper, title: string = paper.title): Sheet {
  const { look } = paper;
  const page = paper.document.addPage([width, height]);
  page.drawRectangle({ x: 0, y: 0, width, height, color: look.paper });
  paper.pages.push(page);
  const sheet: Sheet = { paper, page, title, y: 0 };
  const initials = initialsOf(look.name);
  const after = left + widthOf(paper.bold, initials, 17) + 8;
  write(sheet, initials, left, 47, { size: 17, bold: true, color: look.ink });
  rule(sheet, after - 4, 31, after - 4, 52, 0.8, look.ink);
  write(sheet, look.name, after, 40, { size: 13, bold: true, color: look.ink });
  write(sheet, look.address, after, 51, { size: 7.5, color: grey });
  const number = paper.number;
  write(sheet, number, right - widthOf(paper.bold, number, 10), 40, { size: 10, bold: true });
  rule(sheet, left, 58, right, 58, 1.2, look.ink);
  write(sheet, title, left, 80, { size: 14, bold: true });
  sheet.y = 96;
  return sheet;
}

/** The sheet itself, or the next one where less than `tall` points are left on it. */
export function withRoom(sheet: Sheet, tall: number): Sheet {
  return sheet.y + tall > height - 44 ? newSheet(sheet.paper, continued(sheet.title)) : sheet;
}

/** Title of the sheet that follows. */
export const continued = (title: string): string => `${title.replace(/, continued$/, "")}, continued`;

/** Notes that the data of a record begin on the page just begun. */
export function note({ found, pages }: Paper, kind: string, id: string): void {
  const address = `${kind}:${id}`;
  if (!found.has(address)) found.set(address, pages.length);
}

/** Notes that the data of a record end on the page just drawn on. */
export function noteEnd({ ends, pages }: Paper, kind: string, id: string): void {
  ends.set(`${kind}:${id}`, pages.length);
}

/** Writes the foot of every page and gives the bytes. */
export async function finish(paper: Paper): Promise<Uint8Array> {
  paper.pages.forEach((page, index) => {
    const sheet: Sheet = { paper, page, title: paper.title, y: 0 };
    rule(sheet, left, height - 36, right, height - 36, 0.4, grey);
    write(sheet, "Demonstration, invented data", left, height - 24, { size: 8, bold: true, color: grey });
    const pages = `${paper.number}   page ${index + 1} of ${paper.pages.length}`;
    write(sheet, pages, right - widthOf(paper.regular, pages, 8), height - 24, { size: 8, color: grey });
  });
  return paper.document.save({ useObjectStreams: true });
}

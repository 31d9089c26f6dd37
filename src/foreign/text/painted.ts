import { Buffer } from "node:buffer";
import type { Budget } from "../budget.ts";
import { withPdf, type PdfFile } from "../pdf/file.ts";
import { numbersOf } from "../pdf/numbers.ts";
import { pagesOf, type PdfPage } from "../pdf/page-tree.ts";
import { readValue, readWord, skipSpace, type Cursor } from "../pdf/parse.ts";
import { entriesOf, isList, isName, isStream, nameOf, type Entries, type PdfValue } from "../pdf/values.ts";

/** Texts shown on a page: how many of them a reader sees, and how many are invisible or lie under a picture. */
interface Shows {
  seen: number;
  unseen: number;
}

type Matrix = readonly [number, number, number, number];

/** A picture that fills this share of the page is the page: what was painted before it cannot be seen. */
const covering = 0.7;
/** Drawings inside drawings; deeper ones hold no text of a paper. */
const deepest = 8;

/**
 * Of every page whether most of its text is there for machines only: shown in the rendering mode that paints nothing
 * (ISO 32000-1, 9.3.6, mode 3), or painted before a picture that covers the page. Throws Refused on what the bytes hold.
 */
export function unseenText(bytes: Buffer, newBudget: () => Budget): readonly boolean[] {
  return withPdf(bytes, newBudget, (file) =>
    pagesOf(file).map((page) => {
      const shows: Shows = { seen: 0, unseen: 0 };
      const state = { mode: 0, matrix: [1, 0, 0, 1] as Matrix };
      walk(file, contentOf(file, page), page.entries.get("Resources"), shows, state, areaOf(file, page), 0);
      return shows.unseen > shows.seen;
    }),
  );
}

function contentOf(file: PdfFile, { entries }: PdfPage): Buffer {
  const contents = file.resolve(entries.get("Contents"));
  const parts = isList(contents) ? contents.map((one) => file.resolve(one)) : [contents];
  return Buffer.concat(parts.flatMap((one) => (isStream(one) ? [file.content(one), Buffer.from("\n")] : [])));
}

function areaOf(file: PdfFile, { entries }: PdfPage): number {
  const [a = 0, b = 0, c = 595, d = 842] = numbersOf(file, entries.get("MediaBox")) ?? [];
  return Math.abs((c - a) * (d - b));
}

function walk(
  file: PdfFile,
  bytes: Buffer,
  resources: PdfValue | undefined,
  shows: Shows,
  start: { readonly mode: number; readonly matrix: Matrix },
  area: number,
  depth: number,
): void {
  const cursor: Cursor = { bytes, at: 0 };
  const objects = file.dict(file.dict(resources)?.get("XObject"));
  const kept: { readonly mode: number; readonly matrix: Matrix }[] = [];
  let { mode, matrix } = start;
  let operands: PdfValue[] = [];
  for (;;) {
    skipSpace(cursor);
    if (cursor.at >= bytes.length) return;
    const byte = bytes[cursor.at] ?? 0;
    // Operands begin with a digit, a sign, a point or a delimiter; a closing bracket by itself belongs to nothing.
    if (/[\d+.\-/(<[]/.test(String.fromCharCode(byte))) {
      operands.push(readValue(cursor, file.budget));
      continue;
    }
    const word = readWord(cursor);
    if (word === "") cursor.at++;
    if (word === "true" || word === "false" || word === "null") continue;
    const last = operands.at(-1);
    switch (word) {
      case "q":
        if (kept.length < file.budget.limits.depth * 8) kept.push({ mode, matrix });
        break;
      case "Q":
        ({ mode, matrix } = kept.pop() ?? start);
        break;
      case "cm":
        matrix = times(operands, matrix);
        break;
      case "Tr":
        mode = typeof last === "number" ? last : mode;
        break;
      case "Tj":
      case "TJ":
      case "'":
      case '"':
        if (mode === 3) shows.unseen++;
        else shows.seen++;
        break;
      case "ID":
        skipPicture(cursor);
        break;
      case "Do":
        if (isName(last)) drawObject(file, objects?.get(last.name), shows, { mode, matrix }, area, depth, resources);
    }
    operands = [];
  }
}

function drawObject(
  file: PdfFile,
  named: PdfValue | undefined,
  shows: Shows,
  state: { readonly mode: number; readonly matrix: Matrix },
  area: number,
  depth: number,
  outer: PdfValue | undefined,
): void {
  const object = file.resolve(named);
  if (!isStream(object)) return;
  const entries: Entries = entriesOf(object) ?? new Map();
  if (nameOf(file.resolve(entries.get("Subtype"))) === "Image") {
    const [a, b, c, d] = state.matrix;
    if (Math.abs(a * d - b * c) < covering * area) return;
    shows.unseen += shows.seen;
    shows.seen = 0;
  } else if (depth < deepest) {
    const own = numbersOf(file, entries.get("Matrix")) ?? [];
    const matrix = own.length === 6 ? times(own, state.matrix) : state.matrix;
    walk(file, file.content(object), entries.get("Resources") ?? outer, shows, { ...state, matrix }, area, depth + 1);
  }
}

function times(operands: readonly PdfValue[], [p, q, r, s]: Matrix): Matrix {
  const [a = 1, b = 0, c = 0, d = 1] = operands.map((one) => (typeof one === "number" ? one : 0));
  return [a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s];
}

/** The bytes of a picture within the content end with EI between white space. */
function skipPicture(cursor: Cursor): void {
  const end = /\sEI\s/.exec(cursor.bytes.toString("latin1", cursor.at));
  cursor.at = end === null ? cursor.bytes.length : cursor.at + end.index + end[0].length;
}

import { formsOn, partKey, type Pages } from "./search.ts";
import { cellAt, placesOf, type Sheet } from "./sheet.ts";
import { otherUnit } from "./units.ts";
import type { Part } from "./wanted.ts";

/** A place of the pages where something stands, in points. */
export interface Spot extends Box {
  /** Index of its first sign on the sheet. */
  readonly at: number;
  /** It is a word by itself, or several. */
  readonly whole: boolean;
}

/** A stretch of a line. */
export interface Box {
  readonly sheet: Sheet;
  readonly x: number;
  readonly end: number;
  readonly y: number;
  readonly height: number;
}

/** Something that stands at more places than this says nothing by its place. */
const mostSpots = 40;

/** All places of the pages where something stands; none where they are too many to tell anything. */
export function spotsOf(part: Part, { sheets, spots }: Pages): readonly Spot[] {
  const key = partKey(part);
  const before = spots.get(key);
  if (before !== undefined) return before;
  const found = findSpots(part, sheets);
  if (part.linked !== true) spots.set(key, found);
  return found;
}

function findSpots(part: Part, sheets: readonly Sheet[]): readonly Spot[] {
  const forms = formsOn(part, sheets);
  const found: Spot[] = [];
  for (const sheet of sheets) {
    const starts = new Set<number>();
    for (const form of forms)
      for (const at of placesOf(sheet, form)) {
        if (starts.has(at) || otherUnit(sheet, at + form.length, part.unit)) continue;
        starts.add(at);
        if (found.length === mostSpots) return [];
        found.push(spotAt(sheet, at, form.length));
      }
  }
  return found;
}

/** The signs of a word share its width alike. */
function spotAt(sheet: Sheet, at: number, length: number): Spot {
  const index = cellAt(sheet, at);
  const cell = sheet.cells[index];
  const first = at - (sheet.firstOf[index] ?? 0);
  const whole = sheet.edges[at] === 2 && sheet.edges[at + length] === 2;
  let before = 0;
  let [x, end] = [cell?.x ?? 0, cell?.end ?? 0];
  for (const word of cell?.words ?? []) {
    const signs = word.folded.replaceAll(" ", "").length;
    const share = (word.end - word.x) / signs;
    if (first >= before && first < before + signs) x = word.x + (first - before) * share;
    const last = first + length - before;
    if (last > 0 && last <= signs) end = word.x + last * share;
    before += signs;
  }
  return { sheet, at, whole, x, end, y: cell?.y ?? 0, height: cell?.height ?? 0 };
}

/** Whether two places lie on one line and one over half of the other. */
export function isAt(a: Box, b: Box): boolean {
  if (a.sheet !== b.sheet || Math.abs(a.y - b.y) > 0.4 * b.height) return false;
  const common = Math.min(a.end, b.end) - Math.max(a.x, b.x);
  return common > 0.5 * Math.min(a.end - a.x, b.end - b.x);
}

/** Index of the first sign of the word in which a sign stands. */
export function wordAt({ edges }: Sheet, at: number): number {
  let first = at;
  while (first > 0 && edges[first] !== 2) first--;
  return first;
}

/** The words in a place of a sheet, each with the index of its first sign. */
export function wordsIn(box: Box): readonly { readonly at: number; readonly text: string }[] {
  const { sheet } = box;
  return sheet.cells.flatMap((cell, index) => {
    if (Math.abs(cell.y - box.y) > 0.4 * box.height || cell.end < box.x || cell.x > box.end) return [];
    const found: { at: number; text: string }[] = [];
    let at = sheet.firstOf[index] ?? 0;
    for (const { folded, x, end } of cell.words) {
      if (isAt({ sheet, x, end, y: cell.y, height: cell.height }, box))
        found.push({ at: wordAt(sheet, at), text: folded });
      at += folded.replaceAll(" ", "").length;
    }
    return found;
  });
}

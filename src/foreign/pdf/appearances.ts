import type { PdfFile } from "./file.ts";
import { numbersOf } from "./numbers.ts";
import { entriesOf, isDict, isStream, nameOf, type Entries, type PdfValue } from "./values.ts";

/** What an annotation looks like on its page, and the matrix that puts it there. */
export interface Appearance {
  /** As it is referred to, so that one look that many annotations share is copied once. */
  readonly look: PdfValue;
  readonly matrix: readonly number[];
}

/** Bits of an annotation's flags that keep it from being seen. */
const hiddenFlags = 2 | 32;

/**
 * The normal appearance of an annotation that is seen on the page, put into its rectangle as PDF readers do; undefined
 * for links, hidden ones and such as have no appearance.
 */
export function appearanceOf(file: PdfFile, annotation: Entries): Appearance | undefined {
  const subtype = nameOf(file.resolve(annotation.get("Subtype")));
  if (subtype === "Popup" || subtype === "Link") return undefined;
  const flags = file.resolve(annotation.get("F"));
  if (typeof flags === "number" && (flags & hiddenFlags) !== 0) return undefined;
  const normal = file.dict(annotation.get("AP"))?.get("N");
  const state = nameOf(file.resolve(annotation.get("AS")));
  const states = file.resolve(normal);
  const look = isDict(states) && state !== undefined ? states.entries.get(state) : normal;
  const stream = file.resolve(look);
  const rect = numbersOf(file, annotation.get("Rect"));
  if (look === undefined || !isStream(stream) || rect?.length !== 4) return undefined;
  const box = numbersOf(file, entriesOf(stream)?.get("BBox"));
  if (box?.length !== 4) return undefined;
  const matrix = numbersOf(file, stream.entries.get("Matrix")) ?? [1, 0, 0, 1, 0, 0];
  const fit = fitted(rect, box, matrix);
  return fit.every(Number.isFinite) ? { look, matrix: fit } : undefined;
}

/** Scale and shift that bring the transformed box of an appearance onto the rectangle of its annotation. */
function fitted(rect: readonly number[], box: readonly number[], matrix: readonly number[]): readonly number[] {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = matrix;
  const [bx0 = 0, by0 = 0, bx1 = 0, by1 = 0] = box;
  const corners = [
    [bx0, by0],
    [bx1, by0],
    [bx0, by1],
    [bx1, by1],
  ] as const;
  const xs = corners.map(([x, y]) => a * x + c * y + e);
  const ys = corners.map(([x, y]) => b * x + d * y + f);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const [rx0 = 0, ry0 = 0, rx1 = 0, ry1 = 0] = rect;
  const sx = right > left ? Math.abs(rx1 - rx0) / (right - left) : 1;
  const sy = high > low ? Math.abs(ry1 - ry0) / (high - low) : 1;
  return [sx, 0, 0, sy, Math.min(rx0, rx1) - left * sx, Math.min(ry0, ry1) - low * sy];
}

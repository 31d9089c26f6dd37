import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRawStream } from "pdf-lib";

/** What an annotation looks like on its page, and the matrix that puts it there. */
export interface Appearance {
  readonly stream: PDFRawStream;
  readonly matrix: readonly number[];
}

/** Bits of an annotation's flags that keep it from being seen. */
const hiddenFlags = 2 | 32;

/**
 * The normal appearance of an annotation that is seen on the page, put into its rectangle as PDF readers do; undefined
 * for links, hidden ones and such as have no appearance.
 */
export function appearanceOf(annotation: PDFDict): Appearance | undefined {
  const subtype = annotation.lookup(PDFName.of("Subtype"));
  if (subtype === PDFName.of("Popup") || subtype === PDFName.of("Link")) return undefined;
  const flags = annotation.lookup(PDFName.of("F"));
  if (flags instanceof PDFNumber && (flags.asNumber() & hiddenFlags) !== 0) return undefined;
  const looks = annotation.lookup(PDFName.of("AP"));
  const normal = looks instanceof PDFDict ? looks.lookup(PDFName.of("N")) : undefined;
  const state = annotation.lookup(PDFName.of("AS"));
  const appearance = normal instanceof PDFDict && state instanceof PDFName ? normal.lookup(state) : normal;
  const rect = numbersOf(annotation.lookup(PDFName.of("Rect")));
  if (!(appearance instanceof PDFRawStream) || rect?.length !== 4) return undefined;
  const box = numbersOf(appearance.dict.lookup(PDFName.of("BBox")));
  if (box?.length !== 4) return undefined;
  const matrix = numbersOf(appearance.dict.lookup(PDFName.of("Matrix"))) ?? [1, 0, 0, 1, 0, 0];
  return { stream: appearance, matrix: fitted(rect, box, matrix) };
}

function numbersOf(object: unknown): readonly number[] | undefined {
  if (!(object instanceof PDFArray)) return undefined;
  const numbers = object.asArray().flatMap((item) => (item instanceof PDFNumber ? [item.asNumber()] : []));
  return numbers.length === object.size() ? numbers : undefined;
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

import type { PDFContext, PDFRef } from "pdf-lib";
import type { Box, Copied, CopiedPage, Source } from "../../foreign/copied.ts";
import { refText, source, sourceStream } from "./objects.ts";

/** A page or picture of an original, ready to be drawn: an object of the book, its size, and how its corner is reached. */
export interface Copy {
  readonly ref: PDFRef;
  /** Shown size in points, after any turn. */
  readonly width: number;
  readonly height: number;
  /** Matrix that draws it at a scale with its lower left corner at a point. */
  matrix(scale: number, x: number, y: number): readonly number[];
  /** Areas that lead to another page of the same original, in the same points as `matrix` takes them. */
  readonly links: CopiedPage["links"];
  /** A point of the page as it is written, at that scale and place. */
  place(scale: number, x: number, y: number, at: readonly [number, number]): readonly [number, number];
}

/** Gives the objects of a copied original to the book. */
export function takeIn(context: PDFContext, { objects, pages }: Copied): readonly Copy[] {
  const refs = objects.map(() => context.nextRef());
  const textOf = (pieces: Source) =>
    pieces.map((piece) => (typeof piece === "string" ? piece : refText(refs[piece] as PDFRef))).join("");
  objects.forEach((object, index) => {
    const text = textOf(object.source);
    const ref = refs[index];
    if (ref !== undefined)
      context.assign(ref, object.bytes === undefined ? source(text) : sourceStream(text, object.bytes));
  });
  return pages.flatMap((page) => {
    const ref = refs[page.object];
    return ref === undefined ? [] : [copyOf(ref, page)];
  });
}

function copyOf(ref: PDFRef, { box, turn, sort, links }: CopiedPage): Copy {
  const [w, h] = [box.x1 - box.x0, box.y1 - box.y0];
  const [width, height] = turn % 180 === 0 ? [w, h] : [h, w];
  const written = (scale: number, x: number, y: number) => turnedMatrix(turn, box, scale, x, y);
  return {
    ref,
    width,
    height,
    links,
    matrix(scale, x, y) {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = written(scale, x, y);
      // An image fills a square of one point.
      return sort === "form" ? [a, b, c, d, e, f] : [a * w, b * w, c * h, d * h, e, f];
    },
    place(scale, x, y, [px, py]) {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = written(scale, x, y);
      return [a * px + c * py + e, b * px + d * py + f];
    },
  };
}

function turnedMatrix(turn: number, { x0, y0, x1, y1 }: Box, s: number, x: number, y: number): readonly number[] {
  switch (turn) {
    case 90:
      return [0, -s, s, 0, x - s * y0, y + s * x1];
    case 180:
      return [-s, 0, 0, -s, x + s * x1, y + s * y1];
    case 270:
      return [0, s, -s, 0, x + s * y1, y - s * x0];
    default:
      return [s, 0, 0, s, x - s * x0, y - s * y0];
  }
}

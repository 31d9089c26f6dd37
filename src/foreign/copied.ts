/** PDF source in pieces; a number stands for a reference to the copied object of that index. */
export type Source = readonly (string | number)[];

/** An object made anew from a foreign file: its source and, of a stream, its bytes. */
export interface CopiedObject {
  readonly source: Source;
  readonly bytes?: Uint8Array;
}

/** A link from a page of an original to another of its pages, in points of the page as it is written. */
export interface CopiedLink {
  readonly rect: readonly [number, number, number, number];
  /** Counted from 1. */
  readonly page: number;
}

export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A page or picture as a form or image that can be drawn. */
export interface CopiedPage {
  /** Index of its object. */
  readonly object: number;
  /** Part that is shown; an image fills it from corner to corner. */
  readonly box: Box;
  /** Clockwise turn in degrees: 0, 90, 180 or 270. */
  readonly turn: number;
  readonly sort: "form" | "image";
  readonly links: readonly CopiedLink[];
}

/** What an original gives to the book: pages and the objects they need, and nothing else. */
export interface Copied {
  readonly objects: readonly CopiedObject[];
  readonly pages: readonly CopiedPage[];
  /** Whether the file bears a digital signature, of a form that can. */
  readonly signed?: boolean;
  /** Sorts of things that were left out. */
  readonly leftOut: readonly string[];
}

/** A word of a page with its place, in points: `x` to the right from the left edge, `y` downwards, both along the reading direction. */
export type PlacedWord = readonly [text: string, x: number, y: number, width: number, height: number];

/** The text a page of an original holds for machines. */
export interface PageText {
  readonly words: readonly PlacedWord[];
  /** No sign of it is painted: text that a machine recognised and laid under or over a scan. */
  readonly unseen: boolean;
}

/**
 * The text of an original, page by page; or why none was read: it is no PDF, it is refused, or it holds more than is read
 * of any file.
 */
export type OriginalText = { readonly pages: readonly PageText[] } | { readonly none: string };

/** Texts of originals by their path in the book. */
export type TextsByPath = ReadonlyMap<string, OriginalText>;

/** Hears now and then how many of the originals are done. */
export type Told = (done: number, of: number) => void;

/** Gives the texts of originals by their path, read when they are first asked for. */
export interface OriginalTexts {
  (): TextsByPath;
  /** Begins to read them while something else is done; `told` hears of it while they are waited for. */
  begin(told?: Told): void;
}

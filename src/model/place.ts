/** Where something stands: a file of the book, and a JSON pointer into it ("" is the whole file). */
export interface Place {
  readonly file: string;
  readonly pointer: string;
  /** Where in a broken file, when no pointer can be given. */
  readonly position?: Position;
}

/** One-based line and column (in UTF-16 units, as editors count), and the length of the text meant, on its first line. */
export interface Position {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

/** Finds line and column of a place; costs one scan of the file, done when the first place in it is asked for. */
export interface Locator {
  position(place: Place): Position;
  /** The text of a one-based line without its line end, or undefined when the file cannot be shown as text. */
  line(file: string, line: number): string | undefined;
  /** Where a place is written, if not there: a record of a shelf is cited as it stands in an issue, and mended on the shelf. */
  written?(place: Place): Place;
}

import type { Locator, Place, Position } from "../model/place.ts";
import { linesOf, placesOf, type Lines, type Places } from "./places.ts";

interface Sight {
  readonly lines: Lines;
  readonly places: Places | undefined;
}

const start: Position = { line: 1, column: 1, length: 0 };

/**
 * Places of a book's files. `textOf` gives the text of a file and whether it is sound JSON; it is asked once for each
 * file in which a place is wanted.
 */
export function locatorOf(
  textOf: (file: string) => { readonly text: string; readonly sound: boolean } | undefined,
): Locator {
  const known = new Map<string, Sight | null>();
  const sight = (file: string): Sight | null => {
    let found = known.get(file);
    if (found === undefined) {
      const read = textOf(file);
      found =
        read === undefined ? null : { lines: linesOf(read.text), places: read.sound ? placesOf(read.text) : undefined };
      known.set(file, found);
    }
    return found;
  };
  return {
    position({ file, pointer, position }: Place) {
      if (position !== undefined) return position;
      const found = sight(file);
      if (found?.places === undefined) return start;
      return found.lines.position(found.places.value(pointer));
    },
    line: (file, line) => sight(file)?.lines.line(line),
  };
}

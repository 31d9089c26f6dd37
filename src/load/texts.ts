import { join } from "node:path";
import { startTexts } from "../foreign/texts.ts";
import type { LoadedBook } from "../model/book.ts";
import type { OriginalTexts, TextsByPath, Told } from "../model/page-text.ts";

/** The texts of the PDF originals of a book that can be shown, read when they are first asked for or begun. */
export function textsOfBook({ dir, files }: Pick<LoadedBook, "dir" | "files">): OriginalTexts {
  let texts: TextsByPath | undefined;
  let begun: (() => TextsByPath) | undefined;
  const start = (told?: Told) => {
    const wait = startTexts(
      files.flatMap(({ path, lies = path, sha256, nature }) =>
        nature?.mediaType === "application/pdf" && nature.shown ? [{ path, file: join(dir, lies), sha256 }] : [],
      ),
    );
    return () => wait(told);
  };
  const all = () => {
    if (texts !== undefined) return texts;
    const wait = begun ?? start();
    // Where the work was ended it is begun anew by whoever asks again.
    begun = undefined;
    return (texts = wait());
  };
  const begin = (told?: Told) => {
    if (texts === undefined) begun ??= start(told);
  };
  return Object.assign(all, { begin });
}

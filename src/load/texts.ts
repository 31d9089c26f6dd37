import { join } from "node:path";
import { textsOf } from "../foreign/texts.ts";
import type { LoadedBook } from "../model/book.ts";
import type { TextsByPath } from "../model/page-text.ts";

/** The texts of the PDF originals of a book that can be shown, read when they are first asked for. */
export function textsOfBook({ dir, files }: Pick<LoadedBook, "dir" | "files">): NonNullable<LoadedBook["texts"]> {
  let texts: TextsByPath | undefined;
  return (told) =>
    (texts ??= textsOf(
      files.flatMap(({ path, lies = path, sha256, nature }) =>
        nature?.mediaType === "application/pdf" && nature.shown ? [{ path, file: join(dir, lies), sha256 }] : [],
      ),
      told,
    ));
}

import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

interface BookFile {
  readonly shelves?: readonly { readonly name: string; readonly folder: string }[];
}

/** Shelves a book names, each with its folder. */
const shelvesOf = (book: string) =>
  ((JSON.parse(readFileSync(join(book, "book.json"), "utf8")) as BookFile).shelves ?? []).map(({ name, folder }) => ({
    copy: `shelves/${name}`,
    folder: join(book, folder),
  }));

/** Copies a book with its shelves, so that the copy stands alone and each of its files can be changed. */
export function copyBook(book: string, to: string): void {
  cpSync(book, to, { recursive: true });
  for (const { copy, folder } of shelvesOf(book)) cpSync(folder, join(to, copy), { recursive: true });
}

/** Copies a book with what stands on its shelves as records of its own: it names no shelf any more. */
export function copyWhole(book: string, to: string): void {
  const read = (path: string) => JSON.parse(readFileSync(path, "utf8")) as { readonly records: readonly object[] };
  const folders = [book, ...shelvesOf(book).map(({ folder }) => folder)];
  for (const folder of folders) cpSync(folder, to, { recursive: true });
  const { shelves: _shelves, ...own } = JSON.parse(readFileSync(join(book, "book.json"), "utf8")) as BookFile;
  writeFileSync(join(to, "book.json"), `${JSON.stringify(own, null, 2)}\n`);
  const records = folders.flatMap((folder) => read(join(folder, "originals.json")).records);
  writeFileSync(join(to, "originals.json"), `${JSON.stringify({ kind: "original", records }, null, 2)}\n`);
}

/** The file of a book or of one of its shelves that a file of the copy was copied from. */
export function copiedFrom(book: string, file: string): string {
  const shelf = shelvesOf(book).find(({ copy }) => file.startsWith(`${copy}/`));
  return shelf === undefined ? join(book, file) : join(shelf.folder, file.slice(shelf.copy.length + 1));
}

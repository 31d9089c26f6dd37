import type { BookRecord } from "./record.ts";

/** Folder of a book in which places on shelves are printed, and in which its own copies of them stand. */
export const shelvesFolder = "shelves";

/** A shelf that a book names, where it was read. */
export interface Shelf {
  readonly name: string;
  /** Folder it was read from. */
  readonly dir: string;
  /** That folder is the book's own copy. */
  readonly copy: boolean;
}

/** Name of the shelf a file of a book stands on; undefined for the book's own. */
export function shelfOf(file: string): string | undefined {
  const [folder, name, rest] = file.split("/", 3);
  return folder === shelvesFolder && rest !== undefined ? name : undefined;
}

/** Where in a book the file lies that a record names: what a record of a shelf names lies on that shelf. */
export function pathNamedBy({ file }: Pick<BookRecord, "file">, path: string): string {
  const shelf = shelfOf(file);
  return shelf === undefined ? path : `${shelvesFolder}/${shelf}/${path}`;
}

/** "in people.json", "on the shelf "shop"": where a record stands, in words. */
export function standing({ file }: Pick<BookRecord, "file">): string {
  const shelf = shelfOf(file);
  return shelf === undefined ? `in ${file}` : `on the shelf "${shelf}"`;
}

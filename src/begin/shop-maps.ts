import { readdir } from "node:fs/promises";
import { join } from "node:path";

/**
 * What a shop calls things is the same for its next job: the maps of a book's sheets, by their path in a book, with the files
 * they are copied from. Links are passed over: they may lead out of the book.
 */
export async function shopMaps(book: string): Promise<ReadonlyMap<string, string>> {
  const found = await readdir(join(book, "imports"), { withFileTypes: true }).catch((error: unknown) => {
    if (error instanceof Error && "code" in error && (error.code === "ENOENT" || error.code === "ENOTDIR")) return [];
    throw error;
  });
  const names = found.flatMap((entry) =>
    entry.isFile() && /^[A-Za-z0-9].*\.json$/.test(entry.name) ? [entry.name] : [],
  );
  return new Map(names.sort().map((name) => [`imports/${name}`, join(book, "imports", name)]));
}

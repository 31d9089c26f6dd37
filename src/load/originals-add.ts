import { link, mkdir, readdir, readFile, rm, unlink, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Moved, NewOriginal } from "./originals-review.ts";
import { placesOf } from "./places.ts";

/**
 * Writes the records of new originals into a file of their own, `originals/added-<n>.json`, and gives its path in the
 * book. No file that exists is touched.
 */
export async function addOriginals(bookDir: string, originals: readonly NewOriginal[]): Promise<string> {
  const records = originals.map(({ id, path, sha256, title, mediaType, pages }) => ({
    id,
    path,
    sha256,
    title,
    mediaType,
    pages,
  }));
  const text = `${JSON.stringify({ kind: "original", records }, null, 2)}\n`;
  await mkdir(join(bookDir, "originals"), { recursive: true });
  const taken = new Set((await readdir(join(bookDir, "originals"))).map((name) => name.toLowerCase()));
  let n = 1;
  while (taken.has(`added-${n}.json`)) n++;
  const path = `originals/added-${n}.json`;
  // "wx": another run may have taken the name meanwhile.
  await writeFile(join(bookDir, path), text, { flag: "wx" }).catch(async (error: unknown) => {
    const exists = error instanceof Error && "code" in error && error.code === "EEXIST";
    if (!exists) await rm(join(bookDir, path), { force: true });
    throw error;
  });
  return path;
}

/** Gives a file of the book another name; never onto a file that is there. */
export async function renameOriginal(bookDir: string, from: string, to: string): Promise<void> {
  await mkdir(dirname(join(bookDir, to)), { recursive: true });
  // Renaming would replace what stands there; a link does not.
  await link(join(bookDir, from), join(bookDir, to));
  await unlink(join(bookDir, from));
}

/** Makes the record of an original name the file where it lies now; nothing else of the record's file changes. */
export async function moveRecord(bookDir: string, { file, pointer, to }: Moved): Promise<void> {
  const path = join(bookDir, file);
  const text = await readFile(path, "utf8");
  const { start, end } = placesOf(text).value(`${pointer}/path`);
  await writeFile(path, `${text.slice(0, start)}${JSON.stringify(to)}${text.slice(end)}`);
}

import { randomBytes } from "node:crypto";
import { link, mkdir, readFile, realpath, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, sep } from "node:path";

/** A file of a book as it is to be, and as it was read; undefined where there was none. */
export interface FileChange {
  readonly path: string;
  readonly before: string | undefined;
  readonly after: string;
}

/** Why nothing was written. */
export class NotWritten extends Error {
  override readonly name = "NotWritten";
}

/**
 * Writes several files of a book, all or none: each aside first, then all are renamed; when one cannot be, those before it
 * get back what they held. Throws `NotWritten` where a file was changed since it was read, or a folder leads out of the book.
 */
export async function putFiles(dir: string, changes: readonly FileChange[]): Promise<void> {
  const root = await realpath(dir);
  const run = `${process.pid}-${randomBytes(4).toString("hex")}`;
  const aside: string[] = [];
  const done: FileChange[] = [];
  const asideOf = (path: string) => join(dir, dirname(path), `.${basename(path)}-${run}`);
  try {
    for (const { path, after } of changes) {
      const folder = join(dir, dirname(path));
      await mkdir(folder, { recursive: true });
      const lands = await realpath(folder);
      if (lands !== root && !lands.startsWith(root + sep))
        throw new NotWritten(`"${dirname(path)}" leads out of the book; put a folder in its place`);
      aside.push(asideOf(path));
      await writeFile(asideOf(path), after, { flag: "wx" });
    }
    for (const { path, before } of changes)
      if ((await textAt(join(dir, path))) !== before)
        throw new NotWritten(`"${path}" was changed meanwhile; nothing was written, run it again`);
    for (const change of changes) {
      await rename(asideOf(change.path), join(dir, change.path));
      done.push(change);
    }
  } catch (error) {
    for (const { path, before } of done.reverse())
      if (before === undefined) await rm(join(dir, path), { force: true });
      else await writeFile(join(dir, path), before);
    throw error;
  } finally {
    for (const path of aside) await rm(path, { force: true });
  }
}

/** The text of a file, or undefined where there is none. */
export async function textAt(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return undefined;
    throw error;
  }
}

/** Writes a file that is not there yet, whole or not at all; `NotWritten` where one is. */
export async function putNew(path: string, content: Uint8Array): Promise<void> {
  const aside = join(dirname(path), `.${basename(path)}-${process.pid}-${randomBytes(4).toString("hex")}`);
  try {
    await writeFile(aside, content, { flag: "wx" });
    // Renaming would replace what stands there; a link does not.
    await link(aside, path);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST")
      throw new NotWritten(`"${basename(path)}" is there already; move it away, or name another file`);
    throw error;
  } finally {
    await rm(aside, { force: true });
  }
}

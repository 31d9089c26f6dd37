import { randomBytes } from "node:crypto";
import { link, mkdir, readFile, realpath, rename, rm, rmdir, writeFile } from "node:fs/promises";
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
  const folders: string[] = [];
  const done: FileChange[] = [];
  let busyWith = "";
  const asideOf = (path: string) => join(dir, dirname(path), `.${basename(path)}-${run}`);
  try {
    for (const { path, after } of changes) {
      busyWith = path;
      folders.push(...(await foldersFor(join(dir, dirname(path)), root, dirname(path))));
      aside.push(asideOf(path));
      await writeFile(asideOf(path), after, { flag: "wx" });
    }
    for (const { path, before } of changes)
      if ((await textAt(join(dir, path))) !== before)
        throw new NotWritten(`"${path}" was changed meanwhile; nothing was written, run it again`);
    for (const change of changes) {
      busyWith = change.path;
      await rename(asideOf(change.path), join(dir, change.path));
      done.push(change);
    }
  } catch (error) {
    for (const { path, before } of done.reverse())
      if (before === undefined) await rm(join(dir, path), { force: true });
      else await writeFile(join(dir, path), before);
    for (const path of aside) await rm(path, { force: true });
    // One that holds something meanwhile stays.
    for (const folder of folders.reverse()) await rmdir(folder).catch(() => undefined);
    throw heldElsewhere(error, busyWith) ?? error;
  }
}

/** Makes the folders that are missing, and gives them, outer ones first. Throws `NotWritten` where the way leads out of the book. */
async function foldersFor(folder: string, root: string, shown: string): Promise<readonly string[]> {
  const missing: string[] = [];
  for (let at = folder; ; at = dirname(at)) {
    const lands = await realpath(at).catch((error: unknown) => {
      if (hasCode(error, "ENOENT")) return undefined;
      throw error;
    });
    if (lands === undefined) {
      missing.unshift(at);
      continue;
    }
    if (lands !== root && !lands.startsWith(root + sep))
      throw new NotWritten(`"${shown}" leads out of the book; put a folder in its place`);
    break;
  }
  for (const one of missing) await mkdir(one);
  return missing;
}

const hasCode = (error: unknown, ...codes: readonly string[]): boolean =>
  error instanceof Error && "code" in error && typeof error.code === "string" && codes.includes(error.code);

/** A file that another program holds, or that is not ours to write, in words; undefined where something else is wrong. */
function heldElsewhere(error: unknown, path = ""): NotWritten | undefined {
  return hasCode(error, "EBUSY", "EPERM", "EACCES")
    ? new NotWritten(
        `"${path}" cannot be written: another program holds it, or it is not yours to write; nothing was written, close it there and run it again`,
      )
    : undefined;
}

/** The text of a file, or undefined where there is none. */
export async function textAt(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    if (hasCode(error, "ENOENT")) return undefined;
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
    if (hasCode(error, "EEXIST"))
      throw new NotWritten(`"${basename(path)}" is there already; move it away, or name another file`);
    throw error;
  } finally {
    await rm(aside, { force: true });
  }
}

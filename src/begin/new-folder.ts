import { randomBytes } from "node:crypto";
import { copyFile, constants, lstat, mkdir, readdir, rename, rm, rmdir, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** Why a folder cannot be begun, in words for whoever named it. */
export class FolderRefused extends Error {
  override readonly name = "FolderRefused";
}

/** What a new folder is made of: texts, and files copied from elsewhere, by path in the folder. */
export interface Contents {
  readonly texts: ReadonlyMap<string, string>;
  readonly copies?: ReadonlyMap<string, string>;
}

/** Refuses a place that holds anything, or lies in a book or an issue: their files would be mixed with those of the new book. */
export async function refuseTaken(dir: string): Promise<void> {
  const found = await standing(dir);
  if (found === "other") throw new FolderRefused(`"${dir}" is no folder; name a new one`);
  if (found === "folder") {
    const names = await readdir(dir);
    if (names.length > 0)
      throw new FolderRefused(
        `the folder "${dir}" is not empty: it holds ${names.sort().slice(0, 3).join(", ")}${names.length > 3 ? ` and ${names.length - 3} more` : ""}; name a new or an empty folder`,
      );
  }
  for (let at = dirname(dir); ; at = dirname(at)) {
    for (const [name, what] of [
      ["book.json", "a book"],
      ["published.json", "an issue"],
    ] as const)
      if ((await standing(join(at, name))) === "other")
        throw new FolderRefused(`"${dir}" lies in "${at}", which is ${what}; name a folder outside it`);
    if (dirname(at) === at) return;
  }
}

/** Writes a new folder complete or not at all: aside first, then one rename onto a place that is free or empty. */
export async function writeNewFolder(dir: string, { texts, copies = new Map() }: Contents): Promise<void> {
  await refuseTaken(dir);
  await mkdir(dirname(dir), { recursive: true });
  const aside = join(dirname(dir), `.databook-new-${basename(dir)}-${process.pid}-${randomBytes(4).toString("hex")}`);
  try {
    await mkdir(aside);
    for (const [path, text] of texts) {
      await mkdir(dirname(join(aside, path)), { recursive: true });
      await writeFile(join(aside, path), text, { flag: "wx" });
    }
    for (const [path, from] of copies) {
      await mkdir(dirname(join(aside, path)), { recursive: true });
      await copyFile(from, join(aside, path), constants.COPYFILE_EXCL);
    }
    // Some systems rename onto an empty folder, some do not.
    if ((await standing(dir)) === "folder") await rmdir(dir);
    await rename(aside, dir);
  } catch (error) {
    await rm(aside, { recursive: true, force: true });
    throw error;
  }
}

async function standing(path: string): Promise<"nothing" | "folder" | "other"> {
  try {
    return (await lstat(path)).isDirectory() ? "folder" : "other";
  } catch (error) {
    if (error instanceof Error && "code" in error && (error.code === "ENOENT" || error.code === "ENOTDIR"))
      return "nothing";
    throw error;
  }
}

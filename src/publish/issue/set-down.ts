import { copyFile, mkdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { folderBeside, type Role } from "./beside.ts";
import { newSeal, type Hashes, type IssueFiles } from "./hash-list.ts";
import type { Marker } from "./marker.ts";

/** A whole sealed issue that stands beside its place, where nobody looks for one. */
export interface SetDown {
  readonly dir: string;
  readonly marker: Marker;
  readonly hashes: Hashes;
}

/**
 * Writes each file of an issue as it comes, hashes it and lets it go: no more than one of them is in memory. Whatever fails,
 * the making of a file among it, nothing is left. The folder in which `place` lies must be there.
 */
export async function setDown(files: IssueFiles, marker: Marker, place: string): Promise<SetDown> {
  const seal = newSeal(marker);
  return filled("writing", place, async (write, dir) => {
    for await (const file of files) {
      seal.add(file);
      const [path, content] = file;
      await write(path, (to) => writeFile(to, content, { flag: "wx" }));
    }
    const { files: last, hashes } = seal.close();
    for (const [path, content] of last) await write(path, (to) => writeFile(to, content, { flag: "wx" }));
    return { dir, marker, hashes };
  });
}

/** Makes a second copy of an issue that was set down, in a folder of this role; gives back the folder. */
export async function copied({ dir: from, hashes }: SetDown, role: Role, place: string): Promise<string> {
  return filled(role, place, async (write, dir) => {
    for (const path of hashes.keys()) await write(path, (to) => copyFile(join(from, path), to));
    return dir;
  });
}

type Write = (path: string, make: (to: string) => Promise<void>) => Promise<void>;

/** Fills a new folder beside a place, making the folders that its files need; it goes again where that fails. */
async function filled<Result>(
  role: Role,
  place: string,
  fill: (write: Write, dir: string) => Promise<Result>,
): Promise<Result> {
  const dir = await folderBeside(role, place);
  const made = new Set<string>();
  try {
    return await fill(async (path, make) => {
      const to = join(dir, path);
      if (!made.has(dirname(to))) await mkdir(dirname(to), { recursive: true });
      made.add(dirname(to));
      await make(to);
    }, dir);
  } catch (error) {
    await rm(dir, { recursive: true, force: true });
    throw error;
  }
}

import { mkdir } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { landingPath, standingAt } from "./folder.ts";
import { IssueError } from "./issue-error.ts";

/**
 * Makes the folder of a book's issues, and refuses one that a link leads elsewhere, or a file in its place. Gives back the
 * topmost folder that was not there.
 */
export async function openSeries(dir: string, root: string): Promise<string | undefined> {
  const series = dirname(dir);
  await refuseOccupiedRoot(resolve(root));
  await refuseOccupiedRoot(series);
  const made = await mkdir(series, { recursive: true });
  const expected = join(await landingPath(resolve(root)), basename(series));
  if ((await landingPath(series)) !== expected)
    throw new IssueError("target", `"${series}" is a link to another place; put a folder there`);
  return made;
}

/** Refuses a place for folders in which, or on the way to which, a file stands. */
export async function refuseOccupiedRoot(dir: string): Promise<void> {
  for (let path = dir; ; path = dirname(path)) {
    // The dot at the end follows a link to a folder.
    const standing = await standingAt(`${path}/.`).catch(() => "other" as const);
    if (standing === "folder") return;
    if (standing === "other" || (await standingAt(path).catch(() => "nothing")) !== "nothing")
      throw new IssueError("target", `"${path}" is no folder; move it away, or name another place with --out`);
    if (dirname(path) === path) return;
  }
}

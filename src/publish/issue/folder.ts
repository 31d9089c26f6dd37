import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { lstat, readdir, realpath } from "node:fs/promises";
import { basename, dirname, join, relative, isAbsolute, sep } from "node:path";
import { byCodePoint } from "../../model/order.ts";

/** Everything below a folder, paths with `/`, by code point. Links are listed apart and never followed. */
export interface Listing {
  readonly files: readonly string[];
  /** Links, devices and the like: nothing an issue is made of. */
  readonly others: readonly string[];
  /** Folders without anything in them. */
  readonly empty: readonly string[];
}

export async function listFolder(dir: string): Promise<Listing> {
  const files: string[] = [];
  const others: string[] = [];
  const empty: string[] = [];
  const visit = async (below: string): Promise<void> => {
    const entries = await readdir(join(dir, below), { withFileTypes: true });
    if (entries.length === 0 && below !== "") empty.push(below);
    for (const entry of entries) {
      const path = below === "" ? entry.name : `${below}/${entry.name}`;
      if (entry.isDirectory()) await visit(path);
      else if (entry.isFile()) files.push(path);
      else others.push(path);
    }
  };
  await visit("");
  return { files: files.sort(byCodePoint), others: others.sort(byCodePoint), empty: empty.sort(byCodePoint) };
}

/** SHA-256 of a file of any size, in lower-case hex. */
export async function hashFile(path: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(path)) hash.update(chunk as Uint8Array);
  return hash.digest("hex");
}

export type Standing = "nothing" | "folder" | "link" | "other";

/** What stands at a path, without following a link there. */
export async function standingAt(path: string): Promise<Standing> {
  try {
    const found = await lstat(path);
    if (found.isSymbolicLink()) return "link";
    return found.isDirectory() ? "folder" : "other";
  } catch (error) {
    if (hasCode(error, "ENOENT")) return "nothing";
    throw error;
  }
}

/** The path with every link in the part that exists followed: where writing there would really land. */
export async function landingPath(path: string): Promise<string> {
  try {
    return await realpath(path);
  } catch (error) {
    const parent = dirname(path);
    if (!hasCode(error, "ENOENT") || parent === path) throw error;
    return join(await landingPath(parent), basename(path));
  }
}

/** Whether `inner` is `outer` itself or lies below it; both as `landingPath` gives them. */
export function liesIn(inner: string, outer: string): boolean {
  const way = relative(outer, inner);
  return way === "" || (way !== ".." && !way.startsWith(`..${sep}`) && !isAbsolute(way));
}

/** Whether an error of the file system bears one of these codes. */
export function hasCode(error: unknown, ...codes: readonly string[]): boolean {
  return error instanceof Error && "code" in error && typeof error.code === "string" && codes.includes(error.code);
}

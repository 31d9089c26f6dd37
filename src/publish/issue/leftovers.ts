import { randomBytes } from "node:crypto";
import { mkdtemp, readdir, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { standingAt } from "./folder.ts";

/**
 * Folders that exist only while an issue is written, beside it: `.databook-writing-<name>-<process>-<random>` holds the
 * new one, `.databook-aside-…` an earlier one on its way out. Dot folders are never read as part of a book.
 */
type Role = "writing" | "aside";

export async function folderBeside(role: Role, target: string): Promise<string> {
  return mkdtemp(join(dirname(target), `.databook-${role}-${basename(target)}-${process.pid}-${run}`));
}

/** Tells this run from an earlier one that had the same process number, as is common in containers. */
const run = randomBytes(3).toString("hex");

const pattern = /^\.databook-(writing|aside)-(.+)-([0-9]+)-([0-9a-f]{6})[A-Za-z0-9]{6}$/;

/**
 * Tidies up after a run that was interrupted while writing `target`: an earlier issue that stands aside while its place
 * is empty goes back there, everything else it left is removed. What a running process holds is left alone.
 */
export async function clearLeftovers(target: string): Promise<void> {
  const parent = dirname(target);
  if ((await standingAt(parent)) === "nothing") return;
  for (const entry of (await readdir(parent)).sort()) {
    const [, role, name, holder, holderRun] = pattern.exec(entry) ?? [];
    if (role === undefined || name !== basename(target) || isHeld(Number(holder), holderRun)) continue;
    const path = join(parent, entry);
    if ((await standingAt(path)) !== "folder") continue;
    if (role === "aside" && (await standingAt(target)) === "nothing") await rename(path, target);
    else await rm(path, { recursive: true });
  }
}

function isHeld(id: number, holderRun: string | undefined): boolean {
  if (id === process.pid) return holderRun === run;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    // Not ours to signal, but running.
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

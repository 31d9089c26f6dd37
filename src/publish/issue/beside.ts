import { randomBytes } from "node:crypto";
import { mkdir } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/**
 * Folders that exist only while an issue is written, beside it: `.databook-writing-<name>-<process>-<random>` holds the new
 * one, `.databook-aside-…` an earlier one on its way out, `.databook-current-…` a whole copy that `current.html` leads to
 * while the folder of the issue is exchanged. Dot folders are never read as part of a book.
 */
export type Role = "writing" | "aside" | "current";

/** Tells this run from an earlier one that had the same process number, as is common in containers. */
const run = randomBytes(3).toString("hex");

/** Makes such a folder, with the mode the user's folders have. */
export async function folderBeside(role: Role, target: string): Promise<string> {
  const name = `.databook-${role}-${basename(target)}-${process.pid}-${run}${randomBytes(3).toString("hex")}`;
  const path = join(dirname(target), name);
  await mkdir(path);
  return path;
}

const pattern = /^\.databook-(writing|aside|current)-(.+)-([0-9]+)-([0-9a-f]{6})[A-Za-z0-9]{6}$/;

/** What a run that has ended left: its role, and the name of what it wrote; undefined for all other names. */
export function leftover(entry: string): { readonly role: Role; readonly name: string } | undefined {
  const [, role, name, holder, holderRun] = pattern.exec(entry) ?? [];
  if (name === undefined || isHeld(Number(holder), holderRun)) return undefined;
  return { role: role as Role, name };
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

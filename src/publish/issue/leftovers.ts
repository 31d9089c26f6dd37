import { readdir, rename, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { leftover } from "./beside.ts";
import { currentName, leadCurrent } from "./current-page.ts";
import { standingAt } from "./folder.ts";

/**
 * Tidies up beside `target` after runs that were interrupted, whatever they were writing: an earlier issue that stands
 * aside while its place is empty goes back there, `current.html` leads to the folder of an issue again, everything else they
 * left is removed. What a running process holds is left alone.
 */
export async function clearLeftovers(target: string): Promise<void> {
  const parent = dirname(target);
  if ((await standingAt(parent)) !== "folder") return;
  // By name: an issue that stands aside comes back before the copy that stood in for it goes.
  for (const entry of (await readdir(parent)).sort()) {
    const left = leftover(entry);
    if (left === undefined) continue;
    const path = join(parent, entry);
    const place = join(parent, left.name);
    if ((await standingAt(path)) !== "folder") continue;
    if (left.role !== "writing" && (await standingAt(place)) === "nothing") await rename(path, place);
    if (left.role === "current" && (await standingAt(place)) === "folder")
      await leadCurrent(join(parent, currentName), entry, left.name);
    await rm(path, { recursive: true, force: true });
  }
}

import { byCodePoint } from "../model/order.ts";
import { digestOf } from "../model/stable.ts";
import { maxPath, nameFault } from "./portable.ts";

/**
 * Under which path each file of a book lies in its issue: its own, or, where no system could be trusted with that, one made
 * of its portable signs and a digest of the path. It rests on the names alone, so that another machine gives the same.
 */
export function publishedPaths(paths: readonly string[]): ReadonlyMap<string, string> {
  const taken = new Set<string>();
  const folders = new Set<string>();
  const free = (path: string) => {
    const folded = path.toLowerCase();
    return !taken.has(folded) && !folders.has(folded) && !foldersOf(folded).some((folder) => taken.has(folder));
  };
  return new Map(
    [...paths].sort(byCodePoint).map((path) => {
      let own = path;
      if (path.length > maxPath || path.split("/").some((step) => nameFault(step) !== undefined) || !free(path))
        own = portable(path, digestOf(path));
      // Only a file named like the digest of another could still stand in the way.
      for (let n = 2; !free(own); n++) own = portable(path, digestOf(`${path}\n${n}`));
      taken.add(own.toLowerCase());
      for (const folder of foldersOf(own.toLowerCase())) folders.add(folder);
      return [path, own];
    }),
  );
}

function foldersOf(path: string): string[] {
  const steps = path.split("/").slice(0, -1);
  return steps.map((_, at) => steps.slice(0, at + 1).join("/"));
}

/** One flat name below the first folder: `files/Scan (1).pdf` is `files/Scan-1-9c1d0a2b.pdf`. */
function portable(path: string, digest: string): string {
  const top = path.startsWith("files/") ? "files/" : "";
  const name = path.slice(path.lastIndexOf("/") + 1);
  const dot = name.lastIndexOf(".");
  const ending = /^\.[A-Za-z0-9]{1,5}$/.exec(dot < 0 ? "" : name.slice(dot))?.[0] ?? "";
  const stem = name
    .slice(0, name.length - ending.length)
    .replaceAll(/[^A-Za-z0-9_-]+/g, "-")
    .replaceAll(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${top}${stem === "" ? "file" : stem}-${digest.slice(0, 8)}${ending}`;
}

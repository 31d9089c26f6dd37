import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { parseHashList } from "./hash-list.ts";
import { hasCode, landingPath, liesIn, listFolder, standingAt } from "./folder.ts";
import { IssueError } from "./issue-error.ts";
import { hashListName, markerName, readMarker, type Marker } from "./marker.ts";

/** Names some systems leave in every folder a person opens. */
const droppings: ReadonlySet<string> = new Set([".DS_Store", "Thumbs.db", "desktop.ini"]);

/** Refuses a folder that is, holds or lies in the book's own records; links on the way are followed first. */
export async function refuseBook(target: string, bookDir: string, what = "the book"): Promise<void> {
  const landing = await landingPath(target);
  const book = await landingPath(bookDir);
  const relation =
    landing === book
      ? `is ${what} itself`
      : liesIn(landing, book)
        ? `lies inside ${what}`
        : liesIn(book, landing) && `holds ${what}`;
  if (relation !== false)
    throw new IssueError(
      "target",
      `the folder "${target}" ${relation}; name one apart from the records in "${bookDir}"`,
    );
}

/** What stands where an issue is to go: nothing (or an empty folder), or an earlier one of the same sort. */
export async function earlierAt(target: string, holds: Marker["holds"]): Promise<"nothing" | "earlier"> {
  const standing = await standingAt(target);
  if (standing === "nothing") return "nothing";
  if (standing !== "folder")
    throw new IssueError(
      "target",
      `"${target}" is ${standing === "link" ? "a link" : "no folder"}; name a new folder or an earlier issue`,
    );
  const { files, others } = await listFolder(target);
  if (files.length === 0 && others.length === 0) return "nothing";
  const marker = await markerIn(target);
  if (typeof marker === "string")
    throw new IssueError(
      "target",
      `the folder "${target}" is not an earlier issue (${marker}); name a new or an empty folder`,
    );
  if (marker.holds !== holds)
    throw new IssueError(
      "target",
      `the folder "${target}" holds ${marker.holds === "issue" ? "an issue" : "a findings report"}; name another`,
    );
  const foreign = await foreignIn(target, [...files, ...others]);
  if (foreign.length > 0)
    throw new IssueError(
      "target",
      `the folder "${target}" holds ${nameSome(foreign)}, which the earlier issue there does not list; move that away first`,
    );
  return "earlier";
}

/** The marker in a folder, or why there is none. */
export async function markerIn(dir: string): Promise<Marker | string> {
  if ((await standingAt(join(dir, markerName))) !== "other") return `it holds no ${markerName}`;
  return readMarker(await readFile(join(dir, markerName), "utf8"));
}

async function foreignIn(dir: string, paths: readonly string[]): Promise<readonly string[]> {
  const own = new Set([hashListName]);
  try {
    for (const { path } of parseHashList(await readFile(join(dir, hashListName), "utf8")).files) own.add(path);
  } catch (error) {
    if (!hasCode(error, "ENOENT")) throw error;
  }
  return paths.filter((path) => !own.has(path) && !droppings.has(path.slice(path.lastIndexOf("/") + 1)));
}

/** "a, b, c and 4 more". */
export function nameSome(names: readonly string[], most = 3): string {
  const shown = names.slice(0, most).join(", ");
  return names.length <= most ? shown : `${shown} and ${names.length - most} more`;
}

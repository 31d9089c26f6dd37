import { join } from "node:path";
import { currentName, currentPage, readText } from "./current-page.ts";
import { standingAt } from "./folder.ts";
import { IssueError } from "./issue-error.ts";
import type { Marker } from "./marker.ts";
import { putFile } from "./put-file.ts";

/** Makes `current.html` of a book's series lead to this issue; replaced by one rename, so it always leads somewhere. */
export async function switchCurrent(series: string, issue: string, marker: Marker): Promise<void> {
  const path = join(series, currentName);
  await refuseOccupied(path);
  const page = currentPage(issue, marker);
  if ((await readText(path)) !== page) await putFile(path, page);
}

/** Refuses a series in which something else stands where `current.html` belongs. */
export async function refuseOccupied(path: string): Promise<void> {
  const standing = await standingAt(path);
  if (standing === "folder" || standing === "link")
    throw new IssueError(
      "target",
      `"${path}" is a ${standing}, where the page to the current issue belongs; move it away`,
    );
}

/** Whether `current.html` of a series leads to this issue. */
export async function isCurrent(series: string, issue: string): Promise<boolean> {
  return (await readText(join(series, currentName)))?.includes(`"${issue}/index.html"`) === true;
}

import { readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { hasCode, standingAt } from "./folder.ts";
import { IssueError } from "./issue-error.ts";
import { clearLeftovers, folderBeside } from "./leftovers.ts";
import type { Marker } from "./marker.ts";

/** Makes `current.html` of a book's shelf lead to this issue; replaced by one rename, so it always leads somewhere. */
export async function switchCurrent(shelf: string, issue: string, marker: Marker): Promise<void> {
  const path = join(shelf, "current.html");
  const page = currentPage(issue, marker);
  const standing = await standingAt(path);
  if (standing === "folder") throw new IssueError("target", `"${path}" is a folder; move it away`);
  if (standing === "other" && (await readText(path)) === page) return;
  await putFile(path, page);
}

async function putFile(path: string, text: string): Promise<void> {
  await clearLeftovers(path);
  const aside = await folderBeside("writing", path);
  await writeFile(join(aside, "file"), text);
  await rename(join(aside, "file"), path);
  await rm(aside, { recursive: true });
}

async function readText(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    if (hasCode(error, "ENOENT")) return undefined;
    throw error;
  }
}

/** Names of folders hold only letters, digits and ". _ -"; number and revision are record text. */
function currentPage(issue: string, { number, revision, state }: Marker): string {
  const name = escaped(`${number}, revision ${revision}, ${state}`);
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="refresh" content="0; url=${issue}/index.html">
<title>${name}</title>
</head>
<body>
<p>Current issue: <a href="${issue}/index.html">${name}</a></p>
</body>
</html>
`;
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

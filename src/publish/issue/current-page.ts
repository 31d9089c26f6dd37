import { readFile } from "node:fs/promises";
import { hasCode } from "./folder.ts";
import type { Marker } from "./marker.ts";
import { spellControls } from "../../model/spelled.ts";
import { putFile } from "./put-file.ts";

/** The page of a book's series that leads to its current issue. */
export const currentName = "current.html";

/** Makes a page that leads to one folder lead to another; leaves one alone that leads elsewhere. */
export async function leadCurrent(path: string, from: string, to: string): Promise<void> {
  const text = await readText(path);
  if (text?.includes(`"${from}/index.html"`) === true) await putFile(path, text.replaceAll(`${from}/`, `${to}/`));
}

export async function readText(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    if (hasCode(error, "ENOENT")) return undefined;
    throw error;
  }
}

/** Names of folders hold only letters, digits and ". _ -"; number and revision are record text. */
export function currentPage(issue: string, { number, revision, state }: Marker): string {
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
  return spellControls(text)
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

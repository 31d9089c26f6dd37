import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { standingAt } from "./folder.ts";
import { IssueError } from "./issue-error.ts";
import type { Marker } from "./marker.ts";
import { markerIn } from "./target.ts";

/**
 * A final revision is issued once: refuses another final issue of the same revision of the same book whose evidence is
 * other than that of one standing in any of these folders. Both fingerprints are named.
 */
export async function refuseReissue(marker: Marker, folders: readonly string[]): Promise<void> {
  if (marker.holds !== "issue" || marker.state !== "final") return;
  for (const dir of folders) {
    const known = await finalIn(dir);
    if (known === undefined || known.number !== marker.number || known.revision !== marker.revision) continue;
    if (known.fingerprint === marker.fingerprint) continue;
    throw new IssueError(
      "issued",
      [
        `revision ${marker.revision} was issued as final already, with other evidence, and a final revision is issued once`,
        `  issued in "${dir}": evidence fingerprint ${known.fingerprint}`,
        `  the records now:    evidence fingerprint ${marker.fingerprint}`,
        "raise the revision in issue.json, and say in its history why; list the issued one there with its fingerprint",
      ].join("\n"),
    );
  }
}

/** The folders in a book's series. */
export async function foldersIn(series: string): Promise<readonly string[]> {
  if ((await standingAt(series).catch(() => "other")) !== "folder") return [];
  const entries = await readdir(series, { withFileTypes: true });
  return entries
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith("."))
    .map(({ name }) => join(series, name))
    .sort();
}

async function finalIn(dir: string): Promise<Marker | undefined> {
  if ((await standingAt(dir).catch(() => "other")) !== "folder") return undefined;
  const marker = await markerIn(dir);
  return typeof marker === "string" || marker.holds !== "issue" || marker.state !== "final" ? undefined : marker;
}

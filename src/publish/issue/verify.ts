import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { evidenceFingerprint, type Hashed } from "../../model/fingerprint.ts";
import { hashFile, listFolder, standingAt } from "./folder.ts";
import { parseHashList } from "./hash-list.ts";
import { IssueError } from "./issue-error.ts";
import { hashListName, markerName, type Marker } from "./marker.ts";
import { markerIn } from "./target.ts";

/** What comparing an issue with its own hash list and fingerprint gave. */
export interface Verification {
  readonly marker: Marker | null;
  /** How many files the hash list names. */
  readonly listed: number;
  readonly changed: readonly string[];
  readonly missing: readonly string[];
  readonly extra: readonly string[];
  /** What cannot be compared, in words. */
  readonly faults: readonly string[];
  /** Evidence fingerprint as the marker states it and as the files give it; null for a findings report. */
  readonly fingerprint: { readonly recorded: string | null; readonly recomputed: string } | null;
  /** Nothing moved: no change, nothing missing, nothing extra, one fingerprint. */
  readonly sound: boolean;
}

/**
 * Compares every file of an issue with its hash list, and recomputes the evidence fingerprint from `evidence/` and
 * `files/`. Needs nothing but the folder, wherever it lies now. Throws an `IssueError` where there is no issue.
 */
export async function verifyIssue(dir: string): Promise<Verification> {
  const standing = await standingAt(`${dir}/.`).catch(() => "nothing");
  if (standing !== "folder")
    throw new IssueError("not-issue", `there is no folder "${dir}"; name the folder of an issue`);
  const { files, others } = await listFolder(dir);
  if (!files.includes(markerName) && !files.includes(hashListName))
    throw new IssueError("not-issue", `"${dir}" is not an issue: it holds neither ${markerName} nor ${hashListName}`);

  const list = files.includes(hashListName)
    ? parseHashList(await readFile(join(dir, hashListName), "utf8"))
    : { files: [], faults: [`${hashListName} is missing: no file can be compared`] };
  const found = new Map<string, string>();
  for (const path of files) found.set(path, await hashFile(join(dir, path)));
  const listed = new Map(list.files.map(({ path, sha256 }) => [path, sha256]));
  const changed = [...listed].flatMap(([path, hash]) => (found.has(path) && found.get(path) !== hash ? [path] : []));
  const missing = [...listed.keys()].filter((path) => !found.has(path));
  const extra = files.filter((path) => path !== hashListName && !listed.has(path));

  const marker = await markerIn(dir);
  const faults = [
    ...list.faults,
    ...others.map((path) => `${path} is a link or no plain file: it is not read`),
    ...(typeof marker === "string" ? [marker] : []),
  ];
  const fingerprint = fingerprintOf(typeof marker === "string" ? null : marker, found);
  if (fingerprint !== null && fingerprint.recorded !== fingerprint.recomputed && fingerprint.recorded !== null)
    faults.push("the evidence gives another fingerprint than the issue states");
  return {
    marker: typeof marker === "string" ? null : marker,
    listed: listed.size,
    changed,
    missing,
    extra,
    faults,
    fingerprint,
    sound: changed.length + missing.length + extra.length + faults.length === 0,
  };
}

function fingerprintOf(marker: Marker | null, found: ReadonlyMap<string, string>): Verification["fingerprint"] {
  if (marker?.holds === "findings") return null;
  const evidence: Hashed[] = [];
  for (const [path, sha256] of found)
    if (path.startsWith("evidence/")) evidence.push({ path: path.slice("evidence/".length), sha256 });
    else if (path.startsWith("files/")) evidence.push({ path, sha256 });
  return { recorded: marker?.fingerprint ?? null, recomputed: evidenceFingerprint(evidence) };
}

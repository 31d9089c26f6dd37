import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { evidenceFingerprint, sha256, type Hashed } from "../../model/fingerprint.ts";
import { hashFile, listFolder, standingAt } from "./folder.ts";
import { parseHashList } from "./hash-list.ts";
import { IssueError } from "./issue-error.ts";
import { hashListName, markerName, withheldName, type Marker } from "./marker.ts";
import { printedAtFoot, printedWhole } from "./printed.ts";
import { markerIn } from "./target.ts";

/** What comparing an issue with its own hash list and fingerprint gave. */
export interface Verification {
  readonly marker: Marker | null;
  /** How many files the hash list names. */
  readonly listed: number;
  readonly changed: readonly string[];
  readonly missing: readonly string[];
  readonly extra: readonly string[];
  /** Folders in which nothing is: an issue has none. */
  readonly emptyFolders: readonly string[];
  /** What cannot be compared, or does not agree, in words. */
  readonly faults: readonly string[];
  /** Evidence fingerprint as the marker states it and as the files give it; null for a findings report. */
  readonly fingerprint: { readonly recorded: string | null; readonly recomputed: string } | null;
  /** SHA-256 of the hash list: the fingerprint of the issue; null where the list is missing. */
  readonly issueFingerprint: string | null;
  /** Nothing moved: no change, nothing missing, nothing extra, one fingerprint in marker, pages and evidence. */
  readonly sound: boolean;
}

/**
 * Compares every file of an issue with its hash list, recomputes the evidence fingerprint from `evidence/` and `files/`,
 * and compares that with what the marker and the pages state. Needs nothing but the folder, wherever it lies now. Throws an
 * `IssueError` where there is no issue. Whoever changes a page can change its line in the list too: only the issue's
 * fingerprint, written down elsewhere, tells that.
 */
export async function verifyIssue(dir: string): Promise<Verification> {
  const standing = await standingAt(`${dir}/.`).catch(() => "nothing");
  if (standing !== "folder")
    throw new IssueError("not-issue", `there is no folder "${dir}"; name the folder of an issue`);
  const { files, others, empty } = await listFolder(dir);
  if (!files.includes(markerName) && !files.includes(hashListName))
    throw new IssueError("not-issue", `"${dir}" is not an issue: it holds neither ${markerName} nor ${hashListName}`);

  const listText = files.includes(hashListName) ? await readFile(join(dir, hashListName)) : null;
  const list =
    listText === null
      ? { files: [], faults: [`${hashListName} is missing: no file can be compared`] }
      : parseHashList(listText.toString("utf8"));
  const found = new Map<string, string>();
  for (const path of files) found.set(path, await hashFile(join(dir, path)));
  const listed = new Map(list.files.map(({ path, sha256: hash }) => [path, hash]));
  const changed = [...listed].flatMap(([path, hash]) => (found.has(path) && found.get(path) !== hash ? [path] : []));
  const missing = [...listed.keys()].filter((path) => !found.has(path));
  const extra = files.filter((path) => path !== hashListName && !listed.has(path));

  // A folder that lost its files is said by their names.
  const added = empty.filter((folder) => ![...listed.keys()].some((path) => path.startsWith(`${folder}/`)));
  const pages = files.filter(
    (path) => path.endsWith(".html") && !/^(?:files|evidence)\//.test(path) && !changed.includes(path),
  );

  const marker = await markerIn(dir);
  const withheld = files.includes(withheldName)
    ? parseHashList(await readFile(join(dir, withheldName), "utf8"), withheldName)
    : { files: [], faults: [] };
  const fingerprint = fingerprintOf(typeof marker === "string" ? null : marker, found, withheld.files);
  const faults = [
    ...list.faults,
    ...withheld.faults,
    ...others.map((path) => `${path} is a link or no plain file: it is not read`),
    ...(typeof marker === "string" ? [marker] : []),
    ...(await fingerprintFaults(dir, pages, fingerprint)),
  ];
  return {
    marker: typeof marker === "string" ? null : marker,
    listed: listed.size,
    changed,
    missing,
    extra,
    emptyFolders: added,
    faults,
    fingerprint,
    issueFingerprint: listText === null ? null : sha256(listText),
    sound: changed.length + missing.length + extra.length + added.length + faults.length === 0,
  };
}

/** Files that are evidence but not published count by the hash that the issue lists for them. */
function fingerprintOf(
  marker: Marker | null,
  found: ReadonlyMap<string, string>,
  withheld: readonly Hashed[],
): Verification["fingerprint"] {
  if (marker?.holds === "findings") return null;
  const evidence: Hashed[] = [...withheld];
  for (const [path, hash] of found)
    if (path.startsWith("evidence/")) evidence.push({ path: path.slice("evidence/".length), sha256: hash });
    else if (path.startsWith("files/")) evidence.push({ path, sha256: hash });
  return { recorded: marker?.fingerprint ?? null, recomputed: evidenceFingerprint(evidence) };
}

/** Whether the marker and every page that is as it was listed state the fingerprint that the evidence gives. */
async function fingerprintFaults(
  dir: string,
  pages: readonly string[],
  fingerprint: Verification["fingerprint"],
): Promise<readonly string[]> {
  if (fingerprint === null) return [];
  const { recorded, recomputed } = fingerprint;
  const faults: string[] = [];
  if (recorded !== null && recorded !== recomputed)
    faults.push(`the evidence gives another fingerprint than ${markerName} states`);
  const others: string[] = [];
  for (const path of pages) {
    const page = await readFile(join(dir, path), "utf8");
    const [whole, foot] = [printedWhole(page), printedAtFoot(page)];
    const wrong = whole.some((hash) => hash !== recomputed) || (foot !== undefined && !recomputed.startsWith(foot));
    if (wrong) others.push(path);
    if (path === "index.html" && whole.length === 0)
      faults.push("index.html prints no evidence fingerprint to compare with");
  }
  const [first] = others;
  if (first !== undefined)
    faults.push(
      `the evidence gives another fingerprint than ${others.length === 1 ? "the page" : `${others.length} pages print, the first of them`} ${first}${others.length === 1 ? " prints" : ""}`,
    );
  return faults;
}

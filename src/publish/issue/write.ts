import { mkdir, rename, rm, rmdir } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import type { Shelf } from "../../model/shelf.ts";
import { folderBeside } from "./beside.ts";
import { currentName } from "./current-page.ts";
import { isCurrent, refuseOccupied, switchCurrent } from "./current.ts";
import { differences } from "./differences.ts";
import { hasCode, standingAt } from "./folder.ts";
import { issueFingerprint, type IssueFiles } from "./hash-list.ts";
import { IssueError } from "./issue-error.ts";
import { clearLeftovers } from "./leftovers.ts";
import type { Marker } from "./marker.ts";
import { folderName } from "./portable-path.ts";
import { foldersIn, refuseReissue } from "./reissue.ts";
import { openSeries, refuseOccupiedRoot } from "./roots.ts";
import { copied, setDown, type SetDown } from "./set-down.ts";
import { earlierAt, nameSome, refuseBook } from "./target.ts";
import { verifyIssue } from "./verify.ts";

/** Where an issue goes: into the series of its book's issues, or exactly into one folder. */
export type Target =
  { readonly type: "series"; readonly root: string } | { readonly type: "folder"; readonly dir: string };

export interface Written {
  /** Folder that holds it. */
  readonly dir: string;
  readonly outcome: "written" | "replaced" | "unchanged";
  /** SHA-256 of its hash list. */
  readonly fingerprint: string;
}

type Done = Omit<Written, "fingerprint">;

/**
 * Writes an issue, complete or not at all: aside, file by file as they are made, then one rename. In the series it is named
 * by revision, state and fingerprint: a final one is never overwritten (equal bytes are success, others an `IssueError`), an
 * interim one with other bytes is replaced, and `current.html` follows last. In a named folder it replaces an earlier issue,
 * and nothing else. `bookDir` is what no named folder may touch. What making a file throws is thrown on, and nothing is left.
 */
export async function writeIssue(files: IssueFiles, marker: Marker, target: Target, bookDir: string): Promise<Written> {
  const dir = issueFolder(marker, target);
  const made = await openPlace(dir, marker, target, bookDir);
  try {
    const issue = await setDown(files, marker, dir);
    try {
      // While it was made, another run may have come there.
      await openPlace(dir, marker, target, bookDir);
      const done =
        target.type === "folder" || marker.holds === "findings"
          ? await replaceFolder(issue, dir)
          : await putInSeries(issue, dir);
      return { ...done, fingerprint: issueFingerprint(issue.hashes) };
    } finally {
      // It is there no more once it was put in its place.
      await rm(issue.dir, { recursive: true, force: true });
    }
  } catch (error) {
    if (made !== undefined) await removeEmpty(dirname(dir), made);
    throw error;
  }
}

/**
 * Refuses a place that the issue may not have, mends what an interrupted run left there, and makes the folders above it; gives
 * back the topmost of those that were not there.
 */
async function openPlace(dir: string, marker: Marker, target: Target, bookDir: string): Promise<string | undefined> {
  let made: string | undefined;
  if (target.type === "folder") {
    await checkTarget(target, bookDir);
    await refuseBook(dir, bookDir);
    await refuseReissue(marker, [dir]);
    made = await mkdir(dirname(dir), { recursive: true });
  } else {
    made = await openSeries(dir, target.root);
    if (marker.holds === "issue") await refuseOccupied(join(dirname(dir), currentName));
  }
  await clearLeftovers(dir);
  if (target.type === "series" && marker.holds === "issue") await refuseSecond(marker, target, dirname(dir));
  else await earlierAt(dir, marker.holds);
  return made;
}

/** Removes a folder and those above it up to `last`, as far as nothing is in them. */
async function removeEmpty(dir: string, last: string): Promise<void> {
  try {
    await rmdir(dir);
  } catch {
    return;
  }
  if (dir !== last) await removeEmpty(dirname(dir), last);
}

/**
 * Refuses a place no issue may be written to, before any work is done, and mends what an interrupted run left there. What
 * stands in a series is compared, so only the series itself is looked at.
 */
export async function checkTarget(target: Target, bookDir: string): Promise<void> {
  if (target.type === "series") {
    await refuseOccupiedRoot(resolve(target.root));
    return;
  }
  const dir = resolve(target.dir);
  await refuseBook(dir, bookDir);
  await refuseOccupiedRoot(dirname(dir));
  await clearLeftovers(dir);
  await earlierAt(dir, "issue");
}

/** Refuses a named folder that is, holds or lies in a shelf the book reads; that is known when the book was read. */
export async function refuseShelves(target: Target, shelves: readonly Shelf[] = []): Promise<void> {
  if (target.type === "folder")
    for (const { name, dir } of shelves) await refuseBook(resolve(target.dir), dir, `the shelf "${name}"`);
}

/** The folder of a book's issues. */
export const seriesOf = (root: string, number: string): string => resolve(root, folderName(number));

/**
 * Refuses to issue a final revision a second time with other evidence: `series` is the folder of the book's issues, wherever
 * this one goes. Done before the book is printed, and again when it is written.
 */
export async function refuseSecond(marker: Marker, target: Target, series: string): Promise<void> {
  await refuseReissue(marker, [...new Set([issueFolder(marker, target), ...(await foldersIn(series))])]);
}

/** The folder an issue or a findings report gets. */
export function issueFolder(marker: Marker, target: Target): string {
  const findings = marker.holds === "findings";
  if (target.type === "folder") return resolve(findings ? `${trimmed(target.dir)}-findings` : target.dir);
  const mark = marker.fingerprint.slice(0, 8);
  const name = findings ? `findings-${mark}` : `${folderName(marker.revision)}-${marker.state}-${mark}`;
  return join(seriesOf(target.root, marker.number), name);
}

const trimmed = (dir: string) => dir.replace(/[/\\]+$/, "");

async function putInSeries(issue: SetDown, dir: string): Promise<Done> {
  const done = await writeInSeries(issue, dir);
  await switchCurrent(dirname(dir), basename(dir), issue.marker);
  return done;
}

async function writeInSeries(issue: SetDown, dir: string): Promise<Done> {
  const standing = await standingAt(dir);
  if (standing === "other" || standing === "link")
    throw new IssueError(
      "target",
      `"${dir}" is ${standing === "link" ? "a link" : "a file"}, where the issue belongs; move it away`,
    );
  if (standing === "nothing") {
    try {
      await rename(issue.dir, dir);
      return { dir, outcome: "written" };
    } catch (error) {
      // Another run was faster; what it wrote is compared like any issue that was there before.
      if (!hasCode(error, "ENOTEMPTY", "EEXIST", "EPERM", "ENOTDIR")) throw error;
    }
  }
  const different = await differences(issue.hashes, dir);
  if (different.length === 0) return { dir, outcome: "unchanged" };
  if (issue.marker.state === "interim") return replaceInterim(issue, dir);
  throw new IssueError(
    "differs",
    `"${dir}" is already there with other contents: ${nameSome(different, 10)}; ` +
      "raise the revision, or move that folder away if it was damaged",
  );
}

/** Exchanges an interim issue in the series; while that is done, `current.html` leads to a whole copy of the new one. */
async function replaceInterim(issue: SetDown, dir: string): Promise<Done> {
  const [series, name] = [dirname(dir), basename(dir)];
  const earlier = await earlierAt(dir, "issue");
  if (earlier === "nothing" || !(await isCurrent(series, name))) return exchange(issue, dir, earlier);
  const copy = await copied(issue, "current", dir);
  try {
    await switchCurrent(series, basename(copy), issue.marker);
    return await exchange(issue, dir, earlier);
  } finally {
    await switchCurrent(series, name, issue.marker);
    await rm(copy, { recursive: true });
  }
}

async function replaceFolder(issue: SetDown, dir: string): Promise<Done> {
  const earlier = await earlierAt(dir, issue.marker.holds);
  if (earlier === "earlier") {
    if ((await differences(issue.hashes, dir)).length === 0) return { dir, outcome: "unchanged" };
    await refuseOtherFinal(issue, dir);
  }
  return exchange(issue, dir, earlier);
}

/** An untouched final issue stays, even where only its pages are other; one that was damaged is put right. */
async function refuseOtherFinal(issue: SetDown, dir: string): Promise<void> {
  const { marker } = issue;
  if (marker.holds !== "issue" || marker.state !== "final") return;
  const there = await verifyIssue(dir);
  const known = there.marker;
  if (!there.sound || known?.state !== "final") return;
  if (known.number !== marker.number || known.revision !== marker.revision) return;
  throw new IssueError(
    "issued",
    [
      `revision ${marker.revision} was issued as final already, and a final revision is issued once`,
      `  issued in "${dir}": issue's fingerprint ${there.issueFingerprint ?? ""}`,
      `  built now:          issue's fingerprint ${issueFingerprint(issue.hashes)}`,
      "the evidence is the same, but issue.json or the program changed; raise the revision in issue.json, or name another folder",
    ].join("\n"),
  );
}

async function exchange(issue: SetDown, dir: string, earlier: "nothing" | "earlier"): Promise<Done> {
  // Some systems rename onto an empty folder, some do not.
  if (earlier === "nothing") {
    if ((await standingAt(dir)) === "folder") await rmdir(dir);
    await rename(issue.dir, dir);
    return { dir, outcome: "written" };
  }
  const aside = await folderBeside("aside", dir);
  await rmdir(aside);
  await rename(dir, aside);
  try {
    await rename(issue.dir, dir);
  } catch (error) {
    await rename(aside, dir);
    throw error;
  }
  await rm(aside, { recursive: true });
  return { dir, outcome: "replaced" };
}

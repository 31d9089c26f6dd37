import { mkdir, rename, rm, rmdir, writeFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { differences } from "./differences.ts";
import { hasCode, landingPath, standingAt } from "./folder.ts";
import { sealIssue, type Content, type SealedIssue } from "./hash-list.ts";
import { IssueError } from "./issue-error.ts";
import { clearLeftovers, folderBeside } from "./leftovers.ts";
import type { Marker } from "./marker.ts";
import { switchCurrent } from "./current.ts";
import { folderName } from "./portable-path.ts";
import { earlierAt, nameSome, refuseBook } from "./target.ts";

/** Where an issue goes: onto the shelf that keeps all issues of all books, or exactly into one folder. */
export type Target =
  { readonly type: "shelf"; readonly root: string } | { readonly type: "folder"; readonly dir: string };

export interface Written {
  /** Folder that holds it. */
  readonly dir: string;
  readonly outcome: "written" | "replaced" | "unchanged";
}

/**
 * Writes an issue, complete or not at all: aside first, then one rename. On the shelf it is named by revision, state and
 * fingerprint and never overwritten: equal bytes are success, others an `IssueError`; `current.html` follows last. In a
 * named folder it replaces an earlier issue, and nothing else. `bookDir` is what no named folder may touch.
 */
export async function writeIssue(
  files: ReadonlyMap<string, Content>,
  marker: Marker,
  target: Target,
  bookDir: string,
): Promise<Written> {
  const issue = sealIssue(files, marker);
  const dir = issueFolder(marker, target);
  if (target.type === "folder" || marker.holds === "findings") return replaceFolder(issue, dir, target, bookDir);
  const written = await shelve(issue, dir, target.root);
  await switchCurrent(dirname(dir), basename(dir), marker);
  return written;
}

/**
 * Refuses a named folder no issue may be written to, before any work is done, and mends what an interrupted run left of
 * it. A shelf is always fine: what stands there is compared, never replaced.
 */
export async function checkTarget(target: Target, bookDir: string): Promise<void> {
  if (target.type === "shelf") return;
  const dir = resolve(target.dir);
  await refuseBook(dir, bookDir);
  await clearLeftovers(dir);
  await earlierAt(dir, "issue");
}

/** The folder an issue or a findings report gets. */
export function issueFolder(marker: Marker, target: Target): string {
  const findings = marker.holds === "findings";
  if (target.type === "folder") return resolve(findings ? `${trimmed(target.dir)}-findings` : target.dir);
  const mark = marker.fingerprint.slice(0, 8);
  const name = findings ? `findings-${mark}` : `${folderName(marker.revision)}-${marker.state}-${mark}`;
  return resolve(target.root, folderName(marker.number), name);
}

const trimmed = (dir: string) => dir.replace(/[/\\]+$/, "");

async function shelve(issue: SealedIssue, dir: string, root: string): Promise<Written> {
  await openShelf(dir, root);
  await clearLeftovers(dir);
  if ((await standingAt(dir)) === "nothing") {
    const aside = await writeAside(issue, dir);
    try {
      await rename(aside, dir);
      return { dir, outcome: "written" };
    } catch (error) {
      await rm(aside, { recursive: true });
      // Another run was faster; what it wrote is compared like any issue that was there before.
      if (!hasCode(error, "ENOTEMPTY", "EEXIST", "EPERM", "ENOTDIR")) throw error;
    }
  }
  const different = await differences(issue, dir);
  if (different.length === 0) return { dir, outcome: "unchanged" };
  throw new IssueError(
    "differs",
    `"${dir}" is already there with other contents: ${nameSome(different, 10)}; ` +
      "raise the revision, or move that folder away if it was damaged",
  );
}

async function replaceFolder(issue: SealedIssue, dir: string, target: Target, bookDir: string): Promise<Written> {
  if (target.type === "folder") {
    await checkTarget(target, bookDir);
    await refuseBook(dir, bookDir);
    await clearLeftovers(dir);
  } else {
    await openShelf(dir, target.root);
    await clearLeftovers(dir);
  }
  const earlier = await earlierAt(dir, issue.marker.holds);
  if (earlier === "earlier" && (await differences(issue, dir)).length === 0) return { dir, outcome: "unchanged" };
  await mkdir(dirname(dir), { recursive: true });
  const fresh = await writeAside(issue, dir);
  // Some systems rename onto an empty folder, some do not.
  if (earlier === "nothing") {
    if ((await standingAt(dir)) === "folder") await rmdir(dir);
    await rename(fresh, dir);
    return { dir, outcome: "written" };
  }
  const aside = await folderBeside("aside", dir);
  await rmdir(aside);
  await rename(dir, aside);
  try {
    await rename(fresh, dir);
  } catch (error) {
    await rename(aside, dir);
    await rm(fresh, { recursive: true });
    throw error;
  }
  await rm(aside, { recursive: true });
  return { dir, outcome: "replaced" };
}

/** Makes the folder of a book's issues, and refuses one that a link leads elsewhere. */
async function openShelf(dir: string, root: string): Promise<void> {
  const shelf = dirname(dir);
  await mkdir(shelf, { recursive: true });
  const expected = join(await landingPath(resolve(root)), basename(shelf));
  if ((await landingPath(shelf)) !== expected)
    throw new IssueError("target", `"${shelf}" is a link to another place; put a folder there`);
}

async function writeAside(issue: SealedIssue, dir: string): Promise<string> {
  const aside = await folderBeside("writing", dir);
  try {
    const made = new Set<string>();
    for (const [path, content] of issue.files) {
      const file = join(aside, path);
      if (!made.has(dirname(file))) await mkdir(dirname(file), { recursive: true });
      made.add(dirname(file));
      await writeFile(file, content, { flag: "wx" });
    }
    return aside;
  } catch (error) {
    await rm(aside, { recursive: true, force: true });
    throw error;
  }
}

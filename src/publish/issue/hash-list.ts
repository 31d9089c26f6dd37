import { byCodePoint } from "../../model/order.ts";
import { hashLines, sha256, type Hashed } from "../../model/fingerprint.ts";
import { IssueError } from "./issue-error.ts";
import { hashListName, markerName, markerText, type Marker } from "./marker.ts";
import { pathFault, pathKeeper } from "./portable-path.ts";

export type Content = Uint8Array | string;

/** One file of an issue as it is made: its path, with `/` between steps, and its bytes; a text is written as UTF-8. */
export type IssueFile = readonly [path: string, content: Content];

/** The files of an issue, each taken once and let go when the next is asked for. */
export type IssueFiles = AsyncIterable<IssueFile> | Iterable<IssueFile>;

/** SHA-256 of every file of an issue by its path in code-point order, hash list included. */
export type Hashes = ReadonlyMap<string, string>;

/** Hashes an issue while it is made. */
export interface Seal {
  /** Takes the next file; refuses with an `IssueError` a path that no folder should hold or that was taken before. */
  add(file: IssueFile): void;
  /** What seals the issue when all its files were taken, `published.json` and `hashes.sha256`, and the hashes of all. */
  close(): { readonly files: readonly IssueFile[]; readonly hashes: Hashes };
}

/** Begins the hash list of an issue; only hashes and paths are kept of what it takes. */
export function newSeal(marker: Marker): Seal {
  const paths = pathKeeper();
  for (const name of [markerName, hashListName]) paths.take(name);
  const hashes = new Map<string, string>();
  const add = ([path, content]: IssueFile) => hashes.set(path, sha256(content));
  return {
    add(file) {
      const [path] = file;
      if (path === markerName || path === hashListName)
        throw new IssueError("path", `"${path}" is written by sealing; no other part may give it`);
      paths.take(path);
      add(file);
    },
    close() {
      const marked: IssueFile = [markerName, markerText(marker)];
      add(marked);
      const list: IssueFile = [hashListName, hashLines([...hashes].map(([path, hash]) => ({ path, sha256: hash })))];
      add(list);
      return { files: [marked, list], hashes: new Map([...hashes].sort(([a], [b]) => byCodePoint(a, b))) };
    },
  };
}

/** Reads a hash list; lines that are none, leave the folder or repeat a path come back as faults. */
export function parseHashList(
  text: string,
  name: string = hashListName,
): { readonly files: readonly Hashed[]; readonly faults: readonly string[] } {
  const files = new Map<string, string>();
  const faults: string[] = [];
  const lines = text.split("\n");
  if (lines.at(-1) === "") lines.pop();
  lines.forEach((line, index) => {
    const [, hash, path] = /^([0-9a-f]{64}) [ *](.+)$/.exec(line) ?? [];
    const at = `${name}:${index + 1}`;
    if (hash === undefined || path === undefined) faults.push(`${at} is not a line of hash, two spaces and path`);
    else if (pathFault(path) !== undefined) faults.push(`${at}: path ${pathFault(path) ?? ""}`);
    else if (files.has(path)) faults.push(`${at} lists ${path} again`);
    else files.set(path, hash);
  });
  return { files: [...files].map(([path, sha256]) => ({ path, sha256 })), faults };
}

/** The issue's fingerprint: SHA-256 of its hash list, and so of every byte of every page, PDF, finding, record and original. */
export const issueFingerprint = (hashes: Hashes): string => hashes.get(hashListName) ?? "";

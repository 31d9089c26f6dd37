import { byCodePoint } from "../../model/order.ts";
import { hashLines, sha256, type Hashed } from "../../model/fingerprint.ts";
import { IssueError } from "./issue-error.ts";
import { hashListName, markerName, markerText, type Marker } from "./marker.ts";
import { checkPaths, pathFault } from "./portable-path.ts";

export type Content = Uint8Array | string;

/** An issue ready to be written: every file in code-point order, marker and hash list among them. */
export interface SealedIssue {
  readonly marker: Marker;
  readonly files: ReadonlyMap<string, Content>;
  /** SHA-256 of every file, hash list included. */
  readonly hashes: ReadonlyMap<string, string>;
}

/** Adds `published.json` and `hashes.sha256`, after refusing paths that no folder should hold. */
export function sealIssue(files: ReadonlyMap<string, Content>, marker: Marker): SealedIssue {
  for (const name of [markerName, hashListName])
    if (files.has(name)) throw new IssueError("path", `"${name}" is written by sealing; no other part may give it`);
  const all = new Map<string, Content>([...files, [markerName, markerText(marker)]]);
  checkPaths([...all.keys(), hashListName]);
  const hashes = new Map([...all].map(([path, content]) => [path, sha256(content)]));
  const list = hashLines([...hashes].map(([path, hash]) => ({ path, sha256: hash })));
  all.set(hashListName, list);
  hashes.set(hashListName, sha256(list));
  return { marker, files: new Map([...all].sort(([a], [b]) => byCodePoint(a, b))), hashes };
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
export function issueFingerprint({ hashes }: SealedIssue): string {
  return hashes.get(hashListName) ?? "";
}

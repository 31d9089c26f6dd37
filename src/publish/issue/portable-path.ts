import { sha256 } from "../../model/fingerprint.ts";
import { IssueError } from "./issue-error.ts";

const step = /^[A-Za-z0-9._-](?:[A-Za-z0-9._ -]*[A-Za-z0-9_-])?$/;
const device = /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\.|$)/i;
const longest = 240;

/** Why a path cannot be part of an issue, or undefined: relative, `/` between steps, and readable on every system. */
export function pathFault(path: string): string | undefined {
  if (path.length > longest) return `has ${path.length} signs; expected at most ${longest}`;
  for (const name of path.split("/")) {
    if (name === "" || name === "." || name === "..") return `has the step "${name}"; expected a plain relative path`;
    if (!step.test(name))
      return `has the step "${name}"; expected letters, digits, ". _ -", no space or dot at its end`;
    if (device.test(name)) return `has the step "${name}", a device name on some systems`;
  }
  return undefined;
}

/** Refuses paths that leave the issue, and pairs that some system cannot hold side by side. */
export function checkPaths(paths: Iterable<string>): void {
  const files = new Map<string, string>();
  for (const path of paths) {
    const fault = pathFault(path);
    if (fault !== undefined) throw new IssueError("path", `file "${path}" of the issue ${fault}`);
    const folded = path.toLowerCase();
    const other = files.get(folded);
    if (other !== undefined) throw new IssueError("path", `files "${other}" and "${path}" differ only by case`);
    files.set(folded, path);
  }
  for (const [folded, path] of files)
    for (let cut = folded.lastIndexOf("/"); cut > 0; cut = folded.lastIndexOf("/", cut - 1)) {
      const file = files.get(folded.slice(0, cut));
      if (file !== undefined)
        throw new IssueError("path", `"${file}" is a file, but "${path}" needs it to be a folder`);
    }
}

/** A book's number or revision as the name of a folder: other signs become hyphens; where none is left, a digest tells. */
export function folderName(text: string): string {
  const name = text
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[^A-Za-z0-9._-]+/g, "-")
    .replaceAll(/^[-.]+|[-.]+$/g, "")
    .slice(0, 80)
    .replace(/[-.]+$/, "");
  return name === "" || device.test(name) ? `unnamed-${sha256(text).slice(0, 8)}` : name;
}

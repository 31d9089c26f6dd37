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

/** Takes the paths of an issue one by one, and refuses with an `IssueError` what cannot lie beside those taken before. */
export interface PathKeeper {
  take(path: string): void;
}

/** Refuses paths that leave the issue, a path taken before, and pairs that some system cannot hold side by side. */
export function pathKeeper(): PathKeeper {
  const files = new Map<string, string>();
  /** Folders, each with the first file that needs it. */
  const folders = new Map<string, string>();
  const refuse = (message: string): never => {
    throw new IssueError("path", message);
  };
  return {
    take(path) {
      const fault = pathFault(path);
      if (fault !== undefined) refuse(`file "${path}" of the issue ${fault}`);
      const folded = path.toLowerCase();
      const other = files.get(folded);
      if (other === path) refuse(`two files of the issue have the path "${path}"`);
      if (other !== undefined) refuse(`files "${other}" and "${path}" differ only by case`);
      const within = folders.get(folded);
      if (within !== undefined) refuse(`"${path}" is a file, but "${within}" needs it to be a folder`);
      files.set(folded, path);
      for (let cut = folded.lastIndexOf("/"); cut > 0; cut = folded.lastIndexOf("/", cut - 1)) {
        const folder = folded.slice(0, cut);
        // Whoever needed this one has gone through those above it.
        if (folders.has(folder)) break;
        const file = files.get(folder);
        if (file !== undefined) refuse(`"${file}" is a file, but "${path}" needs it to be a folder`);
        folders.set(folder, path);
      }
    },
  };
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

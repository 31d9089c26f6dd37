import { readdirSync, realpathSync, statSync, type Dirent } from "node:fs";
import { join, sep } from "node:path";
import type { Finding } from "../model/finding.ts";
import { byCodePoint } from "../model/order.ts";
import { shelvesFolder } from "../model/shelf.ts";
import { findingOf, type Fault } from "./file-rules.ts";
import { isJunk } from "./junk.ts";
import { maxPath, nameFault, quoted } from "./portable.ts";
import { refusal } from "./read-file.ts";

/** What stands in a book folder; paths relative to it with `/`, in code-point order. */
export interface Listing {
  readonly records: readonly string[];
  readonly originals: readonly string[];
  readonly findings: readonly Finding[];
  /** Folders and links behind which records may stand that were not read. */
  readonly unreadable: readonly string[];
}

/** Files in one book, at most. */
export const maxFiles = 100_000;

const marker = "published.json";
/** Whether a path is that of the file that marks a published issue. */
export const isMarker = (path: string): boolean => path === marker || path.endsWith(`/${marker}`);

const texts = /\.(md|txt|csv)$/i;
/** Folders at the top of a book that hold no records of its own: signatures of issues, what was published, maps of sheets, and shelves. */
const topSkipped: ReadonlySet<string> = new Set(["signing", "out", "imports", shelvesFolder]);

/** Caps of a walk, and how places in it are printed. */
export interface WalkOptions {
  readonly most?: number;
  /** Path that places are printed below: `shelves/<name>/` where the folder is a shelf, "" where it is the book itself. */
  readonly below?: string;
}

/**
 * Lists the record files and originals of a book or a shelf. Dot files and folders, what systems leave behind, `node_modules`, `signing/`, `out/`, `imports/` and published
 * issues are passed over; links are never followed; names that are not portable are findings.
 */
export function listBook(dir: string, { most = maxFiles, below = "" }: WalkOptions = {}): Listing {
  const records: string[] = [];
  const originals: string[] = [];
  const findings: Finding[] = [];
  const unreadable: string[] = [];
  const root = realpathSync(dir);
  let count = 0;

  const say = (file: string, fault: Omit<Fault, "place">) =>
    findings.push(findingOf({ ...fault, place: { file: below + file, pointer: "" } }));
  const blind = (path: string, fault: Omit<Fault, "place">) => {
    say(path, fault);
    unreadable.push(below + path);
  };

  const enter = (path: string, inFiles: boolean): void => {
    let entries: Dirent[];
    try {
      entries = readdirSync(join(dir, path), { withFileTypes: true }).sort((a, b) => byCodePoint(a.name, b.name));
    } catch (error) {
      blind(path, {
        rule: "file-readable",
        message: `the folder ${quoted(below + path)} cannot be read: ${refusal(error)}`,
        why: "what it holds is unknown",
        hint: "give the account that runs this the right to read it",
      });
      return;
    }
    if (entries.some(({ name }) => name === marker)) {
      if (path !== "" && !inFiles) return;
      const file = path === "" ? marker : `${path}/${marker}`;
      say(file, {
        rule: "file-path",
        message: `${below}${file} stands in the book`,
        why: "this name marks a published issue, and issues are no evidence of the book",
        hint: "move the published issue out of the book folder",
      });
    }
    const seen = new Map<string, string>();
    for (const entry of entries) {
      const { name } = entry;
      if (isJunk(name) || name === "node_modules" || name === marker) continue;
      const inner = path === "" ? name : `${path}/${name}`;
      checkName(inner, name, seen, say);
      if (entry.isSymbolicLink()) blind(inner, { rule: "file-link", ...linkFault(root, join(dir, inner)) });
      else if (entry.isDirectory()) {
        if (path !== "" || !topSkipped.has(name)) enter(inner, inFiles || (path === "" && name === "files"));
      } else if (!entry.isFile())
        blind(inner, {
          rule: "file-link",
          message: `${quoted(below + inner)} is a device or a pipe`,
          why: "reading it may never end",
          hint: "remove it from the book folder",
        });
      else if (++count === most + 1)
        blind(inner, {
          rule: "file-readable",
          message: `the book holds more than ${most} files`,
          why: "those behind this one were not read",
          hint: "check whether a foreign folder stands in the book",
        });
      else if (count <= most) sort(inner, inFiles);
    }
  };

  const sort = (path: string, inFiles: boolean): void => {
    const signs = below.length + path.length;
    if (signs > maxPath)
      say(path, {
        rule: "file-path",
        message: `the path ${quoted(below + path)} has ${signs} signs; expected at most ${maxPath}`,
        why: "longer paths cannot be copied to every system",
        hint: "shorten the names of its folders",
      });
    if (inFiles) originals.push(path);
    else if (/\.json$/i.test(path)) records.push(path);
    else if (!texts.test(path))
      say(path, {
        rule: "file-not-read",
        message: `${quoted(below + path)} is not read`,
        why: "outside files/ only .json files hold records; .md, .txt and .csv are left alone",
        hint: "move an original into files/, or remove the file",
      });
  };

  enter("", false);
  return { records: records.sort(byCodePoint), originals: originals.sort(byCodePoint), findings, unreadable };
}

type Say = (file: string, fault: Omit<Fault, "place">) => unknown;

function checkName(path: string, name: string, seen: Map<string, string>, say: Say): void {
  const fault = nameFault(name);
  if (fault !== undefined)
    say(path, { rule: "file-path", message: `the name ${quoted(name)} is not portable`, ...fault });
  const folded = name.normalize("NFKC").toLowerCase();
  const other = seen.get(folded);
  seen.set(folded, name);
  if (other !== undefined)
    say(path, {
      rule: "file-path",
      name: "alike",
      message: `${quoted(name)} and ${quoted(other)} differ only by case`,
      why: "many systems take them for one file, and one would overwrite the other",
      hint: "rename or remove one of them",
    });
}

/** Links are refused whatever they lead to: archives and other systems turn them into text files or copies. */
function linkFault(root: string, path: string): Pick<Fault, "message" | "why" | "hint"> {
  const hint = "put the file itself in its place, or remove the link";
  let target: string;
  try {
    target = realpathSync(path);
  } catch (error) {
    return { message: `a link leads nowhere: ${refusal(error)}`, why: "what it should lead to is not there", hint };
  }
  const inside = target === root || target.startsWith(root + sep);
  if (!inside)
    return {
      message: "a link leads out of the book",
      why: "what stands outside is no part of the book and may change at any time",
      hint,
    };
  const to = quoted(target.slice(root.length + 1).replaceAll(sep, "/") || ".");
  const parent = realpathSync(join(path, ".."));
  const around = parent === target || parent.startsWith(target + sep);
  if (statSync(target).isDirectory() && around)
    return {
      message: `a link leads back to the folder ${to} it stands in`,
      why: "following it would never end",
      hint: "remove the link",
    };
  return {
    message: `a link leads to ${to}, which is in the book already`,
    why: "the same file would be read twice",
    hint,
  };
}

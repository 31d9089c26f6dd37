import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { ForeignWorkEnded } from "../foreign/ended.ts";
import { startNatures } from "../foreign/natures.ts";
import type { OriginalFile } from "../foreign/waiting.ts";
import type { LoadedBook } from "../model/book.ts";
import { byCodePoint } from "../model/order.ts";
import type { OriginalFault, OriginalNature } from "../model/original.ts";
import { ProgramError } from "../model/program-error.ts";
import type { BookRecord } from "../model/record.ts";
import { pathNamedBy, shelfOf } from "../model/shelf.ts";
import { isJunk } from "./junk.ts";
import { idFor } from "./original-id.ts";
import { pathFault, portablePath } from "./portable-name.ts";

/** A record for a file that no record names yet. */
export interface NewOriginal {
  readonly id: string;
  /** Path the record gives: portable, whatever the file is called now. */
  readonly path: string;
  readonly sha256: string;
  readonly title: string;
  readonly mediaType: string;
  readonly pages: number;
  /** The file's path now, where its name is not portable: it must be renamed first. */
  readonly from?: string;
  /** Why its name is not portable. */
  readonly because?: string;
}

/** A file that gets no record, and why. */
export interface NotAdded {
  readonly path: string;
  readonly sort: "empty" | "double" | "unread";
  readonly why: string;
}

/** A recorded original whose file lies under another name now, known by its hash. */
export interface Moved {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** Where the record stands. */
  readonly file: string;
  readonly pointer: string;
  /** The file's path now, where that is not portable. */
  readonly lies?: string;
  readonly because?: string;
}

/** How the files below `files/` and the records that name them stand to each other. */
export interface OriginalsReview {
  readonly unrecorded: readonly NewOriginal[];
  readonly notAdded: readonly NotAdded[];
  readonly moved: readonly Moved[];
  /** Records whose file has another hash than they state; never corrected here. */
  readonly changed: readonly {
    readonly id: string;
    readonly path: string;
    readonly recorded: string;
    readonly found: string;
  }[];
  /** Records whose file is not there under any name. */
  readonly missing: readonly { readonly id: string; readonly path: string }[];
  /** Files of systems and programs, passed over. */
  readonly junk: readonly string[];
  readonly sound: number;
}

type Loaded = Pick<LoadedBook, "dir" | "records" | "files">;

/** Compares the originals of a book with the records that name them. Reads files; writes none. */
export async function reviewOriginals(loaded: Loaded): Promise<OriginalsReview> {
  const files = new Map(loaded.files.filter(({ role }) => role === "original").map((file) => [file.path, file]));
  const taken = new Set([...files.keys()].map((path) => path.toLowerCase()));
  const ids = new Set<string>();
  const named = new Set<string>();
  const absent = new Map<string, BookRecord>();
  const bearers = new Map<string, string>();
  const changed: { id: string; path: string; recorded: string; found: string }[] = [];
  let sound = 0;
  const originals = loaded.records.filter(({ kind }) => kind === "original");
  for (const record of originals) {
    const { path: written, sha256: recorded } = record.value;
    ids.add(record.id.toUpperCase());
    if (typeof written !== "string") continue;
    const path = pathNamedBy(record, written);
    named.add(path);
    const found = files.get(path);
    if (found === undefined) absent.set(record.id, record);
    else if (typeof recorded === "string" && recorded !== found.sha256)
      changed.push({ id: record.id, path, recorded, found: found.sha256 });
    else {
      sound++;
      bearers.set(found.sha256, `${path} (${record.id})`);
    }
  }

  const unrecorded: NewOriginal[] = [];
  const notAdded: NotAdded[] = [];
  const moved: Moved[] = [];
  for (const [path, { sha256, size }] of [...files].sort(([a], [b]) => byCodePoint(a, b))) {
    if (named.has(path)) continue;
    const twin = bearers.get(sha256);
    if (size === 0) {
      notAdded.push({ path, sort: "empty", why: "it is empty; copy it again from where it came" });
      continue;
    }
    if (twin !== undefined) {
      notAdded.push({ path, sort: "double", why: `it has the bytes of ${twin}; name that one, or remove this` });
      continue;
    }
    const because = pathFault(path);
    const own = because === undefined ? path : portablePath(path, taken);
    // A record of a shelf follows its file where the shelf itself is looked through.
    const lost = [...absent.values()].find(
      ({ value, file }) => value["sha256"] === sha256 && shelfOf(file) === undefined,
    );
    if (lost !== undefined) {
      absent.delete(lost.id);
      bearers.set(sha256, `${own} (${lost.id})`);
      const { id, file, pointer, value } = lost;
      const from = typeof value["path"] === "string" ? value["path"] : "";
      moved.push({ id, from, to: own, file, pointer, ...(because !== undefined && { lies: path, because }) });
      continue;
    }
    const nature = natureOf({ path: own, file: join(loaded.dir, path), sha256 });
    if (typeof nature === "string") {
      notAdded.push({ path, sort: "unread", why: nature });
      continue;
    }
    const { mediaType, pages } = nature;
    const id = idFor(own, ids);
    ids.add(id);
    bearers.set(sha256, `${own} (${id}, added with it)`);
    unrecorded.push({
      id,
      path: own,
      sha256,
      title: titleOf(path),
      mediaType,
      pages,
      ...(because !== undefined && { from: path, because }),
    });
  }
  const missing = [...absent.values()].map((record) => {
    const { path } = record.value;
    return { id: record.id, path: typeof path === "string" ? pathNamedBy(record, path) : "" };
  });
  return { unrecorded, notAdded, moved, changed, missing, junk: await junkIn(loaded.dir), sound };
}

/**
 * What the file will be to every check once it bears this path, or why it gets no record: whatever is recorded here is
 * accepted there.
 */
function natureOf(original: OriginalFile): (Pick<OriginalNature, "mediaType"> & { readonly pages: number }) | string {
  try {
    const nature = startNatures([original])().get(original.path);
    if (nature === undefined) throw new ProgramError(`nothing was found about ${original.path}`);
    const { fault, mediaType, pages } = nature;
    if (fault !== null) return whyNot(fault);
    return pages === null ? "its pages cannot be counted" : { mediaType, pages };
  } catch (error) {
    if (error instanceof ForeignWorkEnded) return error.message;
    throw error;
  }
}

const whyNot = ({ sort, found, accepted, hint }: OriginalFault) =>
  sort === "protected" || sort === "bound"
    ? `${found}; expected ${accepted}; ask for such a copy, or record this one by hand and answer the query it raises`
    : `${found}; ${hint}`;

const longestTitle = 200;

/** The name of a file as a title: without its ending, one space for each gap. */
function titleOf(path: string): string {
  const name = path.slice(path.lastIndexOf("/") + 1).replace(/(?<=.)\.[A-Za-z0-9]{1,5}$/, "");
  const plain = name
    .normalize("NFC")
    .replaceAll(/[\p{C}\p{Z}_]+/gu, " ")
    .trim()
    .slice(0, longestTitle)
    .replace(/[\ud800-\udbff]$/, "");
  return plain === "" ? "untitled" : plain;
}

async function junkIn(dir: string): Promise<string[]> {
  const found = await readdir(join(dir, "files"), { recursive: true, withFileTypes: true }).catch(() => []);
  const base = join(dir, "files");
  return found
    .filter((entry) => entry.isFile() && isJunk(entry.name))
    .map((entry) => `files${join(entry.parentPath, entry.name).slice(base.length).replaceAll("\\", "/")}`)
    .sort(byCodePoint);
}

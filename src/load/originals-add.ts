import { mkdir, readdir, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { startNatures } from "../foreign/natures.ts";
import type { LoadedBook } from "../model/book.ts";
import { byCodePoint } from "../model/order.ts";

/** A record for a file that no record names yet. */
export interface NewOriginal {
  readonly id: string;
  readonly path: string;
  readonly sha256: string;
  readonly mediaType: string;
  readonly pages?: number;
}

/** How the files below `files/` and the records that name them stand to each other. */
export interface OriginalsReview {
  readonly unrecorded: readonly NewOriginal[];
  /** Why a file that no record names has no page count. */
  readonly problems: readonly { readonly path: string; readonly problem: string }[];
  /** Records whose file has another hash than they state; never corrected here. */
  readonly changed: readonly {
    readonly id: string;
    readonly path: string;
    readonly recorded: string;
    readonly found: string;
  }[];
  /** Records whose file is not there. */
  readonly missing: readonly { readonly id: string; readonly path: string }[];
  readonly sound: number;
}

/** Compares the originals of a book with the records that name them. Reads files; writes none. */
export function reviewOriginals(loaded: Pick<LoadedBook, "dir" | "records" | "files">): OriginalsReview {
  const files = new Map(loaded.files.filter(({ role }) => role === "original").map((file) => [file.path, file.sha256]));
  const named = new Set<string>();
  const ids = new Set<string>();
  const changed: { id: string; path: string; recorded: string; found: string }[] = [];
  const missing: { id: string; path: string }[] = [];
  let sound = 0;
  for (const { kind, id, value } of loaded.records) {
    if (kind !== "original") continue;
    ids.add(id.toUpperCase());
    const { path, sha256: recorded } = value;
    if (typeof path !== "string") continue;
    named.add(path);
    const found = files.get(path);
    if (found === undefined) missing.push({ id, path });
    else if (typeof recorded === "string" && recorded !== found) changed.push({ id, path, recorded, found });
    else sound++;
  }
  const unrecorded: NewOriginal[] = [];
  const problems: { path: string; problem: string }[] = [];
  const fresh = [...files].filter(([path]) => !named.has(path)).sort(([a], [b]) => byCodePoint(a, b));
  const natures = startNatures(fresh.map(([path, sha256]) => ({ path, file: join(loaded.dir, path), sha256 })))();
  for (const [path, sha256] of fresh) {
    const { mediaType = "application/octet-stream", pages = null, fault = null } = natures.get(path) ?? {};
    if (fault !== null) problems.push({ path, problem: `${fault.found}; ${fault.hint}` });
    const id = idFor(path, ids);
    ids.add(id);
    unrecorded.push({ id, path, sha256, mediaType, ...(pages !== null && { pages }) });
  }
  return { unrecorded, problems, changed, missing, sound };
}

const longestId = 40;

/** An id made from a file's name, in the alphabet of ids, that no other original bears. */
export function idFor(path: string, taken: ReadonlySet<string>): string {
  const name = path.slice(path.lastIndexOf("/") + 1).replace(/(?<=.)\.[^.]*$/, "");
  const folded = name
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toUpperCase()
    .replaceAll(/[^A-Z0-9.]+/g, "-")
    .replaceAll(/^[-.]+|[-.]+$/g, "");
  const base = (folded === "" ? "ORIGINAL" : folded).slice(0, longestId).replace(/[-.]+$/, "");
  let id = base;
  for (let n = 2; taken.has(id); n++) {
    const tail = `-${n}`;
    id = base.slice(0, longestId - tail.length).replace(/[-.]+$/, "") + tail;
  }
  return id;
}

/**
 * Writes the records of new originals into a file of their own, `originals/added-<n>.json`, and gives its path in the
 * book. No file that exists is touched.
 */
export async function addOriginals(bookDir: string, originals: readonly NewOriginal[]): Promise<string> {
  const records = originals.map(({ id, path, sha256, mediaType, pages }) => ({
    id,
    path,
    sha256,
    mediaType,
    ...(pages !== undefined && { pages }),
  }));
  const text = `${JSON.stringify({ kind: "original", records }, null, 2)}\n`;
  await mkdir(join(bookDir, "originals"), { recursive: true });
  const taken = new Set((await readdir(join(bookDir, "originals"))).map((name) => name.toLowerCase()));
  let n = 1;
  while (taken.has(`added-${n}.json`)) n++;
  const path = `originals/added-${n}.json`;
  // "wx": another run may have taken the name meanwhile.
  await writeFile(join(bookDir, path), text, { flag: "wx" }).catch(async (error: unknown) => {
    const exists = error instanceof Error && "code" in error && error.code === "EEXIST";
    if (!exists) await rm(join(bookDir, path), { force: true });
    throw error;
  });
  return path;
}

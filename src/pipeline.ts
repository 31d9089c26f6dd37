import { join } from "node:path";
import { shippedCode, shippedDefinitions, chains } from "./definitions.ts";
import type { Remembered } from "./judge/again.ts";
import { judge, judgeAgain as again, judgeRemembering as remembering } from "./judge/judge.ts";
import { loadBook } from "./load/book-files.ts";
import { newReadingMemory, type ReadingMemory } from "./load/memory.ts";
import { textsOfBook } from "./load/texts.ts";
import { loadKinds } from "./load/kinds.ts";
import type { JudgedBook, LoadedBook } from "./model/book.ts";
import type { Definitions } from "./model/definitions.ts";
import type { Kind } from "./model/kind.ts";
import type { Progress } from "./publish/progress.ts";
import type { Publication } from "./publish/publication.ts";
import type { Block } from "./publish/blocks.ts";
import type { LastChange } from "./publish/outline/live.ts";
import { noteCode } from "./proof.ts";
import { packageRoot, toolName } from "./root.ts";

/**
 * The whole job, one page: a folder of records is read, its records are linked, recomputed and judged, and the judged
 * book is laid out and printed twice, as a site and as a PDF.
 *
 *   read     → records with places; what could not be read is a finding          load/
 *   judge    → links, recomputation, rules, requirements, exceptions             link/ compute/ judge/
 *   lay out  → pages of blocks: the only place that decides what is said         publish/outline/
 *   print    → the files of an issue, as bytes                                   publish/html, publish/pdf, publish/issue
 *
 * Each step takes a value and gives a value. Nothing here reads a clock, writes a file or prints.
 */

export interface ReadOptions {
  /** Folders of further schemas: one file there is one more kind. */
  readonly schemas?: readonly string[];
  /** The folder is a shelf of several books: it needs no book and no issue. */
  readonly isShelf?: boolean;
  /** What was read of it before: its schemas are not read again, and its files only where they have changed. */
  readonly since?: ReadBook;
}

export interface ReadBook extends LoadedBook {
  readonly kinds: ReadonlyMap<string, Kind>;
}

const memories = new WeakMap<ReadBook, ReadingMemory>();

let shipped: ReadonlyMap<string, Kind> | undefined;

/** The kinds that ship are the same for every book: their schemas are read once, and what is made of them serves all. */
function kindsWith(schemas: readonly string[]): ReadonlyMap<string, Kind> {
  const own = join(packageRoot, "schemas");
  return schemas.length > 0 ? loadKinds([own, ...schemas]) : (shipped ??= loadKinds([own]));
}

/** Reads a book folder. Never throws on its content: what is wrong with it is in `findings` and `fatal`. */
export function readBook(dir: string, options: ReadOptions = {}): ReadBook {
  const kinds = options.since?.kinds ?? kindsWith(options.schemas ?? []);
  const memory = options.since === undefined ? undefined : (memories.get(options.since) ?? newReadingMemory());
  const loaded = loadBook(dir, kinds, { isShelf: options.isShelf === true, memory });
  const read = { ...loaded, texts: textsOfBook(loaded), kinds };
  if (memory !== undefined) memories.set(read, memory);
  return read;
}

/** Judges what was read, with the shipped definitions or others. */
export function judgeBook(read: ReadBook, definitions: Definitions = shippedDefinitions(read.kinds)): JudgedBook {
  return judge(read, definitions);
}

/** Judges what was read so that it can be judged again: that keeps more in memory. */
export function judgeRemembering(
  read: ReadBook,
  definitions: Definitions = shippedDefinitions(read.kinds),
): Remembered {
  return remembering(read, definitions);
}

/**
 * Judges a book anew that was judged before, by the same definitions, faster the less of it has changed; the result is that of
 * `judgeBook`. Of another reading the schemas may be others: then all of it is judged anew.
 */
export function judgeAgain({ memory }: Remembered, read: ReadBook): Remembered {
  const { all } = memory;
  return read.kinds === all.kinds ? again(memory, read) : remembering(read, { ...all, kinds: read.kinds });
}

// What a check does not need is loaded when it is asked for: it takes longer to load than a small book takes to judge.
const layingOut = () => import("./publish/outline/outline.ts");

/** The publication as a value, before it is HTML or PDF; with `live`, a view of records in the making, which is no issue. */
export async function layOut(judged: JudgedBook, live?: LastChange): Promise<Publication> {
  const [{ outline }, { answers }] = await Promise.all([layingOut(), import("./verification/index.ts")]);
  noteCode(shippedCode);
  return outline(judged, chains, toolName, answers, live);
}

/**
 * Every file of the issue with its path, each given as soon as it is made and then let go: originals, evidence, schemas,
 * findings, site, PDF. What seals an issue, marker and hash list, is added by whoever writes it down. `progress` hears how far
 * it is. Throws `ChangedWhileBuilding` when a file of the book is not what was judged any more; what was given until then is
 * no issue.
 */
export async function* publishBook(
  judged: JudgedBook,
  progress?: Progress,
): AsyncGenerator<readonly [path: string, content: Uint8Array | string]> {
  const { issueFiles } = await import("./publish/issue-files.ts");
  yield* issueFiles(judged, await layOut(judged), progress);
}

/** The chain of evidence of one record. */
export async function traceRecord(
  judged: JudgedBook,
  kind: string,
  id: string,
): Promise<Extract<Block, { type: "chain" }> | undefined> {
  const { chainOf } = await layingOut();
  return chainOf(judged, chains, kind, id);
}

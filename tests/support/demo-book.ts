import { cpSync, existsSync, mkdtempSync, readdirSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { loadBook } from "../../src/load/book-files.ts";
import { newReadingMemory } from "../../src/load/memory.ts";
import { textsOfBook } from "../../src/load/texts.ts";
import { judge, judgeAgain, judgeRemembering as remember } from "../../src/judge/judge.ts";
import type { JudgedBook, LoadedBook } from "../../src/model/book.ts";
import { blocks, type Finding } from "../../src/model/finding.ts";
import { judgeBook, judgeRemembering, layOut, readBook } from "../../src/pipeline.ts";
import type { Definitions } from "../../src/model/definitions.ts";
import type { BookRecord } from "../../src/model/record.ts";
import type { Memory } from "../../src/reading/visits.ts";
import { allRecords, applyChange, type Change } from "./changes.ts";
import { comparedAnew } from "./compared.ts";
import { copiedFrom, copyBook } from "./copy-book.ts";

export const demoBook = join(import.meta.dirname, "../../demo-data/air-receiver/book");
export const interimBook = join(import.meta.dirname, "../../demo-data/air-receiver-interim/book");

/** The second vessel of the receiver's order, on the same shelves. */
export const vesselBook = join(import.meta.dirname, "../../demo-data/control-air/book");

export const boilerBook = join(import.meta.dirname, "../../demo-data/boiler/book");

/** What is made of each book once, for all test files of a process; nobody changes what is shared. */
function once<Made>(make: (book: string) => Made): (book: string) => Made {
  const made = new Map<string, Made>();
  return (book) => {
    const known = made.get(book) ?? make(book);
    made.set(book, known);
    return known;
  };
}

export const readOnce = once((book) => readBook(book));
export const judgedOnce = once((book) => judgeBook(readOnce(book)));
export const laidOutOnce = once((book) => layOut(judgedOnce(book)));
const rememberedOnce = once((book) => judgeRemembering(readOnce(book)));

/** A book judged with other records than it has. */
export const judgedWith = (book: string, records: readonly BookRecord[]): JudgedBook =>
  judgeAgain(rememberedOnce(book).memory, { ...readOnce(book), records }, false).judged;

/** The demonstration as it is. */
export const sound = judgedOnce(demoBook);
/** The boiler's book as it is, judged when it is first asked for. */
export const soundBoiler = (): JudgedBook => judgedOnce(boilerBook);
/** Everything that is shipped, not only what is of the scopes of one book. */
export const definitions = sound.definitions.whole ?? sound.definitions;

/** One copy of each book: eighty originals are copied once. It goes with the folder of the run. */
const copyOf = once((book) => {
  const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-fault-")));
  copyBook(book, dir);
  return dir;
});

/** Every record of a book and its shelves, with its file. */
export const recordsOf = (book: string) => allRecords(copyOf(book));

export interface JudgedCopy {
  /** Null when the book could not be read at all: `fatal` says why. */
  readonly judged: JudgedBook | null;
  readonly fatal: readonly Finding[];
  /** The file a finding is mended in. */
  readonly fileOf: (finding: Finding) => string;
  /** The source line a finding points at there; of an object its first line too, which tells it from its neighbours. */
  readonly lineOf: (finding: Finding) => string;
}

export interface JudgedHow {
  readonly withPapers?: boolean;
  readonly asCompared?: boolean;
  /** Rules, facts and calculations that object to nothing, each by its id; the maker's sheets are then left out too. */
  readonly silent?: readonly string[];
}

/**
 * Judges a copy of a book with changes made to its files. The copy is as before afterwards. Its records are read back from
 * their papers only `withPapers`, and their comparisons stand as they were made only when `asCompared`: a change elsewhere stands
 * for a paper that says the same, and was compared.
 */
export function judgeChanged(
  book: string,
  changes: readonly Change[],
  { withPapers = false, asCompared = false, silent = [] }: JudgedHow = {},
): JudgedCopy {
  const dir = copyOf(book);
  const touched = new Set<string>();
  try {
    for (const change of changes) {
      // Noted before: a change that fails half-way is put right too.
      if ("file" in change) touched.add(change.file);
      touched.add(applyChange(dir, change));
    }
    const loaded = loadBook(dir, definitions.kinds, { memory: readingOf(book) });
    const written = ({ place }: Finding) => loaded.locator.written?.(place) ?? place;
    const fileOf = (finding: Finding) => written(finding).file;
    const lineOf = (finding: Finding) => {
      const place = written(finding);
      const { line } = loaded.locator.position(place);
      const text = (at: number) => loaded.locator.line(place.file, at)?.trim() ?? "";
      return /^[[{]$/.test(text(line)) ? `${text(line)} ${text(line + 1)}` : text(line);
    };
    if (loaded.fatal.length > 0) return { judged: null, fatal: loaded.fatal, fileOf, lineOf };
    const changed = {
      ...loaded,
      ...(withPapers && { texts: textsOfBook(loaded) }),
      ...(!asCompared && { records: comparedAnew(loaded.records, definitions.kinds) }),
      kinds: definitions.kinds,
    };
    const judged = silent.length > 0 ? judge(withoutSheets(changed), silenced(silent)) : judgeAfter(book, changed);
    return { judged, fatal: [], fileOf, lineOf };
  } finally {
    for (const file of touched) restore(book, dir, file);
  }
}

/** What was read of the copy of each book: files that a change leaves alone are read once. */
const readingOf = once(newReadingMemory);
/** What is remembered of each book as it is; its papers are not read back. */
const memoryOf = once((book): Memory => remember(loadBook(book, definitions.kinds), definitions).memory);

/** All definitions, with these silent: they are owed what they are owed and computed, and object to nothing. */
function silenced(ids: readonly string[]): Definitions {
  const { rules, facts, calculations } = definitions;
  // What sheets were made with is said by none of these: without sheets it is silent.
  const all = [...rules, ...facts, ...calculations, { id: "value-copied" }].map(({ id }) => id);
  for (const id of ids) if (!all.includes(id)) throw new Error(`there is no definition ${id} to silence`);
  const silent = ({ id }: { readonly id: string }) => ids.includes(id);
  return {
    ...definitions,
    rules: rules.map((rule) => (silent(rule) ? { ...rule, check: () => [] } : rule)),
    facts: facts.filter((fact) => !silent(fact)),
    calculations: calculations.map((one) => (silent(one) ? { ...one, limits: [], accept: [] } : one)),
  };
}

/** Sheets of the maker say first what differs from what they copy. */
const withoutSheets = (book: LoadedBook): LoadedBook => ({
  ...book,
  records: book.records.filter(({ kind }) => kind !== "calculation-sheet"),
});

/** Judges a changed book from what is remembered of it as it was; with `DATABOOK_ANEW=1` anew, to compare both ways. */
function judgeAfter(book: string, changed: LoadedBook): JudgedBook {
  if (process.env["DATABOOK_ANEW"] === "1") return judge(changed, definitions);
  return judgeAgain(memoryOf(book), changed, false).judged;
}

function restore(book: string, dir: string, file: string): void {
  rmSync(join(dir, file), { force: true, recursive: true });
  const from = copiedFrom(book, file);
  if (existsSync(from)) cpSync(from, join(dir, file));
  // A folder that came with the change goes with it.
  for (let up = dirname(file); up !== "." && !existsSync(copiedFrom(book, `${up}/`)); up = dirname(up))
    if (existsSync(join(dir, up)) && readdirSync(join(dir, up)).length === 0)
      rmSync(join(dir, up), { recursive: true });
}

/** Findings that are not in another judged book. */
export function newFindings(judged: Pick<JudgedBook, "findings">, before: JudgedBook): readonly Finding[] {
  const known = new Set(before.findings.map(({ key }) => key));
  return judged.findings.filter((finding) => !known.has(finding.key));
}

/** Findings that block, and are not in the sound book. */
export function newRoots(judged: Pick<JudgedBook, "findings">, before: JudgedBook): readonly Finding[] {
  return newFindings(judged, before).filter(blocks);
}

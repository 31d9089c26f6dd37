import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { JudgedBook } from "../../src/model/book.ts";
import { blocks, type Finding } from "../../src/model/finding.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { applyChange, type Change } from "./changes.ts";

export const demoBook = join(import.meta.dirname, "../../demo-data/air-receiver/book");
export const interimBook = join(import.meta.dirname, "../../demo-data/air-receiver-interim/book");

/** Judges a copy of a book with changes made to its files. The copy is gone afterwards. */
export function judgeChanged(
  book: string,
  changes: readonly Change[],
): { readonly judged: JudgedBook | null; readonly fatal: readonly Finding[] } {
  const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-fault-")));
  try {
    cpSync(book, dir, { recursive: true });
    for (const change of changes) applyChange(dir, change);
    const read = readBook(dir);
    if (read.fatal.length > 0) return { judged: null, fatal: read.fatal };
    const judged = judgeBook(read);
    // Lines are found in the files, which are about to go.
    for (const finding of judged.findings) judged.loaded.locator.position(finding.place);
    return { judged: { ...judged, loaded: { ...judged.loaded, locator: frozen(judged) } }, fatal: [] };
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

function frozen(judged: JudgedBook): JudgedBook["loaded"]["locator"] {
  const positions = new Map(
    judged.findings.map(({ place }) => [`${place.file} ${place.pointer}`, judged.loaded.locator.position(place)]),
  );
  return {
    position: ({ file, pointer }) => positions.get(`${file} ${pointer}`) ?? { line: 0, column: 0, length: 0 },
    line: () => undefined,
  };
}

/** Findings that block, and are not in the sound book. */
export function newRoots(judged: JudgedBook, sound: JudgedBook): readonly Finding[] {
  const known = new Set(sound.findings.map(({ key }) => key));
  return judged.findings.filter((finding) => blocks(finding) && !known.has(finding.key));
}

export function readJson(path: string): unknown {
  return JSON.parse(readFileSync(path, "utf8"));
}

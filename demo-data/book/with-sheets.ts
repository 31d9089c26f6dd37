import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { sheetsOf, type Sheeted } from "./calculation-sheets.ts";
import { file, type RecordFile } from "./records.ts";

/** The records with the maker's calculation sheets, which are made from what the others give; `lent` stand on shelves. */
export function withSheets(
  files: readonly RecordFile[],
  job: Sheeted,
  lent: readonly RecordFile[] = [],
): readonly RecordFile[] {
  const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-sheets-")));
  try {
    for (const { path, kind, records } of [...files, ...lent]) {
      const [only] = records;
      const content = kind === "book" || kind === "issue" ? { kind, ...only, shelves: [] } : { kind, records };
      mkdirSync(dirname(join(dir, path)), { recursive: true });
      writeFileSync(join(dir, path), JSON.stringify(content));
    }
    const sheets = sheetsOf(judgeBook(readBook(dir)), job);
    return [...files, file("design/calculations.json", "calculation-sheet", sheets)];
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

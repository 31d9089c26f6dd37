import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { filesOf } from "../book/book-files.ts";
import { factsOf } from "../book/facts.ts";
import { file, type Edition, type RecordFile } from "../book/records.ts";
import { judgeBook, readBook } from "../../src/pipeline.ts";
import { sheetsOf } from "./calculation-sheets.ts";
import { procedures } from "./facts/shop-procedures.ts";
import { originalsOf } from "./originals/index.ts";
import { recordFiles } from "./records.ts";

export const boilerEdition: Edition = { revision: "0", cutOff: "2026-05-22" };

/** The records with the maker's calculation sheets, which are made from what the others give. */
function withSheets(files: readonly RecordFile[]): readonly RecordFile[] {
  const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-sheets-")));
  try {
    for (const { path, kind, records } of files) {
      const [only] = records;
      const content = kind === "book" || kind === "issue" ? { kind, ...only } : { kind, records };
      mkdirSync(dirname(join(dir, path)), { recursive: true });
      writeFileSync(join(dir, path), JSON.stringify(content));
    }
    const sheets = sheetsOf(judgeBook(readBook(dir)));
    return [...files, file("design/calculations.json", "calculation-sheet", sheets)];
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

/** The words of a procedure of the shop. */
const paragraphsOf = (id: string) => procedures.find(({ record }) => record.id === id)?.paragraphs;

/** Every file of the boiler's book folder by its path. */
export function bookFiles({ cutOff }: Edition): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const files = withSheets(recordFiles);
  const facts = factsOf(files);
  return filesOf({ facts, files, originals: originalsOf(facts, paragraphsOf), cutOff });
}

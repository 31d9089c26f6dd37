import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { performance } from "node:perf_hooks";
import { judgeAgain, judgeBook, judgeRemembering, readBook } from "../../src/pipeline.ts";
import { median } from "./measure.ts";

/** The first runs pay for what the engine learns. */
const warmUp = 6;

const day = /"(\d{4}-\d{2})-(\d{2})"/;

/**
 * From a save to the findings, as `watch` does it in one process: one date is changed in a file of the book and put back,
 * one file after the other; each time the folder is read and judged again. Beside it the same in full.
 */
export function measureAgain(title: string, from: string, edits: number): void {
  const folder = mkdtempSync(join(tmpdir(), "databook-bench-again-"));
  try {
    // With its neighbours: a book may name shelves that lie beside it.
    cpSync(dirname(from), folder, { recursive: true });
    const book = join(folder, "book");
    const timed = (run: () => unknown) => {
      const started = performance.now();
      run();
      return performance.now() - started;
    };
    let read = readBook(book);
    const full: number[] = [];
    for (let run = 0; run < warmUp; run++) full.push(timed(() => judgeBook(readBook(book))));
    let judged = judgeRemembering(read);
    const again: number[] = [];
    const save = (file: string, text: string) => {
      writeFileSync(file, text);
      again.push(
        timed(() => {
          read = readBook(book, { since: read });
          judged = judgeAgain(judged, read);
        }),
      );
    };
    const files = recordFilesIn(book).filter((file) => day.test(readFileSync(file, "utf8")));
    for (let edit = 0; edit < warmUp + edits; edit++) {
      const file = files[edit % files.length] ?? "";
      const text = readFileSync(file, "utf8");
      save(
        file,
        text.replace(day, (_date, month: string, of: string) => `"${month}-${of === "28" ? "27" : "28"}"`),
      );
      save(file, text);
    }
    const [one, whole] = [median(again.slice(2 * warmUp)), median(full.slice(warmUp / 2))];
    console.log(
      `${title}: from save to findings ${one.toFixed(0)} ms (median of ${2 * edits}), in full ${whole.toFixed(0)} ms in the same process, ratio ${(one / whole).toFixed(2)}`,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function recordFilesIn(book: string): readonly string[] {
  return readdirSync(book, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".json") && !path.startsWith("files"))
    .sort()
    .map((path) => join(book, path));
}

import { Buffer } from "node:buffer";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { data, rawXlsx } from "../sheets/raw-xlsx.ts";
import { median, runOnce, tasks, type Measured } from "./measure.ts";

const rows = 50_000;
const columns = 20;

/** A weld log as a shop keeps it: marks and words shared by many rows, figures with one and two decimals, days. */
const texts = 5000;
const sorts = ["text", "figure", "figure", "day"] as const;
const figure = (row: number, column: number) => ((row * 31 + column * 17) % 9973) / 10;
const serial = (row: number) => 46_000 + (row % 300);

/** Writes the workbook and the CSV file that are read. */
function writeFiles(xlsx: string, csv: string): void {
  const styles =
    '<numFmts><numFmt numFmtId="170" formatCode="0.0"/></numFmts><cellXfs><xf/><xf numFmtId="170"/><xf numFmtId="15"/></cellXfs>';
  const lines: string[] = [];
  const cells: string[] = [];
  for (let row = 0; row < rows; row++) {
    const line: string[] = [];
    let packed = "";
    for (let column = 0; column < columns; column++) {
      const sort = sorts[column % sorts.length] ?? "text";
      const index = (row * 7 + column) % texts;
      packed +=
        sort === "text"
          ? `<c t="s"><v>${index}</v></c>`
          : `<c s="${sort === "day" ? 2 : 1}"><v>${sort === "day" ? serial(row) : figure(row, column)}</v></c>`;
      line.push(sort === "text" ? `mark ${index}` : sort === "day" ? "12.01.2026" : figure(row, column).toFixed(1));
    }
    cells.push(packed);
    lines.push(line.join(";"));
  }
  const strings = Array.from({ length: texts }, (_, index) => `<si><t>mark ${index}</t></si>`).join("");
  writeFileSync(xlsx, rawXlsx({ sheet: data(...cells), strings, styles }, true));
  writeFileSync(csv, Buffer.from(lines.join("\r\n")));
}

/** Reading of 50 000 rows and a million cells, in whole processes; the floor is to unpack the archive and no more. */
export function measureSheets(runs: number): void {
  const folder = mkdtempSync(join(tmpdir(), "databook-bench-sheets-"));
  const [xlsx, csv] = [join(folder, "log.xlsx"), join(folder, "log.csv")];
  const cells = String(rows * columns);
  const chosen: readonly (readonly [title: string, args: readonly string[]])[] = [
    ["floor: unpack the archive", [tasks, "unpack", xlsx]],
    ["read .xlsx", [tasks, "read-sheet", xlsx, cells]],
    ["read .csv", [tasks, "read-sheet", csv, cells]],
  ];
  const results = new Map(chosen.map(([title]) => [title, [] as Measured[]]));
  try {
    writeFiles(xlsx, csv);
    // Interleaved, so that a slow moment of the machine meets every task.
    for (let run = 0; run < runs; run++) for (const [title, args] of chosen) results.get(title)?.push(runOnce(args));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  console.log(`\nsheets: ${rows} rows of ${columns} cells (median of ${runs})`);
  console.log("task                          seconds processor   peak MB");
  for (const [title, all] of results) {
    const numbers = [
      median(all.map(({ seconds }) => seconds)).toFixed(2),
      median(all.map(({ processor }) => processor)).toFixed(2),
      String(Math.round(Math.max(...all.map(({ megabytes }) => megabytes)))),
    ];
    console.log(title.padEnd(28) + numbers.map((text) => text.padStart(10)).join(""));
  }
}

import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isSheetFault } from "../../src/sheets/cells.ts";
import { writeCsv } from "../../src/sheets/write/csv.ts";
import { writeWorkbook } from "../../src/sheets/write/workbook.ts";
import { packageRoot } from "../../src/root.ts";
import { cli, median, runOnce, type Measured } from "./measure.ts";

const rowCount = 50_000;

/** A parts list such as a shop keeps: own headings, decimal commas, days first. */
const headings = ["Pos", "Benennung", "Wanddicke [mm]", "Länge [mm]", "Menge", "Werkstoff", "Norm", "Bemerkung"];
const map = {
  kind: "part",
  id: "P{Pos:5}",
  decimal: ",",
  columns: {
    Benennung: { to: "name" },
    Wanddicke: { to: "nominalThickness" },
    Länge: { to: "length" },
    Menge: { to: "quantity" },
    Werkstoff: { to: "material.grade" },
    Norm: { to: "material.standard" },
    Bemerkung: { to: "remarks" },
  },
};

const rows = Array.from({ length: rowCount }, (_, index) => [
  String(index + 1),
  `Course ${index + 1}`,
  `${8 + (index % 20)},${index % 10}`,
  String(500 + (index % 4000)),
  String(1 + (index % 9)),
  "P265GH",
  "EN 10028-2",
  `cut from plate ${index % 700}`,
]);

/** Import of a long sheet, as a workbook and as CSV: shown, written, and compared again; whole processes. */
export async function measureImports(runs: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "databook-bench-sheets-"));
  try {
    const sheet = { name: "Teile", columns: headings.map((heading) => ({ heading })), rows };
    for (const [name, made] of [
      ["teile.xlsx", await writeWorkbook([sheet])],
      ["teile.csv", writeCsv(sheet)],
    ] as const) {
      if (isSheetFault(made)) throw new Error(made.message);
      writeFileSync(join(folder, name), made);
      measureImport(folder, name, runs);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function measureImport(folder: string, name: string, runs: number): void {
  const book = join(folder, "book");
  const results = new Map<string, Measured[]>([
    ["shown", []],
    ["written", []],
    ["compared again", []],
  ]);
  for (let run = 0; run < runs; run++) {
    rmSync(book, { recursive: true, force: true });
    mkdirSync(join(book, "imports"), { recursive: true });
    for (const file of ["book.json", "issue.json"])
      cpSync(join(packageRoot, "demo-data/boiler/book", file), join(book, file));
    writeFileSync(join(book, "imports/teile.json"), JSON.stringify(map));
    const words = [cli, "import", join(folder, name), "--book", book];
    results.get("shown")?.push(runOnce(words));
    results.get("written")?.push(runOnce([...words, "--write"]));
    results.get("compared again")?.push(runOnce(words));
  }
  console.log(`\nimport of ${rowCount} rows, ${name}`);
  for (const [title, measured] of results)
    console.log(
      `  ${title.padEnd(16)} ${median(measured.map(({ seconds }) => seconds)).toFixed(1)} s, ` +
        `${median(measured.map(({ processor }) => processor)).toFixed(1)} s of processor time, ` +
        `${median(measured.map(({ megabytes }) => megabytes)).toFixed(0)} MB at most`,
    );
}

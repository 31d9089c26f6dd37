import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { packageRoot } from "../../src/root.ts";
import { measureAgain } from "./again.ts";
import { generateBook, pressureParts, welds, type Growth } from "./generate.ts";
import { measureBook, taskNames } from "./measure.ts";
import { measureImports } from "./imports.ts";
import { measureSheets } from "./sheets.ts";
import { measureSlips } from "./slips.ts";
import { measureSteam } from "./steam.ts";

/**
 * `npm run bench -- [part …] [--runs n] [--joints n] [--only task,…]`: whole processes, medians of several runs, and
 * ratios against the floor measured in the same run. Without a part: `demo`, `again`, `receiver`, `sheets` and `steam`, some minutes; `boiler`
 * and `slips` are only measured by name, since one run of all its tasks keeps a machine busy for a quarter of an hour.
 */
interface Part {
  readonly runs: number;
  readonly joints?: number;
  readonly growth?: Growth;
  /** Folders of `demo-data`. */
  readonly books: readonly string[];
}

const parts: ReadonlyMap<string, Part> = new Map([
  ["demo", { runs: 5, books: ["air-receiver", "boiler"] }],
  ["receiver", { runs: 3, joints: 2000, growth: welds, books: ["air-receiver"] }],
  ["boiler", { runs: 3, joints: 5000, growth: pressureParts, books: ["boiler"] }],
]);
const steam = "steam";
const sheets = "sheets";
const again = "again";
const slips = "slips";
const others = [again, sheets, slips, steam];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    runs: { type: "string" },
    joints: { type: "string" },
    only: { type: "string" },
    book: { type: "string" },
    most: { type: "string" },
    mode: { type: "string" },
    missed: { type: "boolean" },
  },
});
const wanted = positionals.length > 0 ? positionals : ["demo", again, "receiver", sheets, steam];
const only = values.only?.split(",") ?? taskNames;
const unknown = [
  ...wanted.filter((name) => !others.includes(name) && !parts.has(name)),
  ...only.filter((name) => !taskNames.includes(name)),
];
if (unknown.length > 0)
  throw new Error(
    `not known: ${unknown.join(", ")}; parts are ${[...parts.keys(), ...others].join(", ")}, tasks ${taskNames.join(", ")}`,
  );

for (const name of wanted) {
  if (name === steam) measureSteam(Number(values.runs ?? 15));
  if (name === again)
    for (const book of ["air-receiver", "boiler"])
      measureAgain(`judging again: ${book}`, bookOf(book), Number(values.runs ?? 20));
  if (name === slips)
    for (const book of ["air-receiver", "control-air", "boiler"])
      if (values.book === undefined || values.book === book)
        measureSlips(
          book,
          bookOf(book),
          Number(values.most ?? 5),
          values.mode === undefined ? ["alone", "copied"] : [values.mode === "alone" ? "alone" : "copied"],
          values.missed === true,
        );
  if (name === sheets) {
    measureSheets(Number(values.runs ?? 3));
    await measureImports(Number(values.runs ?? 3));
  }
  const part = parts.get(name);
  if (part !== undefined) for (const book of part.books) measurePart(book, part);
}

function bookOf(name: string): string {
  return join(packageRoot, "demo-data", name, "book");
}

function measurePart(book: string, part: Part): void {
  const from = bookOf(book);
  const runs = Number(values.runs ?? part.runs);
  if (part.growth === undefined) {
    measureBook(`demonstration: ${book}`, from, runs, only);
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), "databook-bench-book-"));
  try {
    const grown = join(folder, "book");
    const count = generateBook(from, grown, Number(values.joints ?? part.joints), part.growth);
    measureBook(`grown from ${book}: ${count} joints`, grown, runs, only);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

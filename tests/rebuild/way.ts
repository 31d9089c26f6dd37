import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, relative } from "node:path";
import type { Json } from "../../src/model/json.ts";
import { isList, isObject } from "../../src/model/json.ts";
import type { Ran } from "../commands/fakes.ts";
import { readBook } from "../../src/pipeline.ts";
import { boilerBook } from "../support/demo-book.ts";
import { runReal } from "../support/real.ts";
import { fillIn } from "./fill.ts";

const here = import.meta.dirname;

/** The shop's workbooks, in the order they are taken in: what a sheet names by the id alone is there before it. */
export const workbooks = ["certificates", "parts", "weld-log", "ndt", "valve-and-test"] as const;
/** Taken in last: its plan names what is typed and signed. */
export const lastWorkbook = "dimensions";

/** What was done, with what came of it. */
export interface Way {
  readonly book: string;
  readonly steps: ReadonlyMap<string, Ran>;
  /** Values a person types, by where they go. */
  readonly typed: ReadonlyMap<string, number>;
}

/** Answers of the command line that a person thinks of. */
const begun = {
  "--order-date": "2026-01-19",
  "--number": "TQ423-MDB-01",
  "--title": "Compressed-air receiver, 3000 l",
  "--register": "unfired-vessel",
  "--profile": "ped-en-13445",
};

/** Rebuilds the receiver's book as a user would, in a folder of its own. `scans` are the files of its originals. */
export async function rebuild(scans: readonly string[], root: string): Promise<Way> {
  const cwd = realpathSync(mkdtempSync(join(tmpdir(), "databook-rebuild-")));
  const book = join(cwd, "tq423");
  const steps = new Map<string, Ran>();
  const typed = new Map<string, number>();
  const run = async (name: string, ...words: readonly string[]) => void steps.set(name, await runReal(cwd, ...words));

  // The last job of the shop: its maps are those of its sheets.
  cpSync(boilerBook, join(cwd, "last"), { recursive: true });
  cpSync(join(here, "imports"), join(cwd, "last", "imports"), { recursive: true });

  await run("new", "new", "tq423", "--from", "last", ...Object.entries(begun).flat());
  typed.set("the command that begins the book", Object.keys(begun).length);
  for (const scan of scans) {
    const to = join(book, "files", "tq423", basename(dirname(scan)), basename(scan));
    mkdirSync(dirname(to), { recursive: true });
    cpSync(join(root, scan), to);
  }
  await run("originals", "originals", "tq423", "--add");
  const take = (name: string) =>
    run(`import ${name}`, "import", join(here, "sheets", `${name}.xlsx`), "--book", "tq423", "--write");
  for (const path of jsonFiles(join(here, "typed"))) {
    const target = join(book, path);
    const after = parsed(readFileSync(join(here, "typed", path), "utf8"));
    const before = readOr(target);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, `${JSON.stringify(after, null, 2)}\n`);
    typed.set(path, newLeaves(before, after));
  }
  for (const name of workbooks) await take(name);
  // The maker has no calculation papers: the designer signs for what is recomputed here, before the plan's step that
  // examines the design.
  await run("sheet", "sheet", "calculation-sheet", "--owed", "--book", "tq423", "--out", "calculations.xlsx");
  const signed = await fillIn(join(cwd, "calculations.xlsx"), { signatures: { Person: "R1", Date: "2026-03-04" } });
  typed.set("persons and days beside what the designer signs for", signed);
  await run("import calculations", "import", "calculations.xlsx", "--book", "tq423", "--write");
  await take(lastWorkbook);
  // Whoever did not type compares each paper with what was read from it: once for each paper.
  const papers = readFrom(book);
  const comparison = { "--by": "B5", "--on": "2026-07-16", "--typed-by": "B4" };
  const compared = [papers.join(","), ...Object.entries(comparison).flat()];
  await run("compared", "compared", ...compared, "--book", "tq423", "--write");
  typed.set("papers that were compared, by whom and when", papers.length + Object.keys(comparison).length);
  await run("check", "check", "tq423", "--short");
  return { book, steps, typed };
}

/** Ids of the scans of this job from which any record was read. */
function readFrom(book: string): readonly string[] {
  const { records } = readBook(book);
  const added = records.filter(({ kind, file }) => kind === "original" && file === "originals/added-1.json");
  const named = new Set(records.map(({ value: { source } }) => (isObject(source) ? source["original"] : undefined)));
  return added.flatMap(({ id }) => (named.has(id) ? [id] : []));
}

export const remove = ({ book }: Way): void => {
  rmSync(dirname(book), { recursive: true, force: true });
};

const jsonFiles = (dir: string): readonly string[] =>
  readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".json"))
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)))
    .sort();

const parsed = (text: string): Json => JSON.parse(text) as Json;

function readOr(path: string): Json {
  try {
    return parsed(readFileSync(path, "utf8"));
  } catch {
    return {};
  }
}

/** Values that stand in `after` and not in the same place before; the kind, which the file is for, is not counted. */
export function newLeaves(before: Json | undefined, after: Json): number {
  if (isList(after))
    return after.reduce<number>((sum, one, at) => sum + newLeaves(isList(before) ? before[at] : undefined, one), 0);
  if (isObject(after))
    return Object.entries(after).reduce(
      (sum, [name, one]) => (name === "kind" ? sum : sum + newLeaves(isObject(before) ? before[name] : undefined, one)),
      0,
    );
  return after === before ? 0 : 1;
}

/** The maps of the workbooks, as a shop keeps them. */
export const shopMaps = (): ReadonlyMap<string, Json> =>
  new Map(
    readdirSync(join(here, "imports")).map((name) => [name, parsed(readFileSync(join(here, "imports", name), "utf8"))]),
  );

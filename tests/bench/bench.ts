import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";
import { performance } from "node:perf_hooks";
import { fileURLToPath } from "node:url";
import { packageRoot } from "../../src/root.ts";
import { generateBook } from "./generate.ts";
import { measureSteam } from "./steam.ts";

/**
 * `npm run bench [runs] [joints]`: whole processes, medians of several runs, and ratios against the floor measured in
 * the same run: parsing and schema validation alone for `check`, bare file writes for `build`. Last, properties of steam
 * against another implementation; `npm run bench steam [runs]` measures these alone.
 */
const self = fileURLToPath(import.meta.url);
const cli = join(packageRoot, "dist/src/cli.js");
const demo = join(packageRoot, "demo-data/air-receiver/book");
// A child says its own peak memory when it ends.
const preload = `data:text/javascript,process.on("exit",()=>process.stderr.write("\\npeak-kb "+process.resourceUsage().maxRSS+"\\n"))`;

interface Measured {
  readonly seconds: number;
  readonly megabytes: number;
}

function runOnce(args: readonly string[]): Measured {
  const started = performance.now();
  const done = spawnSync(process.execPath, ["--import", preload, ...args], { encoding: "utf8", maxBuffer: 1 << 28 });
  const seconds = (performance.now() - started) / 1000;
  if (done.status !== 0 && done.status !== 1)
    throw new Error(`${args.join(" ")} ended with ${String(done.status)}: ${done.stderr}`);
  return { seconds, megabytes: Number(/peak-kb (\d+)/.exec(done.stderr)?.[1] ?? 0) / 1024 };
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

function measureAll(title: string, book: string, runs: number): void {
  const out = mkdtempSync(join(tmpdir(), "databook-bench-"));
  const issue = join(out, "issue");
  runOnce([cli, "build", book, "--out", issue]);
  const tasks: readonly (readonly [string, readonly string[]])[] = [
    ["floor: parse and schemas", [self, "--task", "parse", book]],
    ["floor: write the files", [self, "--task", "write", issue, join(out, "copy")]],
    ["check", [cli, "check", book]],
    ["site alone", [self, "--task", "site", book]],
    ["PDF alone", [self, "--task", "pdf", book]],
    ["build", [cli, "build", book, "--out", issue]],
  ];
  const results = new Map(tasks.map(([name]) => [name, [] as Measured[]]));
  // Interleaved, so that a slow moment of the machine meets every task.
  for (let run = 0; run < runs; run++) for (const [name, args] of tasks) results.get(name)?.push(runOnce(args));
  const of = (name: string) => median((results.get(name) ?? []).map(({ seconds }) => seconds));
  console.log(`\n${title} (median of ${runs})`);
  console.log("task                          seconds   × parse   × write   peak MB");
  for (const [name] of tasks) {
    const all = results.get(name) ?? [];
    const seconds = of(name);
    const columns = [
      seconds.toFixed(2),
      (seconds / of("floor: parse and schemas")).toFixed(1),
      (seconds / of("floor: write the files")).toFixed(1),
      String(Math.round(Math.max(...all.map(({ megabytes }) => megabytes)))),
    ];
    console.log(name.padEnd(28) + columns.map((text) => text.padStart(10)).join(""));
  }
  rmSync(out, { recursive: true, force: true });
}

/** One task in a process of its own, which loads only what the task needs. */
async function task(name: string, from: string, to: string): Promise<void> {
  if (name === "write") {
    copyFiles(from, to);
    return;
  }
  const { loadKinds } = await import("../../src/load/kinds.ts");
  const { loadBook } = await import("../../src/load/book-files.ts");
  const kinds = loadKinds([join(packageRoot, "schemas")]);
  const read = { ...loadBook(from, kinds), kinds };
  if (name === "parse") return;
  const { layOut, judgeBook } = await import("../../src/pipeline.ts");
  const publication = await layOut(judgeBook(read));
  if (name === "site") {
    const { siteFiles } = await import("../../src/publish/html/index.ts");
    await siteFiles(publication);
    return;
  }
  const { bookPdf } = await import("../../src/publish/pdf/index.ts");
  await bookPdf(publication, (path) => readFileSync(join(from, path)));
}

function copyFiles(from: string, to: string): void {
  const walk = (dir: string): string[] =>
    readdirSync(dir).flatMap((entry) => {
      const path = join(dir, entry);
      return statSync(path).isDirectory() ? walk(path) : [path];
    });
  for (const path of walk(from)) {
    const target = join(to, relative(from, path));
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, readFileSync(path));
  }
}

const [first, name = "", from = "", to = ""] = process.argv.slice(2);
if (first === "--task") await task(name, from, to);
else if (first === "steam") measureSteam(Number(name === "" ? 15 : name));
else {
  const runs = Number(first ?? 5);
  const joints = Number(name === "" ? 2000 : name);
  measureAll("demonstration: air receiver", demo, runs);
  const large = mkdtempSync(join(tmpdir(), "databook-bench-book-"));
  const count = generateBook(demo, join(large, "book"), joints);
  measureAll(`generated: ${count} joints`, join(large, "book"), Math.min(runs, 3));
  rmSync(large, { recursive: true, force: true });
  measureSteam(3 * runs);
}

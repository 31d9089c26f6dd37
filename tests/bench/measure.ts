import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { packageRoot } from "../../src/root.ts";

export const cli: string = join(packageRoot, "dist/src/bundled/cli.js");
export const tasks: string = join(packageRoot, "dist/tests/bench/tasks.js");
// A child says its own processor time and peak memory when it ends.
const preload = `data:text/javascript,process.on("exit",()=>{const u=process.resourceUsage();process.stderr.write("\\nused "+(u.userCPUTime+u.systemCPUTime)+" "+u.maxRSS+"\\n")})`;

export interface Measured {
  readonly seconds: number;
  /** Of all threads. */
  readonly processor: number;
  readonly megabytes: number;
}

interface Task {
  readonly title: string;
  args(book: string, out: string): readonly string[];
}

const parse = "floor: parse and schemas";
const write = "floor: write the files";

/** What can be measured of a book, in the order it is run: writing copies the issue that `build` has just left. */
const measured: ReadonlyMap<string, readonly Task[]> = new Map([
  ["check", [{ title: "check", args: (book) => [cli, "check", book] }]],
  ["site", [{ title: "site alone", args: (book) => [tasks, "site", book] }]],
  ["pdf", [{ title: "PDF alone", args: (book) => [tasks, "pdf", book] }]],
  [
    "build",
    [
      { title: "build", args: (book, out) => [cli, "build", book, "--out", join(out, "issue")] },
      { title: write, args: (_book, out) => [tasks, "write", join(out, "issue"), join(out, "copy")] },
    ],
  ],
]);

/** Names of the tasks, for the command line. */
export const taskNames: readonly string[] = [...measured.keys()];

/** A whole process. It must find nothing that blocks: a book with findings is another amount of work. */
export function runOnce(args: readonly string[]): Measured {
  const started = performance.now();
  const done = spawnSync(process.execPath, ["--import", preload, ...args], { encoding: "utf8", maxBuffer: 1 << 28 });
  const seconds = (performance.now() - started) / 1000;
  if (done.status !== 0)
    throw new Error(`${args.join(" ")} ended with ${String(done.status ?? done.signal)}: ${done.stderr}${done.stdout}`);
  const [, processor = "0", peak = "0"] = /\nused (\d+) (\d+)\n/.exec(done.stderr) ?? [];
  return { seconds, processor: Number(processor) / 1e6, megabytes: Number(peak) / 1024 };
}

export const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** Measures the tasks named in `only` on one book and prints a line for each. */
export function measureBook(title: string, book: string, runs: number, only: readonly string[]): void {
  const out = mkdtempSync(join(tmpdir(), "databook-bench-"));
  const chosen: readonly Task[] = [
    { title: parse, args: () => [tasks, "parse", book] },
    ...[...measured].flatMap(([name, own]) => (only.includes(name) ? own : [])),
  ];
  const results = new Map(chosen.map((task) => [task.title, [] as Measured[]]));
  try {
    // Interleaved, so that a slow moment of the machine meets every task.
    for (let run = 0; run < runs; run++)
      for (const task of chosen) {
        results.get(task.title)?.push(runOnce(task.args(book, out)));
        rmSync(join(out, "copy"), { recursive: true, force: true });
      }
  } finally {
    rmSync(out, { recursive: true, force: true });
  }
  const of = (name: string) => median((results.get(name) ?? []).map(({ seconds }) => seconds));
  console.log(`\n${title} (median of ${runs})`);
  console.log("task                          seconds processor   × parse   × write   peak MB");
  for (const [name, all] of results) {
    const against = (floor: string) => (of(floor) === 0 ? "" : (of(name) / of(floor)).toFixed(1));
    const columns = [
      of(name).toFixed(2),
      median(all.map(({ processor }) => processor)).toFixed(2),
      against(parse),
      against(write),
      String(Math.round(Math.max(...all.map(({ megabytes }) => megabytes)))),
    ];
    console.log(name.padEnd(28) + columns.map((text) => text.padStart(10)).join(""));
  }
}

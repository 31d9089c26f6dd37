import { engine } from "../../src/commands/engine.ts";
import { runCommandLine } from "../../src/commands/run.ts";
import { noInk } from "../../src/report/text.ts";
import type { Ran } from "../commands/fakes.ts";

/** Runs a command line with the shipped engine, standing in a folder; the day is fixed. */
export async function runReal(cwd: string, ...words: readonly string[]): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const exit = await runCommandLine(words, {
    cwd,
    today: () => "2026-11-30",
    print: (text) => void out.push(text),
    say: (text) => void err.push(text),
    progress: () => undefined,
    ink: noInk,
    sayInk: noInk,
    tool: () => Promise.resolve(engine.tool),
    loadEngine: () => Promise.resolve(engine),
  });
  return { exit, out: out.join(""), err: err.join(""), stages: [] };
}

import type { Effects } from "../../src/commands/command.ts";
import { engine } from "../../src/commands/engine.ts";
import { runCommandLine } from "../../src/commands/run.ts";
import { noInk } from "../../src/report/text.ts";
import type { Ran } from "../commands/fakes.ts";

/** Runs a command line with the shipped engine, standing in a folder; the day is fixed. */
export const runReal = (cwd: string, ...words: readonly string[]): Promise<Ran> => runIn({ cwd }, ...words);

interface Around {
  readonly cwd: string;
  readonly interrupted?: Effects["interrupted"];
  /** Hear what is printed and said while the command runs. */
  readonly out?: string[];
  readonly err?: string[];
}

/** The same, where a test has to stop the command or to look on. */
export async function runIn(around: Around, ...words: readonly string[]): Promise<Ran> {
  const { cwd, out = [], err = [] } = around;
  const exit = await runCommandLine(words, {
    cwd,
    today: () => "2026-11-30",
    print: (text) => void out.push(text),
    say: (text) => void err.push(text),
    progress: () => undefined,
    interrupted: around.interrupted ?? (() => Promise.resolve()),
    ink: noInk,
    sayInk: noInk,
    tool: () => Promise.resolve(engine.tool),
    loadEngine: () => Promise.resolve(engine),
    prepare: () => undefined,
  });
  return { exit, out: out.join(""), err: err.join(""), stages: [] };
}

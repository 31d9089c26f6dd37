import { ownChoice } from "../../src/model/basis.ts";
import type { JudgedBook } from "../../src/model/book.ts";
import type { Definitions } from "../../src/model/definitions.ts";
import type { Finding } from "../../src/model/finding.ts";
import type { Block } from "../../src/publish/blocks.ts";
import type { Answer } from "../../src/publish/live/server.ts";
import type { Engine, Exit } from "../../src/commands/command.ts";
import { runCommandLine } from "../../src/commands/run.ts";
import { noInk } from "../../src/report/text.ts";
import { locator } from "../report/judged.ts";
import { sampleFiles } from "../publish/issue/folders.ts";

export interface Ran {
  readonly exit: Exit;
  /** What went to standard output and standard error. */
  readonly out: string;
  readonly err: string;
  readonly stages: readonly string[];
}

export interface Setting {
  readonly cwd?: string;
  readonly judged: JudgedBook;
  readonly fatal?: readonly Finding[];
  readonly chain?: Extract<Block, { type: "chain" }>;
  readonly definitions?: Definitions;
  readonly live?: (path: string) => Promise<Answer>;
  readonly onPublish?: () => unknown;
}

/** Runs a command line on an engine that gives this judged book, whatever the folder holds. */
export async function runOn(setting: Setting, ...words: readonly string[]): Promise<Ran> {
  const { judged, fatal = [] } = setting;
  const engine: Engine = {
    tool: "databook 0.1.0",
    changedSinceBuild: () => [],
    builtIns: [
      {
        id: "link-form",
        title: "A link is well formed",
        severity: "nonconformity",
        basis: ownChoice("one way to name a record"),
      },
    ],
    readBook: (dir) => ({ ...judged.loaded, dir, fatal, locator, kinds: judged.definitions.kinds }),
    expiries: [],
    judgeExpiries: (read) => ({ ...judged, loaded: read }),
    judgeBook: (read) => ({ ...judged, loaded: read }),
    judgingAgain: () => (read) => ({ ...judged, loaded: read }),
    async *publishBook() {
      await Promise.resolve(setting.onPublish?.());
      yield* sampleFiles();
    },
    liveSite: () => Promise.resolve(setting.live ?? (() => Promise.reject(new Error("not asked for")))),
    traceRecord: () => Promise.resolve(setting.chain),
    definitions: () => setting.definitions ?? judged.definitions,
  };
  const out: string[] = [];
  const err: string[] = [];
  const stages: string[] = [];
  const exit = await runCommandLine(words, {
    cwd: setting.cwd ?? "/",
    today: () => "2026-11-30",
    print: (text) => void out.push(text),
    say: (text) => void err.push(text),
    progress: (stage) => void stages.push(stage),
    interrupted: () => Promise.resolve(),
    ink: noInk,
    sayInk: noInk,
    tool: () => Promise.resolve(engine.tool),
    loadEngine: () => Promise.resolve(engine),
    prepare: () => undefined,
  });
  return { exit, out: out.join(""), err: err.join(""), stages };
}

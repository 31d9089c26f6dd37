import { expiries, shippedDefinitions, tableFolder } from "../definitions.ts";
import { ForeignWorkEnded } from "../foreign/ended.ts";
import { keepTextsIn } from "../foreign/texts.ts";
import { builtInRules } from "../judge/built-in.ts";
import { fileRules } from "../load/file-rules.ts";
import { loadKinds } from "../load/kinds.ts";
import type { Remembered } from "../judge/again.ts";
import type { Told } from "../model/page-text.ts";
import {
  judgeAgain,
  judgeBook,
  judgeRemembering,
  layOut,
  publishBook,
  readBook,
  traceRecord,
  type ReadBook,
} from "../pipeline.ts";
import { ChangedWhileBuilding } from "../publish/changed.ts";
import { checkDefinitions } from "../plan/check-definitions.ts";
import { changedSinceBuild } from "../proof.ts";
import { packageRoot, toolName } from "../root.ts";
import { join } from "node:path";
import { UsageError, type Engine } from "./command.ts";

/** The shipped pipeline, as commands use it; texts of originals are kept in the folder from run to run. */
export function engineKeepingIn(folder: string | undefined): Engine {
  keepTextsIn(folder);
  return engine;
}

/** Texts of originals are read in threads of their own, while the judge does what needs none of them. */
function withTexts<T>(read: ReadBook, judged: () => T, told?: Told): T {
  try {
    read.texts?.begin(told);
    return judged();
  } catch (error) {
    if (error instanceof ForeignWorkEnded) throw new UsageError(error.message);
    throw error;
  }
}

export const engine: Engine = {
  tool: toolName,
  changedSinceBuild: () => changedSinceBuild({ schemas: join(packageRoot, "schemas"), tables: tableFolder }),
  builtIns: [...fileRules, ...builtInRules],
  readBook(dir, options) {
    try {
      return readBook(dir, options);
    } catch (error) {
      if (error instanceof ForeignWorkEnded) throw new UsageError(error.message);
      throw error;
    }
  },
  expiries,
  judgeExpiries(read) {
    const all = shippedDefinitions(read.kinds);
    return judgeBook(read, { ...all, rules: expiries, unjudged: all.rules });
  },
  judgeBook(read, told) {
    return withTexts(read, () => judgeBook(read), told);
  },
  judgingAgain() {
    let before: Remembered | undefined;
    return (read) => {
      const known = before;
      before = withTexts(read, () => (known === undefined ? judgeRemembering(read) : judgeAgain(known, read)));
      return before.judged;
    };
  },
  async *publishBook(judged, progress) {
    try {
      yield* publishBook(judged, progress);
    } catch (error) {
      if (error instanceof ChangedWhileBuilding || error instanceof ForeignWorkEnded)
        throw new UsageError(error.message);
      throw error;
    }
  },
  async liveSite(judged, change) {
    const { liveSite } = await import("../publish/live/site.ts");
    return liveSite(judged, await layOut(judged, change));
  },
  traceRecord,
  definitions() {
    const definitions = shippedDefinitions(loadKinds([join(packageRoot, "schemas")]));
    // What explains a definition refuses a wrong one as judging does, in the same words.
    checkDefinitions(definitions);
    return definitions;
  },
};

import { shippedDefinitions } from "../definitions.ts";
import { exceptionRules } from "../judge/exceptions.ts";
import { fieldRules } from "../judge/fields.ts";
import { milestoneRules } from "../judge/milestones.ts";
import { originalRules } from "../judge/originals.ts";
import { orphanRules } from "../judge/orphans.ts";
import { profileRules } from "../judge/profile.ts";
import { tableRules } from "../judge/tables.ts";
import { linkRules } from "../link/graph.ts";
import { fileRules } from "../load/file-rules.ts";
import { loadKinds } from "../load/kinds.ts";
import { judgeBook, publishBook, readBook, traceRecord } from "../pipeline.ts";
import { ChangedWhileBuilding } from "../publish/issue-files.ts";
import { packageRoot, toolName } from "../root.ts";
import { join } from "node:path";
import { UsageError, type Engine } from "./command.ts";

/** The shipped pipeline, as commands use it. */
export const engine: Engine = {
  tool: toolName,
  builtIns: [
    ...fileRules,
    ...linkRules,
    ...fieldRules,
    ...originalRules,
    ...orphanRules,
    ...profileRules,
    ...tableRules,
    ...milestoneRules,
    ...exceptionRules,
  ],
  readBook: (dir) => readBook(dir),
  judgeBook: (read) => judgeBook(read),
  async publishBook(judged) {
    try {
      return await publishBook(judged);
    } catch (error) {
      if (error instanceof ChangedWhileBuilding) throw new UsageError(error.message);
      throw error;
    }
  },
  traceRecord,
  definitions: () => shippedDefinitions(loadKinds([join(packageRoot, "schemas")])),
};

import { hasCode } from "../publish/issue/folder.ts";
import { IssueError } from "../publish/issue/issue-error.ts";
import { UsageError, type Effects, type Engine, type Exit } from "./command.ts";
import { parseCommandLine } from "./command-line.ts";
import { commandHelp, toolHelp } from "./help.ts";
import { commands } from "./index.ts";

/** The effects of a run, with an engine that is loaded only when a command needs it: help must be quick. */
export interface Surroundings extends Omit<Effects, "engine"> {
  readonly tool: () => Promise<string>;
  readonly loadEngine: () => Promise<Engine>;
}

/** Does what a command line asks for. Never throws: what went wrong is said, and is exit 2. */
export async function runCommandLine(words: readonly string[], around: Surroundings): Promise<Exit> {
  try {
    const line = parseCommandLine(words, commands);
    switch (line.type) {
      case "version":
        around.print(`${await around.tool()}\n`);
        return 0;
      case "help":
        around.print(line.command === undefined ? toolHelp(commands, await around.tool()) : commandHelp(line.command));
        return 0;
      case "run":
        return await line.command.run(line.given, { ...around, engine: await around.loadEngine() });
    }
  } catch (error) {
    around.say(`${faultText(error)}\n`);
    return 2;
  }
}

function faultText(error: unknown): string {
  if (error instanceof UsageError || error instanceof IssueError) return error.message;
  if (
    hasCode(
      error,
      "ENOSPC",
      "EACCES",
      "EPERM",
      "EROFS",
      "EMFILE",
      "ENOENT",
      "ENOTDIR",
      "EISDIR",
      "EBUSY",
      "EXDEV",
      "EEXIST",
      "ENOTEMPTY",
    )
  )
    return `the file system refused: ${error instanceof Error ? error.message : ""}`;
  const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return `this is a fault of the program, not of the book:\n${stack}`;
}

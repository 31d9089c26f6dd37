import type { Effects, Engine, Exit } from "./command.ts";
import { parseCommandLine } from "./command-line.ts";
import { faultText } from "./fault-text.ts";
import { commandHelp, toolHelp } from "./help.ts";
import { commands } from "./index.ts";

/** The effects of a run, with an engine that is loaded only when a command needs it: help must be quick. */
export interface Surroundings extends Omit<Effects, "engine"> {
  readonly tool: () => Promise<string>;
  readonly loadEngine: () => Promise<Engine>;
  /** Begins what a command that reads a book will need soon. */
  readonly prepare: () => void;
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
        if (line.command.readsBook === true) around.prepare();
        return await line.command.run(line.given, { ...around, engine: await around.loadEngine() });
    }
  } catch (error) {
    around.say(`${faultText(error)}\n`);
    return 2;
  }
}

import { basename, resolve } from "node:path";
import { FolderRefused, writeNewFolder } from "../begin/new-folder.ts";
import { guideText } from "../begin/shipped.ts";
import { starterFiles, type Beginning } from "../begin/starter.ts";
import { editorSchemas } from "../load/compose.ts";
import { schemaFolder } from "../load/own-schemas.ts";
import type { Definitions } from "../model/definitions.ts";
import { formatOption, UsageError, type Command, type Effects, type Given } from "./command.ts";
import { chosen, dayOption } from "./choose.ts";
import { tellNew } from "./new-text.ts";
import { renewSchemas } from "./new-schemas.ts";

export const begin: Command = {
  name: "new",
  summary: "begin a book: the smallest there is, judged at once",
  arguments: [{ name: "folder", required: true, means: "folder of the new book; it is made, or is empty" }],
  options: {
    register: {
      value: "NAME",
      means: "register of what the book must contain; all are listed by databook explain registers",
    },
    profile: { value: "NAME", means: "set of parameters it is judged with; cautious if not given" },
    number: { value: "TEXT", means: "number of the book; the name of the folder if not given" },
    title: { value: "TEXT", means: "title on its front page; the title of the register if not given" },
    serial: { value: "TEXT", means: "serial number of the equipment, which begins its record" },
    "order-date": { value: "DAY", means: "day of the order, such as 2026-03-09: the first milestone is reached on it" },
    schemas: { means: "renew the schemas that go with the book in that folder, and do nothing else" },
    format: formatOption(["text", "json"]),
  },
  help: [
    "Writes book.json, issue.json with the milestones that the register and the fields use, none of them reached before the " +
      `order, a guide (README.md), and in ${schemaFolder}/ the schemas with which an editor completes fields. Nothing is written ` +
      "that was not given: what is missing is for check to say. Evidence counts up to the day of the order, or up to today where " +
      "that is not given: dataCutOff in issue.json, raised as the job goes on.",
    `${schemaFolder}/ is no part of the evidence. check notes when it is of another version than the program; --schemas renews it.`,
    "A folder that holds anything is refused, and one inside a book or an issue.",
    "Exit 0: the book was begun, whatever it still lacks. Exit 2: it was not.",
  ],
  async run(given, effects) {
    const dir = resolve(effects.cwd, given.arguments[0] ?? "");
    const definitions = effects.engine.definitions();
    if (given.options.has("schemas")) return renewSchemas(dir, given, definitions, effects);
    const beginning = beginningOf(dir, given, definitions, effects);
    const texts = new Map([
      ...starterFiles(beginning, definitions.kinds, guideText()),
      ...[...editorSchemas(definitions.kinds)].map(([name, text]) => [`${schemaFolder}/${name}`, text] as const),
    ]);
    await write(dir, texts);
    return tellNew(dir, beginning, texts, given.options.get("format"), effects);
  },
};

async function write(dir: string, texts: ReadonlyMap<string, string>): Promise<void> {
  try {
    await writeNewFolder(dir, { texts });
  } catch (error) {
    if (error instanceof FolderRefused) throw new UsageError(error.message);
    throw error;
  }
}

function beginningOf(dir: string, { options }: Given, definitions: Definitions, effects: Effects): Beginning {
  const register = chosen("register", options.get("register"), definitions.registers);
  const profile = chosen("profile", options.get("profile") ?? definitions.profiles[0]?.id, definitions.profiles);
  const ordered = dayOption("order-date", options.get("order-date"));
  const serial = options.get("serial");
  return {
    number: options.get("number") ?? basename(dir),
    title: options.get("title") ?? register.title,
    register,
    profile: profile.id,
    cutOff: ordered ?? effects.today(),
    ...(ordered !== undefined && { ordered }),
    ...(serial !== undefined && { serial }),
    schemas: schemaFolder,
  };
}

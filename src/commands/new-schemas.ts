import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { editorSchemas } from "../load/compose.ts";
import { schemaFolder } from "../load/own-schemas.ts";
import type { Definitions } from "../model/definitions.ts";
import { standingAt } from "../publish/issue/folder.ts";
import { shownPath } from "./books.ts";
import { UsageError, type Effects, type Exit, type Given } from "./command.ts";

/** Writes the schemas of this version into a book; no other file of it is touched. */
export async function renewSchemas(
  dir: string,
  { options }: Given,
  { kinds }: Pick<Definitions, "kinds">,
  effects: Effects,
): Promise<Exit> {
  const others = [...options.keys()].filter((name) => name !== "schemas");
  if (others.length > 0) throw new UsageError(`--schemas only renews schemas; leave out --${others.join(" and --")}`);
  if ((await standingAt(join(dir, "book.json")).catch(() => "nothing")) !== "other")
    throw new UsageError(`"${dir}" holds no book.json; --schemas renews the schemas of a book that is there`);
  const folder = join(dir, schemaFolder);
  const standing = await standingAt(folder);
  if (standing === "link" || standing === "other")
    throw new UsageError(`"${folder}" is ${standing === "link" ? "a link" : "no folder"}; move it away first`);
  await mkdir(folder, { recursive: true });
  const schemas = editorSchemas(kinds);
  for (const [name, text] of schemas) {
    const path = join(folder, name);
    if (!["nothing", "other"].includes(await standingAt(path)))
      throw new UsageError(`"${path}" is no file; move it away first`);
    await writeFile(path, text);
  }
  effects.print(`${schemas.size} schemas written to ${shownPath(folder, effects.cwd)}\n`);
  return 0;
}

import { rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { folderBeside } from "./beside.ts";

/** Writes a file by one rename, so that there is never a moment without it. */
export async function putFile(path: string, text: string): Promise<void> {
  const aside = await folderBeside("writing", path);
  try {
    await writeFile(join(aside, "file"), text);
    await rename(join(aside, "file"), path);
  } finally {
    await rm(aside, { recursive: true, force: true });
  }
}

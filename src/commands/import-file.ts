import { readFile, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { hasCode, standingAt } from "../publish/issue/folder.ts";
import { usualSheetLimits } from "../sheets/limits.ts";
import { UsageError } from "./command.ts";

/** A map is named like its file, in portable signs. */
export function nameOfMap(given: string | undefined, file: string): string {
  if (given !== undefined) {
    if (/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/.test(given) && !given.endsWith(".")) return given.replace(/\.json$/, "");
    throw new UsageError(`"${given}" is no name of a map: letters, digits, points, hyphens and underscores`);
  }
  const name = file
    .replace(/\.[^.]*$/, "")
    .normalize("NFKD")
    .replaceAll(/[^A-Za-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "")
    .toLowerCase()
    .slice(0, 60);
  return name === "" ? "sheet" : name;
}

/** The bytes of a sheet, no more than are read; whether another program holds it open. */
export async function bytesOf(file: string): Promise<{ readonly bytes: Buffer; readonly openElsewhere: boolean }> {
  const shown = basename(file);
  try {
    const { size } = await stat(file).catch((error: unknown) => {
      if (hasCode(error, "ENOENT", "ENOTDIR")) throw new UsageError(`there is no file "${file}"`);
      throw error;
    });
    if (size > usualSheetLimits.bytes)
      throw new UsageError(
        `${shown} has ${Math.ceil(size / 2 ** 20)} MB; at most ${usualSheetLimits.bytes / 2 ** 20} are read: save the sheet that is wanted alone`,
      );
    const bytes = await readFile(file);
    // Programs leave such a file beside one that they hold open.
    const owners = [`~$${shown}`, `~$${shown.slice(2)}`, `.~lock.${shown}#`].map((name) => join(dirname(file), name));
    const standing = await Promise.all(owners.map((path) => standingAt(path).catch(() => "nothing" as const)));
    return { bytes, openElsewhere: standing.some((one) => one === "other") };
  } catch (error) {
    if (hasCode(error, "EISDIR")) throw new UsageError(`"${shown}" is a folder; name a workbook or a CSV file`);
    if (hasCode(error, "EBUSY", "EACCES", "EPERM"))
      throw new UsageError(
        `${shown} cannot be read: it is open in another program, or not yours to read; close it there and try again`,
      );
    throw error;
  }
}

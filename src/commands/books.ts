import { relative, resolve } from "node:path";
import type { JudgedBook } from "../model/book.ts";
import { standingAt } from "../publish/issue/folder.ts";
import { placeFindings } from "../report/report.ts";
import { fatalText } from "../report/text.ts";
import { UsageError, type Effects, type ReadBook } from "./command.ts";

/** Folder of the book a command is about. */
export async function bookFolder(name: string | undefined, effects: Effects): Promise<string> {
  const shown = name ?? "records";
  const dir = resolve(effects.cwd, shown);
  // The dot at the end follows a link to the folder, if it is one.
  if ((await standingAt(`${dir}/.`).catch(() => "other")) !== "folder")
    throw new UsageError(
      name === undefined
        ? `there is no folder "records" here; name the folder of the book`
        : `there is no folder "${shown}"; name the folder that holds book.json`,
    );
  return dir;
}

/** Reads a book; when it cannot be judged at all, says why and gives nothing. */
export function readOrSay(dir: string, effects: Effects): ReadBook | undefined {
  effects.progress("reading");
  const read = effects.engine.readBook(dir);
  if (read.fatal.length === 0) return read;
  effects.say(fatalText(placeFindings(read.fatal, read.locator), effects.sayInk));
  return undefined;
}

/** Reads and judges a book; when it cannot be judged at all, says why and gives nothing. */
export function judgeOrSay(dir: string, effects: Effects): JudgedBook | undefined {
  const read = readOrSay(dir, effects);
  if (read === undefined) return undefined;
  effects.progress("judging");
  return effects.engine.judgeBook(read);
}

/** A path as a person here would type it. */
export function shownPath(path: string, cwd: string): string {
  const way = relative(cwd, path);
  return way !== "" && !way.startsWith("..") ? way.replaceAll("\\", "/") : path;
}

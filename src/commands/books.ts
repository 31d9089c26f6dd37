import { basename, dirname, join, relative, resolve } from "node:path";
import { schemaFolder } from "../load/own-schemas.ts";
import type { JudgedBook } from "../model/book.ts";
import { landingPath, standingAt } from "../publish/issue/folder.ts";
import { placeFindings } from "../report/report.ts";
import { fatalText } from "../report/text.ts";
import { UsageError, type Effects, type ReadBook } from "./command.ts";

/**
 * Folder of the book a command is about. Where none is named: the nearest, from here upward, that holds book.json itself or
 * in a folder `records`.
 */
export async function bookFolder(name: string | undefined, effects: Effects): Promise<string> {
  const named = name === undefined ? ((await bookInReach(effects.cwd)) ?? "records") : name;
  const dir = resolve(effects.cwd, named);
  if (await isFolder(dir)) return dir;
  throw new UsageError(
    name === undefined
      ? `there is no folder "records" here and no book around it; name the folder of the book`
      : `there is no folder "${name}"; name the folder that holds book.json`,
  );
}

async function bookInReach(cwd: string): Promise<string | undefined> {
  for (let at = resolve(cwd); ; at = dirname(at)) {
    // The schemas that go with a book are no book, though one of them is named like it.
    for (const dir of basename(at) === schemaFolder ? [] : [at, join(at, "records")])
      if ((await standing(join(dir, "book.json"))) === "other") return dir;
    if (dirname(at) === at) return undefined;
  }
}

const standing = (path: string) => standingAt(path).catch(() => "nothing" as const);

/** The dot at the end follows a link to a folder. */
const isFolder = async (path: string) => (await standing(`${path}/.`)) === "folder";

/**
 * Where the results of a book go, wherever one stands: `out/` beside its folder. A link to the folder leads to the same
 * place, so that a book has one folder of issues, which knows every final revision.
 */
export async function resultsBeside(dir: string): Promise<string> {
  const own = (await standingAt(dir)) === "link" ? await landingPath(dir) : resolve(dir);
  if (dirname(own) === own) throw new UsageError(`nothing lies beside "${own}"; say with --out where the issue goes`);
  return join(dirname(own), "out");
}

/** Reads a book; when it cannot be judged at all, says why and gives nothing. */
export function readOrSay(dir: string, effects: Effects): ReadBook | undefined {
  effects.progress("reading");
  const read = effects.engine.readBook(dir);
  if (read.fatal.length === 0) return read;
  effects.say(fatalText(placeFindings(read.fatal, read.locator), effects.sayInk));
  return undefined;
}

/**
 * Reads a book, or a folder of records without book.json and issue.json: a shelf, which is somebody's own to keep. When it is
 * neither, says why and gives nothing.
 */
export async function readOwnFolder(dir: string, effects: Effects): Promise<ReadBook | undefined> {
  const heads = await Promise.all(["book.json", "issue.json"].map((name) => standing(join(dir, name))));
  if (heads.every((one) => one === "nothing")) {
    const shelf = effects.engine.readBook(dir, { isShelf: true });
    if (shelf.records.length > 0) return shelf;
  }
  return readOrSay(dir, effects);
}

/** Reads and judges a book; when it cannot be judged at all, says why and gives nothing. */
export function judgeOrSay(dir: string, effects: Effects): JudgedBook | undefined {
  const read = readOrSay(dir, effects);
  if (read === undefined) return undefined;
  sayChanged(effects);
  effects.progress("judging");
  const told = (done: number, of: number) => effects.progress(`reading the text of originals, ${done} of ${of}`);
  return effects.engine.judgeBook(read, told);
}

/** Whoever judges by other tables than were shipped is to know it: the verdicts are those of what lies there. */
function sayChanged({ engine, say }: Effects): void {
  for (const name of engine.changedSinceBuild())
    say(
      `note: the shipped ${name} differ from those the program was built with; the book is judged by them as they are. ` +
        "Install the package again, or in a clone npm run build\n",
    );
}

/** A path as a person here would type it. */
export function shownPath(path: string, cwd: string): string {
  const way = relative(cwd, path);
  return way !== "" && !way.startsWith("..") ? way.replaceAll("\\", "/") : path;
}

import { stat } from "node:fs/promises";
import { resolve } from "node:path";
import { readBytes } from "../load/read-file.ts";
import { readEarlier, type Earlier } from "../report/earlier.ts";
import { plain } from "../report/plain.ts";
import type { Report } from "../report/report.ts";
import { UsageError } from "./command.ts";

/** The earlier report a command line names; throws a `UsageError` that says what the file is not. */
export async function earlierReport(shown: string, cwd: string, report: Pick<Report, "book">): Promise<Earlier> {
  const path = resolve(cwd, shown);
  const refuse = (problem: string) => new UsageError(`--since "${plain(shown)}" ${problem}`);
  const standing = await stat(path).catch(() => undefined);
  if (standing === undefined)
    throw refuse("is not there; name the findings.json of an issue, or what check --format json printed");
  if (!standing.isFile()) throw refuse("is no file; name the findings.json in it, or what check --format json printed");
  const bytes = readBytes(path);
  if (!Buffer.isBuffer(bytes)) throw refuse(`cannot be read: ${bytes.message}`);
  const earlier = readEarlier(bytes.toString("utf8"), report);
  if (typeof earlier === "string") throw refuse(earlier);
  return earlier;
}

import { hasCode } from "../publish/issue/folder.ts";
import { IssueError } from "../publish/issue/issue-error.ts";
import { DamagedInstallation } from "../model/damaged.ts";
import { UsageError } from "./command.ts";

/** What is said of an error that ended a piece of work: of use, of the file system, or of the program itself. */
export function faultText(error: unknown): string {
  if (error instanceof UsageError || error instanceof IssueError || error instanceof DamagedInstallation)
    return error.message;
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

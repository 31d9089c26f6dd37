/**
 * path: a file or folder name no system can be trusted with · target: not ours to write into · differs: an issue of the
 * same name holds other bytes · issued: the final revision was issued before · not-issue: nothing here to verify.
 */
export type IssueErrorCode = "path" | "target" | "differs" | "issued" | "not-issue";

/** The issue cannot be written or read as asked; the message says why and what to do. Leads to exit 2. */
export class IssueError extends Error {
  override readonly name = "IssueError";
  readonly code: IssueErrorCode;

  constructor(code: IssueErrorCode, message: string) {
    super(message);
    this.code = code;
  }
}

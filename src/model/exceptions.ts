import type { Severity } from "./finding.ts";

/** Which findings each kind of exception may answer. */
export const answerable: ReadonlyMap<string, readonly Severity[]> = new Map([
  ["answered-query", ["query"]],
  ["waiver", ["gap"]],
  ["deviation", ["nonconformity"]],
  ["order-exception", ["nonconformity", "query"]],
]);

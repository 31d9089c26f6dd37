import { owedElsewhere, type Coverage } from "./coverage.ts";
import { type Anchor } from "./standing.ts";

/**
 * Why a definition may not read something as required: whatever a definition needs, somebody owes. Names who owes it under
 * other conditions, where that is the slip.
 */
export function unowed(what: string, coverage: Coverage, anchors: readonly Anchor[]): string {
  const elsewhere = owedElsewhere(coverage, anchors);
  const near = elsewhere.length === 0 ? "" : `; it is owed by ${elsewhere.slice(0, 3).join(", and by ")} only`;
  return `${what} is read as required, but nobody owes it: neither the schema, nor "owes" of a definition, nor a row of the register${near}`;
}

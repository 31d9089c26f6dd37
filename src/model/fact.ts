import type { Basis } from "./basis.ts";
import type { Reading } from "./input.ts";
import type { Owner } from "./vocabulary.ts";

/**
 * One fact that several records state. All statements present are compared once: when all others agree the odd one is
 * accused, else all, as one finding.
 */
export interface Fact {
  readonly id: string;
  readonly title: string;
  readonly basis: Basis;
  readonly reading: Extract<Reading, { type: "text" | "quantity" | "date" | "count" }>;
  /** Scope it belongs to; none named: of any book. */
  readonly scope?: string;
  /** Paths from `book.<kind>`. */
  readonly statements: readonly string[];
  /** Who must act on a difference. */
  readonly owner: Owner;
  /** When statements belong together only for one thing: path from each statement's record to what it is about. */
  readonly about?: string;
}

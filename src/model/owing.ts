import type { Basis } from "./basis.ts";
import type { Owed } from "./book.ts";
import type { BookRecord } from "./record.ts";
import type { Milestone, Owner } from "./vocabulary.ts";

/** What definitions are owed at one path of a record or row they apply to. */
export interface Owing {
  readonly subject: BookRecord;
  readonly pointer: string;
  /** From there, as paths are written. */
  readonly path: string;
  /** The same as people say it: "undertolerance of the thickness". */
  readonly what: string;
  /** The definitions that read it, the one that makes it due first before the others. */
  readonly by: readonly OwingReader[];
  readonly state: Exclude<Owed["state"], "not applicable">;
}

export interface OwingReader {
  readonly id: string;
  readonly basis: Basis;
  readonly due: Milestone;
  readonly owner: Owner;
}

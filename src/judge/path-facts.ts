import type { Definitions } from "../model/definitions.ts";
import type { Coverage, Standing } from "./standing.ts";

/** What is known of a path before any book is read. */
export interface PathFacts {
  /** Leads through a link, back along one, or over the whole book. */
  readonly crosses: boolean;
  /** Starts at the book. */
  readonly whole: boolean;
  /** Calculations it reads. */
  readonly calculations: readonly string[];
  /** Why it cannot be followed, or (for a required path) which step nobody owes. */
  readonly problems: readonly string[];
}

/** As `PathFacts`, with where the path ends: null when it cannot be followed. */
export interface WalkedPath extends PathFacts {
  readonly end: Standing | null;
}

/** The same while a path is walked. */
export interface Draft {
  crosses: boolean;
  whole: boolean;
  readonly calculations: string[];
  readonly problems: string[];
}

/** What paths are checked against, and whether every step must be owed. */
export interface Schemas {
  readonly definitions: Definitions;
  readonly coverage: Coverage;
  readonly required: boolean;
}

/** Notes why the path cannot be followed. */
export type Problem = (text: string) => void;

/** A path of a kind there is none of. */
export const unknownKind = (kind: string): WalkedPath => ({
  crosses: false,
  whole: false,
  calculations: [],
  problems: [`there is no kind "${kind}"`],
  end: null,
});

import type { Definitions } from "../model/definitions.ts";
import type { Field } from "../model/kind.ts";
import type { Anchor, Coverage, Standing } from "./standing.ts";

/** A field that a path passes, with the records and rows it came by, and what is known of them there. */
export interface ReadField {
  readonly field: Field;
  readonly anchors: readonly Anchor[];
}

/** What is known of a path before any book is read. */
export interface PathFacts {
  /** Leads through a link, back along one, or over the whole book. */
  readonly crosses: boolean;
  /** Starts at the book. */
  readonly whole: boolean;
  /** Calculations it reads. */
  readonly calculations: readonly string[];
  /** Fields of the schemas it passes, compares or ends at. */
  readonly reads: readonly ReadField[];
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
  readonly reads: ReadField[];
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
  reads: [],
  problems: [`there is no kind "${kind}"`],
  end: null,
});

import type { Definitions } from "../model/definitions.ts";
import type { Field } from "../model/kind.ts";
import { nearestOrAll } from "../model/nearest.ts";
import type { Coverage } from "./coverage.ts";
import type { Anchor, Standing } from "./standing.ts";
import { kindText, rowsOfKind } from "../model/kind-text.ts";

/** A field that a path passes, with the records and rows it came by, and what is known of them there. */
export interface ReadField {
  readonly field: Field;
  /** Whether what it says is read, not only whether it is there or what it holds. */
  readonly value: boolean;
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

/** A name that is not known, and those that are: what to write in its place. */
export interface Unknown {
  readonly name: string;
  readonly known: Iterable<string>;
}

/** Notes why the path cannot be followed; of a name that is not known, with the nearest path. */
export type Problem = (text: string, unknown?: Unknown) => void;

/** "kind" or "kind#list", where there is none of it. */
function noKind(kinds: Definitions["kinds"], text: string): string {
  const { kind: name, list } = kindText(text);
  const kind = kinds.get(name);
  if (kind === undefined) return `there is no kind "${text}"${nearestOrAll(name, kinds.keys())}`;
  const lists = [...kind.fields.values()].filter(({ type }) => type === "list").map((field) => field.name);
  return `${name} has no list "${list}"${nearestOrAll(list, lists, (near) => rowsOfKind(name, near))}`;
}

/** A path of a kind there is none of. */
export const unknownKind = ({ kinds }: Pick<Definitions, "kinds">, kind: string): WalkedPath => ({
  crosses: false,
  whole: false,
  calculations: [],
  reads: [],
  problems: [noKind(kinds, kind)],
  end: null,
});

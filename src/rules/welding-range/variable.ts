import type { FromPiece, piece } from "./pieces.ts";
import type { Match } from "./range.ts";
import type { Side } from "./side.ts";

/** Two neighbours on the way from the test piece to the weld. */
export const pairs = ["test piece to range", "range to procedure", "procedure to joint", "procedure to run"] as const;
export type Pair = (typeof pairs)[number];

/** What judges a cell where no rule is made from the sides: one there is, or the reason why there is no method. */
export type Cell = { readonly rule: string } | { readonly none: string };

export interface Variable {
  readonly id: string;
  /** As it is called in sentences: "material group". */
  readonly title: string;
  readonly match?: Match;
  /** How the neighbours state it; a pair with both sides has a rule of its own, made from them. */
  readonly piece?: FromPiece;
  readonly printed?: Side;
  readonly procedure?: Side;
  readonly joint?: Side;
  readonly run?: Side;
  /** What of a test piece limits it, so that a procedure that says nothing of it leaves it to the welder. */
  readonly mustState?: keyof typeof piece;
  /** What to do where a procedure goes beyond its qualifications; to name another, or narrow the procedure, if nothing is said. */
  readonly remedy?: string;
  /** It is of the whole weld, so that the tests of each of several processes must cover it; else each process has its own. */
  readonly ofWhole?: true;
  readonly cells?: Readonly<Partial<Record<Pair, Cell>>>;
  /** What is held, and what lies inside and outside of it, as records state it; of the test piece, its own inputs. */
  readonly examples?: {
    readonly piece: Readonly<Record<string, unknown>>;
    /** The range as it is printed, which is that of the piece. */
    readonly held: readonly string[];
    readonly inside: readonly string[];
    readonly outside: readonly string[];
    /** How the outside is said, and the range of the piece. */
    readonly said: string;
    readonly range: string;
    /** Further test pieces and what certificates print of them: inside, or what is said of the outside. */
    readonly also?: readonly {
      readonly name: string;
      readonly piece: Readonly<Record<string, unknown>>;
      readonly printed: readonly string[];
      readonly said?: readonly [outside: string, range: string];
      /** Where the answer is printed. */
      readonly source?: string;
    }[];
  };
}

export const none = (why: string): Cell => ({ none: why });
export const by = (rule: string): Cell => ({ rule });
export const unprinted = none(
  "the certificate prints no range of it: the procedure is held against the test piece itself",
);
export const noJoint = none("the weld map does not say it: the procedure does");
export const ofJoint = none("it is the joint's, not the run's");
/** The test piece of most examples is to this edition. */
export const inTest = { edition: "2017", standard: "EN ISO 15614-1" };

/** Whether a pair of a variable has a rule made from its sides. */
export function isMade({ cells, piece, printed, procedure, joint, run }: Variable, pair: Pair): boolean {
  if (cells?.[pair] !== undefined) return false;
  switch (pair) {
    case "test piece to range":
      return piece !== undefined && printed !== undefined;
    case "range to procedure":
      return piece !== undefined && procedure !== undefined;
    case "procedure to joint":
      return procedure !== undefined && joint !== undefined;
    case "procedure to run":
      return procedure !== undefined && run !== undefined;
  }
}

/** Id of the rule made for a pair of a variable. */
export function madeRule({ id }: Variable, pair: Pair): string {
  switch (pair) {
    case "test piece to range":
      return `qualification-${id}`;
    case "range to procedure":
      return `procedure-${id}-qualified`;
    case "procedure to joint":
      return `joint-${id}-in-procedure`;
    case "procedure to run":
      return `run-${id}-in-procedure`;
  }
}

import type { Owner } from "./vocabulary.ts";
import type { Handle, Inputs, Thing, Values, Given } from "./input.ts";

/**
 * What puts a rejected result right: a repair and a passing test of it, a later repetition, a decision. The `x-closed-by`
 * of a schema names the closers of a result by their ids.
 */
export interface Closer<I extends Inputs = Inputs> {
  readonly id: string;
  /** "a repair, and a test that passes it". */
  readonly title: string;
  /** Kinds, or `kind#list`, whose results it may close; "any" for all. */
  readonly kinds: readonly string[] | "any";
  /** Who owes it. */
  readonly owner: Owner;
  readonly inputs: I;
  close(values: Values<I>, subject: Handle): Closure;
  readonly examples: readonly CloserExample<I>[];
}

export type Closure = Closed | Open;

export interface Closed {
  readonly closes: true;
  /** What is said behind "rejected, ": "repaired and re-tested: R-01, RT-05"; "" where it only follows what it rests on. */
  readonly said: string;
  /** Rows that are rejected themselves: it is closed as soon as they are. */
  readonly rests?: readonly Thing<Inputs>[] | readonly { readonly $: Handle }[];
}

export interface Open {
  readonly closes: false;
  /** What is lacking, behind "…is rejected, and ". */
  readonly lacks: string;
  readonly hint: string;
  /** Something was done, but not enough: this is what is said, whatever else could close it. */
  readonly begun: boolean;
  /** Where it is printed, if not at the result. */
  readonly at?: Thing<Inputs>;
}

export interface CloserExample<I extends Inputs> {
  readonly name: string;
  readonly given: Given<I>;
  /** What is said when it closes, or what is lacking. */
  readonly expect: string;
  /** Ids of rejected rows it then rests on. */
  readonly rests?: readonly string[];
}

/** Makes a closer; the inputs' types reach `close`, then are forgotten so that closers can stand in one list. */
export function closer<const I extends Inputs>(definition: Closer<I>): Closer {
  // Only the engine calls `close`, with values bound from these very inputs.
  return definition;
}

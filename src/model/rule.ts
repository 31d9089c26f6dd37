import type { Announcement } from "./announcement.ts";
import type { Basis } from "./basis.ts";
import type { Compared, Severity } from "./finding.ts";
import type { Condition, Given, Handle, Inputs, Thing, Values } from "./input.ts";
import type { Owes } from "./owes.ts";
import type { Milestone, Owner } from "./vocabulary.ts";

/**
 * Where an objection points: the name of an input, one field of a thing (`[row, "issued"]`), a thing itself, or
 * "subject".
 */
export type At<I extends Inputs> = (keyof I & string) | "subject" | Thing<Inputs> | readonly [Thing<Inputs>, string];

export interface Objection<I extends Inputs> {
  /** Subject, fact, value; lower case, no full stop. */
  readonly message: string;
  /** Quotes the data. */
  readonly why: string;
  /** What to do next. */
  readonly hint: string;
  /** Where it is printed. */
  readonly at: At<I>;
  /** Places thrown in doubt. By default: `at` when one record was read; nothing when several were compared. */
  readonly accuses?: readonly At<I>[];
  /** The record whose fault it is, if not the subject: equal rule + `on` + name are one finding that lists its subjects. */
  readonly on?: Thing<Inputs>;
  /** Tells apart several objections about one subject: a stable row or input name, never an index. */
  readonly name?: string;
  /** Other places worth seeing, each with what it says. */
  readonly related?: readonly { readonly at: At<I>; readonly message: string }[];
  /** The evidence does not decide it (an interval, a date without time): a query instead of the rule's severity. */
  readonly unsure?: boolean;
}

/** What a rule demands of a record and does not find there: an absence like any other, once, whoever else asks for it. */
export interface Lack<I extends Inputs> {
  /** The record or row that lacks it. */
  readonly at: At<I>;
  /**
   * Path of the field from there, with what tells an entry of a list: `chemistry[element="C"]`; or back to a record that
   * should name it: `<ndt-personnel:person>[method="RT"]`.
   */
  readonly path: string;
  /** What demands it, quoting the data: "C: at most 0.20 %". */
  readonly why: string;
}

/** A value as a rule held it against a limit, for the pages. */
export interface Comparison<I extends Inputs> extends Pick<Compared, "name" | "value" | "least" | "most" | "verdict"> {
  /** Where the value stands; of a sum, where each part does. */
  readonly at: readonly At<I>[];
}

export interface RuleExample<I extends Inputs> {
  readonly name: string;
  readonly given: Given<I>;
  /** Messages expected, in order; empty: passed. */
  readonly objections: readonly string[];
  /** Paths of what its subject lacks, in order; none where the rule asks for nothing. */
  readonly lacks?: readonly string[];
  /** Published source of the expectation, if it has one beside the rule's basis. */
  readonly source?: string;
}

/** A requirement that objects. The engine deals with missing inputs, places, citations and exceptions. */
export interface Rule<I extends Inputs = Inputs> {
  readonly id: string;
  readonly title: string;
  readonly basis: Basis;
  /** Kind it applies to, or `kind#array` for each row. */
  readonly kind: string;
  readonly when?: readonly Condition[];
  /** Scope it belongs to, if not that of its kind. */
  readonly scope?: string;
  readonly severity: Severity;
  /**
   * Name of the fault, if other rules find the same one by other evidence (a role that has ended, seen from what was
   * signed and from what was done): equal `fault` + `on` + name are then one finding. Default: the rule's own id.
   */
  readonly fault?: string;
  /** Who must act on an objection. */
  readonly owner: Owner;
  /**
   * Inputs that an objection leaves open: the rule compares them with where they come from, and is applied before rules
   * that only judge by them. What objects because of them waits for it; what passes, passes.
   */
  readonly disputes?: readonly (keyof I & string)[];
  /**
   * The one value of the book that every subject is held against (the day of the order). Rules of one `fault` are weighed
   * together: where many records contradict the value it is accused, in one finding; where few do, each of them is.
   */
  readonly against?: {
    readonly input: keyof I & string;
    readonly fault: string;
    says(value: string, days: string, count: number): string;
    readonly hint: string;
  };
  /**
   * Of a rule that adds up what records of the book took from its subject: what it cannot see where the subject stands on a shelf,
   * "pieces cut for other books are not counted". Said with its objection, and among what was not checked.
   */
  readonly shared?: string;
  readonly inputs: I;
  /** Who owes what it reads and no schema does, and from when. */
  readonly owes?: readonly Owes[];
  /** Limits it will hold values against that its subject does not have yet. */
  readonly announces?: readonly Announcement[];
  check(values: Values<I>, subject: Handle): Iterable<Objection<I>>;
  /** What it demands and its subject lacks: missing, and no objection, so that the list of what is owed says the same. */
  lacks?(values: Values<I>): Iterable<Lack<I>>;
  /** Milestone at which what it demands is owed, where the record does not say that its paper is there. */
  readonly lacksDue?: Milestone;
  /** The values it held against limits, as pages show them; asked only when it was judged. */
  compares?(values: Values<I>): Iterable<Comparison<I>>;
  readonly examples: readonly RuleExample<I>[];
}

/** Makes a rule from its object; the inputs' types reach `check`, then are forgotten so that rules can stand in one list. */
export function rule<const I extends Inputs>(definition: Rule<I>): Rule {
  // Only the engine calls `check`, with values bound from these very inputs.
  return definition as unknown as Rule;
}

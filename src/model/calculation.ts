import type { AnnouncedLimit, AnnouncedSymbol, Announcement } from "./announcement.ts";
import type { Basis } from "./basis.ts";
import type { Condition, Inputs, Thing } from "./input.ts";
import type { PlainRow } from "./plain-value.ts";
import type { Owes } from "./owes.ts";
import type { Owner } from "./vocabulary.ts";

/** An input of a calculation. Its key in `inputs` is the symbol used in formulas. */
export interface CalculationInput {
  readonly path: string;
  /** Unit the formula wants ("1" for a pure number). */
  readonly unit: string;
  readonly means: string;
  /**
   * Default "required". An absent optional input takes `otherwise`, or leaves out the steps that need it. "any" is for
   * rows of which none is fine: their function gets the empty list.
   */
  readonly need?: "required" | "any" | "optional";
  readonly otherwise?: number;
  /** Display form of the symbol, such as `Rp0.2/t` as base R and index. Default: letters, then `_index`. */
  readonly display?: string;
  /** For a text field: its allowed values in rising order; the formula gets the position, 0 first. */
  readonly options?: readonly string[];
  /** All values the path leads to are rows for a named function; `unit` is then "rows". */
  readonly rows?: Inputs;
  /** Which side is unsafe if the maker's sheet states it wrongly; default "any". */
  readonly unsafe?: "low" | "high" | "any";
}

export interface CalculationStep {
  readonly symbol: string;
  readonly unit: string;
  readonly means: string;
  /** In the standard's own symbols; may call the calculation's `functions`. `max(…)`/`min(…)` at the top: which governed is said. */
  readonly formula: string;
  /** The units of a formula from experience do not multiply out: those of its symbols and of the result are trusted. */
  readonly empirical?: boolean;
  readonly basis?: Basis;
  /** Decimals and direction when printed rounded: required values up, allowed values down. */
  readonly round?: { readonly decimals: number; readonly direction: "up" | "down" | "nearest" };
  /** Names of the values 0, 1, 2 … when the result is a class and not a number. */
  readonly options?: readonly string[];
  readonly display?: string;
  /** Step is left out unless this comparison holds (earlier symbols only). */
  readonly when?: Comparison;
}

export interface Comparison {
  readonly left: string;
  readonly relation: "<=" | "<" | ">=" | ">" | "=";
  readonly right: string;
}

/** A comparison that a finding is about when it fails. */
export interface Claim extends Comparison {
  /** What is claimed, as the page shows it beside the verdict. */
  readonly means: string;
  /**
   * What is wrong when it fails, with both values put in: "the wall is {left} of the diameter, above {right}"; the symbol
   * of another value in brackets puts that in, and `{|left|}` leaves a minus out. By default it is made of what the two symbols mean.
   */
  readonly wrong?: string;
  /** Stable name in the keys of findings. By default the symbol on the left and what is wrong with it: "en too low". */
  readonly name?: string;
}

/** A limit of validity: outside it the result is *not judged*. */
export interface Limit extends Claim {
  readonly basis?: Basis;
  /** It is what the calculation is done to find out, as an acceptance is; beyond it, design has to decide by another method. */
  readonly decides?: true;
}

/** What the judged value must satisfy. It accuses that value's place. */
export interface Acceptance extends Claim {
  /** Symbol of the input that is wrong if the comparison fails; outside the subject it is one finding for all subjects. */
  readonly accuses: string;
  readonly owner?: Owner;
  readonly basis?: Basis;
  /** Skipped while this optional input is absent. */
  readonly needs?: string;
  /** Asked only where this comparison holds: a school of design that the profile leaves out is shown, and judges nothing. */
  readonly when?: Comparison;
}

/** A value of the maker's sheet that is compared with ours. */
export interface ComparedResult {
  /** Symbol of a step. */
  readonly symbol: string;
  /** A result recorded too low (or too high) is unsafe; "any": both. */
  readonly unsafe: "low" | "high" | "any";
  /** The calculation's own tolerance in the step's unit, instead of half a unit of the last digit. */
  readonly within?: number;
}

/** A function for lists (readings, rows of a table), with its own basis, lines and tests. */
export interface ListFunction {
  readonly name: string;
  readonly means: string;
  readonly basis: Basis;
  /** In the order of the call: "rows", or the unit of a number. */
  readonly parameters: readonly { readonly name: string; readonly unit: string }[];
  readonly unit: string;
  /** Never throws on data: a problem is said in `refused`, and the calculation is not judged for that reason. */
  compute(...values: readonly ListArgument[]): ListResult;
}

export type ListArgument = number | readonly Thing<Inputs>[];
export type ListResult =
  | { readonly value: number; readonly lines: readonly string[]; readonly at?: readonly Thing<Inputs>[] }
  | { readonly refused: string };

export interface CalculationExample {
  /** Title, edition and place of the source, or what makes it independent. */
  readonly source: string;
  readonly class: "published" | "second method" | "constructed" | "from memory";
  /** Values by symbol: numbers in the declared unit, or rows as they would stand in records. */
  readonly given: Readonly<Record<string, number | readonly PlainRow[]>>;
  readonly expect: Readonly<Record<string, number>>;
  /** Tolerance that follows from the digits the source prints. */
  readonly within: number;
  /** Texts of limits that must fail in this example. */
  readonly outside?: readonly string[];
}

/** A recomputation: one object from which number, pages, limits, tests and docs come. */
export interface Calculation {
  readonly id: string;
  readonly title: string;
  readonly basis: Basis;
  /** Scope it belongs to, if not that of its kind. */
  readonly scope?: string;
  /** What it does and does not cover, for the reader of the page. */
  readonly covers: string;
  /** Kind (or `kind#array`) and conditions. */
  readonly appliesTo: { readonly kind: string; readonly when?: readonly Condition[] };
  readonly inputs: Readonly<Record<string, CalculationInput>>;
  /** Who owes what it reads and no schema does, and from when. */
  readonly owes?: readonly Owes[];
  readonly functions?: readonly ListFunction[];
  readonly steps: readonly CalculationStep[];
  readonly limits: readonly Limit[];
  /** Where none was asked and no limit decides, the result was held against nothing: *computed*, and no check. */
  readonly accept: readonly Acceptance[];
  readonly compared: readonly ComparedResult[];
  /** What it tells of measurements that are still to come. */
  readonly announces?: readonly Announcement<AnnouncedLimit | AnnouncedSymbol>[];
  /** Input symbol of the value the maker adopted (the sheet's `adopted`). */
  readonly adopted?: string;
  /** A second method, for the page: another formula for a symbol of `steps`. */
  readonly crossCheck?: {
    readonly means: string;
    readonly symbol: string;
    readonly formula: string;
    readonly unit: string;
    readonly empirical?: boolean;
    readonly within: string;
    readonly basis: Basis;
  };
  readonly caution?: string;
  readonly owner?: Owner;
  readonly examples: readonly CalculationExample[];
}

/** Names a calculation; its formulas, symbols and units are checked when the list of definitions is loaded. */
export function calculation(definition: Calculation): Calculation {
  return definition;
}

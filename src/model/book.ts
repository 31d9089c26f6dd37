import type { Basis } from "./basis.ts";
import type { Acceptance, Calculation, CalculationStep, Limit } from "./calculation.ts";
import type { Definitions } from "./definitions.ts";
import type { Finding, Outcome, Verdict } from "./finding.ts";
import type { Graph } from "./graph.ts";
import type { Locator } from "./place.ts";
import type { Measure } from "./quantity.ts";
import type { Address, BookFile, BookRecord } from "./record.ts";
import type { Requirement } from "./requirement.ts";
import type { Table } from "./table.ts";

/** What reading a book folder gives: every record that could be read, every file, and what was wrong with the rest. */
export interface LoadedBook {
  readonly dir: string;
  readonly records: readonly BookRecord[];
  readonly files: readonly BookFile[];
  readonly findings: readonly Finding[];
  /** Record files that could not be read: while there is one, an absence is not judged because of it. */
  readonly unreadable: readonly string[];
  /** Why the work cannot be done at all (no book.json, no issue.json, another format). */
  readonly fatal: readonly Finding[];
  readonly locator: Locator;
}

/** Where a bound value comes from, for the page and for doubt. */
export type Origin =
  | { readonly type: "record"; readonly record: BookRecord; readonly pointer: string }
  | { readonly type: "profile"; readonly name: string; readonly basis: Basis }
  | { readonly type: "table"; readonly table: string; readonly row: string; readonly basis: Basis }
  | { readonly type: "calculation"; readonly of: Computed; readonly symbol: string }
  | { readonly type: "default"; readonly value: number };

export interface BoundInput {
  readonly symbol: string;
  /** In the unit the formula wants; undefined for rows and for absent optional inputs. */
  readonly value?: number;
  readonly measure?: Measure;
  /** Value as it stands in the record. */
  readonly written?: string;
  readonly origin?: Origin;
  /** Of "<x" and ">x": the end that was put in, which is the one on the unsafe side. */
  readonly bound?: "low" | "high";
  /** How many rows a named function got. */
  readonly rows?: number;
}

export interface ComputedStep {
  readonly step: CalculationStep;
  readonly value: number;
  /** Index of the alternative that governed, for max and min, with the values of all. */
  readonly governing?: { readonly index: number; readonly values: readonly number[] };
  /** How a named function found it. */
  readonly lines: readonly string[];
}

export interface ComparedValue {
  readonly symbol: string;
  readonly sort: "input" | "result" | "adopted";
  readonly recorded: string;
  readonly recomputed: string;
  readonly unit: string;
  readonly verdict: Verdict;
}

/** One calculation applied to one record, with everything its page prints. */
export interface Computed {
  readonly calculation: Calculation;
  readonly subject: BookRecord;
  /** Pointer of the row, "" for the record. */
  readonly pointer: string;
  readonly inputs: ReadonlyMap<string, BoundInput>;
  readonly steps: readonly ComputedStep[];
  readonly limits: readonly {
    readonly limit: Limit;
    readonly left: number;
    readonly right: number;
    readonly holds: boolean;
  }[];
  readonly accept: readonly {
    readonly acceptance: Acceptance;
    readonly left: number;
    readonly right: number;
    readonly holds: boolean;
  }[];
  readonly crossCheck?: { readonly value: number; readonly agrees: boolean };
  readonly sheets: readonly { readonly record: BookRecord; readonly values: readonly ComparedValue[] }[];
  readonly verdict: Verdict;
  readonly findings: readonly string[];
  /** Every place the result rests on. */
  readonly reads: ReadonlySet<Address>;
}

/** A requirement applied to one record. */
export interface Owed {
  readonly requirement: Requirement;
  readonly subject: BookRecord | null;
  readonly pointer: string;
  readonly state: "met" | "missing" | "waived" | "not due" | "not judged" | "not applicable";
  readonly evidence: readonly BookRecord[];
}

export interface Counts {
  readonly nonconformity: number;
  readonly gap: number;
  readonly query: number;
  readonly note: number;
  readonly lifted: number;
  readonly notJudged: number;
  readonly notDue: number;
  readonly notApplicable: number;
  readonly passed: number;
}

/** A book after judging: a value; publishing only prints it. */
export interface JudgedBook {
  readonly loaded: LoadedBook;
  readonly definitions: Definitions;
  readonly graph: Graph;
  readonly book: BookRecord;
  readonly issue: BookRecord;
  readonly state: "interim" | "final";
  readonly profile: string;
  /** Parameters in force, with overrides applied. */
  readonly parameters: ReadonlyMap<
    string,
    { readonly value: string; readonly basis: Basis; readonly overridden: boolean }
  >;
  /** Tables in force: shipped ones, or the book's own. */
  readonly tables: ReadonlyMap<string, Table>;
  readonly findings: readonly Finding[];
  readonly outcomes: readonly Outcome[];
  readonly computed: readonly Computed[];
  readonly owed: readonly Owed[];
  readonly counts: Counts;
  /** Full SHA-256 of the evidence. */
  readonly fingerprint: string;
  /** Findings or outcomes that blocks nothing because an exception answers them. */
  readonly exceptions: readonly {
    readonly record: BookRecord;
    readonly answers: readonly string[];
    readonly lifts: boolean;
  }[];
}

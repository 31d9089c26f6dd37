import type { FindingKey } from "./finding-key.ts";
import type { Basis } from "./basis.ts";
import type { Acceptance, Calculation, CalculationStep, Limit } from "./calculation.ts";
import type { Comparison } from "./comparison.ts";
import type { Definitions } from "./definitions.ts";
import type { InForce } from "./in-force.ts";
import type { Finding, Outcome, Verdict } from "./finding.ts";
import type { Graph } from "./graph.ts";
import type { Absent, Announced, Missing } from "./missing.ts";
import type { Locator } from "./place.ts";
import type { OriginalTexts } from "./page-text.ts";
import type { Places } from "./places.ts";
import type { ReadBack } from "./read-back.ts";
import type { Address, BookFile, BookRecord } from "./record.ts";
import type { Owing } from "./owing.ts";
import type { Requirement } from "./requirement.ts";
import type { Shelf } from "./shelf.ts";
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
  /** Shelves that were read; what is reached of them is among records and files. */
  readonly shelves?: readonly Shelf[];
  /** Notes for whoever checks about what stands on shelves and is not reached: no part of the book. */
  readonly aside?: readonly Finding[];
  /** The texts of the originals. A book loaded without them is not read back from its papers. */
  readonly texts?: OriginalTexts;
}

/** Where a bound value comes from, for the page and for doubt. */
export type Origin =
  | { readonly type: "record"; readonly record: BookRecord; readonly pointer: string }
  | { readonly type: "profile"; readonly name: string; readonly basis: Basis }
  | { readonly type: "table"; readonly table: string; readonly row: string; readonly basis: Basis }
  | { readonly type: "calculation"; readonly of: Done; readonly symbol: string }
  | { readonly type: "default"; readonly value: number };

export interface BoundInput {
  readonly symbol: string;
  /** In the unit the formula wants; undefined for rows and for absent optional inputs. */
  readonly value?: number;
  /** It was read from a quantity, which may stand in another unit. */
  readonly measured?: true;
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

/** What was found of one comparison of a calculation; `finding` is the key of what stands against it. */
export interface Judged {
  readonly verdict: Verdict;
  readonly finding?: FindingKey;
}

export interface JudgedLimit extends Judged {
  readonly limit: Limit;
  readonly left: number;
  readonly right: number;
}

export interface JudgedAcceptance extends Judged {
  readonly acceptance: Acceptance;
  readonly left: number;
  readonly right: number;
  /** How far the left side lies on the good side of the right one; negative where it does not hold. */
  readonly margin: number;
}

/**
 * One calculation applied to one record or row it is about: done, with everything its page prints, or waiting. Whoever
 * prints or counts results has to say what becomes of those that wait. Where a calculation does not apply, there is none.
 */
export type Computed = Done | Waiting;

interface Applied {
  readonly calculation: Calculation;
  readonly subject: BookRecord;
  /** Pointer of the row, "" for the record. */
  readonly pointer: string;
  /** Its verdict, and of one that waits the reason. */
  readonly outcome: Outcome;
  /** Inputs as far as they were bound. */
  readonly inputs: ReadonlyMap<string, BoundInput>;
  readonly limits: readonly JudgedLimit[];
  /** Sheets of the maker, with what was compared of each; nothing was while the result waits. */
  readonly sheets: readonly MakerSheet[];
}

/** A sheet of the maker about one calculation. */
export interface MakerSheet {
  readonly record: BookRecord;
  readonly values: readonly ComparedValue[];
  /** Where it states no figures and adopts ours, the digest it was signed for: nothing of it is compared. */
  readonly adopts?: string;
}

export interface Done extends Applied {
  readonly state: "done";
  readonly steps: readonly ComputedStep[];
  readonly accept: readonly JudgedAcceptance[];
  readonly crossCheck?: Judged & { readonly value: number };
  /** Of inputs that are rows: what was read of them, as the digest of its figures takes it. */
  readonly rows: ReadonlyMap<string, string>;
  /** Places each input rests on, by its symbol; by "" those that all of it rests on. */
  readonly reads: ReadonlyMap<string, Places>;
}

/** No result: something it needs is missing, doubted or not due, or the case lies outside the limits of the method. */
export interface Waiting extends Applied {
  readonly state: "waiting";
}

/** A value of a record that says *rejected*. */
export interface Refusal {
  readonly record: BookRecord;
  readonly pointer: string;
  /** Id of the check of that value. */
  readonly check: string;
  /** open: nothing has closed it, or it cannot be judged · answered: by an exception. */
  readonly state: "open" | "closed" | "answered";
  /** What closed or answered it, as it is said behind "rejected, "; "" while it is open. */
  readonly said: string;
  /** Key of the finding it is, while nothing closes it. */
  readonly finding?: FindingKey;
}

/** A requirement applied to one record. */
export interface Owed {
  readonly requirement: Requirement;
  readonly subject: BookRecord | null;
  readonly pointer: string;
  readonly state: "met" | "missing" | "waived" | "not due" | "not judged" | "not applicable";
  readonly outcome: Outcome;
  readonly evidence: readonly BookRecord[];
}

export interface Counts {
  readonly nonconformity: number;
  readonly gap: number;
  readonly query: number;
  readonly note: number;
  readonly lifted: number;
  /** Outcomes by their mark; they add up to all there are. */
  readonly notJudged: number;
  readonly notDue: number;
  readonly notApplicable: number;
  readonly passed: number;
  /** Limits computed, and nothing held against them: no check. */
  readonly computed: number;
  readonly failed: number;
  /** Results that say themselves that they are rejected, and that nothing has closed. */
  readonly rejected: number;
  /** Outcomes that did not pass, where exceptions answer all that stands against them. */
  readonly answered: number;
}

/** A book after judging: a value; publishing only prints it. */
export interface JudgedBook {
  readonly loaded: LoadedBook;
  /** Those in force: of the scopes of its register. */
  readonly definitions: Definitions;
  readonly inForce: InForce;
  /** Titles of all definitions, by their id. */
  readonly titles: ReadonlyMap<string, string>;
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
  /** What the rows of the register came to. */
  readonly owed: readonly Owed[];
  /** What became of what definitions are owed. */
  readonly owing: readonly Owing[];
  /** What is absent, by the key of its absence. */
  readonly absent: ReadonlyMap<string, Absent>;
  /** What is absent, each thing once, by the key of its gap: the one source of every list of what is owed. */
  readonly missing: readonly Missing[];
  /** Limits of measurements that are still owed. */
  readonly announced: readonly Announced[];
  /** Rejected values, by their address. */
  readonly refusals: ReadonlyMap<Address, Refusal>;
  /** What became of reading the values of each record back from its paper; none where that was not done. */
  readonly readBack: ReadonlyMap<Address, ReadBack>;
  /** How the comparison by a second person stands, of each record that was read from an original. */
  readonly comparisons: ReadonlyMap<Address, readonly Comparison[]>;
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

import type { FindingKey } from "./finding-key.ts";
import type { LimitSense } from "./announcement.ts";
import type { Basis } from "./basis.ts";
import type { JsonObject } from "./json.ts";
import type { BookRecord, Address } from "./record.ts";
import type { Milestone, Owner } from "./vocabulary.ts";

/** What became of something absent: a finding, not due before a milestone, or explained by other findings. */
export type Absent =
  { readonly finding: FindingKey } | { readonly notDue: string } | { readonly explained: readonly FindingKey[] };

/**
 * One thing that is absent, whoever asks for it, in the words of its gap: a finding of the book, or what will be one once
 * it is due, or what another finding explains.
 */
export interface Missing {
  /** Key of its gap. */
  readonly key: FindingKey;
  /** Keys of the absences it is, as `JudgedBook.absent` has them. */
  readonly absences: readonly string[];
  /** Record or row in which it is missing; of a record that links name, a place that names it; null: the book itself. */
  readonly at: { readonly record: BookRecord; readonly pointer: string } | null;
  /** "NDT report with method RT", "nominal thickness". */
  readonly what: string;
  /** Kind of record that is missing; null for a field. */
  readonly kind: string | null;
  /** Name of the field that is missing; null for a record. */
  readonly field: string | null;
  /** The missing step as paths write it, with its filters: `<weld-log:joint>`, `<ndt-report:rows[].joint>[record.method="RT"]`. */
  readonly step: string;
  /** `kind:id` of a record that links name. */
  readonly target: Address | null;
  /** Some are there, but fewer than are owed. */
  readonly short?: { readonly found: number; readonly atLeast: number };
  readonly message: string;
  readonly owner: Owner;
  /** Milestone at which it is owed first. */
  readonly due: Milestone;
  readonly basis: Basis;
  /** Titles of the rows of the register that ask for it. */
  readonly register: readonly string[];
  /** Titles of the definitions that read it and say who owes it. */
  readonly readers: readonly string[];
  readonly became: Absent;
  /** Of a missing sheet, or its figures: the recomputed ones that may be adopted in its place. */
  readonly adoptable?: Adoptable;
  /** Of a kind of which there is no record at all, or one that links name and others look for: each that is asked for. */
  readonly parts?: readonly MissingPart[];
}

/** One of several records that one gap is about. */
export type MissingPart = Pick<Missing, "at" | "step" | "target" | "short" | "adoptable">;

/** Figures that a designer may adopt by signing for their digest. */
export interface Adoptable {
  /** "\"Wall of a shell\" of part P01". */
  readonly of: string;
  readonly digest: string;
  /** The figures that matter, in words. */
  readonly said: string;
  /** What a sheet that adopts them says, as far as the book knows it: all but who signs, and when. */
  readonly fields: JsonObject;
}

/** What a measurement that is owed will be held against, computed for its subject before it is made. */
export interface Announced {
  readonly definition: string;
  readonly subject: BookRecord;
  /** Pointer of the row, "" for the record. */
  readonly pointer: string;
  /** What is awaited, each by the key of its absence in `JudgedBook.missing`. */
  readonly awaits: readonly string[];
  /** "pressure test", "measured thickness": the record or field that is missing. */
  readonly of: string;
  readonly remark?: string;
  readonly limits: readonly {
    readonly means: string;
    readonly is: LimitSense;
    /** Rounded to the safe side; null: what it rests on is missing or in doubt. */
    readonly value: string | null;
  }[];
  /** Why a limit is not known yet, in the words of gaps and findings. */
  readonly because: readonly string[];
}

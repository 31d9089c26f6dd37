import type { Done } from "../model/book.ts";
import type { Calculation } from "../model/calculation.ts";
import type { BookRecord } from "../model/record.ts";
import type { Trail } from "../reading/trail.ts";
import type { Pending } from "../reading/world.ts";
import type { Disagreement } from "./agree.ts";
import type { Pair } from "./pairs.ts";

/** A calculation on one subject, with its result or what it waits for. */
export interface SheetCase {
  readonly calculation: Calculation;
  readonly subject: BookRecord;
  readonly pointer: string;
  readonly done: Done | Pending;
}

/** A sheet that states another value than the record it copies from. */
export interface Dissent {
  readonly sheet: BookRecord;
  readonly calculation: Calculation;
  readonly pair: Pair;
  readonly found: Disagreement;
  readonly trail: Trail;
}

/** A value of a record that sheets copy. */
export interface Original {
  readonly record: BookRecord;
  readonly pointer: string;
  readonly text: string;
  readonly dissents: Dissent[];
  /** Some sheet states the same. */
  confirmed: boolean;
}

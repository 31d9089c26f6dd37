import type { Condition } from "./input.ts";

/** Limits that a definition knows of a measurement before it is made. */
export interface Announcement<L = AnnouncedLimit> {
  /**
   * Path from the subject to the value that is awaited, read as required. While it is absent, and owed by somebody, the
   * limits are announced: to whoever owes it, for the milestone at which it is owed.
   */
  readonly awaits: string;
  /** Only where these hold as well. */
  readonly when?: readonly Condition[];
  /** What the limits are counted at, or what is not known of them, for whoever measures. */
  readonly remark?: string;
  readonly limits: readonly L[];
}

/** "is": a figure to reckon with, which nothing is held against by itself. */
export type LimitSense = "at least" | "at most" | "is";

/** A parameter of the profile in force, or what a path from the subject leads to, as it is written there. */
export type AnnouncedLimit = { readonly is: LimitSense; readonly means: string } & (
  { readonly parameter: string } | { readonly path: string }
);

/** A value of the calculation, by its symbol; what it means stands there. */
export interface AnnouncedSymbol {
  readonly is: LimitSense;
  readonly symbol: string;
}

import type { Basis } from "./basis.ts";

/** A parameter in which design codes differ. */
export interface Parameter {
  /** Quantity text ("0.85", "30 min") or a word. */
  readonly value: string;
  readonly means: string;
  /** On which side another value would be more cautious; "none" for a choice without a side. */
  readonly cautious: "high" | "low" | "none";
  readonly basis: Basis;
}

export interface Profile {
  readonly id: string;
  readonly title: string;
  readonly parameters: Readonly<Record<string, Parameter>>;
}

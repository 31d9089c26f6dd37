import type { Basis } from "./basis.ts";
import type { Condition } from "./input.ts";
import type { Milestone, Owner } from "./vocabulary.ts";

/** A row of the register of what this book must contain. */
export interface Requirement {
  readonly id: string;
  readonly title: string;
  /** Scope it belongs to, if not that of its kind. */
  readonly scope?: string;
  /** For each record (or row) of this kind that meets the conditions. */
  readonly each: { readonly kind: string; readonly when?: readonly Condition[] };
  /** Path to the evidence from there. */
  readonly needs: string;
  /** How many distinct records at least; default 1. */
  readonly atLeast?: number;
  /** Milestone at which it is owed. */
  readonly due: Milestone;
  readonly basis: Basis;
  readonly owner: Owner;
}

export interface Register {
  readonly id: string;
  readonly title: string;
  /** What is in force with it, beside what these need; none named: all there are. */
  readonly scopes?: readonly string[];
  readonly requirements: readonly Requirement[];
}

/** The register a book names, or the first one. */
export function registerOf(named: unknown, registers: readonly Register[]): Register | undefined {
  return registers.find(({ id }) => id === named) ?? registers[0];
}

import type { Basis } from "./basis.ts";
import { ProgramError } from "./program-error.ts";

/** A parameter in which design codes differ. */
export interface Parameter {
  /** Quantity text ("0.85", "30 min") or a word. */
  readonly value: string;
  readonly means: string;
  /** On which side another value would be more cautious; "none" for a choice without a side. */
  readonly cautious: "high" | "low" | "none";
  readonly basis: Basis;
}

export type Parameters = Readonly<Record<string, Parameter>>;

export interface Profile {
  readonly id: string;
  readonly title: string;
  readonly parameters: Parameters;
}

type AllOf<G> = (G extends unknown ? (group: G) => void : never) extends (all: infer A) => void ? A : never;

/** Groups of parameters as one map. A name that two groups define is a fault of the program: the later would judge for both. */
export function joined<const G extends readonly Parameters[]>(...groups: G): AllOf<G[number]> {
  const all = new Map<string, Parameter>();
  for (const [name, parameter] of groups.flatMap((group) => Object.entries(group))) {
    if (all.has(name)) throw new ProgramError(`the parameter "${name}" of the profiles is defined twice`);
    all.set(name, parameter);
  }
  // The keys are exactly those of the groups.
  return Object.fromEntries(all) as AllOf<G[number]>;
}

import type { Basis } from "../model/basis.ts";
import { fromMemory } from "../model/basis.ts";
import type { Condition } from "../model/input.ts";
import type { Requirement } from "../model/requirement.ts";
import type { Milestone, Owner } from "../model/vocabulary.ts";

/** A row in one line: what it asks of which records, from when, who owes it, and why. */
export function owed(
  id: string,
  title: string,
  each: Requirement["each"],
  needs: string,
  due: Milestone,
  owner: Owner,
  basis: Basis,
): Requirement {
  return { id, title, each, needs, due, owner, basis };
}

/** The directive on pressure equipment: its topics are known, the wording was not at hand. */
export const directive = (topic: string): Basis => fromMemory("Directive 2014/68/EU", undefined, topic);

/** The maker's sheet of a calculation, for what it is about. */
export const sheet = (calculation: string): string => `<calculation-sheet:subject>[calculation="${calculation}"]`;

export const role = (...roles: readonly string[]): Condition => ({ path: "role", equals: roles });

export const inScope: Condition = { path: "directive.inScope", equals: true };

import type { Branded } from "./branded.ts";
import type { Subject } from "./finding.ts";
import { addressOf } from "./record.ts";

/** Name of an outcome, as findings list what waits for them. */
export type OutcomeName = Branded<"outcome">;

/** One definition applied to one subject, as `definition|kind:id`; applied to the book, the definition alone. */
export const outcomeName = (definition: string, subject: Subject | null): OutcomeName =>
  (subject === null ? definition : `${definition}|${addressOf(subject)}`) as OutcomeName;

export interface NamedOutcome {
  readonly definition: string;
  readonly subject: Subject | null;
}

/** The definition and the subject that a name of an outcome is made of. */
export function outcomeOf(name: OutcomeName): NamedOutcome {
  const bar = name.indexOf("|");
  if (bar < 0) return { definition: name, subject: null };
  const colon = name.indexOf(":", bar);
  return {
    definition: name.slice(0, bar),
    subject: { kind: name.slice(bar + 1, colon), id: name.slice(colon + 1) },
  };
}

/** What sheets of the maker say of a calculation: `furnace/results`. */
export const partOfDefinition = (definition: string, part: string): string => `${definition}/${part}`;

/** The definition itself, and the part of it that is meant, if one is. */
export function definitionOf(name: string): { readonly id: string; readonly part: string | undefined } {
  const cut = name.indexOf("/");
  return cut < 0 ? { id: name, part: undefined } : { id: name.slice(0, cut), part: name.slice(cut + 1) };
}

import type { JudgedBook } from "../model/book.ts";
import type { Outcome } from "../model/finding.ts";
import { registerOf } from "../model/requirement.ts";
import type { Explained } from "./explained.ts";

/**
 * What can apply to a book: its own register and profile, and of rows, rules and calculations those that were not found not to
 * apply to everything it holds. What it holds nothing of yet stays: nobody can say.
 */
export function ofBook(all: Explained, judged: JudgedBook): Explained {
  const register = registerOf(judged.book.value["register"], judged.definitions.registers);
  const own = new Set((register?.requirements ?? []).map(({ id }) => id));
  const applies = applying(judged.outcomes);
  const keep = <T extends { readonly id: string }>(list: readonly T[]) => list.filter(({ id }) => applies(id));
  return {
    ...all,
    calculations: keep(all.calculations),
    rules: keep(all.rules),
    facts: keep(all.facts),
    requirements: keep(all.requirements.filter(({ id }) => own.has(id))),
    registers: all.registers.filter(({ id }) => id === register?.id),
    profiles: all.profiles.filter(({ id }) => id === judged.profile),
    parameters: all.parameters.map((one) => ({
      ...one,
      values: one.values.filter(({ profile }) => profile === judged.profile),
    })),
  };
}

function applying(outcomes: readonly Outcome[]): (id: string) => boolean {
  const judged = new Map<string, boolean>();
  for (const { definition, verdict } of outcomes) {
    const id = definition.split("/")[0] ?? definition;
    judged.set(id, (judged.get(id) ?? false) || verdict !== "not applicable");
  }
  return (id) => judged.get(id) ?? true;
}

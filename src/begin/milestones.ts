import type { Definitions } from "../model/definitions.ts";
import type { Field } from "../model/kind.ts";
import { readersOf } from "../model/owes.ts";
import type { Register } from "../model/requirement.ts";
import { milestones, type Milestone } from "../model/vocabulary.ts";

/** The milestones at which a row of the register, what a definition reads or a field of any kind becomes due, in their usual order. */
export function milestonesOf(
  register: Register,
  { kinds, ...definitions }: Pick<Definitions, "kinds" | "rules" | "calculations">,
): readonly Milestone[] {
  const used = new Set<Milestone>([
    ...register.requirements.map(({ due }) => due),
    ...readersOf(definitions).flatMap(({ owes }) => owes.map(({ due }) => due)),
  ]);
  for (const kind of kinds.values()) if (!kind.derived) for (const due of duesOf(kind.fields.values())) used.add(due);
  return milestones.filter((name) => used.has(name));
}

function* duesOf(fields: Iterable<Field>): Generator<Milestone> {
  for (const { due, fields: inner, item } of fields) {
    if (due !== undefined) yield due;
    if (inner !== undefined) yield* duesOf(inner.values());
    if (item !== undefined) yield* duesOf([item]);
  }
}

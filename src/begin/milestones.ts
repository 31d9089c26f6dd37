import type { Field, Kind } from "../model/kind.ts";
import type { Register } from "../model/requirement.ts";
import { milestones, type Milestone } from "../model/vocabulary.ts";

/** The milestones at which a row of the register or a field of any kind becomes due, in their usual order. */
export function milestonesOf(register: Register, kinds: ReadonlyMap<string, Kind>): readonly Milestone[] {
  const used = new Set<Milestone>(register.requirements.map(({ due }) => due));
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

import type { Basis } from "../model/basis.ts";
import type { Definitions } from "../model/definitions.ts";
import { readersOf, type Owes } from "../model/owes.ts";
import type { Field, Kind } from "../model/kind.ts";
import { unitGroups } from "../model/unit-list.ts";
import { milestones, owners, type Milestone } from "../model/vocabulary.ts";

/** A parameter of the profiles: what it means, and what each profile sets it to. */
export interface ExplainedParameter {
  readonly id: string;
  readonly title: string;
  readonly cautious: "high" | "low" | "none";
  readonly values: readonly { readonly profile: string; readonly value: string; readonly basis: Basis }[];
}

/** A milestone, with what becomes due at it. */
export interface ExplainedMilestone {
  readonly id: string;
  readonly title: string;
  /** Ids of rows of the registers. */
  readonly requirements: readonly string[];
  /** What definitions are owed, as `calculation stay: A`. */
  readonly owes: readonly string[];
  /** Fields, as `joint.parts`. */
  readonly fields: readonly string[];
}

/** Who must act, with what he is asked. */
export interface ExplainedOwner {
  readonly id: string;
  readonly title: string;
  readonly requirements: readonly string[];
  /** What definitions are owed by it, as `calculation stay: A`. */
  readonly owes: readonly string[];
  readonly rules: readonly string[];
}

/** What is measured, with the units a record may write it in. */
export interface ExplainedUnits {
  readonly id: string;
  readonly title: string;
  readonly units: readonly string[];
  readonly example: string;
}

export function parametersOf({ profiles }: Pick<Definitions, "profiles">): readonly ExplainedParameter[] {
  const [first] = profiles;
  return Object.entries(first?.parameters ?? {}).map(([id, { means, cautious }]) => ({
    id,
    title: means,
    cautious,
    values: profiles.flatMap(({ id: profile, parameters }) => {
      const own = parameters[id];
      return own === undefined ? [] : [{ profile, value: own.value, basis: own.basis }];
    }),
  }));
}

type Named = Pick<Definitions, "kinds" | "registers" | "rules" | "calculations">;

/** What definitions are owed, of those that pass. */
const owedOf = (named: Named, which: (owes: Owes) => boolean): readonly string[] =>
  readersOf(named).flatMap(({ what, id, owes }) => {
    const inputs = owes.filter(which).flatMap((one) => one.inputs);
    return inputs.length === 0 ? [] : [`${what} ${id}: ${inputs.join(", ")}`];
  });

export function milestonesExplained(named: Named): readonly ExplainedMilestone[] {
  const { kinds, registers } = named;
  const rows = rowsOf(registers);
  return milestones.map((id) => {
    const requirements = rows.filter(({ due }) => due === id).map((row) => row.id);
    const fields = [...kinds.values()].flatMap((kind) => (kind.derived ? [] : [...owedAt(id, kind)]));
    const owes = owedOf(named, ({ due }) => due === id);
    const title = `${requirements.length} rows, ${fields.length} fields and what ${owes.length} definitions read are due at it`;
    return { id, title, requirements, owes, fields };
  });
}

export function ownersExplained(named: Named): readonly ExplainedOwner[] {
  const { registers, rules } = named;
  const rows = rowsOf(registers);
  return owners.map((id) => {
    const [requirements, own] = [rows, rules].map((list) =>
      list.filter(({ owner }) => owner === id).map((one) => one.id),
    );
    const owes = owedOf(named, ({ owner }) => owner === id);
    return {
      id,
      title: `acts on ${requirements?.length ?? 0} rows, on what ${owes.length} definitions read, and on ${own?.length ?? 0} rules`,
      requirements: requirements ?? [],
      owes,
      rules: own ?? [],
    };
  });
}

export const unitsExplained = (): readonly ExplainedUnits[] =>
  unitGroups.map(({ quantity, units, example }) => ({
    id: quantity,
    title: Object.keys(units).join(", "),
    units: Object.keys(units),
    example,
  }));

const rowsOf = (registers: Definitions["registers"]) => [
  ...new Map(registers.flatMap(({ requirements }) => requirements).map((row) => [row.id, row])).values(),
];

function* owedAt(milestone: Milestone, kind: Kind): Generator<string> {
  yield* inFields(kind.fields, kind.name);
  function* inFields(fields: ReadonlyMap<string, Field>, path: string): Generator<string> {
    for (const field of fields.values()) {
      const own = `${path}.${field.name}`;
      if (field.due === milestone) yield own;
      yield* inFields(field.fields ?? field.item?.fields ?? new Map<string, Field>(), own);
    }
  }
}

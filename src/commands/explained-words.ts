import type { Basis } from "../model/basis.ts";
import type { Definitions } from "../model/definitions.ts";
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
  /** Fields, as `joint.parts`. */
  readonly fields: readonly string[];
}

/** Who must act, with what he is asked. */
export interface ExplainedOwner {
  readonly id: string;
  readonly title: string;
  readonly requirements: readonly string[];
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

type Named = Pick<Definitions, "kinds" | "registers" | "rules">;

export function milestonesExplained({ kinds, registers }: Named): readonly ExplainedMilestone[] {
  const rows = rowsOf(registers);
  return milestones.map((id) => {
    const requirements = rows.filter(({ due }) => due === id).map((row) => row.id);
    const fields = [...kinds.values()].flatMap((kind) => (kind.derived ? [] : [...owedAt(id, kind)]));
    return { id, title: `${requirements.length} rows and ${fields.length} fields are due at it`, requirements, fields };
  });
}

export function ownersExplained({ registers, rules }: Named): readonly ExplainedOwner[] {
  const rows = rowsOf(registers);
  return owners.map((id) => {
    const [requirements, own] = [rows, rules].map((list) =>
      list.filter(({ owner }) => owner === id).map((one) => one.id),
    );
    return {
      id,
      title: `acts on ${requirements?.length ?? 0} rows and ${own?.length ?? 0} rules`,
      requirements: requirements ?? [],
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

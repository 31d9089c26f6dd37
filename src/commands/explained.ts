import { resultChecks } from "../plan/result-checks.ts";
import type { Calculation } from "../model/calculation.ts";
import type { BuiltIn, Definitions } from "../model/definitions.ts";
import type { Fact } from "../model/fact.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { Profile } from "../model/profile.ts";
import type { Register, Requirement } from "../model/requirement.ts";
import type { Rule } from "../model/rule.ts";
import type { Table } from "../model/table.ts";
import { unitOf } from "../model/units.ts";
import { scopesExplained, type ExplainedScope } from "./explain-scopes.ts";
import {
  milestonesExplained,
  ownersExplained,
  parametersOf,
  unitsExplained,
  type ExplainedMilestone,
  type ExplainedOwner,
  type ExplainedParameter,
  type ExplainedUnits,
} from "./explained-words.ts";

/** A kind, and of a book the paths of fields that are left out: it has no use for them. */
export interface ExplainedKind extends Kind {
  readonly leftOut?: readonly string[];
}

/** What `explain` can explain, each list by name. */
export interface Explained {
  readonly kinds: readonly ExplainedKind[];
  readonly calculations: readonly Calculation[];
  readonly rules: readonly Rule[];
  readonly builtIns: readonly BuiltIn[];
  readonly facts: readonly Fact[];
  readonly requirements: readonly Requirement[];
  readonly registers: readonly Register[];
  readonly scopes: readonly ExplainedScope[];
  readonly profiles: readonly Profile[];
  readonly parameters: readonly ExplainedParameter[];
  readonly tables: readonly Table[];
  readonly milestones: readonly ExplainedMilestone[];
  readonly owners: readonly ExplainedOwner[];
  readonly units: readonly ExplainedUnits[];
}

/** Names of the lists themselves: each is explained by what it holds. */
export const lists = [
  "kinds",
  "calculations",
  "rules",
  "facts",
  "requirements",
  "registers",
  "scopes",
  "profiles",
  "parameters",
  "tables",
  "milestones",
  "owners",
  "units",
] as const;

/** Every definition and every check that is built in. A requirement that stands in several registers is listed once. */
export function explained(definitions: Definitions, builtIns: readonly BuiltIn[]): Explained {
  const requirements = definitions.registers.flatMap((register) => register.requirements);
  return {
    kinds: [...definitions.kinds.values()].sort((a, b) => byCodePoint(a.name, b.name)),
    calculations: byId(definitions.calculations),
    rules: byId(definitions.rules),
    builtIns: byId([...builtIns, ...resultChecks(definitions.kinds)]),
    facts: byId(definitions.facts),
    requirements: byId([...new Map(requirements.map((row) => [row.id, row])).values()]),
    registers: definitions.registers,
    scopes: scopesExplained(definitions),
    profiles: definitions.profiles,
    parameters: byId(parametersOf(definitions)),
    tables: byId(definitions.tables),
    // In the order of manufacture.
    milestones: milestonesExplained(definitions),
    owners: ownersExplained(definitions),
    units: unitsExplained(),
  };
}

/** What bears a name. `cylindrical-shell/results`, a rule of findings, is its calculation's; a unit is that of its quantity. */
export function named(all: Explained, name: string): Explained {
  const id = name.replace(/\/(inputs|results)$/, "");
  const unit = unitOf(name)?.name ?? name;
  const only = <T extends { readonly id: string }>(list: readonly T[]) => list.filter((one) => one.id === id);
  return {
    kinds: all.kinds.filter((kind) => kind.name === id),
    calculations: only(all.calculations),
    rules: only(all.rules),
    builtIns: only(all.builtIns),
    facts: only(all.facts),
    requirements: only(all.requirements),
    registers: only(all.registers),
    scopes: only(all.scopes),
    profiles: only(all.profiles),
    parameters: only(all.parameters),
    tables: only(all.tables),
    milestones: only(all.milestones),
    owners: only(all.owners),
    units: all.units.filter((group) => group.id === name || group.units.includes(unit)),
  };
}

/** One of the lists, and nothing of the others. */
export function listNamed(all: Explained, name: string): Explained | undefined {
  const list = lists.find((one) => one === name);
  // Nothing bears the empty name.
  if (list === undefined) return undefined;
  return { ...named(all, ""), [list]: all[list], ...(list === "rules" && { builtIns: all.builtIns }) };
}

/** Every name that can be explained. */
export function names(all: Explained): readonly string[] {
  const { kinds, units, ...others } = all;
  const rest: readonly (readonly { readonly id: string }[])[] = Object.values(others);
  return [
    ...kinds.map(({ name }) => name),
    ...rest.flat().map(({ id }) => id),
    ...units.flatMap((group) => [group.id, ...group.units]),
  ];
}

function byId<T extends { readonly id: string }>(list: readonly T[]): readonly T[] {
  return [...list].sort((a, b) => byCodePoint(a.id, b.id));
}

import { resultChecks } from "../judge/result-checks.ts";
import type { Calculation } from "../model/calculation.ts";
import type { BuiltIn, Definitions } from "../model/definitions.ts";
import type { Fact } from "../model/fact.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { Requirement } from "../model/requirement.ts";
import type { Rule } from "../model/rule.ts";

/** What `explain` can explain, each list by name. */
export interface Explained {
  readonly kinds: readonly Kind[];
  readonly calculations: readonly Calculation[];
  readonly rules: readonly Rule[];
  readonly builtIns: readonly BuiltIn[];
  readonly facts: readonly Fact[];
  readonly requirements: readonly Requirement[];
}

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
  };
}

/** The definitions that bear a name. `cylindrical-shell/results`, a rule of findings, is its calculation's. */
export function named(all: Explained, name: string): Explained {
  const id = name.replace(/\/(inputs|results)$/, "");
  const only = <T extends { readonly id: string }>(list: readonly T[]) => list.filter((one) => one.id === id);
  return {
    kinds: all.kinds.filter((kind) => kind.name === id),
    calculations: only(all.calculations),
    rules: only(all.rules),
    builtIns: only(all.builtIns),
    facts: only(all.facts),
    requirements: only(all.requirements),
  };
}

/** Every name that can be explained. */
export function names(all: Explained): readonly string[] {
  const lists: readonly (readonly { readonly id: string }[])[] = [
    all.calculations,
    all.rules,
    all.builtIns,
    all.facts,
    all.requirements,
  ];
  return [...all.kinds.map((kind) => kind.name), ...lists.flat().map(({ id }) => id)];
}

function byId<T extends { readonly id: string }>(list: readonly T[]): readonly T[] {
  return [...list].sort((a, b) => byCodePoint(a.id, b.id));
}

import type { Calculation } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Condition, Inputs } from "../model/input.ts";
import type { Step } from "../model/path.ts";
import type { Requirement } from "../model/requirement.ts";
import { scopeOf } from "../model/scope.ts";
import { pathOf } from "../reading/bind.ts";

/** Scopes of the definitions that read each parameter and each table. What none reads is of no scope. */
export interface UsedBy {
  readonly parameters: ReadonlyMap<string, ReadonlySet<string>>;
  readonly tables: ReadonlyMap<string, ReadonlySet<string>>;
}

/** Who reads which parameters and tables, as the paths of all definitions say. */
export function usedBy({ kinds, rules, calculations, closers = [], registers }: Definitions): UsedBy {
  const parameters = new Map<string, Set<string>>();
  const tables = new Map<string, Set<string>>();
  const note = (scope: string, paths: readonly string[]) => {
    for (const step of paths.flatMap((path) => stepsOf(pathOf(path).steps))) {
      if (step.type !== "profile" && step.type !== "table") continue;
      const into = step.type === "profile" ? parameters : tables;
      const scopes = into.get(step.name) ?? new Set<string>();
      into.set(step.name, scopes.add(scope));
    }
  };
  const general = scopeOf(kinds, {});
  for (const one of rules) note(scopeOf(kinds, one), [...pathsOf(one.inputs), ...pathsIn(one.when)]);
  for (const one of calculations) note(scopeOfCalculation(kinds, one), pathsOfCalculation(one));
  for (const one of closers) note(general, pathsOf(one.inputs));
  for (const row of registers.flatMap(({ requirements }) => requirements))
    note(scopeOfRow(kinds, row), [row.needs, ...pathsIn(row.each.when)]);
  return { parameters, tables };
}

export const scopeOfCalculation = (kinds: Definitions["kinds"], { scope, appliesTo }: Calculation): string =>
  scopeOf(kinds, { ...(scope !== undefined && { scope }), kind: appliesTo.kind });

export const scopeOfRow = (kinds: Definitions["kinds"], { scope, each }: Requirement): string =>
  scopeOf(kinds, { ...(scope !== undefined && { scope }), kind: each.kind });

const pathsIn = (conditions: readonly Condition[] = []) => conditions.map(({ path }) => path);

const pathsOf = (inputs: Inputs): readonly string[] =>
  Object.values(inputs).flatMap(({ path, reading }) => [
    path,
    ...(reading.type === "thing" ? pathsOf(reading.inputs) : []),
  ]);

const pathsOfCalculation = ({ inputs, appliesTo }: Calculation): readonly string[] => [
  ...Object.values(inputs).flatMap(({ path, rows }) => [path, ...(rows === undefined ? [] : pathsOf(rows))]),
  ...pathsIn(appliesTo.when),
];

/** The steps of a path, and those of the paths within it. */
const stepsOf = (steps: readonly Step[]): readonly Step[] =>
  steps.flatMap((step) =>
    step.type === "table"
      ? [step, ...step.keys.flatMap(({ steps: inner }) => stepsOf(inner))]
      : step.type === "filter"
        ? [step, ...stepsOf(step.path)]
        : [step],
  );

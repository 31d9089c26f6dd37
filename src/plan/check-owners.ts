import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import { printSteps } from "../model/path.ts";
import type { Requirement } from "../model/requirement.ts";
import { pathOf } from "../reading/bind.ts";
import { checkPath } from "./check-paths.ts";
import { owedInputs, type OwedInput } from "./owed-inputs.ts";
import { coverageOf, ownedBy, valuesOf, type Coverage } from "./coverage.ts";

/**
 * One absence is owed in one way, and by one owner: by the schema, or by the definitions that read it, or (where none does)
 * by a row of a register. Several definitions may owe it at several milestones: the earliest wins.
 */
export function checkOwners(definitions: Definitions): readonly string[] {
  const { owed, problems } = owedInputs(definitions);
  const rows = coverageOf({ ...definitions, rules: [], calculations: [] });
  const readers = coverageOf({ ...definitions, registers: [{ id: "", title: "", requirements: [] }] });
  const all = [...new Set(definitions.registers.flatMap(({ requirements }) => requirements))];
  return [
    ...problems,
    ...owed.flatMap((one) => twoWays(definitions, rows, one)),
    ...all.flatMap((row) => restated(readers, row)),
    ...twoOwners(definitions, owed),
  ];
}

/** What the schema or a row owes already. */
function twoWays(
  definitions: Definitions,
  rows: Coverage,
  { by, name, kind, path, when }: OwedInput,
): readonly string[] {
  const bySchema = checkPath(definitions, [], kind, pathOf(path), true, when).problems.length === 0;
  const who = bySchema ? "the schema" : ownedBy(rows, [{ kind, text: path, conditions: when }]);
  return who === ""
    ? []
    : [`${by.what} ${by.id}: owes "${name}", which ${who} owes already; take it out of one of the two`];
}

/** A row that asks for no more than a definition that reads it. */
function restated(readers: Coverage, { id, each, needs, atLeast }: Requirement): readonly string[] {
  const anchors = [{ kind: each.kind, text: printSteps(pathOf(needs).steps), conditions: each.when ?? [] }];
  const who = ownedBy(readers, anchors);
  if (atLeast !== undefined || who === "") return [];
  return [`requirement ${id}: ${who} reads "${needs}" of ${each.kind} and owes it; take the row out of the register`];
}

/** The same field, reached from wherever it is read: whoever owes it, one acts. */
function twoOwners(definitions: Definitions, owed: readonly OwedInput[]): readonly string[] {
  const byField = new Map<unknown, OwedInput[]>();
  for (const one of owed) {
    const { end } = checkPath(definitions, [], one.kind, pathOf(one.path), false, one.when);
    const key = end?.field ?? `${one.kind} ${one.path}`;
    const same = byField.get(key);
    if (same === undefined) byField.set(key, [one]);
    else same.push(one);
  }
  return [...byField.values()].flatMap((same) =>
    same.flatMap((one, index) => {
      const other = same.slice(0, index).find((before) => before.owner !== one.owner && !apart(before, one));
      return other === undefined ? [] : [conflict(other, one)];
    }),
  );
}

const conflict = (a: OwedInput, b: OwedInput): string =>
  `${b.by.what} ${b.by.id}: ${b.owner} owes "${b.path}" of ${b.kind}, but ${a.by.what} ${a.by.id} has ${a.owner} owe "${a.path}" of ${a.kind}, which may be the same; one absence has one owner`;

/** Whether no subject meets both: of one kind, by conditions that exclude each other; or other entries of one list. */
function apart(a: OwedInput, b: OwedInput): boolean {
  if (a.kind !== b.kind) return false;
  if (a.path !== b.path && a.path.replaceAll(filters, "") === b.path.replaceAll(filters, "")) return true;
  return a.when.some((one) => b.when.some((other) => exclude(one, other)));
}

const filters = /\[[^\]"]*"[^"]*"\]/g;

function exclude(a: Condition, b: Condition): boolean {
  if (a.path !== b.path) return false;
  if (a.exists === false || b.exists === false) return a.exists !== b.exists;
  if (a.equals === undefined || b.equals === undefined) return false;
  const values = new Set(valuesOf(b));
  return !valuesOf(a).some((value) => values.has(value));
}

import type { Definitions } from "../model/definitions.ts";
import { scopeOf, withNeeded, type Scope, type Sign } from "../model/scope.ts";
import { scopeOfCalculation, scopeOfRow } from "../plan/uses.ts";
import type { Ink } from "../report/text.ts";

/** A scope, with what is of it. */
export interface ExplainedScope extends Scope {
  readonly registers: readonly string[];
  readonly kinds: readonly string[];
  readonly rules: readonly string[];
  readonly calculations: readonly string[];
  readonly requirements: readonly string[];
}

/** Scopes with what is of each; those of registers with the scopes these need. */
export function scopesExplained(definitions: Definitions): readonly ExplainedScope[] {
  const { kinds, registers, rules, calculations, scopes = [] } = definitions;
  const rows = [...new Set(registers.flatMap(({ requirements }) => requirements))];
  return scopes.map((scope) => ({
    ...scope,
    registers: registers
      .filter((one) => one.scopes === undefined || withNeeded(scopes, one.scopes).has(scope.id))
      .map(({ id }) => id),
    kinds: [...kinds.keys()].filter((name) => scopeOf(kinds, { kind: name }) === scope.id),
    rules: rules.filter((one) => scopeOf(kinds, one) === scope.id).map(({ id }) => id),
    requirements: rows.filter((one) => scopeOfRow(kinds, one) === scope.id).map(({ id }) => id),
    calculations: calculations.filter((one) => scopeOfCalculation(kinds, one) === scope.id).map(({ id }) => id),
  }));
}

const signText = ({ kind, path, values }: Sign) =>
  values === undefined ? `${kind}: ${path} is stated` : `${kind}: ${path} is ${values.join(", ")}`;

export function scopeText({ id, title, needs, signs, ...of }: ExplainedScope, ink: Ink): string {
  const rows = [
    ["needs", needs],
    ["registers", of.registers],
    ["kinds", of.kinds],
    ["rules", of.rules],
    ["calculations", of.calculations],
    ["rows", of.requirements],
  ] as const;
  return [
    ink.bold(`scope ${id}`),
    title,
    "",
    ...rows.map(([label, names]) => `${ink.dim(label.padEnd(12))} ${names.length === 0 ? "none" : names.join(", ")}`),
    `${ink.dim("shown by".padEnd(12))} ${signs.length === 0 ? "records of its kinds" : signs.map(signText).join("; ")}`,
    "",
    "A book is judged by the scopes of its register. What it records of another is judged all the same, and is a finding: the register asks for too little.",
  ].join("\n");
}

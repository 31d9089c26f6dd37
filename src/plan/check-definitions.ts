import { checkCalculation } from "../compute/check.ts";
import type { Calculation } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import { nearestWords } from "../model/nearest.ts";
import { ProgramError } from "../model/program-error.ts";
import type { Rule } from "../model/rule.ts";
import type { AllCheckedPaths, CheckedPaths } from "../proof.ts";
import { pathOf } from "../reading/bind.ts";
import { checkAnnounced } from "./check-announced.ts";
import { checkCalculationInputs, checkConditions, checkInputs } from "./check-inputs.ts";
import { checkNames } from "./check-names.ts";
import { checkOwners } from "./check-owners.ts";
import { checkPath } from "./check-paths.ts";
import { checkScopes } from "./check-scopes.ts";
import { coverageOf, type Coverage } from "./coverage.ts";
import type { PathFacts } from "./path-facts.ts";
import { resultChecks } from "./result-checks.ts";
import { standAt } from "./standing.ts";

export const ruleName = ({ id }: Rule): string => `rule ${id}`;
export const calculationName = ({ id }: Calculation): string => `calculation ${id}`;

/**
 * Checks every path and formula of every definition against the schemas, and tells what is found of the paths of each. Throws
 * one error that lists all problems: they are faults of definitions, not of data.
 */
export function checkDefinitions(definitions: Definitions): AllCheckedPaths {
  const coverage = coverageOf(definitions);
  const problems: string[] = [];
  const paths: Record<string, CheckedPaths> = {};
  const note = (what: string, list: readonly string[]) => problems.push(...list.map((text) => `${what}: ${text}`));
  for (const rule of definitions.rules) {
    const facts = checkInputs(definitions, coverage, rule.kind, rule.inputs, rule.when ?? []);
    note(ruleName(rule), [...facts.problems, ...checkAnnounced(definitions, coverage, rule.kind, rule)]);
    paths[ruleName(rule)] = found(facts);
  }
  for (const calculation of definitions.calculations) {
    const facts = checkCalculationInputs(definitions, coverage, calculation);
    const announced = checkAnnounced(definitions, coverage, calculation.appliesTo.kind, {
      ...calculation.appliesTo,
      ...calculation,
    });
    note(calculationName(calculation), [...facts.problems, ...checkCalculation(calculation), ...announced]);
    paths[calculationName(calculation)] = found(facts);
  }
  noteRegisters(definitions, coverage, note);
  noteFacts(definitions, coverage, note);
  noteClosers(definitions, coverage, note);
  problems.push(...checkOwners(definitions), ...checkNames(definitions), ...checkScopes(definitions));
  if (problems.length > 0) throw new ProgramError(`definitions do not fit the schemas:\n  ${problems.join("\n  ")}`);
  return paths;
}

const found = ({ crosses, whole, calculations }: PathFacts): CheckedPaths => ({
  crosses,
  whole,
  calculations: [...new Set(calculations)],
});

type Note = (what: string, list: readonly string[]) => void;

function noteRegisters(definitions: Definitions, coverage: Coverage, note: Note): void {
  for (const { id, needs, each } of definitions.registers.flatMap(({ requirements }) => requirements)) {
    note(`requirement ${id}`, checkPath(definitions, coverage, each.kind, pathOf(needs), false).problems);
    const start = standAt(definitions, each.kind);
    if (start === null) continue;
    const schemas = { definitions, coverage, required: true };
    note(
      `requirement ${id}`,
      checkConditions(schemas, start, each.when ?? []).flatMap(({ problems }) => problems),
    );
  }
}

function noteFacts(definitions: Definitions, coverage: Coverage, note: Note): void {
  for (const { id, statements, about } of definitions.facts)
    for (const text of statements) {
      const path = pathOf(text);
      const [first] = path.steps;
      note(`fact ${id}`, checkPath(definitions, coverage, "book", path, false).problems);
      if (first?.type !== "all") note(`fact ${id}`, [`path "${text}" does not start at book.<kind>`]);
      else if (about !== undefined && about !== "")
        note(`fact ${id}`, checkPath(definitions, coverage, first.kind, pathOf(about), false).problems);
    }
}

/** Each result that may be rejected names closers there are, and each closer follows paths there are. */
function noteClosers(definitions: Definitions, coverage: Coverage, note: Note): void {
  const closers = new Map((definitions.closers ?? []).map((one) => [one.id, one]));
  for (const { id, kind, closedBy } of resultChecks(definitions.kinds))
    for (const name of closedBy) {
      const closer = closers.get(name);
      if (closer === undefined || (closer.kinds !== "any" && !closer.kinds.includes(kind)))
        note(`check ${id}`, [
          `nothing named "${name}" closes a result of ${kind}${nearestWords(name, closers.keys())}`,
        ]);
      else note(`closer ${name}`, checkInputs(definitions, coverage, kind, closer.inputs, []).problems);
    }
}

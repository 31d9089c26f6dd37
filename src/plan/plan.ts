import { checkCalculation } from "../compute/check.ts";
import type { Calculation } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Input, Inputs } from "../model/input.ts";
import { nearestWords } from "../model/nearest.ts";
import { ProgramError } from "../model/program-error.ts";
import type { Rule } from "../model/rule.ts";
import { pathOf } from "../reading/bind.ts";
import { checkCalculationInputs, checkConditions, checkInputs } from "./check-inputs.ts";
import { checkAnnounced } from "./check-announced.ts";
import { checkNames } from "./check-names.ts";
import { checkScopes } from "./check-scopes.ts";
import { checkPath } from "./check-paths.ts";
import { answerable } from "../model/exceptions.ts";
import { resultChecks } from "./result-checks.ts";
import { checkOwners } from "./check-owners.ts";
import { owedInputs, owingOf, type Owing } from "./owed-inputs.ts";
import { coverageOf, type Coverage } from "./coverage.ts";
import { standAt } from "./standing.ts";
import { kindIn } from "../model/kind-text.ts";

/** Definitions in the order they are judged in. Derived from what each reads; nobody assigns a stage. */
export interface Plan {
  /** About exceptions: judged before anything they could answer. */
  readonly exceptions: readonly Rule[];
  /** Hold records against one value of the book: many that contradict it outweigh it, few are at fault themselves. */
  readonly against: readonly Rule[];
  /** Read one record. */
  readonly within: readonly Rule[];
  /** Calculations, inputs before results. */
  readonly calculations: readonly Calculation[];
  /** Compare values with where they come from: one after the other, before rules that only judge by them. */
  readonly disputing: readonly Rule[];
  /** Follow links, or read results. */
  readonly chain: readonly Rule[];
  readonly whole: readonly Rule[];
  /** Rules that compare dates: an order-exception may answer them. */
  readonly ordered: ReadonlySet<string>;
  /** What definitions are owed. */
  readonly owing: readonly Owing[];
  /** Whether a rule reads one record only: its objections then accuse what they point at. */
  readonly single: ReadonlySet<string>;
}

const plans = new WeakMap<Definitions, Plan>();

/**
 * Checks every path and formula of every definition against the schemas and puts definitions in order. Throws one error
 * that lists all problems: they are faults of definitions, not of data.
 */
export function planOf(definitions: Definitions): Plan {
  const known = plans.get(definitions);
  if (known !== undefined) return known;
  const { whole } = definitions;
  if (whole !== undefined && isPartOf(definitions, whole)) {
    const own = ofThese(planOf(whole), definitions);
    plans.set(definitions, own);
    return own;
  }
  const coverage = coverageOf(definitions);
  const problems: string[] = [];
  const note = (what: string, list: readonly string[]) => problems.push(...list.map((text) => `${what}: ${text}`));
  const rules = definitions.rules.map((rule) => {
    const facts = checkInputs(definitions, coverage, rule.kind, rule.inputs, rule.when ?? []);
    note(`rule ${rule.id}`, [...facts.problems, ...checkAnnounced(definitions, coverage, rule.kind, rule)]);
    return {
      rule,
      facts,
      crosses: facts.crosses || facts.calculations.length > 0,
      exception: answerable.has(kindIn(rule.kind)),
    };
  });
  const calculations = definitions.calculations.map((calculation) => {
    const facts = checkCalculationInputs(definitions, coverage, calculation);
    const announced = checkAnnounced(definitions, coverage, calculation.appliesTo.kind, {
      ...calculation.appliesTo,
      ...calculation,
    });
    note(`calculation ${calculation.id}`, [...facts.problems, ...checkCalculation(calculation), ...announced]);
    return { calculation, needs: facts.calculations };
  });
  noteRegisters(definitions, coverage, note);
  noteFacts(definitions, coverage, note);
  noteClosers(definitions, coverage, note);
  problems.push(...checkOwners(definitions), ...checkNames(definitions), ...checkScopes(definitions));
  if (problems.length > 0) throw new ProgramError(`definitions do not fit the schemas:\n  ${problems.join("\n  ")}`);
  const others = rules.filter(({ exception, rule }) => !exception && rule.against === undefined);
  const after = others.filter(({ crosses, rule }) => crosses && rule.disputes === undefined);
  const plan: Plan = {
    exceptions: rules.filter(({ exception }) => exception).map(({ rule }) => rule),
    against: rules.filter(({ exception, rule }) => !exception && rule.against !== undefined).map(({ rule }) => rule),
    within: others.filter(({ crosses }) => !crosses).map(({ rule }) => rule),
    calculations: inOrder(calculations),
    disputing: others.filter(({ crosses, rule }) => crosses && rule.disputes !== undefined).map(({ rule }) => rule),
    chain: after.filter(({ facts }) => !facts.whole).map(({ rule }) => rule),
    whole: after.filter(({ facts }) => facts.whole).map(({ rule }) => rule),
    ordered: new Set(definitions.rules.filter(({ inputs }) => datesIn(inputs) > 1).map(({ id }) => id)),
    owing: owingOf(owedInputs(definitions).owed),
    single: new Set(rules.filter(({ crosses }) => !crosses).map(({ rule }) => rule.id)),
  };
  plans.set(definitions, plan);
  return plan;
}

/** Whether these are some of those: what was changed since is to be checked by itself. */
const isPartOf = ({ rules, calculations }: Definitions, whole: Definitions): boolean => {
  const all = new Set<object>([...whole.rules, ...whole.calculations]);
  return [...rules, ...calculations].every((one) => all.has(one));
};

/** The plan of all definitions, with no more of it than some of them. */
function ofThese(plan: Plan, { rules, calculations }: Definitions): Plan {
  const own = new Set<object>([...rules, ...calculations]);
  const ids = new Set([...rules, ...calculations].map(({ id }) => id));
  const kept = <T extends object>(list: readonly T[]) => list.filter((one) => own.has(one));
  return {
    ...plan,
    exceptions: kept(plan.exceptions),
    against: kept(plan.against),
    within: kept(plan.within),
    calculations: kept(plan.calculations),
    disputing: kept(plan.disputing),
    chain: kept(plan.chain),
    whole: kept(plan.whole),
    owing: owingOf(plan.owing.flatMap(({ paths }) => [...paths.values()].flat()).filter(({ by }) => ids.has(by.id))),
  };
}

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

/** How many dates a rule compares; a list counts as several. */
function datesIn(inputs: Inputs): number {
  return Object.values(inputs).reduce((sum, { reading, many }: Input<unknown>) => {
    const own = reading.type === "date" ? 1 : reading.type === "thing" ? datesIn(reading.inputs) : 0;
    return sum + (many ? 2 * own : own);
  }, 0);
}

/** Inputs before results; a circle is refused. */
function inOrder(
  all: readonly { readonly calculation: Calculation; readonly needs: readonly string[] }[],
): readonly Calculation[] {
  const order: Calculation[] = [];
  let rest = [...all].sort((a, b) => (a.calculation.id < b.calculation.id ? -1 : 1));
  while (rest.length > 0) {
    const waiting = new Set(rest.map(({ calculation }) => calculation.id));
    const ready = rest.filter(({ needs }) => !needs.some((need) => waiting.has(need)));
    if (ready.length === 0)
      throw new ProgramError(`calculations need each other in a circle: ${[...waiting].join(", ")}`);
    order.push(...ready.map(({ calculation }) => calculation));
    rest = rest.filter((one) => !ready.includes(one));
  }
  return order;
}

import type { Calculation } from "../model/calculation.ts";
import type { Definitions } from "../model/definitions.ts";
import { answerable } from "../model/exceptions.ts";
import type { Input, Inputs } from "../model/input.ts";
import { kindIn } from "../model/kind-text.ts";
import { ProgramError } from "../model/program-error.ts";
import type { Rule } from "../model/rule.ts";
import { provedPaths, type AllCheckedPaths } from "../proof.ts";
import { calculationName, checkDefinitions, ruleName } from "./check-definitions.ts";
import { owedInputs, owingOf, type Owing } from "./owed-inputs.ts";

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
 * Puts definitions in order, once they are checked: those that are shipped when the program is built, all others here. Throws
 * one error that lists all problems.
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
  const plan = ordered(definitions, provedPaths(definitions) ?? checkDefinitions(definitions));
  plans.set(definitions, plan);
  return plan;
}

function ordered(definitions: Definitions, paths: AllCheckedPaths): Plan {
  const known = (name: string) => paths[name] ?? unknownPaths(name);
  const rules = definitions.rules.map((rule) => {
    const { crosses, whole, calculations: needs } = known(ruleName(rule));
    const exception = answerable.has(kindIn(rule.kind));
    return { rule, whole, crosses: crosses || needs.length > 0, exception };
  });
  const calculations = definitions.calculations.map((calculation) => ({
    calculation,
    needs: known(calculationName(calculation)).calculations,
  }));
  const others = rules.filter(({ exception, rule }) => !exception && rule.against === undefined);
  const after = others.filter(({ crosses, rule }) => crosses && rule.disputes === undefined);
  return {
    exceptions: rules.filter(({ exception }) => exception).map(({ rule }) => rule),
    against: rules.filter(({ exception, rule }) => !exception && rule.against !== undefined).map(({ rule }) => rule),
    within: others.filter(({ crosses }) => !crosses).map(({ rule }) => rule),
    calculations: inOrder(calculations),
    disputing: others.filter(({ crosses, rule }) => crosses && rule.disputes !== undefined).map(({ rule }) => rule),
    chain: after.filter(({ whole }) => !whole).map(({ rule }) => rule),
    whole: after.filter(({ whole }) => whole).map(({ rule }) => rule),
    ordered: new Set(definitions.rules.filter(({ inputs }) => datesIn(inputs) > 1).map(({ id }) => id)),
    owing: owingOf(owedInputs(definitions).owed),
    single: new Set(rules.filter(({ crosses }) => !crosses).map(({ rule }) => rule.id)),
  };
}

function unknownPaths(name: string): never {
  throw new ProgramError(`the paths of ${name} were never checked`);
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

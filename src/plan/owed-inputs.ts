import { fieldSteps } from "../model/field-steps.ts";
import { nearestIds } from "../link/alike.ts";
import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import { ofInputs, readersOf, type Owes, type Reader } from "../model/owes.ts";
import { printSteps, type Step } from "../model/path.ts";
import type { Milestone, Owner } from "../model/vocabulary.ts";
import { behind, isName, joined } from "./known.ts";
import { pathOf } from "../reading/bind.ts";

/** A path that a definition is owed, from each record or row of a kind that meets the conditions. */
export interface OwedInput {
  readonly by: Reader;
  /** As `owes` names it. */
  readonly name: string;
  /** What the definition applies to; of what it reads of all records of a kind, that kind. */
  readonly kind: string;
  /** Conditions before the one that reads it; all, for an input; of all records of a kind, the filters on them. */
  readonly when: readonly Condition[];
  /** As paths are printed. */
  readonly path: string;
  /** Its parts, input by input: what only leads on and may be absent is not owed with what stands behind it. */
  readonly legs: readonly Leg[];
  readonly due: Milestone;
  readonly owner: Owner;
}

interface Leg {
  readonly path: string;
  readonly owed: boolean;
}

type Walked = Pick<OwedInput, "kind" | "when" | "path" | "legs">;

/** What each definition is owed, by the paths it reads; and names in `owes` that stand for none. */
export function owedInputs(definitions: Pick<Definitions, "rules" | "calculations">): {
  readonly owed: readonly OwedInput[];
  readonly problems: readonly string[];
} {
  const problems: string[] = [];
  const owed = readersOf(definitions).flatMap((by) =>
    by.owes.flatMap(({ inputs, due, owner }: Owes) =>
      inputs.flatMap((name): readonly OwedInput[] => {
        const found = walkOf(by, name);
        if (typeof found !== "string") return [{ by, name, ...found, due, owner }];
        problems.push(`${by.what} ${by.id}: owes "${name}", ${found}`);
        return [];
      }),
    ),
  );
  return { owed, problems };
}

/** Where a name of `owes` leads from the subject, or why it leads nowhere. */
function walkOf(by: Reader, name: string): Walked | string {
  const names = fieldSteps(name);
  if (!Object.hasOwn(by.inputs, names[0] ?? "")) {
    const index = by.when.findIndex(({ path }) => path === name);
    const legs = [{ path: name, owed: true }];
    return index < 0 ? strange(by, name) : walked(by.kind, by.when.slice(0, index), legs);
  }
  const legs: Leg[] = [];
  let inputs: Reader["inputs"] = by.inputs;
  for (const one of names) {
    const input = inputs[one];
    if (input === undefined) return strange(by, name);
    legs.push({ path: input.path, owed: input.required || legs.length === names.length - 1 });
    inputs = ofInputs(input.inner ?? {});
  }
  const [first, ...rest] = legs;
  const [head, ...tail] = pathOf(first?.path ?? "").steps;
  if (head !== undefined && first?.owed === false && tail.every(({ type }) => type === "filter")) {
    const filters = tail.flatMap(filterCondition);
    // Of all records of a kind, or all that name the subject, each owes it as far as the filters hold.
    if (head.type === "all") return walked(head.kind, filters, rest);
    if (head.type === "back" && isName(head.field))
      return walked(head.kind, [...filters, ...behind(head.field, by.when)], rest);
  }
  return walked(by.kind, by.when, legs);
}

function walked(kind: string, when: readonly Condition[], legs: readonly Leg[]): Walked | string {
  const path = legs.reduce((before, leg) => joined(before, leg.path), "");
  const step = pathOf(path).steps.find(leavesRecords);
  return step === undefined
    ? { kind, when, path: printSteps(pathOf(path).steps), legs }
    : `which is read from ${whence(step)}: ${remedy(step)}`;
}

const filterCondition = (step: Step): readonly Condition[] =>
  step.type !== "filter" ? [] : [{ path: printSteps(step.path), equals: flags.get(step.equals) ?? step.equals }];

const flags: ReadonlyMap<string, boolean> = new Map([
  ["true", true],
  ["false", false],
]);

const leavesRecords = ({ type }: Step): boolean => ["profile", "table", "calculation", "all"].includes(type);

const whence = ({ type }: Step): string =>
  type === "all" ? "the book" : type === "profile" ? "the profile" : `a ${type}`;

const remedy = ({ type }: Step): string =>
  type === "all" ? "a row of the register asks the book for it" : "nobody can enter it in a record";

function strange(by: Reader, name: string): string {
  const all = [...namesIn(by.inputs), ...by.when.map(({ path }) => path)];
  const near = nearestIds(name, all);
  const said = near.length > 0 ? `nearest: ${near.map((one) => `"${one}"`).join(", ")}` : `it reads ${all.join(", ")}`;
  return `which is neither an input nor the path of a condition; ${said}`;
}

const namesIn = (inputs: Reader["inputs"], before = ""): readonly string[] =>
  Object.entries(inputs).flatMap(([name, { inner }]) => [
    before + name,
    ...(inner === undefined ? [] : namesIn(ofInputs(inner), `${before}${name}.`)),
  ]);

/** What is owed of the subjects of one kind under the same conditions: each path once, with all who read it. */
export interface Owing {
  readonly kind: string;
  readonly when: readonly Condition[];
  readonly paths: ReadonlyMap<string, readonly OwedInput[]>;
}

/** Groups what is owed so that each condition is asked once of each subject. */
export function owingOf(owed: readonly OwedInput[]): readonly Owing[] {
  const groups = new Map<
    string,
    { readonly kind: string; readonly when: readonly Condition[]; paths: Map<string, OwedInput[]> }
  >();
  for (const one of owed) {
    const key = JSON.stringify([one.kind, one.when]);
    const group = groups.get(key) ?? { kind: one.kind, when: one.when, paths: new Map<string, OwedInput[]>() };
    groups.set(key, group);
    group.paths.set(one.path, [...(group.paths.get(one.path) ?? []), one]);
  }
  return [...groups.values()];
}

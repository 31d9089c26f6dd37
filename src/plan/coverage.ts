import type { Definitions } from "../model/definitions.ts";
import type { Condition } from "../model/input.ts";
import { parsePath, printSteps } from "../model/path.ts";
import { owedInputs } from "./owed-inputs.ts";
import type { Anchor } from "./standing.ts";

/** What is owed under each register, by kind: paths, with the conditions under which they are owed, and who owes them. */
export type Coverage = readonly ReadonlyMap<string, readonly OwedPath[]>[];

interface OwedPath {
  readonly needs: string;
  readonly when: readonly Condition[];
  /** "requirement joint-log", "rule wire-seen". */
  readonly by: string;
}

/**
 * What the rows of each register owe, and what definitions owe whatever the register: where the conditions hold under which one
 * of a further scope owes something, signs of that scope show, and it is in force.
 */
export function coverageOf({
  registers,
  rules,
  unjudged = [],
  calculations,
}: Pick<Definitions, "registers" | "rules" | "unjudged" | "calculations">): Coverage {
  const read = owedInputs({ rules: [...rules, ...unjudged], calculations }).owed;
  return registers.map(({ requirements }) => {
    const coverage = new Map<string, OwedPath[]>();
    const add = (kind: string, row: OwedPath) => coverage.set(kind, [...(coverage.get(kind) ?? []), row]);
    for (const { id, each, needs } of requirements)
      add(each.kind, {
        needs: printSteps(parsePath(needs).steps),
        when: each.when ?? [],
        by: `requirement ${id}`,
      });
    for (const { by, kind, path, when } of read) add(kind, { needs: path, when, by: `${by.what} ${by.id}` });
    return coverage;
  });
}

/**
 * Whether somebody owes what has been reached under every register, under no other conditions than are known to hold: a
 * book names one register, and a definition applies under all. Who owes `a.b` owes `a`, and who owes a list owes what a
 * filter takes from it. What a condition says is there, nobody need owe.
 */
export const isCovered = (coverage: Coverage, anchors: readonly Anchor[]): boolean =>
  anchors.some(isThere) ||
  (coverage.length > 0 && coverage.every((register) => owedAt(register, anchors) !== undefined));

/** Of a list a condition only says that one of its rows has it. */
const isThere = ({ text, conditions }: Anchor): boolean =>
  conditions.some(
    ({ path, equals, exists = equals !== undefined }) => exists && !path.includes("[") && leads(path, text),
  );

/** Who owes the very thing that has been reached, under every register: "requirement joint-log"; "" where nobody does. */
export function ownedBy(coverage: Coverage, anchors: readonly Anchor[]): string {
  const all = coverage.map((register) => owedAt(register, anchors, leads)?.by);
  return all.every((by) => by !== undefined) ? (all[0] ?? "") : "";
}

/** Who owes it under other conditions, each with these: what a fault of a definition may be about. */
export const owedElsewhere = (coverage: Coverage, anchors: readonly Anchor[]): readonly string[] => [
  ...new Set(
    coverage.flatMap((register) =>
      anchors.flatMap(({ kind, text }) =>
        (register.get(kind) ?? [])
          .filter(({ needs }) => owesPath(needs, text))
          .map(({ by, when }) => (when.length === 0 ? by : `${by} where ${when.map(conditionWords).join(" and ")}`)),
      ),
    ),
  ),
];

const owedAt = (
  register: Coverage[number],
  anchors: readonly Anchor[],
  reaches: (needs: string, text: string) => boolean = owesPath,
): OwedPath | undefined =>
  anchors
    .flatMap(({ kind, text, conditions }) =>
      (register.get(kind) ?? []).filter(
        ({ needs, when }) =>
          reaches(needs, text) && when.every((one) => conditions.some((known) => implies(known, one))),
      ),
    )
    .at(0);

const owesPath = (needs: string, text: string): boolean =>
  leads(needs, text) || (leads(text, needs) && text.charAt(needs.length) === "[");

const conditionWords = ({ path, equals, exists }: Condition): string =>
  equals === undefined
    ? `${path} is ${exists === false ? "absent" : "there"}`
    : `${path} is ${[equals].flat().map(String).join(" or ")}`;

const leads = (longer: string, shorter: string) =>
  longer === shorter || (longer.startsWith(shorter) && /^[.[<]/.test(longer.slice(shorter.length)));

function implies(known: Condition, wanted: Condition): boolean {
  if (JSON.stringify(known) === JSON.stringify(wanted)) return true;
  if (known.path !== wanted.path || known.equals === undefined || wanted.equals === undefined) return false;
  const allowed = valuesOf(wanted);
  return valuesOf(known).every((value) => allowed.includes(value));
}

/** What a condition lets a field be, as texts. */
export const valuesOf = ({ equals }: Condition) => (Array.isArray(equals) ? equals : [equals]).map(String);

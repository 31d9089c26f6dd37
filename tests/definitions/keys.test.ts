import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { groupsOf } from "../../src/reading/step-groups.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { Inputs } from "../../src/model/input.ts";
import { fieldAt } from "../../src/model/kind.ts";
import { parsePath, printSteps, wordsOfSteps, type Step } from "../../src/model/path.ts";
import { registers } from "../../src/requirements/index.ts";
import { rules } from "../../src/rules/index.ts";

/** Paths along which something can be missing: what is optional, or a list that may be empty, is never missed. */
const ofInputs = (inputs: Inputs): readonly string[] =>
  Object.values(inputs).flatMap(({ path, need, reading }) => [
    ...(need === "required" ? [path] : []),
    ...(reading.type === "thing" ? ofInputs(reading.inputs) : []),
  ]);

const paths = [
  ...rules.flatMap(({ inputs, when = [] }) => [...ofInputs(inputs), ...when.map(({ path }) => path)]),
  ...calculations.flatMap(({ inputs, appliesTo }) => [
    ...Object.values(inputs).flatMap(({ path, rows }) => [path, ...(rows === undefined ? [] : ofInputs(rows))]),
    ...(appliesTo.when ?? []).map(({ path }) => path),
  ]),
  ...registers.flatMap(({ requirements }) => requirements.map(({ needs }) => needs)),
];

const kinds = loadKinds([fileURLToPath(new URL("../../schemas", import.meta.url))]);

/** Kinds that a link of a kind may name, so that its absence may be missed at one of them; "book" for all of a kind. */
function missedAt(step: Step): readonly string[] {
  const kind = step.type === "back" ? kinds.get(step.kind) : undefined;
  if (kind === undefined || step.type !== "back") return ["book"];
  return (fieldAt(kind, step.field)?.targets ?? []).map((target) => target.split(/[#@]/)[0] ?? "");
}

/** Records that can be missing along a path: at what, by which step, and in the words their gap is named by. */
function missable(steps: readonly Step[]): readonly { readonly step: string; readonly name: string }[] {
  const own = groupsOf(steps).flatMap(({ head, filters }) => {
    if (head?.type !== "back" && head?.type !== "all") return [];
    const all = [head, ...filters];
    return missedAt(head).map((at) => ({ step: printSteps(all), name: `${at}: ${wordsOfSteps(all)}` }));
  });
  const keys = steps.flatMap((step) => (step.type === "table" ? step.keys.flatMap((key) => missable(key.steps)) : []));
  return [...own, ...keys];
}

test("records that are missing by two different steps have two names in keys", () => {
  const steps = paths.flatMap((path) => missable(parsePath(path).steps));
  expect(steps.length).toBeGreaterThan(50);
  const byName = new Map<string, Set<string>>();
  for (const { step, name } of steps) byName.set(name, (byName.get(name) ?? new Set()).add(step));
  expect([...byName].filter(([, all]) => all.size > 1).map(([name, all]) => [name, ...all])).toEqual([]);
});

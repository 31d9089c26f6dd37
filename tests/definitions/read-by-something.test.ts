import { expect, test } from "vitest";
import { shippedDefinitions } from "../../src/definitions.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { Input, Inputs } from "../../src/model/input.ts";
import type { Field } from "../../src/model/kind.ts";
import { readersOf } from "../../src/model/owes.ts";
import { parsePath, type Step } from "../../src/model/path.ts";
import { runExample } from "../../src/plan/example.ts";
import { milestones, owners } from "../../src/model/vocabulary.ts";

const kinds = loadKinds(["schemas"]);
const { rules, calculations, facts, registers, tables, profiles } = shippedDefinitions(kinds);
const rows = registers.flatMap(({ requirements }) => requirements);

/** What is read, as "profile.name" and "table.column" and "table.column.point". */
const read = new Set<string>();

/** Notes what a path reads; returns where it ends if that is in a table. */
function note(text: string, from = ""): string {
  let at = from;
  const walk = (steps: readonly Step[]): void => {
    for (const step of steps) {
      if (step.type === "profile") read.add(`profile.${step.name}`);
      if (step.type === "filter") walk(step.path);
      if (step.type === "field" && at !== "") {
        at = `${at}.${step.name}`;
        read.add(at);
      }
      if (step.type === "table") {
        step.keys.forEach((key) => note(key.text));
        at = step.name;
        read.add(at);
      }
    }
  };
  walk(parsePath(text).steps);
  return at;
}

const noteInputs = (inputs: Inputs, from = ""): void =>
  Object.values(inputs).forEach(({ path, reading }: Input<unknown>) => {
    const end = note(path, from);
    if (reading.type === "thing") noteInputs(reading.inputs, end);
  });

for (const { inputs, when } of rules) {
  noteInputs(inputs);
  when?.forEach(({ path }) => note(path));
}
for (const { inputs, appliesTo } of calculations) {
  for (const { path, rows: of } of Object.values(inputs)) {
    const end = note(path);
    if (of !== undefined) noteInputs(of, end);
  }
  appliesTo.when?.forEach(({ path }) => note(path));
}
rows.forEach(({ needs, each }) => [needs, ...(each.when ?? []).map(({ path }) => path)].forEach((path) => note(path)));
facts.flatMap(({ statements }) => statements).forEach((path) => note(path));

// A rule that asks a table with keys of its own reads columns while it judges: those that its examples read.
const watched = tables.map((table) => ({
  ...table,
  columns: new Proxy(table.columns, {
    get(columns, name) {
      read.add(`${table.id}.${String(name)}`);
      return columns[String(name)];
    },
  }),
}));
for (const rule of rules) for (const example of rule.examples) runExample(rule, example, watched);

/** Read by judging itself, where it holds the comparisons with originals. */
read.add("profile.comparisonByReading");

const unread = (names: readonly string[]) => names.filter((name) => !read.has(name));

test("every parameter of the profiles is read by a definition", () => {
  const names = new Set(profiles.flatMap(({ parameters }) => Object.keys(parameters)));
  expect(unread([...names].map((name) => `profile.${name}`))).toEqual([]);
});

test("every table, each of its columns and each figure of a point is read by a definition", () => {
  const names = tables.flatMap(({ id, columns }) => [
    id,
    ...Object.entries(columns).flatMap(([column, { points }]) => [
      `${id}.${column}`,
      ...(points ?? []).map((point) => `${id}.${column}.${point}`),
    ]),
  ]);
  expect(unread(names)).toEqual([]);
});

test("every fact compares at least two statements", () => {
  const several = (statement: string) => statement.includes("[]");
  expect(
    facts.filter(({ statements }) => statements.length < 2 && !statements.some(several)).map(({ id }) => id),
  ).toEqual([]);
});

test("every milestone makes something due", () => {
  const dues = (fields: Iterable<Field>): readonly string[] =>
    [...fields].flatMap(({ due, fields: own, item }) => [
      ...(due === undefined ? [] : [due]),
      ...dues(own?.values() ?? []),
      ...(item === undefined ? [] : dues([item])),
    ]);
  const used = new Set([
    ...[...kinds.values()].flatMap(({ fields }) => dues(fields.values())),
    ...rows.map(({ due }) => due),
    ...readersOf({ rules, calculations }).flatMap(({ owes }) => owes.map(({ due }) => due)),
  ]);
  expect(milestones.filter((name) => !used.has(name))).toEqual([]);
});

test("everybody who may have to act is named by a definition", () => {
  const named = new Set<string>([
    ...[...rules, ...facts, ...rows].map(({ owner }) => owner),
    ...readersOf({ rules, calculations }).flatMap(({ owes }) => owes.map(({ owner }) => owner)),
    ...calculations.flatMap(({ owner, accept }) => [owner, ...accept.map((one) => one.owner)]).map((one) => one ?? ""),
  ]);
  expect(owners.filter((owner) => !named.has(owner))).toEqual([]);
});

import { fileURLToPath } from "node:url";
import { describe, expect, it, test } from "vitest";
import { expiries, shippedDefinitions } from "../../src/definitions.ts";
import { checkInputs } from "../../src/plan/check-inputs.ts";
import { runExample } from "../../src/plan/example.ts";
import { coverageOf } from "../../src/plan/coverage.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { Field } from "../../src/model/kind.ts";

const definitions = shippedDefinitions(loadKinds([fileURLToPath(new URL("../../schemas", import.meta.url))]));
const coverage = coverageOf(definitions);

describe.each(expiries.map((rule) => [rule.id, rule] as const))("%s", (_id, rule) => {
  it.each(rule.examples.map((example) => [example.name, example] as const))("example: %s", (_name, example) => {
    const said = runExample(rule, example);
    expect(said === "waiting" ? said : said.map(({ message }) => message)).toEqual(example.objections);
  });

  it("has examples on both sides, and reads fields that somebody owes", () => {
    expect(rule.examples.some(({ objections }) => objections.length === 0)).toBe(true);
    expect(rule.examples.some(({ objections }) => objections.length > 0)).toBe(true);
    expect(checkInputs(definitions, coverage, rule.kind, rule.inputs, rule.when ?? []).problems).toEqual([]);
  });

  it("has a name of its own", () => {
    expect(definitions.rules.map(({ id }) => id)).not.toContain(rule.id);
    expect(expiries.filter(({ id }) => id === rule.id)).toHaveLength(1);
  });
});

/** Limits that end nothing: why. */
const noEnd: Readonly<Record<string, string>> = {};

test("whatever is taken along and has a last day is asked whether it has passed", () => {
  const limits = [...definitions.kinds.values()]
    .filter(({ carry }) => carry === "always")
    .flatMap((kind) => [...limitsOf(kind.fields.values(), kind.name)]);
  expect(limits.length).toBeGreaterThan(3);
  const read = JSON.stringify(expiries.map(({ kind, inputs }) => ({ kind, inputs })));
  for (const { kind, name } of limits) {
    if (noEnd[`${kind}.${name}`] !== undefined) continue;
    const asked = expiries.filter((rule) => rule.kind === kind).map(({ inputs }) => JSON.stringify(inputs));
    expect([kind, name, asked.some((text) => text.includes(`"path":"${name}"`))]).toEqual([kind, name, true]);
  }
  expect(read).toContain("orderDate");
});

function* limitsOf(fields: Iterable<Field>, kind: string): Generator<{ readonly kind: string; readonly name: string }> {
  for (const { name, date, fields: inner, item } of fields) {
    if (date === "limit") yield { kind, name };
    if (inner !== undefined) yield* limitsOf(inner.values(), kind);
    if (item !== undefined) yield* limitsOf([item], kind);
  }
}

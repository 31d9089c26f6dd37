import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { closers } from "../../src/closers/index.ts";
import { bindGiven, handle } from "../../src/plan/example.ts";
import { resultChecks } from "../../src/plan/result-checks.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import type { Handle, Inputs, Thing } from "../../src/model/input.ts";

const kinds = loadKinds([join(import.meta.dirname, "../../schemas")]);

describe.each(closers.map((closer) => [closer.id, closer] as const))("%s", (_, closer) => {
  test.each(closer.examples.map((example) => [example.name, example] as const))("%s", (_name, example) => {
    const values = bindGiven(closer.inputs, example.given);
    const closure = closer.close(values, handle("subject", "X-01"));
    expect(closure.closes ? closure.said : closure.lacks).toBe(example.expect);
    const rests = closure.closes ? ((closure.rests ?? []) as readonly (Thing<Inputs> | { readonly $: Handle })[]) : [];
    expect(rests.map(({ $ }) => $.id)).toEqual(example.rests ?? []);
    if (!closure.closes) expect(closure.hint).toMatch(/^[a-z].*[^.]$/);
  });

  test("has an example that closes and one that does not", () => {
    const closes = closer.examples.map(
      ({ given }) => closer.close(bindGiven(closer.inputs, given), handle("subject", "X-01")).closes,
    );
    expect(new Set(closes)).toEqual(new Set([true, false]));
  });
});

test("every closer is named by a schema, and every result that may be rejected names one", () => {
  const checks = resultChecks(kinds);
  expect(checks.length).toBeGreaterThan(10);
  expect(checks.filter(({ closedBy }) => closedBy.length === 0)).toEqual([]);
  const named = new Set(checks.flatMap(({ closedBy }) => closedBy));
  expect(closers.map(({ id }) => id).filter((id) => !named.has(id))).toEqual([]);
});

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { chains, shippedDefinitions } from "../../src/definitions.ts";
import { sheetRules } from "../../src/compute/sheets.ts";
import { pathOf } from "../../src/reading/bind.ts";
import { checkPath } from "../../src/plan/check-paths.ts";
import { resultChecks } from "../../src/plan/result-checks.ts";
import { coverageOf } from "../../src/plan/coverage.ts";
import { loadKinds } from "../../src/load/kinds.ts";

const definitions = shippedDefinitions(loadKinds([join(import.meta.dirname, "../../schemas")]));
const ids = new Set([
  ...definitions.rules.map(({ id }) => id),
  ...definitions.calculations.flatMap(({ id }) => [id, `${id}/inputs`, `${id}/results`]),
  ...sheetRules.map(({ id }) => id),
  ...resultChecks(definitions.kinds).map(({ id }) => id),
  ...definitions.registers.flatMap(({ requirements }) => requirements.map(({ id }) => id)),
]);

describe.each(chains.map(({ kind, links }) => ({ kind, links })))("the chain of a $kind", ({ kind, links }) => {
  test.each(links)("$what is judged by definitions there are", ({ judgedBy }) => {
    expect(judgedBy.filter((id) => !ids.has(id))).toEqual([]);
  });
  test.each(links)("$what follows paths there are", ({ paths }) => {
    const problems = paths.flatMap(
      (path) => checkPath(definitions, coverageOf(definitions), kind, pathOf(path), false).problems,
    );
    expect(problems).toEqual([]);
  });
});

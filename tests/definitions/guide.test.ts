import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { checkCalculation } from "../../src/compute/check.ts";
import { run } from "../../src/compute/run-plain.ts";
import { shippedDefinitions } from "../../src/definitions.ts";
import { runExample } from "../../src/plan/example.ts";
import { planOf } from "../../src/plan/plan.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import * as basis from "../../src/model/basis.ts";
import * as calculation from "../../src/model/calculation.ts";
import * as dates from "../../src/model/dates.ts";
import * as input from "../../src/model/input.ts";
import * as rule from "../../src/model/rule.ts";
import { guideBlock, guideDefinition } from "../support/guide.ts";

/** The worked examples of DEVELOPERS.md, run as they are printed there. */
const hoopStress = guideDefinition("Add a calculation", { ...basis, ...calculation }) as calculation.Calculation;
const gasketFitted = guideDefinition("Add a rule", { ...basis, ...dates, ...input, ...rule }) as rule.Rule;

const dir = realpathSync(mkdtempSync(join(tmpdir(), "databook-guide-")));
afterAll(() => rmSync(dir, { recursive: true, force: true }));
mkdirSync(join(dir, "schemas"));
writeFileSync(join(dir, "schemas/gasket.schema.json"), guideBlock("Add a kind", "json"));
const kinds = loadKinds([join(import.meta.dirname, "../../schemas"), join(dir, "schemas")]);
const shipped = shippedDefinitions(kinds);

describe("the examples of the guide", () => {
  it("fit the schemas: every path leads somewhere, and whatever is required is owed", () => {
    const calculations = [...shipped.calculations, hoopStress];
    expect(() => planOf({ ...shipped, calculations, rules: [...shipped.rules, gasketFitted] })).not.toThrow();
    expect(checkCalculation(hoopStress)).toEqual([]);
  });

  it.each(hoopStress.examples.map((example) => [example.source, example] as const))("calculation: %s", (_, example) => {
    const done = run(hoopStress, example.given);
    for (const [symbol, expected] of Object.entries(example.expect))
      expect(done.values.get(symbol)).toBeCloseTo(expected, 9);
    expect(done.limits.filter(({ holds }) => !holds).map(({ of }) => of.means)).toEqual(example.outside ?? []);
  });

  it.each(gasketFitted.examples.map((example) => [example.name, example] as const))("rule: %s", (_, example) => {
    const said = runExample(gasketFitted, example);
    expect(said === "waiting" ? said : said.map(({ message }) => message)).toEqual(example.objections);
  });
});

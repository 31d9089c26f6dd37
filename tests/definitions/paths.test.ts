import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { calculations } from "../../src/calculations/index.ts";
import { shippedDefinitions } from "../../src/definitions.ts";
import { pathOf } from "../../src/reading/bind.ts";
import { checkOwners } from "../../src/plan/check-owners.ts";
import { checkPath } from "../../src/plan/check-paths.ts";
import { owedInputs } from "../../src/plan/owed-inputs.ts";
import { coverageOf } from "../../src/plan/coverage.ts";
import { loadKinds } from "../../src/load/kinds.ts";

const kinds = loadKinds([fileURLToPath(new URL("../../schemas", import.meta.url))]);
const definitions = shippedDefinitions(kinds);
const coverage = coverageOf(definitions);

describe.each(calculations.map((calculation) => [calculation.id, calculation] as const))("%s", (_, calculation) => {
  const { kind, when = [] } = calculation.appliesTo;

  it("reads fields that there are, and that somebody owes", () => {
    const problems = Object.values(calculation.inputs).flatMap(
      ({ path, need }) =>
        checkPath(definitions, coverage, kind, pathOf(path), (need ?? "required") === "required", when).problems,
    );
    expect(problems).toEqual([]);
  });

  it("gets a class in the words of the record", () => {
    for (const { path, options } of Object.values(calculation.inputs))
      if (options !== undefined) expect([...options].sort()).toEqual([...(optionsAt(kind, path) ?? [])].sort());
  });
});

describe("what is owed", () => {
  const { owed, problems } = owedInputs(definitions);

  it("names inputs and conditions there are", () => {
    expect(problems).toEqual([]);
    expect(owed.length).toBeGreaterThan(100);
  });

  it("leads along fields that there are", () => {
    const faults = owed.flatMap(
      ({ kind: of, path, when }) => checkPath(definitions, coverage, of, pathOf(path), false, when).problems,
    );
    expect(faults).toEqual([]);
  });

  it("has one way and one owner each", () => {
    expect(checkOwners(definitions)).toEqual([]);
  });
});

/** Allowed values of a field at a dotted path of objects, from a record, or from a row of `kind#list` or its record. */
function optionsAt(kindText: string, path: string): readonly string[] | undefined {
  if (path.startsWith("record.")) return optionsAt(kindText.split("#")[0] ?? "", path.slice("record.".length));
  const [kind = "", list = ""] = kindText.split("#");
  const [first = "", ...rest] = path.split(".");
  const fields = kinds.get(kind)?.fields;
  let field = (list === "" ? fields : fields?.get(list)?.item?.fields)?.get(first);
  for (const name of rest) field = field?.fields?.get(name);
  return field?.type === "boolean" ? ["false", "true"] : field?.options;
}

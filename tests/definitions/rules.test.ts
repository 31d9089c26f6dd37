import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { fileURLToPath } from "node:url";
import { shippedDefinitions } from "../../src/definitions.ts";
import { checkInputs } from "../../src/plan/check-inputs.ts";
import { lackedIn, runExample } from "../../src/plan/example.ts";
import { coverageOf } from "../../src/plan/coverage.ts";
import type { Rule } from "../../src/model/rule.ts";
import { loadKinds } from "../../src/load/kinds.ts";
import { rules } from "../../src/rules/index.ts";

const definitions = shippedDefinitions(loadKinds([fileURLToPath(new URL("../../schemas", import.meta.url))]));
const coverage = coverageOf(definitions);

const isRule = (value: unknown): value is Rule =>
  typeof value === "object" && value !== null && "check" in value && "inputs" in value && "severity" in value;

const folder = new URL("../../src/rules/", import.meta.url);
const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
  // The lists of the trades hold what the files beside them define.
  (name) => name.endsWith(".ts") && !/(?:^|[/\\])index\.ts$/.test(name),
);
const written = (
  await Promise.all(
    files.map(async (name) =>
      Object.values<unknown>((await import(new URL(name, folder).href)) as Readonly<Record<string, unknown>>),
    ),
  )
)
  .flat(2)
  .filter(isRule);

describe.each(written.map((rule) => [rule.id, rule] as const))("%s", (_id, rule) => {
  it.each(rule.examples.map((example) => [example.name, example] as const))("example: %s", (_name, example) => {
    const said = runExample(rule, example, definitions.tables);
    expect(said === "waiting" ? said : said.map(({ message }) => message)).toEqual(example.objections);
    if (said !== "waiting") expect(lackedIn(rule, example, definitions.tables)).toEqual(example.lacks ?? []);
  });

  it("is not passed without what it is owed", () => {
    const owed = (rule.owes ?? []).flatMap(({ inputs }) => inputs);
    expect(owed.filter((name) => rule.inputs[name]?.need === "optional")).toEqual([]);
  });

  it("has an example that passes and one that is objected to, each with its own name", () => {
    expect(rule.examples.some(({ objections }) => objections.length === 0)).toBe(true);
    expect(rule.examples.some(({ objections }) => objections.length > 0)).toBe(true);
    expect(new Set(rule.examples.map(({ name }) => name)).size).toBe(rule.examples.length);
  });

  it("speaks in short plain sentences that name places it has", () => {
    for (const example of rule.examples) {
      const said = runExample(rule, example, definitions.tables);
      for (const { message, why, hint, at } of said === "waiting" ? [] : said) {
        for (const sentence of [message, hint])
          expect(sentence).not.toMatch(/^[A-Z][a-z]{2,}|\.$|\binvalid\b|undefined|NaN|\[object/);
        expect(why).not.toMatch(/^$|\.$|undefined|NaN|\[object/);
        if (typeof at === "string" && at !== "subject") expect(Object.keys(rule.inputs)).toContain(at);
      }
    }
  });

  it("reads fields that there are, and that somebody owes", () => {
    const { kind, inputs, when = [] } = rule;
    expect(checkInputs(definitions, coverage, kind, inputs, when).problems).toEqual([]);
  });

  it("has an id in kebab case, a title and an owner", () => {
    expect(rule.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(rule.title).toMatch(/^[A-Z].*[^.]$/);
    expect(rule.owner).not.toBe("");
  });
});

describe("the list of rules", () => {
  it("holds every rule of the folder", () => {
    expect(rules.map(({ id }) => id).sort()).toEqual(written.map(({ id }) => id).sort());
  });

  it("has no id twice", () => {
    expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
  });
});

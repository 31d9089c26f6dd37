import { describeBasis, type Basis } from "../model/basis.ts";
import type { Calculation } from "../model/calculation.ts";
import type { BuiltIn } from "../model/definitions.ts";
import type { Fact } from "../model/fact.ts";
import type { Input } from "../model/input.ts";
import type { Field } from "../model/kind.ts";
import type { Requirement } from "../model/requirement.ts";
import type { Rule } from "../model/rule.ts";
import type { Explained, ExplainedKind } from "./explained.ts";

/** Everything explained, as one JSON text; format of design contract `explain --format json`. Ends with a line end. */
export function explainJson(all: Explained): string {
  return `${JSON.stringify(
    {
      kinds: all.kinds.map(kindJson),
      calculations: all.calculations.map(calculationJson),
      rules: [...all.rules.map(ruleJson), ...all.builtIns.map(builtInJson)],
      facts: all.facts.map(factJson),
      requirements: all.requirements.map(requirementJson),
      registers: all.registers.map(({ id, title, scopes = [], requirements }) => ({
        id,
        title,
        scopes,
        requirements: requirements.map((row) => row.id),
      })),
      scopes: all.scopes,
      profiles: all.profiles.map(({ id, title }) => ({ id, title })),
      parameters: all.parameters.map(({ values, ...rest }) => ({
        ...rest,
        values: values.map(({ basis, ...value }) => ({ ...value, basis: basisJson(basis) })),
      })),
      tables: all.tables.map(({ rows, ...rest }) => ({
        ...rest,
        rows: rows.map(({ basis, ...row }) => ({ ...row, basis: basisJson(basis) })),
      })),
      milestones: all.milestones,
      owners: all.owners,
      units: all.units,
    },
    null,
    2,
  )}\n`;
}

const basisJson = (basis: Basis) => ({ ...basis, text: describeBasis(basis) });

function kindJson({ name, title, description, section, page, derived, fields, leftOut }: ExplainedKind) {
  return {
    id: name,
    name,
    title,
    description,
    section,
    page,
    derived,
    fields: fieldsJson(fields),
    ...(leftOut !== undefined && { leftOut }),
  };
}

function fieldsJson(fields: ReadonlyMap<string, Field>): object[] {
  return [...fields.values()].map(fieldJson);
}

function fieldJson({ fields, item, ...rest }: Field): object {
  return {
    ...rest,
    ...(fields !== undefined && { fields: fieldsJson(fields) }),
    ...(item !== undefined && { item: fieldJson(item) }),
  };
}

function calculationJson(calculation: Calculation) {
  const {
    id,
    title,
    basis,
    covers,
    appliesTo,
    inputs,
    functions,
    steps,
    limits,
    accept,
    compared,
    crossCheck,
    caution,
    examples,
  } = calculation;
  return {
    id,
    title,
    basis: basisJson(basis),
    covers,
    appliesTo,
    owes: calculation.owes ?? [],
    inputs: Object.entries(inputs).map(([symbol, { rows, ...input }]) => ({
      symbol,
      ...input,
      ...(rows !== undefined && { rows: inputsJson(rows) }),
    })),
    functions: (functions ?? []).map(({ name, means, basis: own, parameters, unit }) => ({
      name,
      means,
      basis: basisJson(own),
      parameters,
      unit,
    })),
    steps,
    limits,
    accept,
    compared,
    ...(crossCheck !== undefined && { crossCheck }),
    ...(caution !== undefined && { caution }),
    examples,
  };
}

function ruleJson({ id, title, severity, basis, kind, when, owner, inputs, owes, examples }: Rule) {
  return {
    id,
    title,
    severity,
    basis: basisJson(basis),
    kind,
    when: when ?? [],
    owner,
    inputs: inputsJson(inputs),
    owes: owes ?? [],
    builtIn: false,
    examples: examples.map(({ name, given, objections, source }) => ({
      name,
      given,
      objections,
      ...(source !== undefined && { source }),
    })),
  };
}

function inputsJson(inputs: Readonly<Record<string, Input<unknown>>>) {
  return Object.entries(inputs).map(([name, { path, need, many, reading }]): object => ({
    name,
    path,
    need,
    many,
    reading: reading.type === "thing" ? { type: "thing", inputs: inputsJson(reading.inputs) } : reading,
  }));
}

const builtInJson = ({ id, title, severity, basis }: BuiltIn) => ({
  id,
  title,
  severity,
  basis: basisJson(basis),
  builtIn: true,
  examples: [],
});

const factJson = ({ id, title, basis, statements, owner }: Fact) => ({
  id,
  title,
  basis: basisJson(basis),
  statements,
  owner,
});

const requirementJson = ({ basis, ...rest }: Requirement) => ({ ...rest, basis: basisJson(basis) });

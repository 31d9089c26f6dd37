import type { Handle, Input, Inputs } from "../model/input.ts";
import { readPlain } from "../model/plain-value.ts";
import { ProgramError } from "../model/program-error.ts";
import type { Objection, Rule, RuleExample } from "../model/rule.ts";
import { Waiting } from "../reading/bind.ts";

/** What a rule says about the values of an example: its objections, or that a required value is absent. */
export function runExample(rule: Rule, example: RuleExample<Inputs>): readonly Objection<Inputs>[] | "waiting" {
  const values = bindGiven(rule.inputs, example.given);
  try {
    return [...rule.check(values, handle("subject", "X-01"))];
  } catch (reason) {
    if (reason instanceof Waiting) return "waiting";
    throw reason;
  }
}

/** Paths of what a rule demands and an example does not give. */
export function lackedIn(rule: Rule, example: RuleExample<Inputs>): readonly string[] {
  return [...(rule.lacks?.(bindGiven(rule.inputs, example.given)) ?? [])].map(({ path }) => path);
}

/** The values of an example, as a definition reads them. */
export function bindGiven(inputs: Inputs, given: Readonly<Record<string, unknown>>): Record<string, never> {
  const unknown = Object.keys(given).find((name) => name !== "$" && inputs[name] === undefined);
  if (unknown !== undefined) throw new ProgramError(`the example gives "${unknown}", which is no input`);
  const values = {};
  for (const [name, input] of Object.entries(inputs))
    Object.defineProperty(values, name, { enumerable: true, get: () => valueOf(input, given[name]) });
  return values;
}

function valueOf(input: Input<unknown>, given: unknown): unknown {
  if (input.reading.type === "exists") return given === true;
  if (given === undefined || (Array.isArray(given) && given.length === 0 && input.need === "required")) {
    if (input.need === "required") throw new Waiting();
    return input.many ? [] : undefined;
  }
  if (input.many) return Array.isArray(given) ? given.map((one) => readOne(input, one)) : [readOne(input, given)];
  return readOne(input, given);
}

function readOne(input: Input<unknown>, given: unknown): unknown {
  const { reading } = input;
  switch (reading.type) {
    case "thing": {
      const row = given as Readonly<Record<string, unknown>>;
      const values = bindGiven(reading.inputs, row);
      const id = typeof row["$"] === "string" ? row["$"] : "X-01";
      Object.defineProperty(values, "$", { enumerable: false, value: handle("thing", id) });
      return values;
    }
    default: {
      const read = readPlain(reading, given);
      if (!read.ok) throw new ProgramError(`an example: ${read.problem}`);
      return read.value;
    }
  }
}

/** What names a thing of an example. */
export const handle = (kind: string, id: string): Handle => ({ address: `${kind}:${id}`, kind, id, name: id });

import type { Handle, Input, Inputs, LookUp, Values } from "../model/input.ts";
import { readPlain } from "../model/plain-value.ts";
import { ProgramError } from "../model/program-error.ts";
import type { Objection, Rule, RuleExample } from "../model/rule.ts";
import type { Table } from "../model/table.ts";
import { Waiting } from "../reading/value.ts";
import { cellsOf, namedKeys, rowFor } from "../reading/table-row.ts";
import { addressOf } from "../model/record.ts";

/**
 * What a rule says about the values of an example: its objections, or that a required value is absent. What it asks of a
 * table is answered by those of `tables`: an example gives values of records only.
 */
export function runExample(
  rule: Rule,
  example: RuleExample<Inputs>,
  tables: readonly Table[] = [],
): readonly Objection<Inputs>[] | "waiting" {
  const values = bindGiven(rule.inputs, example.given, tables);
  try {
    return [...rule.check(values, handle("subject", "X-01"))];
  } catch (reason) {
    if (reason instanceof Waiting) return "waiting";
    throw reason;
  }
}

/** Paths of what a rule demands and an example does not give. */
export function lackedIn(rule: Rule, example: RuleExample<Inputs>, tables: readonly Table[] = []): readonly string[] {
  return [...(rule.lacks?.(bindGiven(rule.inputs, example.given, tables)) ?? [])].map(({ path }) => path);
}

/** The values of an example, as a definition reads them. */
export function bindGiven<const I extends Inputs>(
  inputs: I,
  given: Readonly<Record<string, unknown>>,
  tables: readonly Table[] = [],
): Values<I> {
  const unknown = Object.keys(given).find((name) => name !== "$" && inputs[name] === undefined);
  if (unknown !== undefined) throw new ProgramError(`the example gives "${unknown}", which is no input`);
  const values = {};
  for (const [name, input] of Object.entries(inputs))
    Object.defineProperty(values, name, { enumerable: true, get: () => valueOf(input, given[name], tables) });
  // Each property was defined from the input of its name.
  return values as Values<I>;
}

function valueOf(input: Input<unknown>, given: unknown, tables: readonly Table[]): unknown {
  if (input.reading.type === "table") return lookUpIn(tables, input.reading.table);
  if (input.reading.type === "exists") return given === true;
  if (given === undefined || (Array.isArray(given) && given.length === 0 && input.need === "required")) {
    if (input.need === "required") throw new Waiting();
    return input.many ? [] : undefined;
  }
  if (input.many)
    return Array.isArray(given) ? given.map((one) => readOne(input, one, tables)) : [readOne(input, given, tables)];
  return readOne(input, given, tables);
}

/** What the shipped table answers; without a row the example waits, as a rule does. */
function lookUpIn(tables: readonly Table[], id: string): LookUp {
  const table = tables.find((one) => one.id === id);
  if (table === undefined) throw new ProgramError(`an example asks the table "${id}", which it is not given`);
  return (...keys) => {
    const found = rowFor(table, namedKeys(table, keys));
    if ("none" in found) throw new Waiting();
    return cellsOf(table, found);
  };
}

function readOne(input: Input<unknown>, given: unknown, tables: readonly Table[]): unknown {
  const { reading } = input;
  switch (reading.type) {
    case "thing": {
      const row = given as Readonly<Record<string, unknown>>;
      const values = bindGiven(reading.inputs, row, tables);
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
export const handle = (kind: string, id: string): Handle => ({ address: addressOf({ kind, id }), kind, id, name: id });

import type { ErrorObject, ValidateFunction } from "ajv/dist/2020.js";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { ProgramError } from "../model/program-error.ts";
import { readyCheck } from "./ready-checks.ts";
import { schemaEngine, type SchemaEngine } from "./schema-engine.ts";

/** The two shapes a record is written in: alone in its file, or as an element of `records`. */
export type Shape = "single" | "row";

/** A record with more values than this is checked up to its first fault only: each fault costs memory. */
const largeRecord = 200_000;

const engines: { first?: SchemaEngine; all?: SchemaEngine } = {};
const compiled = new WeakMap<JsonObject, { readonly first: ValidateFunction; all?: ValidateFunction }>();

/** Faults of a record against the schema of its kind, none when it keeps to it. Schemas are compiled when first used. */
export function schemaErrors(kind: Kind, shape: Shape, value: JsonObject): readonly ErrorObject[] {
  const schema = kind[shape];
  let checks = compiled.get(schema);
  // Nearly every record is sound, so it is first checked up to its first fault: that is less code to compile and run.
  if (checks === undefined)
    compiled.set(schema, (checks = { first: readyCheck(schema) ?? compile("first", kind, schema) }));
  if (checks.first(value)) return [];
  if (countValues(value, largeRecord) >= largeRecord) return checks.first.errors ?? [];
  checks.all ??= compile("all", kind, schema);
  checks.all(value);
  return checks.all.errors ?? [];
}

function compile(faults: "first" | "all", kind: Kind, schema: JsonObject): ValidateFunction {
  try {
    return (engines[faults] ??= schemaEngine(faults === "all")).compile(schema);
  } catch (error) {
    throw new ProgramError(`the schema of kind "${kind.name}" cannot be compiled`, { cause: error });
  }
}

function countValues(value: Json, most: number): number {
  const open: Json[] = [value];
  let count = 0;
  for (let next = open.pop(); next !== undefined && count < most; next = open.pop()) {
    count++;
    if (isList(next) || isObject(next)) for (const inner of Object.values<Json>(next)) open.push(inner);
    if (open.length > most) return most;
  }
  return count;
}

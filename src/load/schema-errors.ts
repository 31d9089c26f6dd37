import { Ajv2020, type ErrorObject, type ValidateFunction } from "ajv/dist/2020.js";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { ProgramError } from "../model/program-error.ts";
import { isAnnotation, objectOf } from "./inline.ts";

/** The two shapes a record is written in: alone in its file, or as an element of `records`. */
export type Shape = "single" | "row";

/** A record with more values than this is checked up to its first fault only: each fault costs memory. */
const largeRecord = 200_000;

type Compile = (schema: JsonObject) => ValidateFunction;

const engines: { first?: Compile; all?: Compile } = {};
const compiled = new WeakMap<JsonObject, { readonly first: ValidateFunction; all?: ValidateFunction }>();

/** Faults of a record against the schema of its kind, none when it keeps to it. Schemas are compiled when first used. */
export function schemaErrors(kind: Kind, shape: Shape, value: JsonObject): readonly ErrorObject[] {
  const schema = kind[shape];
  let checks = compiled.get(schema);
  // Nearly every record is sound, so it is first checked up to its first fault: that is less code to compile and run.
  if (checks === undefined) compiled.set(schema, (checks = { first: compile("first", kind, schema) }));
  if (checks.first(value)) return [];
  if (countValues(value, largeRecord) >= largeRecord) return checks.first.errors ?? [];
  checks.all ??= compile("all", kind, schema);
  checks.all(value);
  return checks.all.errors ?? [];
}

function compile(faults: "first" | "all", kind: Kind, schema: JsonObject): ValidateFunction {
  try {
    return (engines[faults] ??= engine(faults === "all"))(schema);
  } catch (error) {
    throw new ProgramError(`the schema of kind "${kind.name}" cannot be compiled`, { cause: error });
  }
}

/**
 * Compiles schemas so that a form which occurs in several places or kinds (a quantity, a signature) is compiled once: it
 * is registered by its text and referred to. Tried: compiling each kind whole takes three times as long.
 */
function engine(allErrors: boolean): Compile {
  const ajv = new Ajv2020({
    strict: true,
    allErrors,
    messages: false,
    meta: false,
    validateSchema: false,
    code: { optimize: false },
  });
  const known = new Map<string, string>();
  const share = (schema: JsonObject): JsonObject => {
    const own = lean(schema);
    const text = JSON.stringify(own);
    let id = known.get(text);
    if (id === undefined) {
      known.set(text, (id = `form-${known.size}`));
      ajv.addSchema(own, id, undefined, false);
    }
    return { $ref: id };
  };
  const lean = (schema: JsonObject): JsonObject => {
    const entries = Object.entries(schema).filter(([word]) => !isAnnotation(word));
    const rest = Object.fromEntries(entries);
    for (const word of ["properties", "patternProperties"])
      if (rest[word] !== undefined)
        rest[word] = Object.fromEntries(
          Object.entries(objectOf(rest, word)).map(([name, one]) => [name, isObject(one) ? share(one) : one]),
        );
    if (isObject(rest["items"])) rest["items"] = share(rest["items"]);
    return rest;
  };
  return (schema) => ajv.compile(lean(schema));
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

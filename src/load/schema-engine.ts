import type { Ajv2020, ValidateFunction } from "ajv/dist/2020.js";
import { createRequire } from "node:module";
import { isObject, type JsonObject } from "../model/json.ts";
import { isAnnotation, objectOf } from "./inline.ts";

/** Compiles schemas; `ajv` holds them, for writing their code to a file. */
export interface SchemaEngine {
  readonly ajv: Ajv2020;
  compile(schema: JsonObject): ValidateFunction;
  /** Keeps a schema under a name, without compiling it. */
  add(schema: JsonObject, name: string): void;
}

/** Loaded when the first schema has to be compiled: a sound book of the shipped kinds never needs it. */
const load = createRequire(import.meta.url);

/**
 * An engine that compiles a form which occurs in several places or kinds (a quantity, a signature) once: it is registered
 * by its text and referred to. Tried: compiling each kind whole takes three times as long.
 */
export function schemaEngine(allErrors: boolean, source = false): SchemaEngine {
  const { Ajv2020: Engine } = load("ajv/dist/2020.js") as typeof import("ajv/dist/2020.js");
  const ajv = new Engine({
    strict: true,
    allErrors,
    messages: false,
    meta: false,
    validateSchema: false,
    inlineRefs: !source,
    code: { optimize: false, source },
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
  return {
    ajv,
    compile: (schema) => ajv.compile(lean(schema)),
    add: (schema, name) => void ajv.addSchema(lean(schema), name, undefined, false),
  };
}

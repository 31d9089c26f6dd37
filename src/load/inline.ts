import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { ProgramError } from "../model/program-error.ts";

/** A schema file, with the shared definitions it may refer to. */
export interface SchemaFile {
  readonly file: string;
  readonly schema: JsonObject;
  readonly common: JsonObject;
}

const maps: ReadonlySet<string> = new Set(["properties", "patternProperties"]);
const single: ReadonlySet<string> = new Set(["items", "additionalProperties", "propertyNames"]);
const typed: ReadonlySet<string> = new Set(["quantity", "date", "day", "link"]);
const reference = /^(common\.schema\.json)?#\/\$defs\/([A-Za-z][A-Za-z0-9]*)$/;
const deepest = 32;

/**
 * A schema with every `$ref` replaced by what it names; members beside a reference win. What was named is kept as
 * `x-type` where it says more than the JSON type: quantity, date, day, link.
 */
export function inline(schema: JsonObject, from: SchemaFile, depth = 0): JsonObject {
  if (depth > deepest) throw new ProgramError(`${from.file}: definitions refer to each other in a circle`);
  const { $ref: ref, ...own } = schema;
  const beside = Object.fromEntries(
    Object.entries(own).map(([name, value]) => [name, inlineMember(name, value, from, depth)]),
  );
  if (ref === undefined) return beside;
  const match = typeof ref === "string" ? reference.exec(ref) : null;
  const name = match?.[2] ?? "";
  const home: SchemaFile =
    match?.[1] === undefined ? from : { ...from, file: "common.schema.json", schema: from.common };
  const definitions = home.schema["$defs"];
  const definition = isObject(definitions) && Object.hasOwn(definitions, name) ? definitions[name] : undefined;
  if (!isObject(definition))
    throw new ProgramError(
      `${from.file}: "$ref" is ${JSON.stringify(ref)}; expected a definition such as "common.schema.json#/$defs/quantity"`,
    );
  return { ...inline(definition, home, depth + 1), ...(typed.has(name) && { "x-type": name }), ...beside };
}

function inlineMember(name: string, value: Json, from: SchemaFile, depth: number): Json {
  if (single.has(name) && isObject(value)) return inline(value, from, depth + 1);
  if (!maps.has(name) || !isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, member]) => {
      if (!isObject(member)) throw new ProgramError(`${from.file}: "${key}" is not a schema; expected an object`);
      return [key, inline(member, from, depth + 1)];
    }),
  );
}

/** The texts of a list member of a schema. */
export function texts(schema: JsonObject, name: string): readonly string[] {
  const value = schema[name];
  return isList(value) ? value.filter((one) => typeof one === "string") : [];
}

/** A text member of a schema. */
export function textOf(schema: JsonObject, name: string): string | undefined {
  const value = schema[name];
  return typeof value === "string" ? value : undefined;
}

/** An object member of a schema, empty when it is absent. */
export function objectOf(schema: JsonObject, name: string): JsonObject {
  const value = schema[name];
  return isObject(value) ? value : {};
}

const annotations: ReadonlySet<string> = new Set([
  "title",
  "description",
  "examples",
  ...[
    "section",
    "page",
    "paper",
    "label",
    "columns",
    "link",
    "belongs",
    "unit",
    "difference",
    "plausible",
    "sign",
    "not-below",
    "closed-by",
    "due",
    "owner",
    "instead",
    "date",
    "row-key",
    "carry",
    "acts",
    "type",
    "transcribes",
    "unless",
    "replaces",
    "compared",
    "number",
    "unprinted",
    "unread",
    "sought",
    "called",
    "whole-from",
    "there-by",
    "dated",
  ].map((word) => `x-${word}`),
]);

/** Whether a word of a schema only says something, and checks nothing. */
export function isAnnotation(word: string): boolean {
  return annotations.has(word);
}

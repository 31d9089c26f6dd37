import { Ajv2020 } from "ajv/dist/2020.js";
import { readdirSync, readFileSync } from "node:fs";
import { isObject, type Json, type JsonObject } from "../../src/model/json.ts";

const folder = new URL("../../schemas/", import.meta.url);

function readJson(name: string): JsonObject {
  const value = JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Json;
  if (!isObject(value)) throw new Error(`${name} is not an object`);
  return value;
}

const common = readJson("common.schema.json");
export const definitions = objectIn(common, "$defs");

/** The schema files of all kinds as written, by kind. */
export const schemas: ReadonlyMap<string, JsonObject> = new Map(
  readdirSync(folder)
    .filter((name) => name.endsWith(".schema.json") && name !== "common.schema.json")
    .sort()
    .map((name) => [name.replace(".schema.json", ""), readJson(name)]),
);

export function objectIn(value: JsonObject, name: string): JsonObject {
  const member = value[name];
  return isObject(member) ? member : {};
}

/** The schema with every reference replaced by what it names; a property's description stays its own. */
export function inlined(value: Json): Json {
  if (Array.isArray(value)) return (value as readonly Json[]).map(inlined);
  if (!isObject(value)) return value;
  const entries = Object.entries(value)
    .filter(([name]) => name !== "$ref")
    .map(([name, member]) => [name, inlined(member)] as const);
  const reference = value["$ref"];
  if (typeof reference !== "string") return Object.fromEntries(entries);
  const target = definitions[reference.replace("common.schema.json#/$defs/", "")];
  if (!isObject(target)) throw new Error(`${reference} names no shared definition`);
  const form = Object.entries(target).filter(([name]) => name !== "description");
  return { ...Object.fromEntries(form), ...Object.fromEntries(entries) };
}

/** A kind's schema as one closed object with the properties every record may have. */
export function composed(kind: string, schema: JsonObject): JsonObject {
  const required = Array.isArray(schema["required"]) ? (schema["required"] as readonly Json[]) : [];
  const whole = inlined({
    ...schema,
    $id: `composed:${kind}`,
    required: ["kind", "id", ...required],
    properties: {
      kind: { type: "string", const: kind, description: "Kind of the record." },
      ...objectIn(definitions, "recordProperties"),
      ...objectIn(schema, "properties"),
    },
  });
  if (!isObject(whole)) throw new Error(`${kind} is not an object`);
  return whole;
}

/** A property of a kind with its path, looking through objects and lists. */
export interface Property {
  readonly kind: string;
  readonly path: string;
  readonly schema: JsonObject;
  /** It is the item of a list: described by the list. */
  readonly item: boolean;
}

/** Every property of a kind's composed schema. */
export function* propertiesOf(kind: string): Generator<Property> {
  const schema = schemas.get(kind);
  if (schema === undefined) throw new Error(`there is no kind ${kind}`);
  yield* inObject(kind, "", composed(kind, schema));
}

function* inObject(kind: string, prefix: string, schema: JsonObject): Generator<Property> {
  const maps = Object.entries(objectIn(schema, "patternProperties")).map(([, one]) => ["*", one] as const);
  for (const [name, one] of Object.entries(objectIn(schema, "properties")))
    if (isObject(one)) yield* inProperty(kind, prefix === "" ? name : `${prefix}.${name}`, one, false);
  for (const [name, one] of maps) if (isObject(one)) yield* inProperty(kind, `${prefix}.${name}`, one, true);
}

function* inProperty(kind: string, path: string, schema: JsonObject, item: boolean): Generator<Property> {
  yield { kind, path, schema, item };
  if (isObject(schema["items"])) yield* inProperty(kind, `${path}[]`, schema["items"], true);
  yield* inObject(kind, path, schema);
}

/** The property at a path such as `rows[].heat`, with or without brackets, or undefined. */
export function propertyAt(kind: string, path: string): JsonObject | undefined {
  const wanted = path.replaceAll("[]", "");
  return [...propertiesOf(kind)].find((property) => property.path.replaceAll("[]", "") === wanted)?.schema;
}

const words = [
  "section",
  "page",
  "paper",
  "label",
  "scope",
  "columns",
  "link",
  "belongs",
  "unit",
  "difference",
  "plausible",
  "sign",
  "closed-by",
  "instead",
  "unprinted",
  "sought",
  "whole-from",
  "there-by",
  "not-below",
  "dated",
  "unread",
  "transcribes",
  "unless",
  "replaces",
  "called",
  "compared",
  "number",
  "due",
  "owner",
  "date",
  "row-key",
  "carry",
  "acts",
];

/** A validator that knows the words of our vocabulary and refuses any other. */
export function strictAjv(): Ajv2020 {
  const ajv = new Ajv2020({ strict: true, allErrors: true });
  ajv.addVocabulary(words.map((word) => `x-${word}`));
  return ajv;
}

import { isObject, type JsonObject } from "../model/json.ts";
import { isCarry, type Kind } from "../model/kind.ts";
import { isMilestone, milestones, type Milestone } from "../model/vocabulary.ts";
import { fieldsOf } from "./fields.ts";
import { inline, objectOf, textOf, texts, type SchemaFile } from "./inline.ts";

export const dialect = "https://json-schema.org/draft/2020-12/schema";

/**
 * A kind from its schema file: the properties every record may have are composed in, so that each of the two shapes of a
 * record is one flat object, closed at every level, that stands alone.
 */
export function composeKind(name: string, from: SchemaFile): Kind {
  const shared = objectOf(objectOf(from.common, "$defs"), "recordProperties");
  const { id, ...others } = objectOf(inline({ properties: shared }, from), "properties");
  const own = inline({ properties: objectOf(from.schema, "properties") }, from);
  const properties = { ...(id !== undefined && { id }), ...objectOf(own, "properties"), ...others };
  const { schema } = from;
  const title = textOf(schema, "title") ?? name;
  const description = textOf(schema, "description") ?? "";
  const required = ["id", ...texts(schema, "required")];
  const closed = { type: "object", additionalProperties: false };
  const apart = exclusive(objectOf(own, "properties"));
  const row: JsonObject = { title, description, ...closed, required, ...apart, properties };
  const label = textOf(schema, "x-label");
  const scope = textOf(schema, "x-scope");
  const unprinted = textOf(schema, "x-unprinted");
  const number = textOf(schema, "x-number");
  const dated = textOf(schema, "x-dated");
  const transcribes = milestoneOf(schema, "x-transcribes");
  const compared = milestoneOf(schema, "x-compared") ?? notBefore(transcribes, "final-inspection");
  const unless = textOf(schema, "x-unless");
  return {
    name,
    title,
    description,
    section: textOf(schema, "x-section") ?? "",
    page: schema["x-page"] === "each" ? "each" : "group",
    tableOnPaper: schema["x-paper"] === "table",
    carry: isCarry(schema["x-carry"]) ? schema["x-carry"] : "never",
    ...(scope !== undefined && { scope }),
    ...(label !== undefined && { label }),
    ...(unprinted !== undefined && { unprinted }),
    ...(transcribes !== undefined && { transcribes }),
    ...(compared !== undefined && { compared }),
    ...(number !== undefined && { number }),
    ...(dated !== undefined && { dated }),
    ...(unless !== undefined && { transcribesUnless: unless }),
    columns: texts(schema, "x-columns"),
    fields: fieldsOf(row),
    derived: false,
    single: {
      title,
      description,
      ...closed,
      required: ["kind", ...required],
      ...apart,
      properties: { ...envelopeProperties(name), ...properties },
    },
    row,
  };
}

/** What may not stand beside a field that takes its place, as the dialect says it: editors show it as the loader does. */
function exclusive(properties: JsonObject): JsonObject {
  const entries = Object.entries(properties).flatMap(([name, property]) => {
    const replaced = isObject(property) ? texts(property, "x-replaces") : [];
    if (replaced.length === 0) return [];
    return [[name, { properties: Object.fromEntries(replaced.map((one) => [one, false])) }] as const];
  });
  return entries.length === 0 ? {} : { dependentSchemas: Object.fromEntries(entries) };
}

function milestoneOf(schema: JsonObject, word: string): Milestone | undefined {
  const text = textOf(schema, word);
  return text !== undefined && isMilestone(text) ? text : undefined;
}

/** The later of two milestones in their usual order; none where the first is not given. */
function notBefore(one: Milestone | undefined, other: Milestone): Milestone | undefined {
  if (one === undefined) return undefined;
  const rank = (milestone: Milestone) => (milestone === "now" ? -1 : milestones.indexOf(milestone));
  return rank(one) > rank(other) ? one : other;
}

const envelopeProperties = (kind: string): JsonObject => ({
  $schema: { type: "string", maxLength: 400, description: "Where editors find the schema; the tool does not read it." },
  kind: { type: "string", const: kind, description: "Kind of the record." },
});

/**
 * One schema per kind that takes both shapes of a file, one record or a list of them: what editors complete with and what
 * an issue carries. By file name, in the order of the kinds.
 */
export function composedSchemas(kinds: ReadonlyMap<string, Kind>): ReadonlyMap<string, JsonObject> {
  const written = [...kinds.values()].filter(({ derived }) => !derived);
  return new Map(written.map((kind) => [`${kind.name}.schema.json`, bothShapes(kind)]));
}

/** The same for editors, as text, by the names that `$schema` leads to: `joint.json`. */
export function editorSchemas(kinds: ReadonlyMap<string, Kind>): ReadonlyMap<string, string> {
  return new Map(
    [...composedSchemas(kinds)].map(([name, schema]) => [
      name.replace(".schema", ""),
      `${JSON.stringify(schema, null, 2)}\n`,
    ]),
  );
}

function bothShapes({ name, title, description, single, row }: Kind): JsonObject {
  const properties = Object.keys(objectOf(row, "properties")).map((property): [string, JsonObject] => [
    property,
    { $ref: `#/else/properties/${property}` },
  ]);
  return {
    $schema: dialect,
    title,
    description,
    type: "object",
    if: { required: ["records"], not: { required: ["id"] } },
    then: {
      type: "object",
      required: ["kind", "records"],
      properties: {
        ...envelopeProperties(name),
        records: {
          type: "array",
          description: `Records of kind ${name}.`,
          items: { ...row, properties: Object.fromEntries(properties) },
        },
      },
      additionalProperties: false,
    },
    else: single,
  };
}

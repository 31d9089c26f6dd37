import { isDeepStrictEqual } from "node:util";
import type { JSONSchema } from "json-schema-to-typescript";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { editorSchemas } from "../load/compose.ts";
import { isAnnotation, objectOf, texts } from "../load/inline.ts";

const header = "// Made from schemas/ by `npm run types`; change the schemas, not this file.\n";

/** Name of a kind's type: `weld-log` → `WeldLog`. */
export function typeName(kind: string): string {
  return kind
    .split("-")
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .join("");
}

/**
 * The files made from the schemas, by path in the repository: one composed schema per kind for editors, and the types of
 * all records. Needs json-schema-to-typescript, which is there in development only.
 */
export async function generatedFiles(kinds: ReadonlyMap<string, Kind>): Promise<ReadonlyMap<string, string>> {
  const { compile } = await import("json-schema-to-typescript");
  const files = new Map<string, string>();
  for (const [name, text] of editorSchemas(kinds)) files.set(`schemas/editor/${name}`, text);
  const written = [...kinds.values()].filter(({ derived }) => !derived);
  const shared = sharedProperties(written);
  const typeOf = async (name: string, row: JsonObject, keep: (property: string) => boolean): Promise<string> => {
    const properties = Object.fromEntries(
      Object.entries(objectOf(row, "properties")).filter(([property]) => keep(property)),
    );
    const required = texts(row, "required").filter(keep);
    const schema = {
      ...plain({ ...row, properties, required }),
      title: name,
      description: row["description"],
    } as JSONSchema;
    return compile(schema, name, { bannerComment: "", ignoreMinAndMaxItems: true, style: { printWidth: 120 } });
  };
  const [first] = written;
  const types =
    first === undefined
      ? []
      : [
          await typeOf("RecordProperties", { ...first.row, description: "What every record may state." }, (property) =>
            shared.has(property),
          ),
        ];
  for (const { name, row } of written) {
    const type = await typeOf(typeName(name), row, (property) => !shared.has(property));
    types.push(type.replace(` ${typeName(name)} {`, ` ${typeName(name)} extends RecordProperties {`));
  }
  const map = written.map(({ name }) => `  ${JSON.stringify(name)}: ${typeName(name)};\n`).join("");
  types.push(`/** The type of a record by its kind. */\nexport interface RecordTypes {\n${map}}\n`);
  files.set("demo-data/generated/records.ts", `${header}\n${types.join("\n")}`);
  return files;
}

/** Names of the properties that all kinds have alike. */
function sharedProperties(kinds: readonly Kind[]): ReadonlySet<string> {
  const [first, ...others] = kinds.map(({ row }) => objectOf(row, "properties"));
  return new Set(
    Object.keys(first ?? {}).filter((name) =>
      others.every((properties) => isDeepStrictEqual(properties[name], first?.[name])),
    ),
  );
}

/** A schema without the words of ours, and without titles, of which each would become a type of its own. */
function plain(schema: JsonObject): JsonObject {
  const inner = (value: Json): Json => (isObject(value) ? plain(value) : isList(value) ? value.map(inner) : value);
  return Object.fromEntries(
    Object.entries(schema).flatMap(([word, value]) => {
      if (word === "properties" || word === "patternProperties")
        return [
          [
            word,
            isObject(value)
              ? Object.fromEntries(Object.entries(value).map(([name, one]) => [name, inner(one)]))
              : value,
          ],
        ];
      return isAnnotation(word) && word !== "description" ? [] : [[word, inner(value)]];
    }),
  );
}

import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";

/** A line of a record file is no longer than this, where it can be broken. */
const width = 100;

/** A file that holds one record. `schemas` leads from its folder to the schemas for editors. */
export function oneRecord(kind: string, schemas: string, value: JsonObject): string {
  return text({ $schema: `${schemas}/${kind}.json`, kind, ...value });
}

/** A file that holds records of one kind. */
export function manyRecords(kind: string, schemas: string, records: readonly JsonObject[]): string {
  return text({ $schema: `${schemas}/${kind}.json`, kind, records });
}

/** JSON as people read it: a row or a list that fits on a line stands on one; a record never does. */
function text(value: JsonObject): string {
  return `${written(value, "", 0)}\n`;
}

function written(value: Json, indent: string, used: number, open = true): string {
  if (!isList(value) && !isObject(value)) return JSON.stringify(value);
  if (!open) {
    const line = inLine(value);
    if (indent.length + used + line.length < width) return line;
  }
  const inner = `${indent}  `;
  const [left, right] = isList(value) ? "[]" : "{}";
  const lines = isList(value)
    ? value.map((one) => `${inner}${written(one, inner, 0, false)}`)
    : Object.entries(value).map(([name, one]) => {
        const key = `${JSON.stringify(name)}: `;
        // Records stand open, each with a line for a field.
        const isRecords = name === "records" && indent === "" && isList(one) && one.every(isObject);
        return `${inner}${key}${isRecords ? list(one, inner) : written(one, inner, key.length, false)}`;
      });
  return lines.length === 0 ? `${left}${right}` : `${left}\n${lines.join(",\n")}\n${indent}${right}`;
}

function list(records: readonly Json[], indent: string): string {
  if (records.length === 0) return "[]";
  const inner = `${indent}  `;
  return `[\n${records.map((one) => `${inner}${written(one, inner, 0)}`).join(",\n")}\n${indent}]`;
}

function inLine(value: Json): string {
  if (isList(value)) return `[${value.map(inLine).join(", ")}]`;
  if (!isObject(value)) return JSON.stringify(value);
  const members = Object.entries(value).map(([name, one]) => `${JSON.stringify(name)}: ${inLine(one)}`);
  return members.length === 0 ? "{}" : `{ ${members.join(", ")} }`;
}

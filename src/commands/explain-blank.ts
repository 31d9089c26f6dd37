import type { Json, JsonObject } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import { kindText } from "../model/kind-text.ts";
import { formOf, printTarget } from "../link/target.ts";

/**
 * The smallest record of a kind to copy: what identifies it, and what is owed of it sooner or later. Each value says what belongs
 * there, so that one left as it is cannot pass for a value.
 */
export function blankRecord(kind: Kind): JsonObject {
  return { kind: kind.name, ...blankObject(kind.fields) };
}

function blankObject(fields: ReadonlyMap<string, Field>): JsonObject {
  return Object.fromEntries(
    [...fields.values()]
      .filter(({ required, due }) => required || due !== undefined)
      .map((field) => [field.name, blankValue(field)]),
  );
}

function blankValue(field: Field): Json {
  const { type, name, options, targets = [], unit, fields, item, date } = field;
  switch (type) {
    case "list":
      return item === undefined ? [] : [blankValue(item)];
    case "object":
      return fields === undefined ? {} : blankObject(fields);
    case "quantity":
      return unit === undefined || unit === "any" ? "<value unit>" : unit === "1" ? "<value>" : `<value ${unit}>`;
    case "date":
      return `<year-month-day${date === "plan" ? ", planned" : ""}>`;
    case "link":
      return `<${targets.map((target) => linkForm(target, targets.length > 1)).join(" | ")}>`;
    case "boolean":
      return "<true or false>";
    case "integer":
    case "number":
      return "<number>";
    default:
      return options === undefined ? `<${name === "id" ? "ID" : "text"}>` : `<${options.join(" | ")}>`;
  }
}

function linkForm(target: string, several: boolean): string {
  const { kind, sign } = kindText(target);
  return printTarget(formOf(sign, { kind, id: `ID of ${kind}` }), several);
}

import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { exampleOf, expectation } from "../model/quantity-problem.ts";
import { textOf, texts } from "./inline.ts";
import { quoted } from "./portable.ts";

/** What a value should be, in words. */
export function expected(schema: JsonObject): string {
  const unit = textOf(schema, "x-unit") ?? "any";
  if (schema["x-type"] === "quantity") return `text: ${expectation(schema["x-difference"] === true ? "ΔK" : unit)}`;
  if (schema["x-type"] === "date") return "text: a day, or a day and time";
  if (schema["x-type"] === "day") return "text: a day";
  if (schema["x-type"] === "link") return "text: the id of another record";
  switch (schema["type"]) {
    case "array":
      return "a list";
    case "object":
      return "an object";
    case "integer":
      return "a whole number";
    case "number":
      return "a number";
    case "boolean":
      return "true or false";
    default:
      return "text";
  }
}

/** A value that would do, as JSON. */
export function sample(schema: JsonObject): string {
  const examples = schema["examples"];
  const [example] = isList(examples) ? examples : [];
  if (example !== undefined) return show(example, 120);
  const [option] = texts(schema, "enum");
  if (option !== undefined) return show(option);
  if (schema["x-type"] === "quantity")
    return `"${exampleOf(schema["x-difference"] === true ? "ΔK" : (textOf(schema, "x-unit") ?? "any"))}"`;
  if (schema["x-type"] === "date" || schema["x-type"] === "day") return '"2026-03-09"';
  const byType: Readonly<Record<string, string>> = {
    array: "[ … ]",
    object: "{ … }",
    integer: "1",
    number: "1",
    boolean: "true",
  };
  return byType[textOf(schema, "type") ?? ""] ?? '"…"';
}

/** A value as a message shows it. */
export function show(value: Json | undefined, most = 60): string {
  if (typeof value === "string") return quoted(value, most);
  if (value === undefined) return "absent";
  if (isList(value)) return value.length === 0 ? "an empty list" : most > 60 ? JSON.stringify(value) : "a list";
  if (isObject(value)) return most > 60 ? JSON.stringify(value) : "an object";
  return String(value);
}

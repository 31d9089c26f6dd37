import { isObject, type JsonObject } from "../model/json.ts";
import { isCarry, signs, type Field, type FieldType } from "../model/kind.ts";
import { unreadOf } from "../model/unread.ts";
import { isMilestone, isOwner } from "../model/vocabulary.ts";
import { objectOf, textOf, texts } from "./inline.ts";

/** The fields of an object in an inlined schema, in the order of the schema. */
export function fieldsOf(schema: JsonObject): ReadonlyMap<string, Field> {
  const required = new Set(texts(schema, "required"));
  return new Map(
    Object.entries(objectOf(schema, "properties")).flatMap(([name, property]) =>
      isObject(property) ? [[name, fieldOf(name, property, required.has(name))] as const] : [],
    ),
  );
}

function fieldOf(name: string, schema: JsonObject, required: boolean): Field {
  const type = typeOf(schema);
  const options = texts(schema, "enum");
  const [low, high] = texts(schema, "x-plausible");
  const unit = textOf(schema, "x-unit");
  const sign = signs.find((one) => one === schema["x-sign"]);
  const notBelow = textOf(schema, "x-not-below");
  const closedBy = texts(schema, "x-closed-by");
  const due = textOf(schema, "x-due");
  const owner = textOf(schema, "x-owner");
  const instead = textOf(schema, "x-instead");
  const date = schema["x-date"];
  const rowKey = textOf(schema, "x-row-key");
  const belongs = texts(schema, "x-belongs");
  const acts = texts(schema, "x-acts").filter(isOwner);
  const unprinted = textOf(schema, "x-unprinted");
  const unread = unreadOf(schema["x-unread"]);
  const unless = textOf(schema, "x-unless");
  const replaces = texts(schema, "x-replaces");
  const called = texts(schema, "x-called");
  const transcribes = textOf(schema, "x-transcribes");
  const wholeFrom = textOf(schema, "x-whole-from");
  const thereBy = textOf(schema, "x-there-by");
  const items = schema["items"];
  return {
    name,
    type,
    title: textOf(schema, "title") ?? inWords(name),
    description: textOf(schema, "description") ?? "",
    required,
    ...(options.length > 0 && { options }),
    ...(type === "link" && { targets: texts(schema, "x-link") }),
    ...(belongs.length > 0 && { belongs }),
    ...(unit !== undefined && type === "quantity" && { unit }),
    ...(schema["x-difference"] === true && { difference: true }),
    ...(low !== undefined && high !== undefined && { plausible: [low, high] as const }),
    ...(sign !== undefined && { sign }),
    ...(notBelow !== undefined && { notBelow }),
    ...(closedBy.length > 0 && { closedBy }),
    ...(due !== undefined && isMilestone(due) && { due }),
    ...(owner !== undefined && isOwner(owner) && { owner }),
    ...(unless !== undefined && { unless }),
    ...(replaces.length > 0 && { replaces }),
    ...(instead !== undefined && { instead: `book.${instead}` }),
    ...((date === "event" || date === "limit" || date === "plan") && { date }),
    ...(rowKey !== undefined && { rowKey }),
    ...(wholeFrom !== undefined && { wholeFrom }),
    ...(thereBy !== undefined && { thereBy }),
    ...(isCarry(schema["x-carry"]) && { carry: schema["x-carry"] }),
    ...(acts.length > 0 && { acts }),
    ...(unprinted !== undefined && { unprinted }),
    ...(unread !== undefined && { unread }),
    ...(schema["x-sought"] === true && { sought: true }),
    ...(called.length > 0 && { called }),
    ...(transcribes !== undefined && isMilestone(transcribes) && { transcribes }),
    ...(type === "object" && { fields: fieldsOf(schema) }),
    ...(type === "list" && isObject(items) && { item: fieldOf(name, items, false) }),
  };
}

function typeOf(schema: JsonObject): FieldType {
  const named = schema["x-type"];
  if (named === "quantity" || named === "link") return named;
  if (named === "date" || named === "day") return "date";
  switch (schema["type"]) {
    case "array":
      return "list";
    case "object":
    case "integer":
    case "number":
    case "boolean":
      return schema["type"];
    default:
      return "text";
  }
}

/** `nominalThickness` in words: "Nominal thickness". Words of capitals stay as they are. */
function inWords(name: string): string {
  const words = name.replaceAll(/([a-z0-9])([A-Z])/g, "$1 $2").split(" ");
  const lower = words.map((word) => (/^[A-Z0-9]{2,}$/.test(word) ? word : word.toLowerCase())).join(" ");
  return lower.charAt(0).toUpperCase() + lower.slice(1);
}

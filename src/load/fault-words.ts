import type { ErrorObject } from "ajv/dist/2020.js";
import { parseDate } from "../model/dates.ts";
import { atPointer, isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { exampleOf } from "../model/quantity-problem.ts";
import { parseQuantity } from "../model/quantity.ts";
import { stableName, stablePath } from "../model/stable.ts";
import { lowerTitle } from "../model/titles.ts";
import { objectOf, textOf, texts } from "./inline.ts";
import { nearestName } from "../model/nearest.ts";
import { quoted } from "./portable.ts";
import { expected, sample, show } from "./value-words.ts";

import type { RecordFault } from "./explain.ts";

/** A fault with what is needed to say it. */
export interface FaultCase {
  readonly error: ErrorObject;
  readonly kind: Kind;
  readonly value: JsonObject;
  /** The schema of the value objected to. */
  readonly schema: JsonObject;
  readonly pointer: string;
  readonly name: string;
  /** The value as a message shows it; numbers with the digits of the file. */
  readonly shown: string;
  readonly found: Json | undefined;
}

export type FaultWords = Pick<RecordFault, "message" | "hint"> & Partial<RecordFault>;

const limit = (schema: JsonObject, word: string) => JSON.stringify(schema[word]);
const range = (keyword: string, relation: string) => ({
  [keyword]: ({ name, shown, schema }: FaultCase): FaultWords => ({
    message: `${name} is ${shown}; expected ${relation} ${limit(schema, keyword)}`,
    hint: "correct the number",
  }),
});

/** What is said of a fault, by the word of the schema it breaks. */
export const explainers: Readonly<Record<string, (fault: FaultCase) => FaultWords>> = {
  ...range("minimum", "at least"),
  ...range("maximum", "at most"),
  ...range("exclusiveMinimum", "more than"),
  ...range("exclusiveMaximum", "less than"),
  ...range("multipleOf", "a multiple of"),
  type: wrongType,
  required({ error, kind, value, schema, pointer, name }) {
    const missing = param(error, "missingProperty");
    const at = pointer + pointerStep(missing);
    const property = objectOf(objectOf(schema, "properties"), missing);
    const of = pointer === "" ? `the ${lowerTitle(kind.title)}` : name;
    return {
      pointer: at,
      name: keyNameAt(kind, value, at),
      accuses: [pointer],
      message: `${of} has no "${missing}"`,
      why: `the schema says: ${(textOf(property, "description") ?? "it is part of what identifies it").replace(/\.$/, "")}`,
      hint: `add "${missing}": ${sample(property)}`,
    };
  },
  additionalProperties({ error, kind, value, schema, pointer }) {
    const extra = param(error, "additionalProperty");
    const at = pointer + pointerStep(extra);
    const here = atPointer(value, pointer);
    const known = Object.keys(objectOf(schema, "properties"));
    const unused = known.filter((name) => !(isObject(here) && Object.hasOwn(here, name)));
    const near = nearestName(extra, unused);
    const where = nameAt(kind, value, pointer);
    return {
      pointer: at,
      name: keyNameAt(kind, value, at),
      accuses: [at, ...(near === undefined ? [] : [pointer + pointerStep(near)])],
      message: `${quoted(extra)} is no property of ${where}`,
      why: "a name that is not known is refused, so that no misspelt one is passed over",
      hint:
        known.length === 0
          ? 'write a place in the record, such as "/thickness"'
          : near === undefined
            ? `known and unused here: ${unused.slice(0, 12).join(", ")}${unused.length > 12 ? ", …" : ""}`
            : `write "${near}"`,
    };
  },
  enum({ name, shown, found, schema }) {
    const options = texts(schema, "enum");
    const near = typeof found === "string" ? nearestName(found, options) : undefined;
    return {
      message: `${name} is ${shown}; expected one of ${options.map((option) => `"${option}"`).join(", ")}`,
      hint: near === undefined ? "write one of these" : `write "${near}", if that is meant`,
    };
  },
  const: ({ name, shown, schema }) => ({
    message: `${name} is ${shown}; expected ${show(schema["const"])}`,
    hint: `write ${show(schema["const"])}`,
  }),
  pattern: wrongForm,
  maxLength: ({ name, found, schema }) => ({
    message: `${name} has ${typeof found === "string" ? Array.from(found).length : 0} signs; expected at most ${limit(schema, "maxLength")}`,
    hint: 'shorten it, or put the rest into "remarks"',
  }),
  minLength: ({ name, schema }) => ({
    message: `${name} is empty; expected text`,
    hint: `leave the property out if there is no value, or write ${sample(schema)}`,
  }),
  minItems: ({ name, schema }) => ({
    message: `${name} has too few entries; expected at least ${limit(schema, "minItems")}`,
    hint: "add them, or leave the property out",
  }),
  maxItems: ({ name, found, schema }) => ({
    message: `${name} has ${isList(found) ? found.length : 0} entries; expected at most ${limit(schema, "maxItems")}`,
    hint: "put what is alike into one entry, and remove the surplus",
  }),
  uniqueItems: ({ name, error }) => ({
    message: `${name} holds one entry twice, at ${param(error, "j")} and ${param(error, "i")} counted from 0`,
    hint: "remove one of them",
  }),
  "false schema": ({ kind, value, pointer, name }) => {
    const own = pointer.slice(1);
    const by = [...kind.fields.values()].find(({ replaces = [] }) => replaces.includes(own))?.name ?? "";
    return {
      accuses: [pointer, pointerStep(by)],
      message: `${name} stands beside ${nameAt(kind, value, pointerStep(by))}, which takes its place; expected one of the two`,
      hint: `leave out ${name}, or ${nameAt(kind, value, pointerStep(by))}`,
    };
  },
  propertyNames: ({ name, error }) => ({
    message: `${name} has the name ${quoted(param(error, "propertyName"))}, which is not of the form expected`,
    hint: 'write a place in the record, such as "/thickness"',
  }),
};

/** What is said of a fault of any other word. */
export function otherFault({ name, shown, error }: FaultCase): FaultWords {
  return {
    message: `${name} is ${shown}; it breaks the word "${error.keyword}" of its schema`,
    hint: "compare with the schema of the kind",
  };
}

function wrongType({ name, shown, found, schema }: FaultCase): FaultWords {
  const message = `${name} is ${shown}; expected ${expected(schema)}, such as ${sample(schema)}`;
  if (found === null) return { message, hint: "leave the property out if there is no value" };
  if (typeof found === "number" && schema["x-type"] === "quantity") {
    const unit = textOf(schema, "x-unit") ?? "any";
    const example = unit === "any" ? `${shown} mm` : withUnit(shown, exampleOf(unit));
    return {
      message,
      hint: `write "${example}" (${unit === "1" ? "text" : "text with unit, as the document states it"}): the digits are evidence`,
    };
  }
  if (typeof found === "number" && schema["type"] === "string")
    return { message, hint: `write it as text: "${shown}"` };
  if (schema["type"] === "array")
    return { message, hint: `write a list, even for one entry: [${isList(found) ? "" : show(found)}]` };
  return { message, hint: `write ${sample(schema)}` };
}

const withUnit = (digits: string, example: string) => `${digits}${/ .*$/.exec(example)?.[0] ?? ""}`;

function wrongForm({ name, shown, found, schema, pointer }: FaultCase): FaultWords {
  const text = typeof found === "string" ? found : "";
  const named = schema["x-type"];
  const unit = textOf(schema, "x-unit") ?? "any";
  if (named === "quantity") {
    const read = parseQuantity(text, { unit, ...(schema["x-difference"] === true && { difference: true }) });
    if (!read.ok)
      return {
        message: `${name} is ${shown}; expected ${read.problem.expected}, such as "${read.problem.example}"`,
        hint: read.problem.hint,
      };
  }
  if (named === "date" || named === "day") {
    const read = parseDate(text);
    const wanted =
      named === "day"
        ? "a day, such as 2026-03-09"
        : read.ok
          ? "a day, or a day and time"
          : `${read.problem.expected}, such as ${read.problem.example}`;
    return {
      message: `${name} is ${shown}; expected ${wanted}`,
      hint: read.ok ? "leave the time out" : read.problem.hint,
    };
  }
  if (pointer === "/id")
    return {
      message: `${name} is ${shown}; expected 1 to 40 capital letters, digits, "." and "-", a letter or digit first`,
      hint:
        /^[a-z0-9.-]{1,40}$/i.test(text) && !/^[.-]/.test(text)
          ? `write "${text.toUpperCase()}"`
          : "choose such an id; what is stamped or printed goes into a field of its own",
    };
  return {
    message: `${name} is ${shown}; expected the form of ${sample(schema)}`,
    hint: `write it as in ${sample(schema)}`,
  };
}

function param(error: ErrorObject, name: string): string {
  const value: unknown = Object.entries(error.params).find(([key]) => key === name)?.[1];
  return typeof value === "string" || typeof value === "number" ? String(value) : "";
}

/** A pointer into a record as keys name it; the kind's name for the record itself. */
export const keyNameAt = (kind: Kind, value: JsonObject, pointer: string) =>
  stableName(kind, value, pointer) || kind.name;

/** A name as the file bears it, quoted, for sentences. */
export const nameAt = (kind: Kind, value: JsonObject, pointer: string) =>
  pointer === "" ? `the ${lowerTitle(kind.title)}` : quoted(stablePath(kind, value, pointer));

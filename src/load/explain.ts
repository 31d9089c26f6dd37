import type { ErrorObject } from "ajv/dist/2020.js";
import { atPointer, isObject, type JsonObject, stepsOf } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { explainers, keyNameAt, nameAt, otherFault, type FaultCase } from "./fault-words.ts";
import { objectOf, textOf } from "./inline.ts";
import { quoted } from "./portable.ts";
import { show } from "./value-words.ts";

/** A fault of a record against its schema, in plain words. */
export interface RecordFault {
  /** Inside the record: the value objected to, or where the missing one belongs. */
  readonly pointer: string;
  /** The pointer in words that survive an insertion. */
  readonly name: string;
  readonly message: string;
  readonly why: string;
  readonly hint: string;
  /** Places in doubt. */
  readonly accuses: readonly string[];
}

/** Says one fault in plain words. `written` gives the text of a value as the file holds it. */
export function explain(
  error: ErrorObject,
  kind: Kind,
  schema: JsonObject,
  value: JsonObject,
  written: (pointer: string) => string,
): RecordFault {
  const pointer = error.instancePath;
  const found = atPointer(value, pointer);
  const fault: FaultCase = {
    error,
    kind,
    value,
    schema: schemaAt(schema, pointer),
    pointer,
    name: nameAt(kind, value, pointer),
    found,
    shown: typeof found === "number" ? quoted(written(pointer)).slice(1, -1) : show(found),
  };
  const words = (explainers[error.keyword] ?? otherFault)(fault);
  const description = textOf(fault.schema, "description")?.replace(/\.$/, "");
  return {
    pointer,
    name: keyNameAt(kind, value, pointer),
    why: description === undefined ? "the schema says so" : `the schema says: ${description}`,
    accuses: [words.pointer ?? pointer],
    ...words,
  };
}

/** The schema that governs the value at a pointer. */
function schemaAt(schema: JsonObject, pointer: string): JsonObject {
  let here = schema;
  for (const step of stepsOf(pointer)) {
    const properties = objectOf(here, "properties");
    const matching = Object.entries(objectOf(here, "patternProperties")).find(([pattern]) =>
      new RegExp(pattern, "u").test(step),
    );
    here =
      here["type"] === "array"
        ? objectOf(here, "items")
        : Object.hasOwn(properties, step)
          ? objectOf(properties, step)
          : isObject(matching?.[1])
            ? matching[1]
            : {};
  }
  return here;
}

import type { JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { explain, type RecordFault } from "./explain.ts";
import { schemaErrors, type Shape } from "./schema-errors.ts";

/** Of several faults of one value the first of these is said; the others mostly follow from it. */
const order = ["type", "const", "enum", "pattern"];
const rank = (keyword: string) => (order.includes(keyword) ? order.indexOf(keyword) : order.length);

export interface Faults {
  readonly said: readonly RecordFault[];
  /** How many places of the record are faulty, said or not. */
  readonly count: number;
  /** Pointers of lists with more entries than their field may hold. */
  readonly tooLong: readonly string[];
}

/**
 * Checks a record against its schema and says at most `most` faults in plain words, one for each place. `written` gives
 * the text of a value as the file holds it.
 */
export function validate(
  kind: Kind,
  shape: Shape,
  value: JsonObject,
  written: (pointer: string) => string,
  most: number,
): Faults {
  // A name of a map is reported by `propertyNames` as a whole; the faults inside it would be said of the map.
  const errors = schemaErrors(kind, shape, value).filter(({ propertyName }) => propertyName === undefined);
  if (errors.length === 0) return { said: [], count: 0, tooLong: [] };
  const said = new Map<string, RecordFault>();
  const places = new Set<string>();
  for (const error of [...errors].sort((a, b) => rank(a.keyword) - rank(b.keyword))) {
    places.add(
      `${error.instancePath}|${error.keyword === "required" || error.keyword === "additionalProperties" ? JSON.stringify(error.params) : ""}`,
    );
    if (said.size >= most) continue;
    const fault = explain(error, kind, kind[shape], value, written);
    if (!said.has(fault.pointer)) said.set(fault.pointer, fault);
  }
  const tooLong = errors.flatMap(({ keyword, instancePath }) => (keyword === "maxItems" ? [instancePath] : []));
  return { said: [...said.values()], count: places.size, tooLong };
}

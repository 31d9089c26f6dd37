import { isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import { byCodePoint } from "../model/order.ts";
import { digestOf, rowName } from "../model/stable.ts";
import type { FieldPath } from "./field-path.ts";
import { said } from "./said.ts";

/** A value of a record that a map writes. */
interface Found {
  readonly pointer: string;
  /** The pointer with rows by their name. */
  readonly name: string;
  readonly value: Json;
}

/** The values of a record at a path of a map; lists of plain values are one value. */
export function valuesAt(record: JsonObject, { steps, ending }: FieldPath): readonly Found[] {
  if (ending !== "row" && steps.every(({ type }) => type === "field")) return valueAlong(record, steps);
  let here: Found[] = [{ pointer: "", name: "", value: record }];
  if (ending === "row") return [];
  for (const step of steps) {
    const { name } = step.field;
    here = here.flatMap(({ pointer, name: trail, value }) => {
      const next = isObject(value) && Object.hasOwn(value, name) ? value[name] : undefined;
      if (next === undefined) return [];
      const at = { pointer: pointer + pointerStep(name), name: `${trail}/${name}` };
      if (step.type === "field") return [{ ...at, value: next }];
      if (!isList(next)) return [];
      return next.flatMap((row, index) =>
        step.type === "each" || (isObject(row) && step.equals.every(([field, text]) => said(row[field]) === text))
          ? [
              {
                pointer: `${at.pointer}/${index}`,
                name: `${at.name}[${rowName(step.field, row) ?? `#${index + 1}`}]`,
                value: row,
              },
            ]
          : [],
      );
    });
  }
  return here;
}

/** A path without lists leads to one value at most: it is walked for every record of a sheet. */
function valueAlong(record: JsonObject, steps: FieldPath["steps"]): readonly Found[] {
  let value: Json = record;
  let pointer = "";
  let trail = "";
  for (const { field } of steps) {
    const next: Json | undefined = isObject(value) && Object.hasOwn(value, field.name) ? value[field.name] : undefined;
    if (next === undefined) return [];
    value = next;
    pointer += pointerStep(field.name);
    trail += `/${field.name}`;
  }
  return [{ pointer, name: trail, value }];
}

/**
 * Digest of the values that maps write into a record: each as its place, rows by their name, and its JSON; in code-point
 * order, one a line. What is absent adds nothing, so that a further column of a map changes no digest.
 */
export function fieldsDigest(record: JsonObject, paths: readonly FieldPath[]): string {
  const lines = new Set(
    paths.flatMap((path) => valuesAt(record, path).map(({ name, value }) => `${name}=${JSON.stringify(value)}`)),
  );
  return digestOf([...lines].sort(byCodePoint).join("\n"));
}

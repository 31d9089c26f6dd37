import { nearestName } from "../model/nearest.ts";
import { nearestField } from "./field-names.ts";
import type { Field } from "../model/kind.ts";
import { parsePath, type Step } from "../model/path.ts";

/**
 * Where a column of a sheet goes, in the path language of definitions, as far as it stays in one record:
 *
 * - `limits.setPressure`: a field;
 * - `rows[].heat`: a field of the row of a list that this row of the sheet is about;
 * - `chemistry[element="C"].value`: a field of the row that has this name;
 * - `values[]` (or `values`): the next item of a list of plain values;
 * - `rows[]`: which row of the list is meant, by its name, or `#2` for the second.
 */
export interface FieldPath {
  readonly text: string;
  readonly steps: readonly PathStep[];
  /** The field it ends in: of a list of plain values its item, of `rows[]` the list. */
  readonly field: Field;
  readonly ending: "value" | "item" | "row";
}

export type PathStep =
  | { readonly type: "field"; readonly field: Field }
  /** The row of this list that the row of the sheet is about. `path` names the list, without filters. */
  | { readonly type: "each"; readonly field: Field; readonly path: string }
  /** The row of this list in which these fields have these values. */
  | {
      readonly type: "row";
      readonly field: Field;
      readonly equals: readonly (readonly [name: string, value: string])[];
    };

export interface PathFault {
  readonly message: string;
  readonly hint: string;
}

export const isPathFault = (path: FieldPath | PathFault): path is PathFault => "message" in path;

/** Reads where a column goes. Says what is wrong with a path that leads nowhere, and what is near. */
export function fieldPath(text: string, fields: ReadonlyMap<string, Field>, kind: string): FieldPath | PathFault {
  let parsed: readonly Step[];
  try {
    parsed = parsePath(text).steps;
  } catch (error) {
    const said = error instanceof SyntaxError ? error.message : "";
    return {
      message: said,
      hint: 'write a path such as "number", "rows[].heat" or "chemistry[element=\\"C\\"].value"',
    };
  }
  const steps: PathStep[] = [];
  let inner: ReadonlyMap<string, Field> | undefined = fields;
  let field: Field | undefined;
  let path = "";
  let open: Field | undefined;
  const at = () => (path === "" ? kind : `"${path}" of ${kind}`);
  for (const step of parsed) {
    if (step.type === "field") {
      if (open !== undefined)
        return {
          message: `"${path}" of ${kind} is a list`,
          hint: `write "${path}[].${step.name}", or name the row: ${example(path, open)}`,
        };
      const next: Field | undefined = inner?.get(step.name);
      if (next === undefined) return unknown(step.name, at(), inner);
      field = next;
      path = path === "" ? step.name : `${path}.${step.name}`;
      if (next.type === "list") open = next;
      else {
        steps.push({ type: "field", field: next });
        inner = next.type === "object" ? next.fields : undefined;
      }
    } else if (step.type === "items" || step.type === "filter") {
      const list: Field | undefined = open ?? (step.type === "filter" ? lastRow(steps) : undefined);
      if (list === undefined) return { message: `${at()} is no list`, hint: "take the brackets away" };
      if (step.type === "items") {
        if (list.item?.type !== "object") steps.push({ type: "field", field: list });
        else steps.push({ type: "each", field: list, path });
        path += "[]";
      } else {
        const fault = addFilter(steps, list, step, open !== undefined, path, kind);
        if (fault !== undefined) return fault;
        path += `[${printed(step)}="${step.equals}"]`;
      }
      inner = list.item?.fields;
      field = list;
      open = undefined;
    } else
      return {
        message: `"${text}" leaves the record`,
        hint: `a column goes to a field of ${kind} itself; other records have columns and maps of their own`,
      };
  }
  return end(text, kind, steps, field, open);
}

function end(
  text: string,
  kind: string,
  steps: PathStep[],
  field: Field | undefined,
  open: Field | undefined,
): FieldPath | PathFault {
  if (field === undefined)
    return { message: `it names no field of ${kind}`, hint: "name a field, or leave the column out" };
  if (open !== undefined) {
    if (open.item?.type === "object")
      return {
        message: `"${text}" of ${kind} is a list of rows`,
        hint: `write "${text}[]" and a field: ${example(text, open)}`,
      };
    steps.push({ type: "field", field: open });
    return { text, steps, field: open.item ?? open, ending: "item" };
  }
  const last = steps.at(-1);
  if (last?.type === "each") return { text, steps, field, ending: "row" };
  if (last?.type === "row") return { message: `"${text}" of ${kind} is a row`, hint: "name one of its fields as well" };
  if (field.type === "list") return { text, steps, field: field.item ?? field, ending: "item" };
  if (field.type === "object") {
    const inside = [...(field.fields?.keys() ?? [])].map((name) => `"${text}.${name}"`);
    return { message: `"${text}" of ${kind} has fields of its own`, hint: `write ${inside.slice(0, 6).join(", ")}` };
  }
  return { text, steps, field, ending: "value" };
}

function unknown(name: string, of: string, fields: ReadonlyMap<string, Field> | undefined): PathFault {
  const near = nearestField(name, fields ?? new Map<string, Field>());
  return {
    message: `${of} has no field "${name}"`,
    hint:
      near === undefined ? `its fields are ${[...(fields?.keys() ?? [])].join(", ") || "none"}` : `nearest: "${near}"`,
  };
}

function addFilter(
  steps: PathStep[],
  list: Field,
  filter: Extract<Step, { type: "filter" }>,
  first: boolean,
  path: string,
  kind: string,
): PathFault | undefined {
  const name = printed(filter);
  const key = list.item?.fields?.get(name);
  if (list.item?.type !== "object" || key === undefined)
    return unknown(name, `a row of "${path}" of ${kind}`, list.item?.fields);
  if (key.options !== undefined && !key.options.includes(filter.equals)) {
    const near = nearestName(filter.equals, key.options);
    return {
      message: `"${filter.equals}" is no value of ${name}`,
      hint: `write ${near === undefined ? key.options.slice(0, 12).join(", ") : `"${near}"`}`,
    };
  }
  const before = first ? [] : lastEquals(steps);
  if (!first) steps.pop();
  steps.push({ type: "row", field: list, equals: [...before, [name, filter.equals]] });
  return undefined;
}

const printed = ({ path }: Extract<Step, { type: "filter" }>) =>
  path.map((step) => (step.type === "field" ? step.name : "?")).join(".");

function lastRow(steps: readonly PathStep[]): Field | undefined {
  const last = steps.at(-1);
  return last?.type === "row" ? last.field : undefined;
}

function lastEquals(steps: readonly PathStep[]): readonly (readonly [string, string])[] {
  const last = steps.at(-1);
  return last?.type === "row" ? last.equals : [];
}

function example(path: string, list: Field): string {
  const key = list.rowKey ?? list.item?.fields?.keys().next().value ?? "row";
  const field = [...(list.item?.fields?.keys() ?? [])].find((name) => name !== key) ?? key;
  const value = list.item?.fields?.get(key)?.options?.[0] ?? "…";
  return `"${path}[${key}=\\"${value}\\"].${field}"`;
}

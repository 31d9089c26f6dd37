/** JSON as `JSON.parse` gives it: what a record holds before anything reads it. */
export type Json = string | number | boolean | null | readonly Json[] | JsonObject;
export type JsonObject = { readonly [key: string]: Json };

export function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

export function isList(value: Json | undefined): value is readonly Json[] {
  return Array.isArray(value);
}

/** The value at a JSON pointer (RFC 6901) inside `root`, or undefined when any step is absent. */
export function atPointer(root: Json, pointer: string): Json | undefined {
  if (pointer === "") return root;
  let value: Json | undefined = root;
  for (const name of stepsOf(pointer)) {
    if (isList(value)) value = value[Number(name)];
    else if (isObject(value)) value = Object.hasOwn(value, name) ? value[name] : undefined;
    else return undefined;
  }
  return value;
}

const none: readonly string[] = [];

/** The names and indexes a pointer leads through; none of the root. */
export function stepsOf(pointer: string): readonly string[] {
  if (pointer === "") return none;
  const steps = pointer.slice(1).split("/");
  return pointer.includes("~") ? steps.map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~")) : steps;
}

/** Pointer of the object or list that a place stands in; of the root itself the root. */
export const holderOf = (pointer: string): string => pointer.slice(0, Math.max(pointer.lastIndexOf("/"), 0));

/** The first steps of a pointer, as many as are given, as a pointer. */
export const headOf = (pointer: string, count: number): string => pointer.split("/", count + 1).join("/");

/** Pointer of the list that an item stands in; of what is no item, the pointer itself. */
export const listAround = (pointer: string): string => pointer.replace(/\/\d+$/, "");

const reserved = /[~/]/;

export function pointerStep(name: string | number): string {
  // Names of fields hardly ever hold a reserved sign, and steps are made by the thousand.
  if (typeof name === "number" || !reserved.test(name)) return `/${name}`;
  return `/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`;
}

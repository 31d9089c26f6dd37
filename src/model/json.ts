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
  for (const step of pointer.slice(1).split("/")) {
    const name = nameOfStep(step);
    if (isList(value)) value = value[Number(name)];
    else if (isObject(value)) value = Object.hasOwn(value, name) ? value[name] : undefined;
    else return undefined;
  }
  return value;
}

/** The name a step of a pointer stands for. */
export function nameOfStep(step: string): string {
  return step.includes("~") ? step.replaceAll("~1", "/").replaceAll("~0", "~") : step;
}

const reserved = /[~/]/;

export function pointerStep(name: string | number): string {
  // Names of fields hardly ever hold a reserved sign, and steps are made by the thousand.
  if (typeof name === "number" || !reserved.test(name)) return `/${name}`;
  return `/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`;
}

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
    const name = step.replaceAll("~1", "/").replaceAll("~0", "~");
    if (isList(value)) value = value[Number(name)];
    else if (isObject(value)) value = Object.hasOwn(value, name) ? value[name] : undefined;
    else return undefined;
  }
  return value;
}

export function pointerStep(name: string | number): string {
  return `/${String(name).replaceAll("~", "~0").replaceAll("/", "~1")}`;
}

import type { Json } from "../model/json.ts";

/** A plain value as text: a text as it is, anything else as JSON. */
export function said(value: Json | undefined): string {
  if (typeof value === "string") return value;
  return value === undefined ? "" : JSON.stringify(value);
}

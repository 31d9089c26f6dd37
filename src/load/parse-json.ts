import type { Json } from "../model/json.ts";

/** The value of a text, or undefined where it is not JSON. */
export function parseJson(text: string): Json | undefined {
  try {
    return JSON.parse(text) as Json;
  } catch {
    return undefined;
  }
}

import type { Json } from "../model/json.ts";

/** Maps as their file holds them: one line for each column. */
export function mapText(maps: Json): string {
  const text = JSON.stringify(maps, null, 2);
  // What a column says is short, and a person goes through the headings one below the other.
  return `${text.replaceAll(/\{\n\s+("to": [^\n]*?)\n\s+\}/g, "{ $1 }").replaceAll(/\{\n\s+("to": [^\n]*),\n\s+("split": [^\n]*)\n\s+\}/g, "{ $1, $2 }")}\n`;
}

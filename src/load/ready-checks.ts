import type { ValidateFunction } from "ajv/dist/2020.js";
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import type { JsonObject } from "../model/json.ts";
import { digestOf } from "../model/stable.ts";

/** Checks of the shipped schemas as code, written when the program is built; run from its sources it has none. */
export const readyFile: string = fileURLToPath(new URL("../generated/schema-checks.cjs", import.meta.url));

/** Name of the check of a schema: by what the schema says, so that a changed schema is never checked by old code. */
export function checkName(schema: JsonObject): string {
  return `schema_${digestOf(JSON.stringify(schema))}`;
}

let ready: Readonly<Record<string, ValidateFunction>> | undefined;

/** The check of a schema up to its first fault, when it was compiled beforehand: that takes longer than all else. */
export function readyCheck(schema: JsonObject): ValidateFunction | undefined {
  ready ??= existsSync(readyFile) ? (createRequire(import.meta.url)(readyFile) as NonNullable<typeof ready>) : {};
  return ready[checkName(schema)];
}

import { sheetRules } from "../compute/sheets.ts";
import type { Definitions } from "../model/definitions.ts";
import { resultChecks } from "./result-checks.ts";

/** Title of every definition a book is judged with, by its id. */
export function titlesOf({ rules, calculations, facts, kinds, registers }: Definitions): ReadonlyMap<string, string> {
  const requirements = registers.flatMap((one) => one.requirements);
  return new Map(
    [...rules, ...calculations, ...facts, ...resultChecks(kinds), ...requirements, ...sheetRules].map(
      ({ id, title }) => [id, title],
    ),
  );
}

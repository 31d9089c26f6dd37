import { join } from "node:path";
import { calculations } from "./calculations/index.ts";
import { chains } from "./chains/index.ts";
import { closers } from "./closers/index.ts";
import { expiries } from "./expiries/index.ts";
import { facts } from "./facts/index.ts";
import type { Definitions } from "./model/definitions.ts";
import type { Kind } from "./model/kind.ts";
import { profiles } from "./profiles/index.ts";
import { registers } from "./requirements/index.ts";
import { rules } from "./rules/index.ts";
import { loadTables, tableSchema } from "./load/tables.ts";
import { scopes } from "./scopes/index.ts";
import { packageRoot } from "./root.ts";
import type { Table } from "./model/table.ts";

let read: readonly Table[] | undefined;

/** Every shipped table of a standard, read once from the data files. */
export const shippedTables = (): readonly Table[] =>
  (read ??= loadTables(join(packageRoot, "src/tables/data"), tableSchema(join(packageRoot, "schemas"))));

/** Everything the tool ships to judge a book with, for the kinds that were loaded. */
export function shippedDefinitions(kinds: ReadonlyMap<string, Kind>): Definitions {
  return { kinds, calculations, rules, facts, closers, registers, scopes, profiles, tables: shippedTables() };
}

export { chains, expiries };

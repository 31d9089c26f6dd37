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
import { noteShipped } from "./proof.ts";
import { packageRoot } from "./root.ts";
import type { Table } from "./model/table.ts";

/** Folder with the data files of all shipped tables. */
export const tableFolder: string = join(packageRoot, "src/tables/data");

let read: readonly Table[] | undefined;

/** Every shipped table of a standard, read once from the data files. */
export const shippedTables = (): readonly Table[] =>
  (read ??= loadTables(tableFolder, tableSchema(join(packageRoot, "schemas"))));

/** Everything the tool ships to judge a book with, for the kinds that were loaded. */
export function shippedDefinitions(kinds: ReadonlyMap<string, Kind>): Definitions {
  const tables = shippedTables();
  const definitions = { kinds, calculations, rules, facts, closers, registers, scopes, profiles, tables };
  noteShipped(definitions, tableFolder);
  return definitions;
}

/** What holds the functions of all that is shipped. */
export const shippedCode: unknown = [calculations, rules, facts, closers, registers, scopes, profiles];

export { chains, expiries };

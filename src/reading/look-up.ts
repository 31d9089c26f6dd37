import type { Json } from "../model/json.ts";
import type { Path, Step } from "../model/path.ts";
import { ProgramError } from "../model/program-error.ts";
import type { LookUp } from "../model/input.ts";
import type { Measure } from "../model/quantity.ts";
import { addressOf, type Address } from "../model/record.ts";
import type { Table, TableRow } from "../model/table.ts";
import { readText, type Hit } from "./hit.ts";
import { noteWithin } from "./notes.ts";
import { noRow, type Asked } from "./reasons.ts";
import { onlyOne } from "./single.ts";
import { cellsOf, namedKeys, printKeys, rowFor } from "./table-row.ts";
import { clear, mergeTrail, newTrail, noteValue, type Trail } from "./trail.ts";
import type { World } from "./world.ts";

/**
 * The row of a table for the keys that paths give, each followed from `start` by `read`. No row, or more than one, is
 * noted in the trail: the outcome is then not judged. No row is no pass.
 */
export function lookUp(
  world: World,
  step: Extract<Step, { type: "table" }>,
  start: Hit | null,
  trail: Trail,
  read: (path: Path, trail: Trail) => readonly Hit[],
): readonly Hit[] {
  const table = world.tables.get(step.name);
  if (table === undefined) throw new ProgramError(`there is no table "${step.name}"`);
  const keys = new Map<string, string>();
  const addresses: (readonly [index: number, address: Address])[] = [];
  let at: Asked["at"] = null;
  for (const [index, key] of table.keys.entries()) {
    const path = step.keys[index];
    if (path === undefined) throw new ProgramError(`table "${step.name}" needs the key "${key.name}"`);
    const own = newTrail();
    const hit = onlyOne(world, read(path, own), own, start, path.text);
    const text = hit === undefined ? undefined : readText(world, hit, own);
    mergeTrail(trail, own);
    if (text === undefined || !clear(own)) return [];
    if (hit?.record != null) {
      addresses.push([index, addressOf(hit.record, hit.pointer)]);
      at ??= { record: hit.record, pointer: hit.pointer };
    }
    keys.set(key.name, text);
  }
  const placesOf = (until: number) => addresses.filter(([index]) => index < until).map(([, address]) => address);
  const found = answer(world, table, keys, trail, (until) => ({
    table,
    keys: printKeys(table, keys, until),
    at,
    addresses: placesOf(until),
  }));
  if (found === undefined) return [];
  const asked: Asked = { table, keys: printKeys(table, keys), at, addresses: placesOf(table.keys.length) };
  const origin = { type: "table", table: table.id, row: asked.keys, basis: found.basis } as const;
  return [{ value: found.values satisfies Json, field: null, origin, record: null, pointer: "", asked }];
}

/**
 * What a rule that reads a whole table asks it with: keys that it found or worked out, whose places it has read itself.
 * Without a row the outcome is not judged, as it is without a value that is required: `waiting` is thrown.
 */
export const asking =
  (world: World, id: string, start: Hit, trail: Trail, waiting: () => Error): LookUp =>
  (...given) => {
    const table = world.tables.get(id);
    if (table === undefined) throw new ProgramError(`there is no table "${id}"`);
    const keys = namedKeys(table, given);
    const at = start.record === null ? null : { record: start.record, pointer: start.pointer };
    const found = answer(world, table, keys, trail, (until) => ({
      table,
      keys: printKeys(table, keys, until),
      at,
      addresses: [],
    }));
    if (found === undefined) throw waiting();
    return cellsOf(table, found);
  };

/** The row for the keys, noted with its basis; undefined, and why, where none answers. */
function answer(
  world: World,
  table: Table,
  keys: ReadonlyMap<string, string | Measure>,
  trail: Trail,
  asked: (until: number) => Asked,
): TableRow | undefined {
  const own = world.ownTables?.get(table.id) ?? [];
  for (const record of own) {
    const doubts = world.ledger.doubtsWithin(addressOf(record));
    noteWithin(world, addressOf(record), doubts);
    trail.doubts.push(...doubts);
  }
  const text = printKeys(table, keys);
  const found = rowFor(table, keys, text);
  if ("none" in found) {
    noRow(trail, asked(found.until), found.none);
    return undefined;
  }
  noteValue(trail, `table:${table.id}|${text}`, JSON.stringify(found.values));
  trail.bases.push([`table ${table.id} (${found.basis.class})`, found.basis]);
  return found;
}

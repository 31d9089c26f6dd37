import type { Json } from "../model/json.ts";
import type { Path, Step } from "../model/path.ts";
import { ProgramError } from "../model/program-error.ts";
import { measure, parseQuantity } from "../model/quantity.ts";
import { addressOf, type Address } from "../model/record.ts";
import { inInterval, type Table, type TableKey, type TableRow } from "../model/table.ts";
import { readText, type Hit } from "./hit.ts";
import { noRow, type Asked } from "./reasons.ts";
import { onlyOne } from "./single.ts";
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
  const own = world.ownTables?.get(table.id) ?? [];
  for (const record of own) trail.doubts.push(...world.ledger.doubtsWithin(addressOf(record)));
  const placesOf = (until: number) => addresses.filter(([index]) => index < until).map(([, address]) => address);
  const asked = { table, keys: printKeys(table, keys), at, addresses: placesOf(table.keys.length) };
  const found = rowFor(table, keys, asked.keys);
  if ("none" in found) {
    noRow(trail, { ...asked, keys: printKeys(table, keys, found.until), addresses: placesOf(found.until) }, found.none);
    return [];
  }
  noteValue(trail, `table:${table.id}|${asked.keys}`, JSON.stringify(found.values));
  trail.bases.push([`table ${table.id} (${found.basis.class})`, found.basis]);
  const origin = { type: "table", table: table.id, row: asked.keys, basis: found.basis } as const;
  return [{ value: found.values satisfies Json, field: null, origin, record: null, pointer: "", asked }];
}

/** Why no row answers, and how many of the keys, in their order, suffice to say so. */
interface NoRow {
  readonly none: string;
  readonly until: number;
}

const printKeys = (table: Table, keys: ReadonlyMap<string, string>, until = table.keys.length) =>
  table.keys
    .slice(0, until)
    .map(({ name }) => `${name} ${keys.get(name) ?? ""}`)
    .join(", ");

const answers = new WeakMap<Table, Map<string, TableRow | NoRow>>();

/** The row for the keys, or why there is none. Asked once for each set of keys. */
function rowFor(table: Table, keys: ReadonlyMap<string, string>, asked: string): TableRow | NoRow {
  const known = answers.get(table) ?? new Map<string, TableRow | NoRow>();
  answers.set(table, known);
  const before = known.get(asked);
  if (before !== undefined) return before;
  const rows = table.rows.filter((row) => table.keys.every((key) => matches(key, row, keys.get(key.name) ?? "")));
  const row = rows[0];
  const found =
    row === undefined
      ? nearestRows(table, keys)
      : rows.length > 1
        ? { none: `${rows.length} rows answer`, until: table.keys.length }
        : row;
  known.set(asked, found);
  return found;
}

function matches(key: TableKey, row: TableRow, text: string): boolean {
  const wanted = row.keys[key.name];
  if (wanted === undefined) return false;
  if (key.match === "equal") return typeof wanted === "string" && wanted === text;
  if (typeof wanted === "string") return false;
  const parsed = parseQuantity(text, { unit: key.unit ?? "1" });
  if (!parsed.ok) return false;
  const { low, high } = measure(parsed.quantity, key.unit ?? "1");
  return inInterval(low, wanted) && inInterval(high, wanted);
}

/** Which key has no row while the keys before it have some: what to say to people. */
function nearestRows(table: Table, keys: ReadonlyMap<string, string>): NoRow {
  let rows: readonly TableRow[] = table.rows;
  for (const [index, key] of table.keys.entries()) {
    const text = keys.get(key.name) ?? "";
    const next = rows.filter((row) => matches(key, row, text));
    if (next.length === 0) {
      const known = [...new Set(rows.map((row) => printKey(row.keys[key.name])))].slice(0, 12);
      return { none: `no row for ${key.name} ${text}; the table has ${known.join(", ")}`, until: index + 1 };
    }
    rows = next;
  }
  return { none: "no row", until: table.keys.length };
}

function printKey(key: TableRow["keys"][string] | undefined): string {
  if (typeof key === "string" || key === undefined) return key ?? "";
  const from = key.over !== undefined ? `over ${key.over}` : key.from !== undefined ? `from ${key.from}` : "";
  const to = key.upTo !== undefined ? `up to ${key.upTo}` : key.below !== undefined ? `below ${key.below}` : "";
  return `${from} ${to}`.trim();
}

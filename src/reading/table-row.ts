import { ProgramError } from "../model/program-error.ts";
import { exactly, measure, parseQuantity, type Measure } from "../model/quantity.ts";
import { computeCells } from "../model/table-cells.ts";
import { anyOther, inInterval, printInterval, type Table, type TableKey, type TableRow } from "../model/table.ts";
import type { Row } from "../model/input.ts";

/** What a row is asked for by, in the order of the keys: texts as records write them, or measures in the unit of the key. */
export type Keys = ReadonlyMap<string, string | Measure>;

/** Why no row answers, and how many of the keys, in their order, suffice to say so. */
export interface NoRow {
  readonly none: string;
  readonly until: number;
}

export const printKeys = (table: Table, keys: Keys, until = table.keys.length): string =>
  table.keys
    .slice(0, until)
    .map(({ name }) => `${name} ${keyText(keys.get(name))}`)
    .join(", ");

const keyText = (key: string | Measure | undefined): string =>
  key === undefined ? "" : typeof key === "string" ? key : key.text;

const answers = new WeakMap<Table, Map<string, TableRow | NoRow>>();

/** The row for the keys, its formulas computed, or why there is none. Asked once for each set of keys. */
export function rowFor(table: Table, keys: Keys, asked = printKeys(table, keys)): TableRow | NoRow {
  const known = answers.get(table) ?? new Map<string, TableRow | NoRow>();
  answers.set(table, known);
  const before = known.get(asked);
  if (before !== undefined) return before;
  const found = findRow(table, keys);
  known.set(asked, found);
  return found;
}

/** Narrows the rows key by key: those that name it, else those for any other. */
function findRow(table: Table, keys: Keys): TableRow | NoRow {
  const texts = new Map(table.keys.map(({ name }) => [name, keyText(keys.get(name))]));
  const numbers = new Map<string, number>();
  let rows = table.rows;
  for (const [index, key] of table.keys.entries()) {
    const given = keys.get(key.name) ?? "";
    const size = key.match === "interval" ? sizeOf(given, key) : undefined;
    if (size !== undefined) numbers.set(key.name, size.value);
    const named = rows.filter((row) => matches(row, key, given, size));
    const next = named.length > 0 ? named : rows.filter((row) => row.keys[key.name] === anyOther);
    if (next.length === 0) {
      const stated = [...new Set(rows.map((row) => printKey(row.keys[key.name])))].slice(0, 12);
      return { none: `no row for ${key.name} ${keyText(given)}; the table has ${stated.join(", ")}`, until: index + 1 };
    }
    rows = next;
  }
  const [row] = rows;
  if (row === undefined) return { none: "no row", until: table.keys.length };
  return rows.length > 1
    ? { none: `${rows.length} rows answer`, until: table.keys.length }
    : { ...row, values: computeCells(row.values, table.columns, { texts, numbers }) };
}

function matches(row: TableRow, key: TableKey, given: string | Measure, size: Measure | undefined): boolean {
  const wanted = row.keys[key.name];
  if (wanted === undefined) return false;
  if (key.match === "equal") return wanted !== anyOther && wanted === given;
  return (
    typeof wanted !== "string" && size !== undefined && inInterval(size.low, wanted) && inInterval(size.high, wanted)
  );
}

/** A key that is looked for in intervals, in their unit; undefined where it is no quantity in it. */
function sizeOf(given: string | Measure, { name, unit = "1" }: TableKey): Measure | undefined {
  if (typeof given !== "string") {
    if (given.unit !== unit) throw new ProgramError(`the key "${name}" is asked for in ${given.unit}, not in ${unit}`);
    return given;
  }
  const parsed = parseQuantity(given, { unit });
  return parsed.ok ? measure(parsed.quantity, unit) : undefined;
}

const printKey = (key: TableRow["keys"][string] | undefined): string =>
  typeof key === "object" ? printInterval(key) : (key ?? "");

/** The cells of a row as rules read them. */
export function cellsOf(table: Table, { values }: TableRow): Row {
  const columnOf = (name: string) => {
    const column = Object.hasOwn(table.columns, name) ? table.columns[name] : undefined;
    if (column === undefined) throw new ProgramError(`table "${table.id}" has no column "${name}"`);
    return { column, cell: values[name] };
  };
  return {
    text(name) {
      const { cell } = columnOf(name);
      return typeof cell === "string" ? cell : undefined;
    },
    texts(name) {
      const { cell } = columnOf(name);
      return Array.isArray(cell) ? cell.filter((one) => typeof one === "string") : [];
    },
    quantity(name) {
      const { column, cell } = columnOf(name);
      const unit = column.unit ?? "1";
      const parsed = typeof cell === "string" ? parseQuantity(cell, { unit }) : undefined;
      return parsed?.ok === true
        ? { ...exactly(measure(parsed.quantity, unit).value, unit), text: parsed.quantity.text }
        : undefined;
    },
  };
}

/** Keys in the order of the table, by their names. Throws `ProgramError` when there are more or fewer. */
export function namedKeys(table: Table, keys: readonly (string | Measure)[]): Keys {
  if (keys.length !== table.keys.length)
    throw new ProgramError(`table "${table.id}" has the keys ${table.keys.map(({ name }) => name).join(", ")}`);
  return new Map(table.keys.map(({ name }, index) => [name, keys[index] ?? ""]));
}

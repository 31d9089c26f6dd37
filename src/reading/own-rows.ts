import type { Basis } from "../model/basis.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { parseQuantity } from "../model/quantity.ts";
import type { BookRecord } from "../model/record.ts";
import type { Interval, Table, TableRow } from "../model/table.ts";

export const textOf = (value: Json | undefined): string => (typeof value === "string" ? value : "");
const objects = (value: Json | undefined): readonly JsonObject[] => (isList(value) ? value.filter(isObject) : []);

type Points = Exclude<TableRow["values"][string], string>;
type Cell = string | Points;

/** The rows a person entered, as rows of the table they replace; or what is wrong with them. */
export function ownRows(record: BookRecord, table: Table): readonly TableRow[] | string {
  const basis = basisOf(record.value);
  const rows: TableRow[] = [];
  for (const [index, row] of objects(record.value["rows"]).entries()) {
    const made = rowOf(row, table, basis);
    if (typeof made === "string") return `row ${textOf(row["row"]) || String(index + 1)} ${made}`;
    rows.push(made);
  }
  return rows.length === 0 ? `reference-table ${record.id} has no rows` : rows;
}

function rowOf(row: JsonObject, table: Table, basis: Basis): TableRow | string {
  const cells = new Map<string, JsonObject>();
  for (const cell of objects(row["cells"])) cells.set(textOf(cell["name"]), cell);
  const keys: Record<string, string | Interval> = {};
  for (const { name, match } of table.keys) {
    const text = textOf(cells.get(name)?.["value"]);
    if (text === "") return `lacks the key "${name}"`;
    const key = match === "interval" ? parseInterval(text) : text;
    if (key === undefined) return `has "${text}" as ${name}; expected an interval such as "over 3 up to 16"`;
    keys[name] = key;
    cells.delete(name);
  }
  const values: Record<string, Cell> = {};
  for (const [name, cell] of cells) {
    const column = Object.hasOwn(table.columns, name) ? table.columns[name] : undefined;
    if (column === undefined) return `has "${name}", which is no column of the table`;
    const value = column.points === undefined ? valueOf(cell, column.unit) : pointsOf(cell, column.points);
    if (value === undefined)
      return `has no sound value of ${name}; expected ${column.points === undefined ? `a value${column.unit === undefined ? "" : ` in ${column.unit}`}` : `points of ${column.points.join(", ")}`}`;
    values[name] = value;
  }
  return { keys, values, basis };
}

function valueOf(cell: JsonObject, unit: string | undefined): string | undefined {
  const text = textOf(cell["value"]);
  if (text === "") return undefined;
  return unit === undefined || parseQuantity(text, { unit }).ok ? text : undefined;
}

function pointsOf(cell: JsonObject, names: readonly string[]): Points | undefined {
  const points = objects(cell["points"]).map((point) =>
    Object.fromEntries(objects(point["values"]).map((one) => [textOf(one["name"]), textOf(one["value"])])),
  );
  const sound = points.every((point) =>
    names.every((name) => Object.hasOwn(point, name) && parseQuantity(point[name] ?? "", { unit: "any" }).ok),
  );
  return points.length > 0 && sound ? points : undefined;
}

function basisOf(value: JsonObject): Basis {
  return {
    class: "user table",
    standard: textOf(value["standard"]),
    edition: textOf(value["edition"]),
    checkedBy: textOf(value["checkedBy"]),
    date: textOf(value["date"]),
  };
}

/** "over 3 up to 16", "from 0 below 3", "up to 16": the words of the trade; each end is stated, or open. In the key's unit. */
export function parseInterval(text: string): Interval | undefined {
  const match = /^(?:(over|from) (-?\d+(?:\.\d+)?))? ?(?:(up to|below) (-?\d+(?:\.\d+)?))?$/.exec(text.trim());
  if (match === null || text.trim() === "") return undefined;
  const [, low, from, high, to] = match;
  return {
    ...(low === "over" && { over: Number(from) }),
    ...(low === "from" && { from: Number(from) }),
    ...(high === "up to" && { upTo: Number(to) }),
    ...(high === "below" && { below: Number(to) }),
  };
}

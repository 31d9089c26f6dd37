import type { Basis } from "../model/basis.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import { parseQuantity } from "../model/quantity.ts";
import type { BookRecord } from "../model/record.ts";
import { cellProblem, readKey, wordsProblem } from "../model/table-cells.ts";
import type { Cell, Interval, Points, Table, TableColumn, TableRow } from "../model/table.ts";

export const textOf = (value: Json | undefined): string => (typeof value === "string" ? value : "");
const objects = (value: Json | undefined): readonly JsonObject[] => (isList(value) ? value.filter(isObject) : []);

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
  for (const key of table.keys) {
    const { name } = key;
    const text = textOf(cells.get(name)?.["value"]);
    if (text === "") return `lacks the key "${name}"`;
    const read = readKey(text, key);
    if (typeof read === "object" && "expected" in read) return `has "${text}" as ${name}; expected ${read.expected}`;
    keys[name] = read;
    cells.delete(name);
  }
  const values: Record<string, Cell> = {};
  for (const [name, cell] of cells) {
    const column = Object.hasOwn(table.columns, name) ? table.columns[name] : undefined;
    if (column === undefined) return `has "${name}", which is no column of the table`;
    const value = cellOf(cell, column, table.keys);
    if ("problem" in value) return `has no sound value of ${name}; ${value.problem}`;
    values[name] = value.cell;
  }
  return { keys, values, basis };
}

type Read = { readonly cell: Cell } | { readonly problem: string };

function cellOf(cell: JsonObject, column: TableColumn, keys: Table["keys"]): Read {
  if (column.points !== undefined) {
    const points = pointsOf(cell, column.points);
    return points === undefined ? { problem: `expected points of ${column.points.join(", ")}` } : { cell: points };
  }
  const text = textOf(cell["value"]);
  // A list of words is written as one: "PA, PC, PF"; of none as "none".
  if (column.list === true) {
    if (text === "") return { problem: 'expected words with commas between them, or "none"' };
    const words = text === "none" ? [] : text.split(/, ?/);
    const problem = wordsProblem(words, keys);
    return problem === undefined ? { cell: words } : { problem };
  }
  const problem =
    text === "" && column.unit !== undefined
      ? `expected a value in ${column.unit}`
      : cellProblem(text, column.unit, keys);
  return problem === undefined ? { cell: text } : { problem };
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

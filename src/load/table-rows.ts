import type { Basis } from "../model/basis.ts";
import { isList, isObject, pointerStep, type Json, type JsonObject } from "../model/json.ts";
import { parseQuantity } from "../model/quantity.ts";
import { cellProblem, readKey, wordsProblem } from "../model/table-cells.ts";
import {
  overlap,
  printInterval,
  type Cell,
  type Interval,
  type Points,
  type Table,
  type TableRow,
} from "../model/table.ts";
import { nearestName } from "../model/nearest.ts";

/** A table as its file describes it: with the units of coordinates, and what a point that leaves one out states. */
export interface TableHead {
  readonly table: Omit<Table, "rows">;
  readonly coordinates: ReadonlyMap<string, readonly Coordinate[]>;
}

export interface Coordinate {
  readonly name: string;
  readonly unit?: string;
  readonly else?: string;
}

/** Rows of one table with what they have in common, as they stand in a file. */
export interface Block {
  readonly head: TableHead;
  readonly basis: Basis;
  readonly common: JsonObject;
  readonly cells: readonly Json[];
  /** Pointer of the block in its file. */
  readonly pointer: string;
}

/** Says what is wrong at a place of the file. */
export type Say = (pointer: string, message: string, hint: string) => void;

/** The rows of a block, written out: one for each entry of a list that stands in place of a key. */
export function rowsOf(block: Block, say: Say): readonly TableRow[] {
  const { table } = block.head;
  const names = [...table.keys.map(({ name }) => name), ...Object.keys(table.columns)];
  for (const name of Object.keys(block.common))
    if (!names.includes(name)) {
      const near = nearestName(name, names);
      const known = `its keys and columns are ${names.join(", ")}`;
      say(block.pointer, `table "${table.id}" has no "${name}"`, near === undefined ? known : `write "${near}"`);
      return [];
    }
  const open = names.filter((name) => block.common[name] === undefined || isPartial(block, name));
  return block.cells.flatMap((row, index) => {
    const pointer = `${block.pointer}/cells/${index}`;
    const cells = isList(row) ? row : [];
    if (cells.length <= open.length) return rowOf(block, open, cells, pointer, say);
    say(pointer, `the row has ${cells.length} cells`, `write at most ${open.length}: ${open.join(", ")}`);
    return [];
  });
}

/** The common part of a column of points states some coordinates; the rows state the others. */
const isPartial = ({ head, common }: Block, name: string): boolean =>
  head.coordinates.has(name) && isObject(common[name]);

function rowOf(
  block: Block,
  open: readonly string[],
  cells: readonly Json[],
  pointer: string,
  say: Say,
): readonly TableRow[] {
  const { head, common, basis } = block;
  const { keys, columns } = head.table;
  const at = (name: string) => (open.includes(name) ? `${pointer}/${open.indexOf(name)}` : pointer);
  const given = (name: string): Json | undefined => (open.includes(name) ? cells[open.indexOf(name)] : common[name]);
  let rows: Record<string, string | Interval>[] = [{}];
  for (const key of keys) {
    const value = given(key.name);
    const written = isList(value) ? value : [value ?? ""];
    const read = written.flatMap((one) => {
      const made = typeof one === "string" ? readKey(one, key) : { expected: "a text" };
      if (typeof made === "string" || !("expected" in made)) return [made];
      say(at(key.name), `${key.name} is ${JSON.stringify(one)}`, `write ${made.expected}`);
      return [];
    });
    rows = rows.flatMap((row) => read.map((one) => ({ ...row, [key.name]: one })));
  }
  const values: Record<string, Cell> = {};
  for (const name of Object.keys(columns)) {
    const cell = given(name) ?? null;
    if (cell === null) {
      if (columns[name]?.optional !== true)
        say(pointer, `the row states no ${name}`, "add it, or call the column optional");
      continue;
    }
    const problems: string[] = [];
    const made = cellOf(block, name, cell, (problem) => problems.push(problem));
    for (const problem of problems) say(at(name), `${name} is ${JSON.stringify(cell)}`, problem);
    values[name] = made;
  }
  return rows.map((row) => ({ keys: row, values, basis }));
}

function cellOf({ head, common }: Block, name: string, cell: Json, wrong: (problem: string) => void): Cell {
  const coordinates = head.coordinates.get(name);
  if (coordinates !== undefined) return pointsOf(coordinates, common[name], cell, wrong);
  const column = head.table.columns[name];
  if (column?.list === true) {
    const texts = isList(cell) ? cell.filter((one) => typeof one === "string") : [];
    const problem =
      isList(cell) && texts.length === cell.length ? wordsProblem(texts, head.table.keys) : "write a list of texts";
    if (problem !== undefined) wrong(problem);
    return texts;
  }
  const text = withUnit(cell, column?.unit);
  const problem = cellProblem(text, column?.unit, head.table.keys);
  if (problem !== undefined) wrong(problem);
  return text;
}

/** A number in a column with a unit is a quantity in it; a text stays as it is written. */
const withUnit = (cell: Json | undefined, unit: string | undefined): string =>
  typeof cell === "number"
    ? unit === undefined || unit === "1"
      ? String(cell)
      : `${cell} ${unit}`
    : typeof cell === "string"
      ? cell
      : "";

/** Points from rows of coordinates, beside the coordinates that all rows of the block have in common. */
function pointsOf(
  coordinates: readonly Coordinate[],
  common: Json | undefined,
  cell: Json,
  wrong: (problem: string) => void,
): Points {
  const shared = isObject(common) ? common : {};
  const open = coordinates.filter(({ name }) => !Object.hasOwn(shared, name));
  if (!isList(cell)) {
    wrong("write a list of points");
    return [];
  }
  for (const [name, column] of Object.entries(shared))
    if (isList(column) && column.length !== cell.length)
      wrong(`write ${column.length} points: there are as many of ${name} in common`);
  return cell.map((point, index) => {
    const values = isList(point) ? point : [point];
    if (values.length > open.length) wrong(`write points of ${open.map(({ name }) => name).join(", ")}`);
    return Object.fromEntries(
      coordinates.map((one) => {
        const column = shared[one.name];
        const value = isList(column) ? column[index] : (column ?? values[open.indexOf(one)]);
        const text = value === undefined ? (one.else ?? "") : withUnit(value, one.unit);
        const sound = text !== "" && (one.unit === undefined || parseQuantity(text, { unit: one.unit }).ok);
        if (!sound) wrong(`point ${index + 1} needs ${one.name}${one.unit === undefined ? "" : ` in ${one.unit}`}`);
        return [one.name, text] as const;
      }),
    );
  });
}

/** Whether some keys would find both rows. */
export const meet = ({ keys }: TableRow, other: TableRow): boolean =>
  Object.entries(keys).every(([name, key]) => {
    const its = other.keys[name];
    return typeof key === "object" && typeof its === "object" ? overlap(key, its) : key === its;
  });

/** What a row is looked up by, as it is written. */
export const keysText = ({ keys }: TableRow): string =>
  Object.entries(keys)
    .map(([name, key]) => `${name} ${typeof key === "string" ? key : printInterval(key)}`)
    .join(", ");

/** Pointer of a member. */
export const member = (pointer: string, name: string): string => pointer + pointerStep(name);

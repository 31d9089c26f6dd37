import { columnName } from "../sheets/addresses.ts";
import type { Cell, Row, Sheet } from "../sheets/cells.ts";
import { textOf } from "./cell-value.ts";
import type { ImportFault } from "./faults.ts";
import { distinct, headingOf, type Heading } from "./heading.ts";

/** A sheet as a table: headings of one row, and the rows below it that hold anything. */
export interface Table {
  readonly sheet: Sheet;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly Row[];
  readonly faults: readonly ImportFault[];
}

export interface TableColumn extends Heading {
  /** What a map calls it: the heading, numbered where it stands twice. */
  readonly key: string;
  /** Counted from 1. */
  readonly column: number;
}

/** The table below the headings in row `head`. */
export function tableOf(sheet: Sheet, head: number): Table {
  const headRow = sheet.rows.find(({ row }) => row === head);
  const cells = (headRow?.cells ?? []).filter((cell) => textOf(cell) !== "");
  const headings = cells.map((cell) => headingOf(textOf(cell)));
  const keys = distinct(headings.map(({ text }) => text));
  const names = distinct(headings.map(({ name }) => name));
  const columns = cells.flatMap((cell, at): TableColumn[] => {
    const heading = headings[at];
    return heading === undefined
      ? []
      : [{ ...heading, name: names[at] ?? heading.name, key: keys[at] ?? heading.text, column: cell.column }];
  });
  const first = new Map<number, Cell>();
  const rows = sheet.rows.filter((row) => row.row > head && holdsAnything(row, first));
  const faults: ImportFault[] = [];
  if (columns.length === 0)
    faults.push({
      sheet: sheet.name,
      row: head,
      message: headRow === undefined ? "the row of the headings is empty" : "no heading can be read in this row",
      hint: 'say in the map which row holds the headings ("head")',
    });
  else faults.push(...unheaded(sheet, first, new Set(columns.map(({ column }) => column))));
  return { sheet, columns, rows, faults };
}

/** Whether a row holds anything; notes the first value of each column, so that its cells are made once. */
function holdsAnything({ cells }: Row, first: Map<number, Cell>): boolean {
  let holds = false;
  for (const cell of cells) {
    const isBlank = textOf(cell) === "";
    holds ||= !isBlank || cell.fault !== undefined;
    if (!isBlank && cell.type !== "covered" && !first.has(cell.column)) first.set(cell.column, cell);
  }
  return holds;
}

/** Columns that hold values under no heading: once for each column, at its first value. */
function unheaded(sheet: Sheet, first: ReadonlyMap<number, Cell>, headed: ReadonlySet<number>): ImportFault[] {
  return [...first.values()]
    .filter(({ column }) => !headed.has(column))
    .sort((a, b) => a.column - b.column)
    .map((cell) => ({
      sheet: sheet.name,
      row: cell.row,
      column: columnName(cell.column),
      message: `"${textOf(cell)}" stands in a column without a heading`,
      hint: "give the column a heading, or remove what stands there",
    }));
}

/** The first column behind one in which nothing stands, heading or value: a second table may begin there. */
export function behindGap({ columns, rows }: Table): TableColumn | undefined {
  const holds = (column: number) =>
    rows.some(({ cells }) => cells.some((cell) => cell.column === column && textOf(cell) !== ""));
  return columns.find((column, at) => {
    const before = columns[at - 1];
    if (before === undefined) return false;
    for (let between = before.column + 1; between < column.column; between++) if (!holds(between)) return true;
    return false;
  });
}

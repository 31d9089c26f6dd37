import type { Cell } from "../sheets/cells.ts";
import { textOf } from "./cell-value.ts";
import type { MappedColumn, Matched } from "./matched.ts";
import type { SheetMap } from "./map.ts";
import type { KindsOf } from "./read-cell.ts";
import type { Table } from "./table.ts";
import { fill, templateOf } from "./template.ts";

/** What is known beside the sheet itself when its cells are read. */
export interface Known {
  /** Every cell is text. */
  readonly csv: boolean;
  readonly kindsOf: KindsOf;
}

type Texts = (heading: string) => string | undefined;

/** Of what ids of rows are made. */
export function idSource(
  map: SheetMap,
  matched: Matched,
): { readonly column: MappedColumn | undefined; readonly template: NonNullable<SheetMap["id"]> | { fault: string } } {
  const column = matched.columns.find(({ to }) => to.text === "id");
  return { column, template: map.id ?? templateOf(`{${column?.key ?? ""}}`) };
}

/** The cells of a row by heading, and their texts for ids and links. */
export function rowTexts(
  cells: ReadonlyMap<number, Cell>,
  map: SheetMap,
  matched: Matched,
): { readonly cellOf: (heading: string) => Cell | undefined; readonly others: Texts } {
  const cellOf = (heading: string) => {
    const column = matched.byName.get(heading);
    return column === undefined ? undefined : cells.get(column.column);
  };
  const others = (heading: string) => {
    const cell = cellOf(heading);
    return cell === undefined || map.reading.words.get(textOf(cell)) === "" ? undefined : plainText(cell);
  };
  return { cellOf, others };
}

/** The ids that the rows of a table make, as far as they make any; what is wrong with the others is said when they are read. */
export function idsOf(table: Table, map: SheetMap, matched: Matched): ReadonlySet<string> {
  const { template } = idSource(map, matched);
  if ("fault" in template) return new Set();
  return new Set(
    table.rows.flatMap((row) => {
      const { cellOf, others } = rowTexts(new Map(row.cells.map((cell) => [cell.column, cell])), map, matched);
      const id = isSkipped(map, cellOf) ? undefined : fill(template, others, true);
      return id !== undefined && "text" in id ? [id.text] : [];
    }),
  );
}

/** Whether the map leaves the row out. */
export const isSkipped = ({ skip }: SheetMap, cellOf: (heading: string) => Cell | undefined) =>
  [...skip].some(([heading, texts]) => {
    const cell = cellOf(heading);
    return texts.has(cell === undefined ? "" : textOf(cell));
  });

/** Text of a cell for an id: a number as it is shown. */
function plainText(cell: Cell): string | undefined {
  if (cell.fault !== undefined) return undefined;
  if (cell.type === "date") return cell.day;
  return cell.type === "number" ? (cell.figure ?? textOf(cell)) : textOf(cell);
}

import type { Json } from "../model/json.ts";
import { columnName } from "../sheets/addresses.ts";
import type { Cell } from "../sheets/cells.ts";
import { cellValue, textOf } from "./cell-value.ts";
import type { CellValue, ColumnReading } from "./read-cell.ts";
import type { CellAt, ImportFault } from "./faults.ts";
import type { FieldPath } from "./field-path.ts";
import type { MappedColumn, Matched } from "./matched.ts";
import type { SheetMap } from "./map.ts";
import { idSource, isSkipped, rowTexts, type Known } from "./row-id.ts";
import { splitCell } from "./split.ts";
import type { Table, TableColumn } from "./table.ts";
import { fill, headingsOf } from "./template.ts";

/** One value of one row of a sheet, and where in its record it belongs. */
export interface Write {
  readonly to: FieldPath;
  /** Of a list of plain values: all that the cell holds. */
  readonly values: readonly Json[];
  readonly at: CellAt;
}

/** What one row of a sheet says about one record. */
export interface RowRead {
  readonly row: number;
  readonly id: string;
  /** The id before it was folded to the alphabet of ids. */
  readonly spelled: string;
  readonly writes: readonly Write[];
  /** Whether a cell says anything beside those of which the id is made: a total does not. */
  readonly says: boolean;
}

export interface RowsRead {
  readonly rows: readonly RowRead[];
  /** Ids that rows bear of which another cell cannot be read. */
  readonly faulty: readonly string[];
  /** Rows whose id cannot be read. */
  readonly nameless: readonly number[];
  readonly faults: readonly ImportFault[];
  /** Rows the map leaves out. */
  readonly skipped: readonly number[];
  readonly notes: readonly ImportFault[];
}

/** Reads the rows of a table by its map; what cannot be read is said, cell by cell. */
export function readRows(table: Table, map: SheetMap, matched: Matched, known: Known): RowsRead {
  const sheet = table.sheet.name;
  const rows: RowRead[] = [];
  const faults: ImportFault[] = [];
  const notes: ImportFault[] = [];
  const skipped: number[] = [];
  const faulty: string[] = [];
  const nameless: number[] = [];
  const readings = new Map(matched.columns.map((column) => [column, readingOf(column, map, known)]));
  const { column: idColumn, template: idTemplate } = idSource(map, matched);
  const ofId = new Set(
    ("fault" in idTemplate ? [] : headingsOf(idTemplate)).flatMap((name) => matched.byName.get(name)?.column ?? []),
  );
  const relevant = new Set([...matched.columns.map(({ column }) => column), ...ofId]);
  const places = new Map(
    [...matched.columns, ...(idColumn === undefined ? [] : [idColumn])].map((column) => [
      column.column,
      { column: columnName(column.column), heading: column.text },
    ]),
  );
  for (const row of table.rows) {
    const inside = row.cells;
    const cells = new Map(inside.map((cell) => [cell.column, cell]));
    const { cellOf, others } = rowTexts(cells, map, matched);
    if (isSkipped(map, cellOf)) {
      skipped.push(row.row);
      continue;
    }
    const found = faults.length;
    const at = (column?: Pick<TableColumn, "column">): CellAt => ({
      sheet,
      row: row.row,
      ...(column !== undefined && places.get(column.column)),
    });
    const writes: Write[] = [];
    let says = false;
    for (const column of matched.columns) {
      const cell = cells.get(column.column);
      const reading = readings.get(column);
      if (cell === undefined || column === idColumn || reading === undefined) continue;
      const read = readCell(cell, column, reading, others);
      if (read.fault !== undefined) faults.push({ ...at(column), ...read.fault });
      else if (read.values.length > 0) {
        writes.push({ to: column.to, values: read.values, at: at(column) });
        says ||= !ofId.has(column.column);
        if (cell.note !== undefined) notes.push({ ...at(column), message: cell.note, hint: "" });
      }
    }
    if (writes.length === 0 && faults.length === found && !hasText(inside, relevant)) continue;
    const id = "fault" in idTemplate ? idTemplate : fill(idTemplate, others, true);
    if (!("text" in id) || !idForm.test(id.text)) {
      faults.push({ ...at(idColumn), ...idFault(id) });
      nameless.push(row.row);
      continue;
    }
    for (const { to, value } of map.set) {
      const made = fill(value, others, to.field.type === "link");
      // A value made of cells that are blank is not there.
      if ("blank" in made) continue;
      const read = "fault" in made ? made : setValue(made.text, to, map, known);
      if ("fault" in read)
        faults.push({ ...at(), message: `${to.text}: ${read.fault}`, hint: 'correct "set" in the map' });
      else writes.push({ to, values: [read.value], at: at() });
    }
    if (faults.length === found) {
      const spelled = "fault" in idTemplate ? id : fill(idTemplate, others, false);
      rows.push({ row: row.row, id: id.text, spelled: "text" in spelled ? spelled.text : id.text, writes, says });
    } else faulty.push(id.text);
  }
  return { rows, faulty, nameless, faults, skipped, notes };
}

const idForm = /^[A-Z0-9][A-Z0-9.-]{0,39}$/;

function idFault(id: ReturnType<typeof fill>): Pick<ImportFault, "message" | "hint"> {
  if ("fault" in id)
    return { message: `no id can be made: ${id.fault}`, hint: "correct the cell, or how ids are made in the map" };
  if ("text" in id)
    return {
      message: `"${id.text}" is no id`,
      hint: "an id has at most 40 capital letters, digits, points and hyphens, and begins with a letter or digit",
    };
  return {
    message: `the row has values, but nothing stands under ${id.blank.map((one) => `"${one}"`).join(", ")}, of which the id is made`,
    hint: 'fill it in; if the row is a total, name what marks it under "skip" of the map',
  };
}

function readingOf(column: MappedColumn, map: SheetMap, { csv, kindsOf }: Known): ColumnReading {
  const unit = column.map.unit ?? column.unit;
  return {
    ...map.reading,
    ...(unit !== undefined && { unit }),
    ...(column.map.form !== undefined && { form: column.map.form }),
    columnWords: column.map.words,
    asShown: column.map.asShown,
    csv,
    kindsOf,
  };
}

interface CellRead {
  readonly values: readonly Json[];
  readonly fault?: Pick<ImportFault, "message" | "hint">;
}

function readCell(
  cell: Cell,
  column: MappedColumn,
  reading: ColumnReading,
  others: (heading: string) => string | undefined,
): CellRead {
  const { to, map } = column;
  if (to.ending === "row") {
    const text = textOf(cell);
    return cell.fault === undefined
      ? { values: text === "" ? [] : [text] }
      : { values: [], fault: { message: cell.fault, hint: "" } };
  }
  const parts =
    to.ending !== "item" || map.split === undefined || cell.type !== "text"
      ? [cell]
      : splitCell(textOf(cell), map.split).map((shown) => ({ ...cell, shown }));
  const values: Json[] = [];
  for (const part of parts) {
    const read: CellValue = cellValue(part, to.field, reading, others);
    if (read.type === "fault") return { values: [], fault: { message: read.fault, hint: read.hint } };
    if (read.type === "value") values.push(read.value);
  }
  return { values };
}

function setValue(
  text: string,
  to: FieldPath,
  map: SheetMap,
  { kindsOf }: Known,
): { readonly value: Json } | { readonly fault: string } {
  const cell: Cell = { row: 0, column: 0, type: "text", shown: text, raw: text, format: "@" };
  const reading: ColumnReading = {
    decimal: ".",
    words: map.reading.words,
    columnWords: new Map(),
    asShown: true,
    csv: false,
    kindsOf,
  };
  const read = cellValue(cell, to.field, reading, () => undefined);
  if (read.type === "value") return { value: read.value };
  return { fault: read.type === "fault" ? read.fault : "it is blank" };
}

const hasText = (cells: readonly Cell[], columns: ReadonlySet<number>) =>
  cells.some((cell) => textOf(cell) !== "" && columns.has(cell.column));

import { byCodePoint } from "../model/order.ts";
import type { Workbook } from "../sheets/cells.ts";
import { addRow, type BuiltRecord } from "./build.ts";
import { emptyObject } from "./built.ts";
import type { CellAt, ImportFault } from "./faults.ts";
import type { ImportPlan, ImportTask, LeftOut, Nameless, PlannedRecord } from "./import-plan.ts";
import type { SheetMap } from "./map.ts";
import { matchColumns, type Matched } from "./matched.ts";
import { plannerOf } from "./planner.ts";
import type { KindsOf } from "./read-cell.ts";
import { readRows } from "./read-rows.ts";
import { idsOf, type Known } from "./row-id.ts";
import { sheetOf } from "./sheet-of.ts";
import { tableOf, type Table } from "./table.ts";
import { addressOf } from "../model/record.ts";

interface TableRead {
  readonly map: SheetMap;
  readonly table: Table;
  readonly matched: Matched;
}

/** Compares a sheet with the book: a value, nothing is written. */
export function planImport(task: ImportTask): ImportPlan {
  const faults: ImportFault[] = [];
  const notes: ImportFault[] = [];
  const skipped: LeftOut[] = [];
  const nameless: Nameless[] = [];
  const standing = new Set<string>();
  const built = new Map<string, BuiltRecord>();
  let rows = 0;
  const tables = task.maps.flatMap((map) => {
    const sheet = sheetOf(task.workbook, map.sheet);
    if ("message" in sheet) {
      faults.push(sheet);
      nameless.push({ sheet: sheet.sheet, rows: [] });
      return [];
    }
    const table = tableOf(sheet, map.head);
    faults.push(...table.faults);
    if (table.columns.length === 0) {
      nameless.push({ sheet: sheet.name, rows: [] });
      return [];
    }
    const matched = matchColumns(table, map);
    faults.push(...matched.faults);
    return [{ map, sheet, table, matched }];
  });
  const mapped = new Set(tables.map(({ sheet }) => sheet.name));
  for (const { name, hidden, rows: held } of task.workbook.sheets)
    if (
      task.maps.length > 0 &&
      !hidden &&
      held.length > 0 &&
      !mapped.has(name) &&
      faults.every(({ sheet }) => sheet !== name)
    )
      notes.push({ sheet: name, message: "no map is about this sheet: it is not read", hint: "" });
  const known: Known = { csv: task.workbook.form === "csv", kindsOf: kindsByIds(task, tables) };
  for (const { map, sheet, table, matched } of tables) {
    const read = readRows(table, map, matched, known);
    faults.push(...read.faults);
    notes.push(...read.notes);
    for (const id of [...read.faulty, ...read.rows.map((one) => one.id)])
      standing.add(addressOf({ kind: map.kind.name, id }));
    if (read.nameless.length > 0) nameless.push({ sheet: sheet.name, rows: read.nameless });
    if (read.skipped.length > 0) skipped.push({ sheet: sheet.name, rows: read.skipped, why: "as the map says" });
    rows += read.rows.length;
    const spelled = new Map<string, { readonly text: string; readonly row: number }>();
    for (const one of read.rows) {
      const at: CellAt = { sheet: sheet.name, row: one.row };
      const key = addressOf({ kind: map.kind.name, id: one.id });
      const known = built.get(key);
      const before = spelled.get(key);
      if (before !== undefined && before.text !== one.spelled) {
        faults.push({
          ...at,
          message: `"${one.spelled}" and "${before.text}" of row ${before.row} make one id, ${one.id}`,
          hint: "correct one of the two, or form ids from more headings",
        });
        continue;
      }
      if (before !== undefined && map.group.size === 0) {
        faults.push({
          ...at,
          message: `row ${before.row} is about ${one.id} too`,
          hint: 'if several rows are one record, name the list that takes them under "group" of the map; else form ids from more headings',
        });
        continue;
      }
      spelled.set(key, before ?? { text: one.spelled, row: one.row });
      const record = known ?? { id: one.id, map, sheet: sheet.name, rows: [], object: emptyObject(), at, says: false };
      if (known === undefined) built.set(key, record);
      if (record.sheet === sheet.name) record.rows.push(one.row);
      record.says ||= one.says;
      for (const fault of addRow(record, one, map, sheet.name)) {
        // What is wrong with the map is said once, not of each row.
        const said =
          fault.row === undefined &&
          faults.some(({ sheet, message }) => sheet === fault.sheet && message === fault.message);
        if (!said) faults.push(fault);
      }
    }
  }
  const planner = plannerOf(task);
  const records: PlannedRecord[] = [];
  for (const one of built.values()) {
    if (!one.says && planner.isUnknown(one)) {
      skipped.push({ sheet: one.sheet, rows: one.rows, why: "nothing stands there beside what its id is made of" });
      continue;
    }
    const planned = planner.plan(one);
    faults.push(...planned.faults);
    records.push(planned.record);
  }
  records.sort((a, b) => byCodePoint(a.kind.name, b.kind.name) || byCodePoint(a.id, b.id));
  const gone = nameless.length > 0 ? [] : planner.gone(standing);
  return { records, gone, nameless, faults: inSheetOrder(faults, task.workbook), notes, skipped, rows };
}

/**
 * Which kinds have an id: of the records of the book, and of the rows that are read; looked up when first asked for. A scan
 * is often called like the record that was read from it: by the id alone the record is meant.
 */
function kindsByIds(task: ImportTask, tables: readonly TableRead[]): KindsOf {
  let kinds: Map<string, Set<string>> | undefined;
  const found = () => {
    const made = new Map<string, Set<string>>();
    const add = (id: string, kind: string) => void made.set(id, (made.get(id) ?? new Set()).add(kind));
    for (const { id, kind } of task.records) add(id, kind);
    for (const { table, map, matched } of tables) for (const id of idsOf(table, map, matched)) add(id, map.kind.name);
    return made;
  };
  const comesWithOthers = (kind: string) => task.kinds.get(kind)?.carry === "named";
  return (id) => {
    const all = [...((kinds ??= found()).get(id) ?? [])];
    const own = all.filter((kind) => !comesWithOthers(kind));
    return { all: new Set(all), meant: new Set(own.length > 0 ? own : all) };
  };
}

/** By sheet, row and column, as a person goes through them. */
function inSheetOrder(faults: readonly ImportFault[], { sheets }: Workbook): readonly ImportFault[] {
  const rank = new Map(sheets.map(({ name }, index) => [name, index]));
  const column = ({ column: letters = "" }: ImportFault) => letters.padStart(4, " ");
  return [...faults].sort(
    (a, b) =>
      (rank.get(a.sheet) ?? 0) - (rank.get(b.sheet) ?? 0) ||
      (a.row ?? 0) - (b.row ?? 0) ||
      byCodePoint(column(a), column(b)),
  );
}

import { validate } from "../load/validate.ts";
import { atPointer, isObject, type JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { byCodePoint } from "../model/order.ts";
import type { BookRecord } from "../model/record.ts";
import { shelfOf } from "../model/shelf.ts";
import type { Workbook } from "../sheets/cells.ts";
import { addRow, type BuiltRecord } from "./build.ts";
import { emptyObject } from "./built.ts";
import { conflictsOf, uncompared } from "./conflicts.ts";
import type { CellAt, ImportFault } from "./faults.ts";
import type { FieldPath } from "./field-path.ts";
import type { SheetMap } from "./map.ts";
import { matchColumns } from "./matched.ts";
import { inOrder, lay, type Change, type Laid } from "./overlay.ts";
import { readRows } from "./read-rows.ts";
import { sheetOf } from "./sheet-of.ts";
import { tableOf } from "./table.ts";
import { fromView, sheetFields, toView } from "./view.ts";
import { fieldsDigest, valuesAt } from "./written-fields.ts";

/** What an import is made of. */
export interface ImportTask {
  readonly workbook: Workbook;
  /** Name and SHA-256 of the sheet's file. */
  readonly file: string;
  readonly sha256: string;
  readonly maps: readonly SheetMap[];
  /** Name of the maps' file, which records remember. */
  readonly mapName: string;
  readonly records: readonly BookRecord[];
}

/** What would become of the rows of a sheet. */
export interface ImportPlan {
  /** By kind and id. */
  readonly records: readonly PlannedRecord[];
  /** Records of an earlier import by these maps that no row is about any more. */
  readonly gone: readonly BookRecord[];
  readonly faults: readonly ImportFault[];
  readonly notes: readonly ImportFault[];
  readonly skipped: readonly { readonly sheet: string; readonly rows: readonly number[] }[];
  /** Rows that were read. */
  readonly rows: number;
}

export interface PlannedRecord {
  readonly kind: Kind;
  readonly id: string;
  readonly sheet: string;
  readonly rows: readonly number[];
  readonly state: "new" | "changed" | "unchanged" | "conflict";
  readonly changes: readonly Change[];
  /** Why it is a conflict. */
  readonly conflicts: readonly string[];
  /** Values and rows of lists that an earlier import wrote, and the sheet no longer has. They stay. */
  readonly left: readonly string[];
  readonly before?: BookRecord;
  /** The record as it would be written. */
  readonly value: JsonObject;
}

/** Compares a sheet with the book: a value, nothing is written. */
export function planImport(task: ImportTask): ImportPlan {
  const faults: ImportFault[] = [];
  const notes: ImportFault[] = [];
  const skipped: { sheet: string; rows: readonly number[] }[] = [];
  const built = new Map<string, BuiltRecord>();
  let rows = 0;
  for (const map of task.maps) {
    const sheet = sheetOf(task.workbook, map.sheet);
    if ("message" in sheet) {
      faults.push(sheet);
      continue;
    }
    const table = tableOf(sheet, map.head);
    faults.push(...table.faults);
    if (table.columns.length === 0) continue;
    const matched = matchColumns(table, map);
    faults.push(...matched.faults);
    const read = readRows(table, map, matched, task.workbook.form === "csv");
    faults.push(...read.faults);
    notes.push(...read.notes);
    if (read.skipped.length > 0) skipped.push({ sheet: sheet.name, rows: read.skipped });
    rows += read.rows.length;
    const spelled = new Map<string, { readonly text: string; readonly row: number }>();
    for (const one of read.rows) {
      const at: CellAt = { sheet: sheet.name, row: one.row };
      const key = `${map.kind.name}:${one.id}`;
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
      const record = known ?? { id: one.id, map, sheet: sheet.name, rows: [], object: emptyObject(), at };
      if (known === undefined) built.set(key, record);
      if (record.sheet === sheet.name) record.rows.push(one.row);
      faults.push(...addRow(record, one, map, sheet.name));
    }
  }
  const planner = plannerOf(task);
  const records: PlannedRecord[] = [];
  for (const one of built.values()) {
    const planned = planner.plan(one);
    faults.push(...planned.faults);
    records.push(planned.record);
  }
  records.sort((a, b) => byCodePoint(a.kind.name, b.kind.name) || byCodePoint(a.id, b.id));
  return { records, gone: planner.gone(built), faults: inSheetOrder(faults, task.workbook), notes, skipped, rows };
}

function plannerOf(task: ImportTask) {
  const known = new Map<string, BookRecord>();
  const twice = new Set<string>();
  for (const record of task.records) {
    const key = `${record.kind}:${record.id}`;
    if (known.has(key)) twice.add(key);
    known.set(key, record);
  }
  const pathsOf = new Map<Kind, readonly FieldPath[]>();
  for (const { kind } of task.maps)
    pathsOf.set(kind, task.maps.filter((map) => map.kind === kind).flatMap(writtenPaths));
  const conflicts = conflictsOf(task.records, task.mapName);

  const plan = (built: BuiltRecord): { readonly record: PlannedRecord; readonly faults: readonly ImportFault[] } => {
    const { kind } = built.map;
    const key = `${kind.name}:${built.id}`;
    const before = known.get(key);
    const paths = pathsOf.get(kind) ?? [];
    const old = toView(kind, before?.value ?? {});
    const laid = lay(old, built.object, sheetFields(kind));
    const isOwn = isObject(before?.value["imported"]) && before.value["imported"]["map"] === task.mapName;
    const digest = before === undefined ? "" : fieldsDigest(old, paths);
    const reasons = before === undefined ? [] : conflicts(before, laid.changes, digest);
    const state =
      before === undefined
        ? "new"
        : laid.changes.length === 0
          ? "unchanged"
          : reasons.length > 0
            ? "conflict"
            : "changed";
    const remembers = state !== "unchanged" || isOwn;
    const imported = {
      file: task.file,
      sha256: task.sha256,
      ...(task.workbook.form === "xlsx" && { sheet: built.sheet }),
      row: built.rows[0] ?? built.at.row,
      ...(built.rows.length > 1 && { rows: built.rows }),
      map: task.mapName,
      fields: fieldsDigest(laid.value, paths),
    };
    const whole = fromView(kind, laid.value);
    const named = new Map(Object.entries({ ...whole, id: built.id, ...(remembers && { imported }) }));
    const value = inOrder(named, kind.fields);
    const faults = [...laid.faults, ...formFaults(kind, value, laid, built, before)];
    if (twice.has(key))
      faults.push({
        ...built.at,
        message: `the book holds ${built.id} twice`,
        hint: "which of the two is meant is not known: put that right first",
      });
    const shelf = before === undefined ? undefined : shelfOf(before.file);
    if (shelf !== undefined && state !== "unchanged")
      faults.push({
        ...built.at,
        message: `${built.id} stands on the shelf "${shelf}", and the sheet says otherwise`,
        hint: "correct it on the shelf, where other books read it too; nothing is written there for one book",
      });
    return {
      record: {
        kind,
        id: built.id,
        sheet: built.sheet,
        rows: built.rows,
        state,
        changes: laid.changes,
        conflicts: reasons,
        left: isOwn ? [...laid.left, ...emptied(old, laid, paths)] : [],
        ...(before !== undefined && { before }),
        value: state === "conflict" ? uncompared(value) : value,
      },
      faults,
    };
  };

  const gone = (built: ReadonlyMap<string, BuiltRecord>) => {
    const kinds = new Set(task.maps.map(({ kind }) => kind.name));
    return task.records.filter(({ kind, id, value }) => {
      const { imported } = value;
      return kinds.has(kind) && isObject(imported) && imported["map"] === task.mapName && !built.has(`${kind}:${id}`);
    });
  };
  return { plan, gone };
}

/** Fields a map writes. */
const writtenPaths = ({ columns, set }: SheetMap): readonly FieldPath[] => [
  ...[...columns.values()].flatMap(({ to }) => to ?? []),
  ...set.map(({ to }) => to),
];

/** Values an earlier import wrote, of which the sheet says nothing now. */
function emptied(old: JsonObject, laid: Laid, paths: readonly FieldPath[]): readonly string[] {
  const found = paths.flatMap((path) => valuesAt(old, path));
  return [...new Map(found.map(({ pointer, name }) => [pointer, name.slice(1).replaceAll("/", ".")]))].flatMap(
    ([pointer, name]) => (laid.from.has(pointer) || pointer === "/id" ? [] : [name]),
  );
}

/** What the schema has against a record as it would be written, at the cells that say so. */
function formFaults(
  kind: Kind,
  value: JsonObject,
  { from }: Laid,
  built: BuiltRecord,
  before: BookRecord | undefined,
): readonly ImportFault[] {
  const { said } = validate(kind, "row", value, (pointer) => JSON.stringify(atPointer(value, pointer) ?? null), 5);
  return said.flatMap(({ pointer, message, hint }) => {
    let at = pointer;
    while (at !== "" && !from.has(at)) at = at.slice(0, at.lastIndexOf("/"));
    const cell = from.get(at);
    // What was wrong with a record before is not the sheet's fault.
    if (cell === undefined && before !== undefined) return [];
    return [{ ...(cell ?? built.at), message, hint }];
  });
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

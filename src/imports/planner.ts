import { validate } from "../load/validate.ts";
import { atPointer, isObject, type JsonObject, holderOf } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import { type BookRecord, addressOf } from "../model/record.ts";
import { shelfOf } from "../model/shelf.ts";
import type { BuiltRecord } from "./build.ts";
import { conflictsOf } from "./conflicts.ts";
import type { ImportFault } from "./faults.ts";
import type { FieldPath } from "./field-path.ts";
import type { ImportTask, PlannedRecord } from "./import-plan.ts";
import type { SheetMap } from "./map.ts";
import { inOrder, lay, type Laid } from "./overlay.ts";
import { fromView, sheetFields, toView } from "./view.ts";
import { fieldsDigest, valuesAt } from "./written-fields.ts";

/** Compares records made of rows with those of the book, and tells which of an earlier import have no row any more. */
export function plannerOf(task: ImportTask) {
  const known = new Map<string, BookRecord>();
  const twice = new Set<string>();
  for (const record of task.records) {
    const key = addressOf(record);
    if (known.has(key)) twice.add(key);
    known.set(key, record);
  }
  const pathsOf = new Map<Kind, readonly FieldPath[]>();
  for (const { kind } of task.maps)
    pathsOf.set(kind, task.maps.filter((map) => map.kind === kind).flatMap(writtenPaths));
  const conflicts = conflictsOf(task.records, task.mapName);

  const plan = (built: BuiltRecord): { readonly record: PlannedRecord; readonly faults: readonly ImportFault[] } => {
    const { kind } = built.map;
    const key = addressOf({ kind: kind.name, id: built.id });
    const before = known.get(key);
    const paths = pathsOf.get(kind) ?? [];
    const old = toView(kind, before?.value ?? {});
    const laid = lay(old, built.object, sheetFields(kind));
    const isOwn = isObject(before?.value["imported"]) && before.value["imported"]["map"] === task.mapName;
    const digest = before === undefined ? "" : fieldsDigest(old, paths);
    const whole = fromView(kind, laid.value);
    const reasons = before === undefined ? [] : conflicts(kind, before, whole, laid.changes, digest);
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
        value,
      },
      faults,
    };
  };

  const gone = (standing: ReadonlySet<string>) => {
    const kinds = new Set(task.maps.map(({ kind }) => kind.name));
    return task.records.filter(({ kind, id, value }) => {
      const { imported } = value;
      return (
        kinds.has(kind) &&
        isObject(imported) &&
        imported["map"] === task.mapName &&
        !standing.has(addressOf({ kind, id }))
      );
    });
  };
  /** Whether the book holds no such record yet. */
  const isUnknown = ({ id, map }: BuiltRecord) => !known.has(addressOf({ kind: map.kind.name, id }));
  return { plan, gone, isUnknown };
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
    while (at !== "" && !from.has(at)) at = holderOf(at);
    const cell = from.get(at);
    // What was wrong with a record before is not the sheet's fault.
    if (cell === undefined && before !== undefined) return [];
    return [{ ...(cell ?? built.at), message, hint }];
  });
}

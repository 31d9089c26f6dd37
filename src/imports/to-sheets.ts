import { fieldSteps } from "../model/field-steps.ts";
import { isList, isObject, type Json, type JsonObject } from "../model/json.ts";
import type { Field, Kind } from "../model/kind.ts";
import { rowName } from "../model/stable.ts";
import type { CellToWrite, SheetToWrite } from "../sheets/cells.ts";
import { layoutOf, splitSign, type LayoutColumn, type SheetLayout } from "./layout.ts";
import { said } from "./said.ts";
import { joinCell } from "./split.ts";
import { toView } from "./view.ts";

/** A record to write into a sheet, and whether its values are there for whoever fills in the rest. */
export interface RecordToWrite {
  readonly value: JsonObject;
  readonly known: boolean;
  /** Its id is a proposal: whoever fills it in may write another. */
  readonly proposesId?: boolean;
}

/** The sheets of these records of a kind; `choicesOf` gives what a link of a field may name. */
export function toSheets(
  kind: Kind,
  records: readonly RecordToWrite[],
  choicesOf: (field: Field) => readonly string[],
): readonly SheetToWrite[] {
  const shown = records.map((record) => ({ ...record, value: toView(kind, record.value) }));
  return layoutOf(kind).map((layout) => sheetOf(layout, shown, choicesOf));
}

/** One row of a sheet: the values of its columns, before they become text. */
interface Line {
  readonly values: readonly (Json | undefined)[];
  readonly known: boolean;
  readonly proposesId: boolean;
}

function sheetOf(
  layout: SheetLayout,
  records: readonly RecordToWrite[],
  choicesOf: (field: Field) => readonly string[],
): SheetToWrite {
  const lines = records.flatMap(({ value, known, proposesId = false }) =>
    linesOf(layout, value).map((values) => ({ values, known, proposesId })),
  );
  const units = layout.columns.map((column, at) => columnUnit(column, lines, at));
  return {
    name: layout.name,
    columns: layout.columns.map(({ heading, description, field }, at) => {
      const unit = units[at];
      const choices = field.type === "list" ? [] : choicesFor(field, choicesOf);
      return {
        heading: unit?.said === undefined ? heading : `${heading} [${unit.said}]`,
        note: noteOf(description, field),
        ...(choices.length > 0 && { choices }),
      };
    }),
    rows: lines.map(({ values, known, proposesId }) =>
      values.map((value, at): string | CellToWrite => {
        const column = layout.columns[at];
        if (value === undefined || column === undefined) return "";
        const text = cellText(value, column, units[at]?.common);
        return known && !(proposesId && column.path === "id") ? { text, known } : text;
      }),
    ),
  };
}

function choicesFor(field: Field, choicesOf: (field: Field) => readonly string[]): readonly string[] {
  if (field.options !== undefined) return field.options;
  if (field.type === "boolean") return ["yes", "no"];
  return field.type === "link" ? choicesOf(field) : [];
}

const noteOf = (description: string, field: Field) =>
  field.type === "list" ? `${description} Its name, or #2 for the second.` : description;

/** What stands in the columns of a layout, row by row. */
function linesOf({ list, columns }: SheetLayout, record: JsonObject): readonly (readonly (Json | undefined)[])[] {
  if (list === undefined) return [columns.map(({ path }) => valueAt(record, fieldSteps(path)))];
  const steps = list.split("[].");
  const lines: (readonly (Json | undefined)[])[] = [];
  const walk = (holder: JsonObject, depth: number, names: readonly Json[]): void => {
    const rows = valueAt(holder, fieldSteps(steps[depth] ?? ""));
    if (!isList(rows)) return;
    const field = columns[depth + 1]?.field;
    rows.forEach((row, index) => {
      if (!isObject(row)) return;
      if (depth < steps.length - 1) walk(row, depth + 1, [...names, nameOf(field, rows, row, index)]);
      else
        lines.push(
          columns.map(({ path }, at) => {
            if (at === 0) return record["id"];
            if (at <= names.length) return names[at - 1];
            return valueAt(row, fieldSteps(path.slice(list.length + 3)));
          }),
        );
    });
  };
  walk(record, 0, []);
  return lines;
}

/** How a row is named: as links name it, or by where it stands, where two have one name or it has none. */
function nameOf(list: Field | undefined, rows: readonly Json[], row: Json, index: number): string {
  const name = list === undefined ? undefined : rowName(list, row);
  const isOne =
    name !== undefined && rows.filter((other) => list !== undefined && rowName(list, other) === name).length === 1;
  return isOne && !name.startsWith("#") ? name : `#${index + 1}`;
}

function valueAt(holder: JsonObject, steps: readonly string[]): Json | undefined {
  let here: Json | undefined = holder;
  for (const step of steps) {
    const name = step.replace("[]", "");
    here = isObject(here) && Object.hasOwn(here, name) ? here[name] : undefined;
  }
  return here;
}

interface ColumnUnit {
  /** Behind the heading. */
  readonly said: string | undefined;
  /** Of every value: it is left out of the cells. */
  readonly common: string | undefined;
}

/** The unit of a column: that of all its values; where they differ each cell says its own. */
function columnUnit({ field }: LayoutColumn, lines: readonly Line[], at: number): ColumnUnit {
  if (field.type !== "quantity") return { said: undefined, common: undefined };
  const units = new Set(
    lines.flatMap(({ values }) => {
      const value = values[at];
      const list = isList(value) ? value : [value];
      return list.flatMap((one) => (typeof one === "string" ? [unitIn(one)] : []));
    }),
  );
  const usual = field.unit === "any" || field.unit === "1" ? undefined : field.unit;
  const [one] = units;
  if (units.size === 0) return { said: usual, common: undefined };
  if (units.size > 1 || one === undefined) return { said: usual, common: undefined };
  if (one !== "") return { said: one, common: one };
  return { said: field.unit === "1" ? undefined : "1", common: "" };
}

const unitIn = (quantity: string) => quantity.split(" ")[1] ?? "";

function cellText(value: Json, { field, path }: LayoutColumn, common: string | undefined): string {
  const one = (item: Json): string => {
    if (typeof item === "boolean") return item ? "yes" : "no";
    if (field.type === "quantity" && typeof item === "string") return quantityText(item, field, common);
    return said(item);
  };
  return path.endsWith("[]") && isList(value) ? joinCell(value.map(one), splitSign) : one(value);
}

function quantityText(quantity: string, field: Field, common: string | undefined): string {
  const [number = "", unit = ""] = quantity.split(" ");
  if (unit === common) return number;
  return unit === "" && field.unit !== "1" ? `${number} [1]` : quantity;
}

import { isList, isObject, type Json, stepsOf } from "../../model/json.ts";
import type { Field } from "../../model/kind.ts";
import type { BookRecord } from "../../model/record.ts";
import { rowName } from "../../model/stable.ts";
import type { Block, Cell, Column, Row, TableBlock } from "../blocks.ts";
import { rowAnchor } from "./address.ts";
import { slugOf, type Context } from "./context.ts";
import { cellOf, commonUnit, labelOfField, textOf } from "./values.ts";

/** What stays the same while the nested values of a record are laid out. */
export interface Layout {
  /** Number of the next table. */
  readonly next: () => string;
  readonly prefix: string;
  /** Paths that other blocks of the page show already: `remarks`, `rows[].chemistry`. */
  readonly skip: ReadonlySet<string>;
}

/** A table with more columns is turned: fields become rows, if there are few enough rows to become columns. */
const widest = 8;
const fewRows = 6;

interface NamedColumn extends Column {
  readonly name: string;
  readonly field: Field;
  /** The unit all its values are written in, "" for none. */
  readonly common: string | undefined;
}

/** A list of objects as a table; lists inside a row that need room of their own follow as tables named by the row. */
export function tablesOfRows(
  context: Context,
  record: BookRecord,
  field: Field,
  rows: readonly Json[],
  pointer: string,
  layout: Layout,
): Block[] {
  const { next, prefix, skip } = layout;
  const path = pointer.slice(1).replaceAll(/\/\d+/g, "[]").replaceAll("/", ".");
  const fields = [...(field.item?.fields ?? [])].filter(
    ([name]) => name !== "row" || rows.some((row) => isObject(row) && row["row"] !== undefined),
  );
  const used = fields.filter(([name]) => rows.some((row) => isObject(row) && row[name] !== undefined));
  const own = used.filter(([, one]) => !(one.type === "list" && one.item?.type === "object"));
  const deep = used.filter(
    ([name, one]) => one.type === "list" && one.item?.type === "object" && !skip.has(`${path}[].${name}`),
  );
  const columns = own.map(([name, one]): NamedColumn => {
    const unit =
      one.type === "quantity" ? commonUnit(rows.map((row) => (isObject(row) ? row[name] : undefined))) : undefined;
    const number = (one.type === "quantity" && unit !== undefined) || one.type === "integer" || one.type === "number";
    return {
      name,
      field: one,
      common: unit,
      head: labelOfField(one),
      align: number ? "number" : "left",
      ...(unit !== undefined && unit !== "" && { unit }),
    };
  });
  const deeper = () =>
    rows.flatMap((row, index) =>
      deep.flatMap(([name, one]) => {
        const value = isObject(row) ? row[name] : undefined;
        if (!isList(value) || value.length === 0) return [];
        const title = `${labelOfField(one)}, ${rowName(field, row) ?? String(index + 1)}`;
        return tablesOfRows(context, record, { ...one, title }, value, `${pointer}/${index}/${name}`, layout);
      }),
    );
  if (columns.length > widest && rows.length <= fewRows)
    return [...turnedTable(context, record, field, rows, pointer, columns, layout), ...deeper()];
  const printedRows = rows.map((row, index): Row => {
    return {
      ...anchorOf(context, record, `${pointer}/${index}`, prefix),
      cells: columns.map(({ name: column, field: one, common }) =>
        cellOf(context, record, one, isObject(row) ? row[column] : undefined, `${pointer}/${index}/${column}`, common),
      ),
    };
  });
  const table: TableBlock = {
    type: "table",
    number: next(),
    title: labelOfField(field),
    columns: columns.map(({ name: _name, field: _field, common: _common, ...column }) => column),
    groups: inFives(printedRows),
    wide: columns.length > 5,
  };
  return [...(columns.length > 0 ? [table] : []), ...deeper()];
}

function turnedTable(
  context: Context,
  record: BookRecord,
  field: Field,
  rows: readonly Json[],
  pointer: string,
  columns: readonly NamedColumn[],
  { next, prefix }: Layout,
): Block[] {
  const [key, ...rest] = columns;
  const heads = rows.map((row, index) => rowName(field, row) ?? String(index + 1));
  const anchors = rows.flatMap((_row, index): Block[] => {
    const { anchor } = anchorOf(context, record, `${pointer}/${index}`, prefix);
    return anchor === undefined ? [] : [{ type: "anchor", anchor }];
  });
  const table: TableBlock = {
    type: "table",
    number: next(),
    title: labelOfField(field),
    columns: [
      { head: key === undefined ? "" : key.head, align: "left", width: 2 },
      ...heads.map((head): Column => ({ head, align: "left", width: 2.4 })),
    ],
    groups: inFives(
      rest.map(({ name, field: one, head }): Row => ({
        cells: [
          { type: "text", text: [head] },
          ...rows.map((row, index): Cell => {
            const value = isObject(row) ? row[name] : undefined;
            return value === undefined
              ? { type: "empty" }
              : { type: "text", text: textOf(context, record, one, value, `${pointer}/${index}/${name}`) };
          }),
        ],
      })),
    ),
    wide: rows.length > 3,
  };
  return [...anchors, table];
}

/** Where links to a row of a record land; rows inside rows are nowhere linked to. */
function anchorOf(context: Context, record: BookRecord, pointer: string, prefix: string): { readonly anchor?: string } {
  const slug = stepsOf(pointer).length === 2 ? slugOf(context, record, pointer) : undefined;
  return slug === undefined ? {} : { anchor: `${prefix}${rowAnchor(slug)}` };
}

/** Rows without groups of their own are set in groups of five, so that the eye keeps its line. */
export function inFives(rows: readonly Row[]): Row[][] {
  const groups: Row[][] = [];
  for (let index = 0; index < rows.length; index += 5) groups.push(rows.slice(index, index + 5));
  return groups.length > 1 && (groups.at(-1)?.length ?? 0) === 1
    ? [...groups.slice(0, -2), [...(groups.at(-2) ?? []), ...(groups.at(-1) ?? [])]]
    : groups;
}

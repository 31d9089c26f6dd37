import { nearestName } from "../model/nearest.ts";
import type { Field } from "../model/kind.ts";
import { columnName } from "../sheets/addresses.ts";
import type { ImportFault } from "./faults.ts";
import type { FieldPath } from "./field-path.ts";
import { nearestField } from "./field-names.ts";
import type { ColumnMap, SheetMap } from "./map.ts";
import { headingsOf } from "./template.ts";
import { behindGap, type Table, type TableColumn } from "./table.ts";

/** A column of a sheet whose meaning is known. */
export interface MappedColumn extends TableColumn {
  readonly to: FieldPath;
  readonly map: ColumnMap;
}

export interface Matched {
  readonly columns: readonly MappedColumn[];
  /** Columns by what templates and maps call them. */
  readonly byName: ReadonlyMap<string, TableColumn>;
  readonly faults: readonly ImportFault[];
}

/** Finds what each heading of a table means by its map: unknown headings are refused, missing ones are said. */
export function matchColumns(table: Table, map: SheetMap): Matched {
  const sheet = table.sheet.name;
  const byName = new Map<string, TableColumn>();
  for (const column of table.columns) if (!byName.has(column.name)) byName.set(column.name, column);
  for (const column of table.columns) byName.set(column.key, column);
  const faults: ImportFault[] = [];
  const say = (column: TableColumn, message: string, hint: string) =>
    void faults.push({ sheet, row: map.head, column: columnName(column.column), heading: column.text, message, hint });
  const used = new Set<string>();
  const taken = new Set(map.id === undefined ? [] : headingsOf(map.id));
  const inForms = [
    ...map.set.flatMap(({ value }) => headingsOf(value)),
    ...[...map.columns.values()].flatMap(({ form }) => (form === undefined ? [] : headingsOf(form))),
    ...map.skip.keys(),
  ];
  for (const name of inForms) taken.add(name);
  const second = secondTable(table, map, taken);
  if (second !== undefined)
    say(
      second,
      "a second table seems to begin here: the column before it has no heading",
      'give each table a sheet of its own, or name the headings of the other table under "ignore" of the map',
    );
  const own = second === undefined ? table.columns : table.columns.filter(({ column }) => column < second.column);
  const columns = own.flatMap((column): MappedColumn[] => {
    const name = [column.key, column.name].find((one) => map.columns.has(one) && !used.has(one));
    if (name === undefined) {
      const isKnown = [column.key, column.name].some((one) => map.ignore.has(one) || taken.has(one));
      if (!isKnown) say(column, `the heading "${column.key}" is not known`, unknownHint(column.name, map.fields));
      return [];
    }
    used.add(name);
    const said = map.columns.get(name);
    if (said?.to === undefined) {
      if (said !== undefined)
        say(column, `what "${column.key}" means is not settled`, unknownHint(column.name, map.fields));
      return [];
    }
    const { to } = said;
    if (
      to.field.type === "quantity" &&
      said.unit !== undefined &&
      column.unit !== undefined &&
      said.unit !== column.unit
    ) {
      say(
        column,
        `the heading has the unit ${column.unit}, the map ${said.unit}`,
        "correct the map, or take its unit out",
      );
      return [];
    }
    return [{ ...column, to, map: said }];
  });
  const known = [...byName.keys()];
  for (const name of [...new Set([...map.columns.keys(), ...taken])]) {
    if (used.has(name) || byName.has(name)) continue;
    const near = nearestName(name, known);
    faults.push({
      sheet,
      row: map.head,
      heading: name,
      message: `the heading "${name}" of the map is not in the sheet`,
      hint:
        near === undefined
          ? 'take it out of the map, or say which row holds the headings ("head")'
          : `nearest heading: "${near}"`,
    });
  }
  return { columns, byName, faults };
}

/**
 * Where another table begins beside the one of the map: behind an empty column, where the map gives no heading a meaning. One
 * whose headings are all ignored is settled.
 */
function secondTable(table: Table, map: SheetMap, taken: ReadonlySet<string>): TableColumn | undefined {
  const first = behindGap(table);
  if (first === undefined) return undefined;
  const behind = table.columns.filter(({ column }) => column >= first.column);
  const names = behind.map(({ key, name }) => [key, name]);
  const isUsed = names.some((one) => one.some((name) => taken.has(name) || map.columns.get(name)?.to !== undefined));
  const isSettled = names.every((one) => one.some((name) => map.ignore.has(name)));
  return isUsed || isSettled ? undefined : first;
}

/** What to do with a heading that nobody knows. */
export function unknownHint(name: string, fields: ReadonlyMap<string, Field>): string {
  const near = nearestField(name, fields);
  return `${near === undefined ? "" : `nearest field: "${near}"; `}say in the map where it goes ("to"), or name it under "ignore"`;
}

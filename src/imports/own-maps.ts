import type { JsonObject } from "../model/json.ts";
import type { Kind } from "../model/kind.ts";
import type { Workbook } from "../sheets/cells.ts";
import { tableOf } from "./table.ts";
import { layoutOf, splitSign, type SheetLayout } from "./layout.ts";

/** The kind whose sheets these are, as we write them: known by the name of the tab of records. */
export function kindOfOwn({ sheets, form }: Workbook, kinds: ReadonlyMap<string, Kind>): Kind | undefined {
  if (form !== "xlsx") return undefined;
  const found = sheets.flatMap(({ name }) => kinds.get(name) ?? []).filter(({ derived }) => !derived);
  return found.length === 1 ? found[0] : undefined;
}

/** The maps of the sheets we write ourselves: what is written out is read back by them, whatever columns were taken out. */
export function ownMaps(kind: Kind, { sheets }: Workbook): readonly JsonObject[] {
  return layoutOf(kind).flatMap((layout) => {
    const sheet = sheets.find(({ name }) => name === layout.name);
    if (sheet === undefined) return [];
    const headings = new Set(tableOf(sheet, 1).columns.map(({ name }) => name));
    return [
      mapOf(kind, {
        ...layout,
        columns: layout.columns.filter(({ path, heading }) => path === "id" || headings.has(heading)),
      }),
    ];
  });
}

function mapOf(kind: Kind, { name, list, columns }: SheetLayout): JsonObject {
  const id = columns.find(({ path }) => path === "id");
  return {
    kind: kind.name,
    sheet: name,
    head: 1,
    id: `{${id?.heading ?? "Id"}}`,
    ...(list !== undefined && { group: [list] }),
    decimal: ".",
    dates: "year-month-day",
    columns: Object.fromEntries(
      columns.flatMap(({ heading, path }) =>
        path === "id"
          ? []
          : [[heading, { to: path, ...(path.endsWith("[]") && !isRowName(columns, path) && { split: splitSign }) }]],
      ),
    ),
  };
}

/** Whether `rows[]` names a row of a list of rows. */
const isRowName = (columns: SheetLayout["columns"], path: string) =>
  columns.find((column) => column.path === path)?.field.type === "list";

import type { Cell, Row, Sheet, SheetToWrite, Workbook } from "../../src/sheets/cells.ts";

/** A cell as the reader gives it: a text, or parts of a cell. */
export type Given = string | Partial<Cell>;

/** A cell that holds a number: as it is shown, with its figure. */
export const number = (shown: string, format = "General"): Partial<Cell> => ({
  type: "number",
  shown,
  raw: shown,
  format,
  figure: shown.replaceAll(",", "").replace(/%$/, " %"),
});

/** A true date cell. */
export const day = (iso: string, shown = iso): Partial<Cell> => ({
  type: "date",
  shown,
  raw: "46000",
  format: "dd.mm.yyyy",
  day: iso,
});

export function sheet(name: string, rows: readonly (readonly Given[])[], firstRow = 1): Sheet {
  return {
    name,
    hidden: false,
    merges: [],
    hiddenRows: [],
    hiddenColumns: [],
    rows: rows.flatMap((cells, at): Row[] => {
      const row = firstRow + at;
      const made = cells.flatMap((given, column): Cell[] =>
        given === ""
          ? []
          : [
              {
                row,
                column: column + 1,
                type: "text",
                shown: typeof given === "string" ? given : null,
                raw: typeof given === "string" ? given : null,
                format: "@",
                ...(typeof given === "string" ? {} : given),
              },
            ],
      );
      return made.length === 0 ? [] : [{ row, hidden: false, cells: made }];
    }),
  };
}

export const workbook = (...sheets: readonly Sheet[]): Workbook => ({ form: "xlsx", sheets, leftOut: [] });
export const csv = (name: string, rows: readonly (readonly Given[])[]): Workbook => ({
  form: "csv",
  sheets: [sheet(name, rows)],
  leftOut: [],
});

/** What a spreadsheet holds of sheets that were written: all cells are text. */
export const asWritten = (sheets: readonly SheetToWrite[]): Workbook =>
  workbook(
    ...sheets.map(({ name, columns, rows }) =>
      sheet(name, [
        columns.map(({ heading }) => heading),
        ...rows.map((cells) => cells.map((cell) => (typeof cell === "string" ? cell : cell.text))),
      ]),
    ),
  );

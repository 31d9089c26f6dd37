import type { Cell, CellType, Range, Row, Sheet, Workbook } from "./cells.ts";

/**
 * Cells of a sheet in one table of whole numbers, and the texts of a workbook in one list: a fraction of the memory of as
 * many objects, and handed from thread to thread without copying.
 */
export interface PackedSheet {
  readonly name: string;
  readonly hidden: boolean;
  readonly merges: readonly Range[];
  readonly hiddenColumns: readonly number[];
  /** For each row: its number, its line (0: none), whether it is hidden, the first of its cells and how many. */
  readonly rows: Uint32Array<ArrayBuffer>;
  /** For each cell: its column, its type, and places of texts. */
  readonly cells: Uint32Array<ArrayBuffer>;
}

export interface PackedWorkbook {
  readonly form: Workbook["form"];
  readonly sheets: readonly PackedSheet[];
  readonly leftOut: readonly string[];
  readonly texts: readonly string[];
}

export const rowWidth = 5;
const types: readonly CellType[] = ["text", "number", "date", "boolean", "error", "covered"];
const absent = 0;

/** A list of texts, each held once; place 0 stands for none. */
export interface TextList {
  readonly texts: string[];
  place(text: string | null | undefined): number;
}

export function newTextList(): TextList {
  const texts = [""];
  const places = new Map<string, number>();
  return {
    texts,
    place(text) {
      if (text === null || text === undefined) return absent;
      let at = places.get(text);
      if (at === undefined) {
        at = texts.push(text) - 1;
        places.set(text, at);
      }
      return at;
    },
  };
}

/** What a cell holds, wherever it stands. Every field is there, so that a million of them are made fast. */
export type Content = {
  readonly [Field in keyof Required<Omit<Cell, "row" | "column">>]: Cell[Field] | undefined;
} & Pick<Cell, "type" | "shown" | "raw" | "format">;

/** A cell of text that says nothing, to be filled. */
export const plainContent: Content = {
  type: "text",
  shown: null,
  raw: null,
  format: "General",
  figure: undefined,
  day: undefined,
  formula: undefined,
  fault: undefined,
  note: undefined,
};

/** A cell as numbers; `cellFrom` is its inverse. */
export const packedCell = (column: number, cell: Content, texts: TextList): readonly number[] => [
  column,
  types.indexOf(cell.type),
  texts.place(cell.shown),
  texts.place(cell.raw),
  texts.place(cell.format),
  texts.place(cell.figure),
  texts.place(cell.day),
  texts.place(cell.formula),
  texts.place(cell.fault),
  texts.place(cell.note),
];
export const cellWidth = 10;

export function cellFrom(row: number, packed: Uint32Array, at: number, texts: readonly string[]): Cell {
  const number = (offset: number) => packed[at + offset] ?? absent;
  const text = (offset: number) => (number(offset) === absent ? null : (texts[number(offset)] ?? null));
  const own = {
    row,
    column: number(0),
    type: types[number(1)] ?? "text",
    shown: text(2),
    raw: text(3),
    format: text(4) ?? "",
  };
  // Most cells hold no more.
  if (number(5) + number(6) + number(7) + number(8) + number(9) === absent) return own;
  const [figure, day, formula, fault, note] = [text(5), text(6), text(7), text(8), text(9)];
  return {
    ...own,
    ...(typeof figure === "string" && { figure }),
    ...(typeof day === "string" && { day }),
    ...(typeof formula === "string" && { formula }),
    ...(typeof fault === "string" && { fault }),
    ...(typeof note === "string" && { note }),
  };
}

export function unpack({ form, sheets, leftOut, texts }: PackedWorkbook): Workbook {
  return { form, leftOut, sheets: sheets.map((sheet) => unpackSheet(sheet, texts)) };
}

function unpackSheet({ name, hidden, merges, hiddenColumns, ...packed }: PackedSheet, texts: readonly string[]): Sheet {
  const rows: Row[] = [];
  for (let at = 0; at < packed.rows.length; at += rowWidth) {
    const [row = 0, line = 0, isHidden = 0, first = 0, count = 0] = packed.rows.subarray(at, at + rowWidth);
    rows.push({
      row,
      ...(line > 0 && { line }),
      hidden: isHidden === 1,
      // Made when they are read: a large sheet would take gigabytes as objects.
      get cells() {
        return Array.from({ length: count }, (_, index) =>
          cellFrom(row, packed.cells, (first + index) * cellWidth, texts),
        );
      },
    });
  }
  const hiddenRows = rows.filter((row) => row.hidden).map(({ row }) => row);
  return { name, hidden, rows, merges, hiddenRows, hiddenColumns };
}

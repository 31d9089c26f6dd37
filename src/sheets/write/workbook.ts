import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx } from "hucre/xlsx";
import type { CellStyle, DataValidation, WriteSheet } from "hucre/xlsx";
import { ProgramError } from "../../model/program-error.ts";
import { columnName, lastRow } from "../addresses.ts";
import type { ColumnToWrite, SheetFault, SheetToWrite } from "../cells.ts";
import { textOf, unstorableIn } from "./storable.ts";

/** The name of the hidden sheet with the lists to choose from. */
export const choicesSheet = "Choices";

/** Every cell is text: what is typed into it stays as it is typed, and nothing in it is calculated. */
const asText: CellStyle = { numFmt: "@", alignment: { vertical: "top", wrapText: true } };
const asHeading: CellStyle = {
  ...asText,
  font: { bold: true },
  fill: { type: "pattern", pattern: "solid", fgColor: { rgb: "D9E1EA" } },
};
const asKnown: CellStyle = { ...asText, fill: { type: "pattern", pattern: "solid", fgColor: { rgb: "EEEEEE" } } };

/** The files tell no day of their own: the same sheets give the same bytes. */
const noDay = new Date(Date.UTC(2000, 0, 1));

/**
 * Writes a workbook (.xlsx) of texts to fill in: headings with notes, which stay in sight, lists to choose from, and
 * cells that are known already shaded. The same sheets give the same bytes, whatever the clock, the time zone and the
 * version of Node. A text that cannot be stored is a fault, and nothing is written.
 */
export async function writeWorkbook(sheets: readonly SheetToWrite[]): Promise<Uint8Array | SheetFault> {
  const lists = listsOf(sheets);
  const own = lists.length === 0 ? [] : [{ name: choicesSheet, columns: [], rows: [] }];
  const fault = unstorableIn([...sheets, ...own]);
  if (fault !== undefined) return fault;
  const made = await writeXlsx({
    properties: { created: noDay, modified: noDay },
    sheets: [...sheets.map((sheet) => laidOut(sheet, lists)), ...(lists.length === 0 ? [] : [listSheet(lists)])],
  });
  const parts = unzipSync(made);
  for (const [part, bytes] of Object.entries(parts))
    if (/^xl\/worksheets\/[^/]+\.xml$/.test(part)) parts[part] = strToU8(withTextColumns(strFromU8(bytes)));
  // What the platform packs differs from one to the next; this packs the same everywhere. Days of archives are local.
  return zipSync(parts, { level: 6, mtime: new Date(1980, 0, 1) });
}

/**
 * The library writes the form of cells, and none of columns: `8.0` typed into a row further down would become the number
 * 8. The columns get the form of the blank row that ends every sheet.
 */
function withTextColumns(part: string): string {
  const form = /<c r="A\d+" s="(\d+)"\/>/.exec(part.slice(part.lastIndexOf("<row ")))?.[1];
  if (form === undefined) throw new ProgramError("a sheet was written without a blank row at its end");
  return part.replaceAll("<col ", `<col style="${form}" `);
}

type List = readonly string[];

/** Each list once. */
function listsOf(sheets: readonly SheetToWrite[]): readonly List[] {
  const lists = new Map<string, List>();
  for (const { columns } of sheets)
    for (const { choices = [] } of columns) if (choices.length > 0) lists.set(JSON.stringify(choices), choices);
  return [...lists.values()];
}

function listSheet(lists: readonly List[]): WriteSheet {
  const longest = Math.max(...lists.map((list) => list.length));
  const rows = Array.from({ length: longest }, (_, row) => lists.map((list) => stored(list[row] ?? "") ?? null));
  rows.push(lists.map(() => null));
  return { name: choicesSheet, rows, columns: lists.map(() => ({ style: asText })), hidden: true };
}

function laidOut({ name, columns, rows }: SheetToWrite, lists: readonly List[]): WriteSheet {
  const cells: NonNullable<WriteSheet["cells"]> = new Map();
  for (const [column, { heading, note }] of columns.entries())
    cells.set(`0,${column}`, {
      value: stored(heading) ?? "",
      type: "string",
      style: asHeading,
      ...(note !== undefined && note !== "" && { comment: { author: "", text: stored(note) ?? "" } }),
    });
  for (const [row, line] of rows.entries())
    for (const [column, cell] of line.entries()) {
      if (typeof cell === "string" || cell.known !== true) continue;
      cells.set(`${row + 1},${column}`, { value: stored(cell.text) ?? "", type: "string", style: asKnown });
    }
  const texts = rows.map((line) => line.map((cell) => stored(textOf(cell)) ?? null));
  return {
    name,
    columns: columns.map((column, index) => ({ width: widthOf(column, index, rows), style: asText })),
    rows: [columns.map(({ heading }) => stored(heading) ?? null), ...texts, columns.map(() => null)],
    cells,
    freezePane: { rows: 1 },
    dataValidations: columns.flatMap((column, index) => validation(column, index, lists)),
  };
}

/** A choice warns and does not forbid: the import says what is wrong, and a sheet may hold what is not known yet. */
function validation({ choices = [] }: ColumnToWrite, index: number, lists: readonly List[]): readonly DataValidation[] {
  if (choices.length === 0) return [];
  const key = JSON.stringify(choices);
  const list = columnName(lists.findIndex((one) => JSON.stringify(one) === key) + 1);
  const column = columnName(index + 1);
  return [
    {
      type: "list",
      range: `${column}2:${column}${lastRow}`,
      formula1: `${choicesSheet}!$${list}$1:$${list}$${choices.length}`,
      allowBlank: true,
      showErrorMessage: true,
      errorStyle: "warning",
      errorTitle: "Not in the list",
      errorMessage: "This is none of the choices. Keep it?",
    },
  ];
}

const narrowest = 8;
const widest = 60;

/** Wide enough for the longest line of a column, within reason. */
function widthOf({ heading, width }: ColumnToWrite, index: number, rows: SheetToWrite["rows"]): number {
  if (width !== undefined) return width;
  let longest = heading.length + 2;
  for (const line of rows) {
    for (const part of textOf(line[index]).split("\n")) longest = Math.max(longest, part.length + 1);
  }
  return Math.min(Math.max(longest, narrowest), widest);
}

/** A text as the file holds it; an empty one is a blank cell. What looks like an escaped sign is escaped once more. */
const stored = (text: string): string | undefined =>
  text === "" ? undefined : text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_");

import { cellAt, cellName, lastColumn, lastRow, rangeAt } from "../addresses.ts";
import type { Range } from "../cells.ts";
import { tooMuch, type SheetBudget } from "../limits.ts";
import type { PackedSheet, TextList } from "../pack.ts";
import { newSheetPacker } from "../packer.ts";
import { damaged } from "../unreadable.ts";
import type { CellReader } from "./content.ts";
import { gatherText } from "./strings.ts";
import { styleAt, type Style } from "./styles.ts";
import { isOn, readPart, type Attributes, type Handler } from "./xml.ts";
import type { Archive } from "./zip.ts";

/** What the reading of every sheet of a workbook shares. */
export interface SheetReading {
  readonly archive: Archive;
  readonly budget: SheetBudget;
  readonly texts: TextList;
  readonly styles: readonly Style[];
  readonly read: CellReader;
}

/** Reads one sheet, cell after cell as they stand in the file. */
export async function readSheet(
  part: string,
  { name, hidden }: { readonly name: string; readonly hidden: boolean },
  reading: SheetReading,
): Promise<PackedSheet> {
  const { archive, budget, texts } = reading;
  const packer = newSheetPacker(texts, budget);
  const merges: Range[] = [];
  const hiddenColumns: [number, number][] = [];
  const arrays = openArrays(budget);
  const inline = gatherText(budget);
  const placeOf = (row: number, column: number) => `sheet ${name}, cell ${cellName(row, column)}`;

  let inData = false;
  let row = 0;
  let column = 0;
  let cell: Attributes | undefined;
  let value: string | null = null;
  let formula: string | undefined;
  let ownText = false;
  let within: "v" | "f" | "is" | undefined;

  const beginRow = ({ r, ht, hidden: isHidden }: Attributes) => {
    const next = r === undefined ? row + 1 : Number(r);
    if (!Number.isInteger(next) || next <= row || next > lastRow)
      throw damaged(`a row has the number ${(r ?? String(next)).slice(0, 20)} after row ${row}`, `sheet ${name}`);
    budget.spend("rows");
    row = next;
    column = 0;
    packer.row(row, isOn(isHidden) || ht === "0");
  };

  const beginCell = (attributes: Attributes) => {
    const { r } = attributes;
    const at = r === undefined ? { row, column: column + 1 } : cellAt(r);
    if (at?.row !== row || at.column <= column || at.column > lastColumn)
      throw damaged(`a cell has the address ${(r ?? "").slice(0, 20)} out of order in row ${row}`, `sheet ${name}`);
    column = at.column;
    [cell, value, formula, ownText] = [attributes, null, undefined, false];
  };

  const endCell = (attributes: Attributes) => {
    const place = placeOf(row, column);
    const text = ownText ? inline.taken(place) : null;
    if (value !== null) budget.text(value.length, place);
    const within = arrays.holds(row, column);
    const content = reading.read(
      {
        type: attributes["t"] ?? "n",
        value,
        inline: text,
        formula: formula ?? (within ? "" : undefined),
        style: styleAt(reading.styles, attributes["s"], place),
      },
      place,
    );
    if (content !== undefined) packer.cell(column, content);
    cell = undefined;
  };

  const openInCell = (element: string, attributes: Attributes) => {
    if (within === "is") inline.open(element);
    else if (element === "v") [within, value] = ["v", ""];
    else if (element === "f") {
      [within, formula] = ["f", ""];
      if (attributes["t"] === "array" || attributes["t"] === "dataTable") arrays.begin(attributes["ref"], row);
    } else if (element === "is") [within, ownText] = ["is", true];
  };

  const handler: Handler = {
    open(element, attributes) {
      if (cell !== undefined) openInCell(element, attributes);
      else if (inData) {
        if (element === "row") beginRow(attributes);
        else if (element === "c" && row > 0) beginCell(attributes);
      } else if (element === "sheetData") inData = true;
      else if (element === "col" && (isOn(attributes["hidden"]) || attributes["width"] === "0")) {
        budget.spend("ranges");
        hiddenColumns.push([Number(attributes["min"]), Number(attributes["max"])]);
      } else if (element === "mergeCell") {
        budget.spend("ranges");
        const range = rangeAt(attributes["ref"] ?? "");
        if (range === undefined) throw damaged("a merged range has no address that can be", `sheet ${name}`);
        merges.push(range);
      }
    },
    text(text) {
      if (within === "v" && value !== null && value.length <= budget.limits.text) value += text;
      else if (within === "f" && formula !== undefined && formula.length <= budget.limits.text) formula += text;
      else if (within === "is") inline.text(text);
    },
    close(element) {
      if (element === within) within = undefined;
      else if (within === "is") inline.close(element);
      else if (element === "c" && cell !== undefined) endCell(cell);
      else if (element === "sheetData") inData = false;
    },
  };
  await readPart(archive, part, budget, handler);
  return packer.done({ name, hidden, merges, hiddenColumns });
}

/** Ranges that one formula fills; the cells in them say nothing of it. */
function openArrays(budget: SheetBudget) {
  const most = 256;
  let open: Range[] = [];
  return {
    begin(ref: string | undefined, row: number): void {
      const range = rangeAt(ref ?? "");
      if (range === undefined || !range.text.includes(":")) return;
      budget.spend("ranges");
      open = [...open.filter(({ rows: [, last] }) => last >= row), range];
      if (open.length > most)
        throw tooMuch(`has more than ${most} formulas that fill the same rows`, "save its values without formulas");
    },
    holds: (row: number, column: number): boolean =>
      open.some(
        ({ rows, columns }) => row >= rows[0] && row <= rows[1] && column >= columns[0] && column <= columns[1],
      ),
  };
}

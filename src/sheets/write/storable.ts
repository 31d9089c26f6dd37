import { cellName } from "../addresses.ts";
import type { CellToWrite, SheetFault, SheetToWrite } from "../cells.ts";

const longestText = 32_767;
const longestName = 31;

/** Signs that no file of XML and no text in UTF-8 can hold. */
const unstorable = /[\ufffe\uffff]|\p{Surrogate}/u;

/** A text to write and where it goes. */
export interface Placed {
  readonly text: string;
  readonly place: string;
}

/** The texts of the cells of a sheet, headings first. */
export function* cellTexts({ name, columns, rows }: SheetToWrite): Generator<Placed> {
  const placed = (text: string, row: number, column: number): Placed => ({
    text,
    place: `sheet ${name}, cell ${cellName(row, column + 1)}`,
  });
  for (const [column, { heading }] of columns.entries()) yield placed(heading, 1, column);
  for (const [row, cells] of rows.entries())
    for (const [column, cell] of cells.entries()) yield placed(textOf(cell), row + 2, column);
}

/** The text of a cell to write; of one that is not there, none. */
export const textOf = (cell: string | CellToWrite | undefined): string =>
  typeof cell === "string" ? cell : (cell?.text ?? "");

function* asideTexts({ name, columns }: SheetToWrite): Generator<Placed> {
  for (const { heading, note = "", choices = [] } of columns) {
    const place = `sheet ${name}, column ${heading}`;
    yield { text: note, place: `${place}, its note` };
    for (const text of choices) yield { text, place: `${place}, its choices` };
  }
}

/** The first thing that a spreadsheet cannot hold, or undefined. */
export function unstorableIn(sheets: readonly SheetToWrite[]): SheetFault | undefined {
  const names = new Set<string>();
  for (const sheet of sheets) {
    const fault = nameFault(sheet.name, names) ?? sizeFault(sheet) ?? textFault(sheet);
    if (fault !== undefined) return fault;
    names.add(sheet.name.toLowerCase());
  }
  return sheets.length === 0
    ? { message: "there is no sheet to write", why: "a workbook has one at least", hint: "name what is to be written" }
    : undefined;
}

function nameFault(name: string, taken: ReadonlySet<string>): SheetFault | undefined {
  const message = `a sheet cannot bear the name “${name}”`;
  const hint = "choose another name";
  if (taken.has(name.toLowerCase())) return { message, why: "another sheet of the workbook bears it", hint };
  if (name.trim() === "" || name.length > longestName)
    return { message, why: `a name has 1 to ${longestName} signs`, hint };
  if (/[[\]:*?/\\\p{Cc}]|^'|'$/u.test(name) || unstorable.test(name))
    return { message, why: "it holds a sign that names of sheets do not hold", hint };
  if (/^history$/i.test(name)) return { message, why: "spreadsheet programs keep it for themselves", hint };
  return undefined;
}

function sizeFault({ name, columns, rows }: SheetToWrite): SheetFault | undefined {
  const wide = rows.findIndex((cells) => cells.length > columns.length);
  const hint = "write it as several sheets";
  const message = `sheet ${name} is larger than a spreadsheet`;
  if (rows.length >= 1_048_576) return { message, why: "it has more than 1 048 575 rows below its headings", hint };
  if (columns.length > 16_384) return { message, why: "it has more than 16 384 columns", hint };
  if (wide < 0) return undefined;
  return {
    message: `sheet ${name} has cells without a heading`,
    why: `row ${wide + 2} has more cells than there are columns`,
    hint: "name every column",
  };
}

function textFault(sheet: SheetToWrite): SheetFault | undefined {
  for (const { text, place } of [...asideTexts(sheet), ...cellTexts(sheet)]) {
    const fault = { message: "a text cannot be stored in a spreadsheet", place };
    if (text.length > longestText)
      return { ...fault, why: `it has ${text.length} signs, and a cell holds ${longestText}`, hint: "shorten it" };
    if (unstorable.test(text))
      return { ...fault, why: "it holds half of a sign, or one that is none in Unicode", hint: "write the text anew" };
  }
  return undefined;
}

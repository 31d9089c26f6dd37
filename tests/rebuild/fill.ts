import { readFileSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { isSheetFault, type SheetToWrite } from "../../src/sheets/cells.ts";
import { readSheetFile } from "../../src/sheets/read.ts";
import { writeWorkbook } from "../../src/sheets/write/workbook.ts";

/** What is filled into the rows of a tab that hold anything, by heading. */
export type Filling = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Fills blank cells of a workbook that `sheet` wrote, as a person does in a spreadsheet; gives how many were filled. */
export async function fillIn(file: string, filling: Filling): Promise<number> {
  const book = await readSheetFile(readFileSync(file), basename(file), {});
  if (isSheetFault(book)) throw new Error(book.message);
  let filled = 0;
  const sheets = book.sheets.flatMap(({ name, hidden, rows }): SheetToWrite[] => {
    const [head, ...below] = rows;
    if (hidden || head === undefined) return [];
    const headings = head.cells.map(({ column, shown }) => ({ column, heading: shown ?? "" }));
    return [
      {
        name,
        columns: headings.map(({ heading }) => ({ heading })),
        rows: below.map(({ cells }) =>
          headings.map(({ column, heading }) => {
            const own = cells.find((cell) => cell.column === column)?.shown ?? "";
            const given = filling[name]?.[heading];
            if (own !== "" || given === undefined) return own;
            filled++;
            return given;
          }),
        ),
      },
    ];
  });
  const made = await writeWorkbook(sheets);
  if (isSheetFault(made)) throw new Error(made.message);
  writeFileSync(file, made);
  return filled;
}

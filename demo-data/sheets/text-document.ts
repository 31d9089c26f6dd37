import { article, heading, paragraph } from "../paper/blocks.ts";
import { newSheet, withRoom, type Paper, type Sheet } from "../paper/paper.ts";
import { columns, table } from "../paper/tables.ts";

/** A part of a document: a heading, and under it lines, articles, a table. */
export interface TextPart {
  readonly title: string;
  /** Whether it begins a new page. */
  readonly page?: boolean;
  readonly lines?: readonly string[];
  readonly articles?: readonly (readonly [string, string])[];
  readonly table?: {
    readonly columns: readonly string[];
    readonly shares?: readonly number[];
    readonly rows: readonly (readonly string[])[];
  };
}

/** A document in words; the sheet it ends on is given back. */
export function drawText(paper: Paper, parts: readonly TextPart[]): Sheet {
  let sheet = newSheet(paper);
  for (const part of parts) {
    sheet = part.page === true ? newSheet(paper) : withRoom(sheet, 60);
    heading(sheet, part.title);
    for (const line of part.lines ?? []) {
      sheet = withRoom(sheet, 40);
      paragraph(sheet, line, 9.5);
    }
    for (const [title, words] of part.articles ?? []) {
      sheet = withRoom(sheet, 40);
      article(sheet, title, words);
    }
    if (part.table !== undefined)
      sheet = table(sheet, columns(part.table.columns, part.table.shares), part.table.rows, 8.5);
  }
  return sheet;
}

import type { Cell, Column, Row, TableBlock } from "../blocks.ts";
import { inFives } from "./record-blocks.ts";

/** Heads of columns with their widths; a head that ends in "#" is a column of numbers. */
export type Heads = Readonly<Record<string, number>>;

/** A cell of plain words. */
export const wordsCell = (value: string): Cell => ({ type: "text", text: [value] });

/** A table of the book about itself: wide, in groups of five rows. */
export function plainTable(number: string, title: string, heads: Heads, rows: readonly Row[]): TableBlock {
  const columns = Object.entries(heads).map(([head, width]): Column => {
    const isNumber = head.endsWith("#");
    return { head: isNumber ? head.slice(0, -1) : head, align: isNumber ? "number" : "left", width };
  });
  return { type: "table", number, title, wide: true, columns, groups: inFives(rows) };
}

import { cellName } from "./addresses.ts";
import type { Cell, Range } from "./cells.ts";
import type { SheetBudget } from "./limits.ts";
import { newNumberList } from "./number-list.ts";
import {
  cellFrom,
  cellWidth,
  packedCell,
  plainContent,
  type Content,
  rowWidth,
  type PackedSheet,
  type TextList,
} from "./pack.ts";

type Table = Pick<PackedSheet, "rows" | "cells">;

/**
 * Rows with the cells that merged ranges cover put in, up to the last column that is used. The first cell of a range
 * keeps its value and gets a note; of the others none has a value that anybody sees.
 */
export function withCovered(
  table: Table,
  merges: readonly Range[],
  lastUsed: number,
  list: TextList,
  budget: SheetBudget,
): Table {
  const rows = newNumberList();
  const cells = newNumberList();
  const byStart = [...merges].sort((a, b) => a.rows[0] - b.rows[0]);
  let open: Range[] = [];
  let next = 0;
  let total = 0;
  for (let at = 0; at < table.rows.length; at += rowWidth) {
    const [row = 0, line = 0, hidden = 0, first = 0, count = 0] = table.rows.subarray(at, at + rowWidth);
    for (let range = byStart[next]; range !== undefined && range.rows[0] <= row; range = byStart[++next])
      open.push(range);
    open = open.filter(({ rows: [, last] }) => last >= row);
    let held: readonly (readonly number[])[];
    const own = (index: number) => table.cells.subarray((first + index) * cellWidth, (first + index + 1) * cellWidth);
    if (open.length === 0) held = Array.from({ length: count }, (_, index) => [...own(index)]);
    else {
      const byColumn = new Map<number, readonly number[]>();
      for (let index = 0; index < count; index++) byColumn.set(own(index)[0] ?? 0, [...own(index)]);
      for (const range of open) {
        const [from, to] = range.columns;
        budget.spend("cells");
        for (let column = from; column <= Math.min(to, lastUsed); column++) {
          const packed = byColumn.get(column);
          budget.spend("cells");
          const cell = packed && cellFrom(row, Uint32Array.from(packed), 0, list.texts);
          const seen = inRange(range, row, column, cell);
          if (seen !== undefined) byColumn.set(column, packedCell(column, seen, list));
        }
      }
      held = [...byColumn].sort(([a], [b]) => a - b).map(([, packed]) => packed);
    }
    rows.push([row, line, hidden, total, held.length]);
    for (const packed of held) cells.push(packed);
    total += held.length;
  }
  return { rows: rows.done(), cells: cells.done() };
}

/** What a cell of a merged range is; undefined for a first cell without value, which is blank. */
function inRange(range: Range, row: number, column: number, cell: Cell | undefined): Content | undefined {
  const [top, left] = [range.rows[0], range.columns[0]];
  if (row === top && column === left) {
    if (cell === undefined) return undefined;
    const note = `stands for the merged range ${range.text}, and is read for this cell alone`;
    return { ...plainContent, ...cell, note: cell.note === undefined ? note : `${cell.note}; ${note}` };
  }
  const hides = cell === undefined ? "" : ", and hides a value of its own";
  return {
    ...plainContent,
    type: "covered",
    raw: cell?.raw ?? null,
    format: cell?.format ?? "General",
    fault:
      `is part of the merged range ${range.text}, whose value stands in ${cellName(top, left)}${hides}: ` +
      "undo the merging and write the value in each cell it holds for",
  };
}

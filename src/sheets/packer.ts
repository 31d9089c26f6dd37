import { lastColumn } from "./addresses.ts";
import type { Range } from "./cells.ts";
import type { SheetBudget } from "./limits.ts";
import { withCovered } from "./merged.ts";
import { newNumberList } from "./number-list.ts";
import { packedCell, type Content, type PackedSheet, type TextList } from "./pack.ts";

/** Takes the rows and cells of one sheet in their order. */
export interface SheetPacker {
  row(row: number, hidden: boolean, line?: number): void;
  /** A cell of the row begun last, right of those before. */
  cell(column: number, content: Content): void;
  done(sheet: {
    readonly name: string;
    readonly hidden: boolean;
    readonly merges: readonly Range[];
    /** From and to, as they stand in the file. */
    readonly hiddenColumns: readonly (readonly [first: number, last: number])[];
  }): PackedSheet;
}

export function newSheetPacker(texts: TextList, budget: SheetBudget): SheetPacker {
  const rows = newNumberList();
  const cells = newNumberList();
  let begun: { row: number; hidden: boolean; line: number; count: number } | undefined;
  let count = 0;
  let lastUsed = 0;
  const endRow = () => {
    if (begun !== undefined && begun.count > 0)
      rows.push([begun.row, begun.line, Number(begun.hidden), count - begun.count, begun.count]);
    begun = undefined;
  };
  return {
    row(row, hidden, line = 0) {
      endRow();
      begun = { row, hidden, line, count: 0 };
    },
    cell(column, content) {
      budget.spend("cells");
      budget.spend("signs", (content.raw?.length ?? 0) + (content.formula?.length ?? 0));
      cells.push(packedCell(column, content, texts));
      count++;
      if (begun !== undefined) begun.count++;
      lastUsed = Math.max(lastUsed, column);
    },
    done({ name, hidden, merges, hiddenColumns }) {
      endRow();
      const own = { rows: rows.done(), cells: cells.done() };
      const table = merges.length === 0 ? own : withCovered(own, merges, lastUsed, texts, budget);
      return { name, hidden, merges, hiddenColumns: upTo(lastUsed, hiddenColumns), ...table };
    },
  };
}

function upTo(last: number, spans: readonly (readonly [number, number])[]): readonly number[] {
  const columns = new Set<number>();
  for (const [from, to] of spans)
    for (let column = Math.max(1, from); column <= Math.min(to, last, lastColumn); column++) columns.add(column);
  return [...columns].sort((a, b) => a - b);
}

import {
  black,
  continued,
  grey,
  height,
  left,
  newSheet,
  right,
  rule,
  widthOf,
  wrap,
  write,
  type Sheet,
} from "./paper.ts";

export interface Column {
  readonly title: string;
  /** Share of the width. */
  readonly share: number;
  readonly align?: "right";
}

interface Grid {
  readonly columns: readonly Column[];
  readonly widths: readonly number[];
  readonly starts: readonly number[];
  readonly size: number;
}

function gridOf(columns: readonly Column[], size: number): Grid {
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  const widths = columns.map(({ share }) => ((right - left) * share) / whole);
  const starts = widths.map((_, index) => left + widths.slice(0, index).reduce((sum, one) => sum + one, 0));
  return { columns, widths, starts, size };
}

function cellsOf({ paper }: Sheet, { columns, widths, size }: Grid, cells: readonly string[], bold: boolean) {
  const font = bold ? paper.bold : paper.regular;
  const lines = columns.map((_, index) => wrap(font, cells[index] ?? "", size, (widths[index] ?? 0) - 6));
  return { font, lines, deep: Math.max(...lines.map((one) => one.length)) * size * 1.28 + 5 };
}

function row(sheet: Sheet, grid: Grid, cells: readonly string[], bold: boolean): void {
  const { columns, widths, starts, size } = grid;
  const { font, lines, deep } = cellsOf(sheet, grid, cells, bold);
  lines.forEach((wrapped, index) => {
    wrapped.forEach((text, down) => {
      const start = (starts[index] ?? left) + 3;
      const far = (starts[index] ?? left) + (widths[index] ?? 0) - 3 - widthOf(font, text, size);
      const y = sheet.y + size + 1.5 + down * size * 1.28;
      write(sheet, text, columns[index]?.align === "right" ? far : start, y, { size, bold });
    });
  });
  rule(sheet, left, sheet.y + deep, right, sheet.y + deep, bold ? 0.9 : 0.3, bold ? black : grey);
  for (const x of starts.slice(1)) rule(sheet, x, sheet.y, x, sheet.y + deep, 0.25, grey);
  sheet.y += deep;
}

/** Draws the head, and gives back what closes the frame. */
function begin(sheet: Sheet, grid: Grid): () => void {
  const top = sheet.y;
  rule(sheet, left, top, right, top, 0.9);
  row(
    sheet,
    grid,
    grid.columns.map(({ title }) => title),
    true,
  );
  return () => {
    rule(sheet, left, top, left, sheet.y, 0.5);
    rule(sheet, right, top, right, sheet.y, 0.5);
    rule(sheet, left, sheet.y, right, sheet.y, 0.9);
    sheet.y += 8;
  };
}

/**
 * A ruled table; cells wrap. It goes on over as many sheets as it needs: the one it ends on is given back. `begun`
 * hears of every row before it is drawn.
 */
export function table(
  sheet: Sheet,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  size = 8,
  begun: (index: number) => void = () => undefined,
): Sheet {
  const grid = gridOf(columns, size);
  let now = sheet;
  let close = begin(now, grid);
  rows.forEach((cells, index) => {
    if (now.y + cellsOf(now, grid, cells, false).deep > height - 48) {
      close();
      now = newSheet(now.paper, continued(now.title));
      close = begin(now, grid);
    }
    begun(index);
    row(now, grid, cells, false);
  });
  close();
  return now;
}

/** Columns of equal width, or of the shares given. */
export function columns(titles: readonly string[], shares: readonly number[] = []): readonly Column[] {
  return titles.map((title, index) => ({ title, share: shares[index] ?? 10 }));
}

import type { Display } from "../../model/formula/typeset.ts";
import type { Column, TableBlock } from "../blocks.ts";
import { fullWidth, mm, styles, textWidth, turnedWidth, type TextStyle } from "./measures.ts";
import type { PageSetter } from "./paragraphs.ts";
import { cellWidths, numberParts, type LineCache, type TableType, type Wish } from "./table-cells.ts";
import { setLine } from "./text.ts";

export interface SetColumn {
  readonly column: Column;
  readonly wish: Wish;
  readonly x: number;
  readonly width: number;
}

/** How a table is set: where its columns stand, and on what page. */
export interface TableSetting {
  readonly columns: readonly SetColumn[];
  readonly width: number;
  readonly turned: boolean;
  readonly type: TableType;
  readonly cache: LineCache;
}

const gap = mm(3);
/** A column of words needs more room after a column of numbers. */
const afterNumber = mm(2.4);
const mostSpare = mm(9);
/** Below this width running text in a cell is unpleasant to read. */
const comfortable = mm(24);

const scaled = (style: TextStyle, by: number): TextStyle => ({
  ...style,
  size: style.size * by,
  leading: style.leading * by,
});

const types: readonly TableType[] = [1, 0.9, 0.8, 0.7].map((by) => ({
  body: scaled(styles.table, by),
  head: scaled({ ...styles.head, soft: true }, by),
}));

/** Widths of all columns: as written where they fit, wrapped where not, on a turned page or smaller where needed. */
export function fitTable(setter: PageSetter, table: TableBlock): TableSetting {
  const [normal, ...smaller] = types;
  if (normal === undefined) throw new RangeError("a table needs a type size");
  const first = measure(setter, table, normal);
  const natural = total(first.wishes.map((wish) => wish.natural)) + first.gaps;
  const pleasant =
    total(first.wishes.map((wish) => Math.min(wish.natural, Math.max(wish.least, comfortable)))) + first.gaps;
  if (natural <= textWidth && table.wide !== true) return arranged(table, first, normal, textWidth, false);
  if (pleasant <= fullWidth) return arranged(table, first, normal, fullWidth, false);
  for (const type of [normal, ...smaller]) {
    const measured = type === normal ? first : measure(setter, table, type);
    const least = total(measured.wishes.map((wish) => wish.least)) + measured.gaps;
    if (least <= turnedWidth || type === smaller.at(-1)) return arranged(table, measured, type, turnedWidth, true);
  }
  return arranged(table, first, normal, turnedWidth, true);
}

interface Measured {
  readonly wishes: readonly Wish[];
  readonly gaps: number;
  readonly cache: LineCache;
}

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

const gapAfter = (columns: readonly Column[], index: number) =>
  index >= columns.length - 1
    ? 0
    : gap + (columns[index]?.align === "number" && columns[index + 1]?.align === "left" ? afterNumber : 0);

function measure(setter: PageSetter, table: TableBlock, type: TableType): Measured {
  const cache: LineCache = new Map();
  const wishes = table.columns.map((column, index): Wish => {
    let [natural, least, whole, decimals] = [0, 0, 0, 0];
    for (const group of table.groups)
      for (const row of group) {
        const cell = row.cells[index];
        if (cell === undefined) continue;
        if (cell.type === "number") {
          const [before, after] = numberParts(setter, cell.text, type);
          whole = Math.max(whole, before);
          decimals = Math.max(decimals, after);
        } else {
          const [wanted, needed] = cellWidths(setter, cell, type, cache);
          natural = Math.max(natural, wanted);
          least = Math.max(least, needed);
        }
      }
    const head = headWidths(setter, column, type);
    const figures = whole + decimals;
    return {
      natural: Math.max(natural, figures, head.natural),
      least: Math.max(least, figures, head.least),
      whole,
      decimals,
    };
  });
  return { wishes, gaps: total(table.columns.map((_, index) => gapAfter(table.columns, index))), cache };
}

function headWidths(setter: PageSetter, column: Column, { head }: TableType) {
  const { fonts } = setter;
  const width = (text: string) => fonts.width("sans", head.size, text);
  const words = column.head.split(" ").map(width);
  const unit = column.unit === undefined ? 0 : width(column.unit);
  if (column.symbol !== undefined) {
    const most = Math.max(unit, symbolLine(setter, column.symbol, head).width);
    return { natural: most, least: most };
  }
  return {
    natural: Math.max(Math.min(width(column.head), Math.max(mm(20), ...words)), unit),
    least: Math.max(unit, 0, ...words),
  };
}

function arranged(
  table: TableBlock,
  measured: Measured,
  type: TableType,
  width: number,
  turned: boolean,
): TableSetting {
  const { wishes, gaps, cache } = measured;
  const widths = shareOut(wishes, table.columns, width - gaps);
  const spare = width - gaps - total(widths);
  const extra = table.columns.length < 2 ? 0 : Math.min(spare / (table.columns.length - 1), mostSpare);
  let x = 0;
  const columns = table.columns.flatMap((column, index): readonly SetColumn[] => {
    const wish = wishes[index];
    const own = widths[index];
    if (wish === undefined || own === undefined) return [];
    const set = { column, wish, x, width: own };
    x += own + gapAfter(table.columns, index) + Math.max(extra, 0);
    return [set];
  });
  return { columns, width, turned, type, cache };
}

/** Natural widths if they fit; else the widest columns are narrowed first, by their shares, never below a word. */
function shareOut(wishes: readonly Wish[], columns: readonly Column[], room: number): readonly number[] {
  const natural = wishes.map((wish) => wish.natural);
  if (total(natural) <= room) return natural;
  const least = wishes.map((wish) => wish.least);
  if (total(least) > room) return least.map((width) => (width * room) / total(least));
  const at = (cap: number) =>
    wishes.map((wish, index) => Math.min(wish.natural, Math.max(wish.least, cap * (columns[index]?.width ?? 1))));
  let [low, high] = [0, room];
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (total(at(middle)) > room) high = middle;
    else low = middle;
  }
  return at(low);
}

const symbolLine = (setter: PageSetter, display: Display, head: TextStyle) =>
  setLine(setter, [{ type: "symbol", display }], head);

/** Lines of a column's head, its unit on a line of its own. */
export function headLines(setter: PageSetter, { column, width }: SetColumn, { head }: TableType) {
  const whole = (row: string) => setLine(setter, [{ type: "whole", text: row }], head);
  if (column.symbol !== undefined)
    return [symbolLine(setter, column.symbol, head), ...(column.unit === undefined ? [] : [whole(column.unit)])];
  const words = column.head.split(" ");
  const rows: string[] = [];
  for (const word of words) {
    const longer = rows.length === 0 ? word : `${rows.at(-1) ?? ""} ${word}`;
    if (rows.length > 0 && setter.fonts.width("sans", head.size, longer) <= width + 0.01)
      rows[rows.length - 1] = longer;
    else rows.push(word);
  }
  if (column.unit !== undefined) rows.push(column.unit);
  return rows.filter((row) => row !== "").map(whole);
}

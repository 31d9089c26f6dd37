import type { Row, TableBlock } from "../blocks.ts";
import type { Drawn, Piece } from "./flow.ts";
import { mm, rules, styles, textWidth } from "./measures.ts";
import { baselineIn, drawRule, layNotes, notesBelow, spaced, stack, type PageSetter } from "./paragraphs.ts";
import { setCell, textCell, type SetCell } from "./table-cells.ts";
import { fitTable, headLines, type TableSetting } from "./table-columns.ts";
import { drawLine, setLine, setLines } from "./text.ts";

const rowPad = mm(0.38);
const groupPad = mm(0.9);
/** Groups of more rows than this may be parted. */
const wholeGroup = 5;
/** Lines of a cell on one sheet; a longer row goes on as a further one. */
const mostLines = 40;

/** A table: caption, head, groups of rows between hairlines; the head is repeated where it goes on. */
export function* tablePieces(setter: PageSetter, table: TableBlock): Generator<Piece> {
  const setting = fitTable(setter, table);
  const wide = setting.width > textWidth + 0.01;
  const notes = wide ? undefined : layNotes(setter, table.notes);
  const shared = { wide, turned: setting.turned };
  const caption = captionOf(setter, table, setting, "");
  const again = headOf(setter, setting, captionOf(setter, table, setting, ", continued"));
  yield { ...shared, ...caption, space: mm(3), keep: true, ...(notes !== undefined && { notes }) };
  yield { ...shared, ...headOf(setter, setting, undefined), keep: true };
  const rows = rowsOf(setter, table, setting);
  const closing = closingOf(setting);
  let first = true;
  for (const row of rows) {
    yield { ...shared, ...row, closing, ...(!first && { again }) };
    first = false;
  }
  yield* ending(setter, table, setting, wide);
}

function captionOf(setter: PageSetter, table: TableBlock, setting: TableSetting, continued: string): Drawn {
  const lead = setLine(setter, [{ type: "strong", text: `Table ${table.number}` }, continued], styles.table);
  const title = stack(
    setLines(setter, [table.title], styles.caption, setting.width, lead.width + mm(2)),
    styles.caption,
  );
  return {
    height: title.height + mm(1.2),
    draw(canvas, x, y) {
      drawLine(canvas, lead, x, y + baselineIn(styles.caption));
      title.draw(canvas, x, y);
    },
  };
}

/** Column heads between their rules, bottom aligned; below the caption where one is given. */
function headOf(setter: PageSetter, setting: TableSetting, caption: Drawn | undefined): Drawn {
  const { head } = setting.type;
  const cells = setting.columns.map((column) => {
    const lines = headLines(setter, column, setting.type);
    return { x: column.x, cell: textCell(lines, head, column.column.align === "number" ? column.width : undefined) };
  });
  const tall = Math.max(0, ...cells.map(({ cell }) => cell.height));
  const above = caption?.height ?? 0;
  const height = above + tall + 2 * groupPad;
  return {
    height,
    draw(canvas, x, y) {
      caption?.draw(canvas, x, y);
      drawRule(canvas, x, y + above, setting.width, rules.ends);
      for (const { x: left, cell } of cells) cell.draw(canvas, x + left, y + above + groupPad + tall - cell.height);
      drawRule(canvas, x, y + height, setting.width, rules.head);
    },
  };
}

/** Rule and remark at the foot of a sheet after which the table goes on. */
function closingOf({ width }: TableSetting): Drawn {
  return {
    height: 0,
    draw(canvas, x, y) {
      drawRule(canvas, x, y, width, rules.ends);
      canvas.later((late) => {
        const text = "continued on the next page";
        late.text(x, y + mm(1) + baselineIn(styles.remark), "sans-italic", styles.remark.size, text);
      });
    },
  };
}

function* rowsOf(setter: PageSetter, table: TableBlock, setting: TableSetting): Generator<Piece> {
  const lastGroup = table.groups.length - 1;
  for (const [groupIndex, group] of table.groups.entries()) {
    const last = group.length - 1;
    for (const [index, row] of group.entries()) {
      const whole = group.length <= wholeGroup ? index < last : index === 0 || index === last - 1;
      const edges = { opens: index === 0, hair: index === 0 && groupIndex > 0, closes: index === last };
      const parts = rowParts(setter, row, setting, edges);
      // The last row also keeps the closing rule with it, so nothing is left over.
      const end = groupIndex === lastGroup && index === last;
      yield* parts.map((part, at) => ({ ...part, keep: at < parts.length - 1 ? false : whole || end }));
    }
  }
}

interface Edges {
  readonly opens: boolean;
  readonly hair: boolean;
  readonly closes: boolean;
}

function rowParts(setter: PageSetter, row: Row, setting: TableSetting, edges: Edges): readonly Piece[] {
  const cells = setting.columns.map((column, index): SetCell => {
    const cell = row.cells[index];
    return cell === undefined
      ? { lines: [], height: 0, draw: () => undefined }
      : setCell(setter, cell, column, setting.type, setting.cache);
  });
  const most = Math.max(1, ...cells.map((cell) => cell.lines.length));
  const dests = row.anchor === undefined ? {} : { dests: [setter.destOf(row.anchor)] };
  if (most <= mostLines) return [{ ...rowPiece(cells, setting, edges), ...dests }];
  const count = Math.ceil(most / mostLines);
  return Array.from({ length: count }, (_, part) => {
    const cut = cells.map((cell): SetCell => {
      if (cell.lines.length === 0) return part === 0 ? cell : { lines: [], height: 0, draw: () => undefined };
      return textCell(cell.lines.slice(part * mostLines, (part + 1) * mostLines), setting.type.body, undefined);
    });
    const piece = rowPiece(cut, setting, {
      opens: edges.opens && part === 0,
      hair: edges.hair && part === 0,
      closes: edges.closes && part === count - 1,
    });
    return part === 0 ? { ...piece, ...dests } : piece;
  });
}

function rowPiece(cells: readonly SetCell[], setting: TableSetting, { opens, hair, closes }: Edges): Piece {
  const above = opens ? groupPad : rowPad;
  const tall = Math.max(setting.type.body.leading, ...cells.map((cell) => cell.height));
  const height = above + tall + (closes ? groupPad : rowPad);
  return {
    height,
    draw(canvas, x, y) {
      if (hair) drawRule(canvas, x, y, setting.width, rules.group, true);
      cells.forEach((cell, index) => cell.draw(canvas, x + (setting.columns[index]?.x ?? 0), y + above));
    },
  };
}

/** The closing rule, the remark and, below a wide table, its notes. */
function* ending(setter: PageSetter, table: TableBlock, setting: TableSetting, wide: boolean): Generator<Piece> {
  const flags = { wide, turned: setting.turned };
  yield { ...flags, height: 0, draw: (canvas, x, y) => drawRule(canvas, x, y, setting.width, rules.ends) };
  if (table.remark !== undefined) {
    const remark = stack(setLines(setter, table.remark, styles.remark, wide ? mm(150) : textWidth), styles.remark);
    yield { ...flags, ...remark, space: mm(1.6) };
  }
  if (wide) for (const piece of spaced(notesBelow(setter, table.notes), mm(1.6))) yield { ...piece, ...flags };
}

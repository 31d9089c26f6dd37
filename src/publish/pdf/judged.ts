import type { Block, ChainLink, Mark, Text } from "../blocks.ts";
import type { Canvas } from "./canvas.ts";
import type { Piece } from "./flow.ts";
import { drawLeader, drawMark, markWidth } from "./marks.ts";
import { fullWidth, mm, rules, styles, textWidth, upright, type TextStyle } from "./measures.ts";
import {
  baselineIn,
  blank,
  drawRule,
  landing,
  linePieces,
  pile,
  shifted,
  spaced,
  stack,
  together,
  withNotes,
  type PageSetter,
} from "./paragraphs.ts";
import { setLines, type Line } from "./text.ts";

const markSize = 8.5;

/** All marks of a block begin below each other, so that the verdicts read down one column. */
const columnOf = ({ fonts }: PageSetter, marks: readonly Mark[], width = textWidth) =>
  width - Math.max(0, ...marks.map((mark) => markWidth(fonts, mark, markSize)));

/** Sentences with a leader to their marks. */
export function judgedPieces(setter: PageSetter, block: Extract<Block, { type: "judged" }>): readonly Piece[] {
  if (block.onPaper !== undefined)
    return spaced(linePieces(setLines(setter, block.onPaper, styles.text, textWidth), styles.text), mm(1));
  const column = columnOf(
    setter,
    block.items.map((item) => item.mark),
  );
  const style = styles.text;
  const pieces = block.items.flatMap((item, index) => {
    const lines = setLines(setter, item.text, style, column - mm(7));
    const parts = together([...led(lines, style, 0, column, item.mark), ...because(setter, item.because, 0)]);
    // The first two stay together, and so do the last two.
    const joined = index === 0 || index === block.items.length - 2;
    const kept = parts.map((part) => (joined && index < block.items.length - 1 ? { ...part, keep: true } : part));
    return spaced(kept, index === 0 ? mm(1) : mm(0.7));
  });
  return withNotes(setter, pieces, block.notes);
}

/** Lines whose last one runs into a leader and a mark. */
function led(lines: readonly Line[], style: TextStyle, left: number, column: number, mark: Mark): readonly Piece[] {
  const text = stack(lines, style);
  const end = left + (lines.at(-1)?.width ?? 0);
  return [
    {
      height: text.height,
      draw(canvas, x, y) {
        text.draw(canvas, x + left, y);
        const baseline = y + text.height - style.leading + baselineIn(style);
        drawVerdict(canvas, x + end, x + column, baseline, mark);
      },
    },
  ];
}

function drawVerdict(canvas: Canvas, from: number, to: number, baseline: number, mark: Mark): void {
  drawLeader(canvas, from, to, baseline);
  drawMark(canvas, to, baseline, mark, markSize);
}

function because(setter: PageSetter, text: Text | undefined, left: number): readonly Piece[] {
  if (text === undefined) return [];
  const lines = setLines(setter, text, styles.table, textWidth - left);
  return [shifted(pile([blank(mm(0.5)), stack(lines, styles.table)]), left)];
}

/** A title with the line above and below it. */
const titleRoom = mm(24);

const isSound = ({ mark }: ChainLink) => mark === "passed" || mark === "not applicable";

const chainIndent = mm(9);
const pad = mm(1.4);

/**
 * The chain of evidence: numbered links between hairlines, each with its verdict, its sentences and its reasons. Without
 * notes it has the room of the margin as well.
 */
export function chainPieces(setter: PageSetter, block: Extract<Block, { type: "chain" }>): readonly Piece[] {
  const shown = block.links.map((link) =>
    block.onPaper !== undefined && isSound(link) ? { ...link, notes: [] } : link,
  );
  const wide = shown.every(({ notes }) => notes.length === 0);
  const width = wide ? fullWidth : textWidth;
  const marks = block.links.map((link) => link.mark);
  const setting = { width, column: columnOf(setter, marks, width) };
  const links = shown.flatMap((link, index) => linkPieces(setter, link, index, setting));
  const said = block.onPaper === undefined ? [block.label] : [`${block.label}. `, ...block.onPaper];
  const label = stack(setLines(setter, said, styles.remark, width), styles.remark);
  const count = stack(setLines(setter, [block.count], styles.text, width), styles.text);
  const ending: Piece = {
    height: count.height + pad,
    draw(canvas, x, y) {
      drawRule(canvas, x, y, width, rules.ends);
      count.draw(canvas, x, y + pad);
    },
  };
  const pieces = [pile([label, blank(mm(1.2))]), ...links, ending];
  // A chain is walked on one page: where it fits on a sheet with the title above it, it is not parted.
  const whole = pieces.reduce((sum, { height }) => sum + height, titleRoom) <= upright.bottom - upright.top;
  return pieces.map((piece, index) => ({
    ...piece,
    wide,
    // The count never stands alone on the next sheet.
    ...((index === 0 || index === pieces.length - 2 || (whole && piece !== ending)) && { keep: true }),
  }));
}

interface ChainSetting {
  readonly width: number;
  /** Where the marks begin. */
  readonly column: number;
}

function linkPieces(
  setter: PageSetter,
  link: ChainLink,
  index: number,
  { width, column }: ChainSetting,
): readonly Piece[] {
  const style: TextStyle = { ...styles.text, strong: true };
  const head = led(
    setLines(setter, [link.what], style, column - chainIndent - mm(7)),
    style,
    chainIndent,
    column,
    link.mark,
  );
  const opening: Piece = {
    height: pad,
    draw(canvas, x, y) {
      drawRule(canvas, x, y, width, index === 0 ? rules.ends : rules.group, index > 0);
      const number = String(index + 1);
      const left = x + mm(5) - setter.fonts.width("serif-old", 10, number);
      canvas.text(left, y + pad + baselineIn(style), "serif-old", 10, number);
    },
  };
  const sentences = link.text.flatMap((text) =>
    linePieces(setLines(setter, text, styles.chain, width - chainIndent), styles.chain, chainIndent),
  );
  const parts = [opening, ...head, ...sentences, ...because(setter, link.because, chainIndent), blank(pad)];
  return landing(setter, withNotes(setter, together(parts), link.notes), link.anchor);
}

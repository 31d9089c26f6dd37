import type { Block, ContentsEntry, Text } from "../blocks.ts";
import { destOf } from "./atoms.ts";
import type { Drawn, Piece } from "./flow.ts";
import { drawLeader } from "./marks.ts";
import { mm, rules, styles, textWidth, type TextStyle } from "./measures.ts";
import { baselineIn, drawRule, landing, pile, spaced, stack, type PageSetter } from "./paragraphs.ts";
import { drawLink, setLines } from "./text.ts";

/** Destination of a page of an original that is appended to the book. */
export const copyDest = (path: string, page = 1): string => `${path}#page=${page}`;

/** An original: what it is, where its copy and its file are, its hash, and who compared it. */
export function scanPieces(setter: PageSetter, block: Extract<Block, { type: "scan" }>): readonly Piece[] {
  const set = (text: Text, style: TextStyle) => stack(setLines(setter, text, style, textWidth), style);
  const dest = copyDest(block.path, block.page);
  const which =
    block.page === undefined
      ? `pages: ${block.pages === 0 ? "not stated" : block.pages}`
      : `page ${block.page} of ${block.pages}`;
  const body = pile([
    set([{ type: "strong", text: block.title }], styles.text),
    set(
      [
        block.absent === undefined
          ? { type: "file", path: block.path, text: block.path }
          : { type: "code", text: block.path },
        `, ${which}`,
      ],
      styles.table,
    ),
    ...[block.absent, block.remark].flatMap((said) =>
      said === undefined ? [] : [set([{ type: "strong", text: said }], styles.table)],
    ),
    ...(block.absent === undefined && setter.copied(block.path) ? [copyLine(setter, dest)] : []),
    set(
      [
        { type: "soft", text: "SHA-256 " },
        { type: "code", text: block.sha256 },
      ],
      styles.table,
    ),
    ...(block.compared === "" ? [] : [set([block.compared], styles.table)]),
  ]);
  const piece: Piece = {
    height: body.height + mm(2.4),
    space: mm(2.4),
    draw(canvas, x, y) {
      drawRule(canvas, x, y, textWidth, rules.group, true);
      body.draw(canvas, x, y + mm(1.4));
    },
  };
  return landing(setter, [piece], block.anchor);
}

function copyLine(setter: PageSetter, dest: string): Drawn {
  const style = styles.table;
  return {
    height: style.leading,
    draw(canvas, x, y) {
      const baseline = y + baselineIn(style);
      canvas.later((late, pageOf) => {
        const text = `Copy in this book, page ${pageOf(dest) ?? 0}`;
        late.text(x, baseline, "sans", style.size, text);
        drawLink(late, x, baseline, setter.fonts.width("sans", style.size, text), style.size, { dest });
      });
    },
  };
}

const pageColumn = mm(10);

/** Where the titles of each level begin. */
interface Indents {
  /** Whether entries of the next level follow below. */
  readonly leads: boolean;
  readonly left: number;
  readonly title: number;
}

/** Contents: number, title, leader, page; the page number is drawn when all pages are known. */
export function contentsPieces(setter: PageSetter, entries: readonly ContentsEntry[]): readonly Piece[] {
  const printed = entries.filter((entry) => setter.known(destOf(entry.to)));
  const widest = (level: 1 | 2) =>
    Math.max(
      0,
      ...printed
        .filter((entry) => entry.level === level)
        .map(({ number }) => setter.fonts.width("serif-old", styles.text.size, number)),
    );
  const outer = Math.min(Math.max(widest(1) + mm(4), mm(9)), mm(45));
  const inner = Math.min(Math.max(widest(2) + mm(4), mm(9)), mm(45));
  const nested = printed.some((entry) => entry.level === 1) && printed.some((entry) => entry.level === 2);
  const left = nested ? outer : 0;
  const pieces = printed.map((entry) =>
    entryPiece(
      setter,
      entry,
      entry.level === 1 ? { left: 0, title: outer, leads: nested } : { left, title: left + inner, leads: false },
    ),
  );
  return spaced(pieces, mm(1));
}

function entryPiece(setter: PageSetter, entry: ContentsEntry, { left, title: titleAt, leads }: Indents): Piece {
  const style: TextStyle = { ...styles.text, strong: leads };
  const lines = setLines(setter, [entry.title], style, textWidth - titleAt - pageColumn - mm(4));
  const title = stack(lines, style);
  const end = lines.at(-1)?.width ?? 0;
  const to = { dest: destOf(entry.to) };
  return {
    height: title.height,
    space: leads ? mm(1.8) : 0,
    keep: leads,
    draw(canvas, x, y) {
      canvas.text(x + left, y + baselineIn(style), "serif-old", style.size, entry.number);
      title.draw(canvas, x + titleAt, y);
      canvas.link({ x: x + left, y, width: textWidth - left, height: title.height, to });
      const baseline = y + title.height - style.leading + baselineIn(style);
      canvas.later((late, pageOf) => {
        const number = String(pageOf(to.dest) ?? 0);
        const width = setter.fonts.width("serif", style.size, number);
        drawLeader(late, x + titleAt + end, x + textWidth - width, baseline);
        late.text(x + textWidth - width, baseline, "serif", style.size, number);
      });
    },
  };
}

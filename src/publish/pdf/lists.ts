import type { Block, Text } from "../blocks.ts";
import { signatureHeads } from "../signature-heads.ts";
import type { Canvas } from "./canvas.ts";
import type { Piece } from "./flow.ts";
import { mm, rules, styles, textWidth, type TextStyle } from "./measures.ts";
import { baselineIn, drawRule, linePieces, pile, shifted, spaced, stack, type PageSetter } from "./paragraphs.ts";
import { setLines } from "./text.ts";

const indent = mm(6);

/** Items with a number or a dash before them. */
export function listPieces(setter: PageSetter, ordered: boolean, items: readonly Text[], left = 0): readonly Piece[] {
  const style = styles.text;
  return items.flatMap((item, index) => {
    const pieces = linePieces(setLines(setter, item, style, textWidth - left - indent), style, left + indent);
    const [first, ...rest] = pieces;
    if (first === undefined) return [];
    const sign = ordered ? `${index + 1}` : "–";
    const led: Piece = {
      ...first,
      draw(canvas, x, y) {
        canvas.text(x + left, y + baselineIn(style), ordered ? "serif-old" : "serif", style.size, sign);
        first.draw(canvas, x, y);
      },
    };
    return spaced([led, ...rest], index === 0 ? mm(1) : mm(0.8));
  });
}

/** Behind a rule: what a reader must be warned of. */
export function cautionPieces(setter: PageSetter, block: Extract<Block, { type: "caution" }>): readonly Piece[] {
  const paragraphs = block.text.map((text) =>
    stack(setLines(setter, text, styles.text, textWidth - mm(5)), styles.text),
  );
  const body = pile(paragraphs, mm(1.6));
  return [
    {
      height: body.height + mm(1),
      space: mm(4),
      draw(canvas, x, y) {
        canvas.line([x + 0.6, y + mm(0.6)], [x + 0.6, y + body.height + mm(0.4)], { weight: 1.2 });
        shifted(body, mm(5)).draw(canvas, x, y + mm(0.5));
      },
    },
  ];
}

const mono: TextStyle = { family: "mono", size: 10, leading: 15 };

/** The fingerprint, eight groups of four to a line. */
export function fingerprintPieces(
  setter: PageSetter,
  block: Extract<Block, { type: "fingerprint" }>,
): readonly Piece[] {
  const rows: string[] = [];
  for (let at = 0; at < block.groups.length; at += 8) rows.push(block.groups.slice(at, at + 8).join(" "));
  const label = stack(setLines(setter, [block.label], styles.remark, textWidth), styles.remark);
  const lines = rows.flatMap((row) => setLines(setter, [{ type: "whole", text: row }], mono, textWidth));
  return [{ ...pile([label, stack(lines, mono)], mm(0.6)), space: mm(3) }];
}

const columns = [mm(42), mm(58), mm(24), mm(42)] as const;

/** Who signs for what: a line each, with room for a hand where nobody has signed yet. */
export function signaturePieces(setter: PageSetter, block: Extract<Block, { type: "signatures" }>): readonly Piece[] {
  const width = columns.reduce((sum, column) => sum + column, 0);
  const last = block.rows.length - 1;
  const heads = signatureHeads.map((text, at) =>
    stack(setLines(setter, [text], styles.head, (columns[at] ?? 0) - mm(4)), styles.head),
  );
  const head: Piece = {
    height: Math.max(...heads.map((cell) => cell.height)) + mm(2),
    wide: true,
    keep: true,
    draw(canvas, x, y) {
      drawRule(canvas, x, y, width, rules.ends);
      drawInColumns(canvas, heads, x, y + mm(1));
    },
  };
  const pieces = block.rows.map((row, index): Piece => {
    const cells = [row.for, row.that, row.date, row.by].map((text, at) =>
      stack(setLines(setter, [text], styles.table, (columns[at] ?? 0) - mm(4)), styles.table),
    );
    const tall = Math.max(...cells.map((cell) => cell.height));
    const height = Math.max(tall, row.by === "" ? mm(14) : 0) + mm(3);
    return {
      height,
      wide: true,
      keep: index < last,
      draw(canvas, x, y) {
        drawRule(canvas, x, y, width, index === 0 ? rules.head : rules.group, index > 0);
        drawInColumns(canvas, cells, x, y + mm(1.5));
        if (index === last) drawRule(canvas, x, y + height, width, rules.ends);
      },
    };
  });
  return spaced([head, ...pieces], mm(2));
}

function drawInColumns(canvas: Canvas, cells: readonly Pick<Piece, "draw">[], x: number, y: number): void {
  let left = x;
  cells.forEach((cell, at) => {
    cell.draw(canvas, left, y);
    left += columns[at] ?? 0;
  });
}

import type { Block } from "../blocks.ts";
import type { Page } from "../publication.ts";
import type { Piece } from "./flow.ts";
import { fullWidth, mm, styles, textWidth, type TextStyle } from "./measures.ts";
import { baselineIn, blank, landing, pile, shifted, stack, type PageSetter } from "./paragraphs.ts";
import { setLines } from "./text.ts";

/** A heading inside a page, kept with what follows. */
export function headingPieces(setter: PageSetter, block: Extract<Block, { type: "heading" }>): readonly Piece[] {
  const style = block.level === 2 ? styles.h2 : styles.h3;
  const titled = numbered(setter, block.number, block.text, style, textWidth);
  const after = block.level === 2 ? mm(1.4) : mm(0.6);
  const piece = {
    ...pile([titled, blank(after)]),
    space: block.level === 2 ? mm(4.4) : mm(2.6),
    keep: true,
    leads: true,
  };
  return landing(setter, [piece], block.anchor);
}

/** Kind line, title and sentence at the head of a page; the number of a section's opening page stands large above. */
export function titlePieces(setter: PageSetter, page: Page): readonly Piece[] {
  const opening = page.opening === true;
  const style: TextStyle = opening ? { ...styles.title, size: 26, leading: 30 } : styles.title;
  const number = page.number ?? "";
  const parts = [
    ...(page.kindLine === undefined
      ? []
      : [stack(setLines(setter, [page.kindLine], styles.table, fullWidth), styles.table)]),
    ...(opening && number !== "" ? [large(setter, number)] : []),
    numbered(setter, opening ? undefined : page.number, page.title, style, fullWidth),
    ...(page.under === undefined
      ? []
      : [blank(mm(1.2)), stack(setLines(setter, page.under, styles.under, textWidth), styles.under)]),
    blank(mm(4.4)),
  ];
  return [{ ...pile(parts), keep: true, leads: true }];
}

function large({ fonts }: PageSetter, number: string): Piece {
  const size = 54;
  return {
    height: mm(22),
    draw: (canvas, x, y) =>
      canvas.text(x - fonts.width("serif-old", size, "1") * 0.05, y + mm(16), "serif-old", size, number),
  };
}

/** A title with its number before it, in old-style figures; further lines begin below the title. */
function numbered(
  setter: PageSetter,
  number: string | undefined,
  text: string,
  style: TextStyle,
  width: number,
): Piece {
  const before = number === undefined ? 0 : setter.fonts.width("serif-old", style.size, number) + mm(3);
  const title = shifted(stack(setLines(setter, [text], style, width - before), style), before);
  return {
    height: title.height,
    draw(canvas, x, y) {
      if (number !== undefined) canvas.text(x, y + baselineIn(style), "serif-old", style.size, number);
      title.draw(canvas, x, y);
    },
  };
}

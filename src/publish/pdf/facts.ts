import type { Block, Fact } from "../blocks.ts";
import type { Piece } from "./flow.ts";
import { mm, rules, styles, textWidth } from "./measures.ts";
import { drawRule, landing, shifted, spaced, stack, type PageSetter } from "./paragraphs.ts";
import { setLine, setLines } from "./text.ts";

const rowPad = mm(0.7);

/** Labels and values in two columns between rules; a hairline opens each further group. */
export function factPieces(setter: PageSetter, block: Extract<Block, { type: "facts" }>): readonly Piece[] {
  const widest = Math.max(0, ...block.facts.map((fact) => setLine(setter, [fact.label], styles.facts).width));
  const column = Math.min(Math.max(widest + mm(4), mm(30)), mm(52));
  const last = block.facts.length - 1;
  const pieces = block.facts.flatMap((fact, index) =>
    landing(setter, [factPiece(setter, fact, column, index === 0, index === last)], fact.anchor),
  );
  return spaced(pieces, mm(1.5));
}

function factPiece(setter: PageSetter, fact: Fact, column: number, first: boolean, last: boolean): Piece {
  const label = stack(
    setLines(setter, [{ type: "soft", text: fact.label }], styles.facts, column - mm(3)),
    styles.facts,
  );
  const value = stack(setLines(setter, fact.value, styles.facts, textWidth - column), styles.facts);
  const above = first || fact.gap === true ? mm(1.2) : rowPad;
  const below = last ? mm(1.2) : rowPad;
  const height = above + Math.max(label.height, value.height) + below;
  return {
    height,
    // One line of a group is not left alone at the foot of a sheet.
    keep: first && !last,
    draw(canvas, x, y) {
      if (first) drawRule(canvas, x, y, textWidth, rules.ends);
      else if (fact.gap === true) drawRule(canvas, x, y, textWidth, rules.group, true);
      label.draw(canvas, x, y + above);
      shifted(value, column).draw(canvas, x, y + above);
      if (last) drawRule(canvas, x, y + height, textWidth, rules.ends);
    },
  };
}

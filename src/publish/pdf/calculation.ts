import type { Block, CalculationStep, Text } from "../blocks.ts";
import type { Drawn, Piece } from "./flow.ts";
import type { Box } from "./formula-boxes.ts";
import { displayLines } from "./formula.ts";
import { mm, rules, styles, textWidth } from "./measures.ts";
import { blank, drawRule, pile, shifted, spaced, stack, withNotes, type PageSetter } from "./paragraphs.ts";
import { setLines } from "./text.ts";

const size = 10.5;
const valuesAt = mm(60.5);
/** Room for the formula beside its values. */
const half = mm(58.5);
const stackedIndent = mm(8);

/** Steps between rules: what it is, formula, the same with values, result. */
export function calculationPieces(
  setter: PageSetter,
  block: Extract<Block, { type: "calculation" }>,
): readonly Piece[] {
  const last = block.steps.length - 1;
  const pieces = block.steps.flatMap((step, index) => {
    const body = pile([blank(mm(1.6)), ...stepParts(setter, step), blank(mm(1.7))]);
    const piece: Piece = {
      height: body.height,
      draw(canvas, x, y) {
        drawRule(canvas, x, y, textWidth, index === 0 ? rules.ends : rules.group, index > 0);
        body.draw(canvas, x, y);
        if (index === last) drawRule(canvas, x, y + body.height, textWidth, rules.ends);
      },
    };
    return withNotes(setter, [piece], step.notes);
  });
  return spaced(pieces, mm(1.4));
}

function stepParts(setter: PageSetter, step: CalculationStep): readonly Drawn[] {
  const { formula } = step;
  const means = stack(setLines(setter, [step.means], styles.text, textWidth), styles.text);
  const { drawn, resultAt } = formulaPair(setter, step);
  const result = stack(setLines(setter, resultText(step), styles.result, textWidth - resultAt), styles.result);
  const lines = step.lines.map((line) => stack(setLines(setter, [line], styles.table, textWidth), styles.table));
  return [means, ...drawn, ...lines, ...(formula === undefined ? [blank(mm(0.8))] : []), shifted(result, resultAt)];
}

function resultText({ result, rounded, governs }: CalculationStep): Text {
  return [
    { type: "whole", text: result },
    ...(rounded === undefined ? [] : [" = ", { type: "strong" as const, text: rounded }]),
    ...(governs === undefined ? [] : [" ", { type: "soft" as const, text: `(${governs})` }]),
  ];
}

/** Formula and values on one baseline where both fit their half; otherwise the values below the formula. */
function formulaPair(
  { fonts }: PageSetter,
  step: CalculationStep,
): { readonly drawn: readonly Drawn[]; readonly resultAt: number } {
  const { formula, substituted } = step;
  if (formula === undefined) return { drawn: [], resultAt: 0 };
  const [left, ...moreLeft] = displayLines(fonts, formula, size, Infinity);
  const [right] = substituted === undefined ? [] : displayLines(fonts, substituted, size, Infinity);
  const beside =
    left !== undefined && moreLeft.length === 0 && left.width <= half && (right?.width ?? 0) <= textWidth - valuesAt;
  if (beside)
    return {
      drawn: [boxRow([[left, 0], ...(right === undefined ? [] : [[right, valuesAt] as const])])],
      resultAt: valuesAt,
    };
  const upper = displayLines(fonts, formula, size, textWidth);
  const lower = substituted === undefined ? [] : displayLines(fonts, substituted, size, textWidth - stackedIndent);
  const continued = (boxes: readonly Box[], at: number) =>
    boxes.map((box, index) => boxRow([[box, Math.min(at + (index === 0 ? 0 : mm(6)), textWidth - box.width)]]));
  return { drawn: [...continued(upper, 0), ...continued(lower, stackedIndent)], resultAt: stackedIndent };
}

/** Boxes on one baseline, each at its own distance from the left. */
function boxRow(boxes: readonly (readonly [Box, number])[]): Drawn {
  const ascent = Math.max(size, ...boxes.map(([box]) => box.ascent));
  const descent = Math.max(size * 0.25, ...boxes.map(([box]) => box.descent));
  const above = mm(0.9);
  return {
    height: above + ascent + descent + mm(0.7),
    draw: (canvas, x, y) => {
      for (const [box, at] of boxes) box.draw(canvas, x + at, y + above + ascent);
    },
  };
}

import type { Block } from "../blocks.ts";
import type { Drawing, Shape } from "../figures/shapes.ts";
import { destOf } from "./atoms.ts";
import type { Canvas, Pen } from "./canvas.ts";
import type { Piece } from "./flow.ts";
import { fullWidth, mm, styles } from "./measures.ts";
import { notesBelow, pile, stack, type PageSetter } from "./paragraphs.ts";
import { drawLink, setLine, setLines } from "./text.ts";

/** Tallest figure: it leaves room for its caption on an empty sheet. */
const tallest = mm(215);
/** Unit of figure text that prints at 7.5 points on the full width. */
const reference = 470;

/** A figure over the full width, drawn from its geometry, with its caption below. */
export function figurePieces(setter: PageSetter, block: Extract<Block, { type: "figure" }>): readonly Piece[] {
  const drawing = block.figure.wide;
  const scale = Math.min(fullWidth / drawing.width, tallest / drawing.height, reference / 600);
  const lead = setLine(setter, [{ type: "strong", text: `Figure ${block.number}` }], styles.table);
  const caption = stack(setLines(setter, block.caption, styles.caption, fullWidth, lead.width + mm(2)), styles.caption);
  const named: Piece = {
    height: caption.height,
    draw(canvas, x, y) {
      stack([lead], { ...styles.table, leading: styles.caption.leading }).draw(canvas, x, y);
      caption.draw(canvas, x, y);
    },
  };
  const drawn: Piece = {
    height: drawing.height * scale,
    draw: (canvas, x, y) => drawDrawing(setter, canvas, drawing, x, y, scale),
  };
  return [{ ...pile([drawn, named], mm(2)), space: mm(3), wide: true }, ...notesBelow(setter, block.notes)];
}

function drawDrawing(setter: PageSetter, canvas: Canvas, drawing: Drawing, x: number, y: number, scale: number): void {
  for (const shape of drawing.shapes) drawShape(setter, canvas, shape, x, y, scale);
}

/** A weight of look.md in points on paper: 0.6, 1, 2 and 3 stay apart, and the thinnest still prints. */
const penOf = (weight: number, scale: number, broken = false): Pen => ({
  weight: Math.max(weight * scale, 0.3),
  broken,
});

function drawShape(setter: PageSetter, canvas: Canvas, shape: Shape, x: number, y: number, scale: number): void {
  const at = ([px, py]: readonly [number, number]) => [x + px * scale, y + py * scale] as const;
  switch (shape.type) {
    case "line": {
      const [from, to] = [at(shape.from), at(shape.to)];
      canvas.line(from, to, penOf(shape.weight, scale, shape.broken));
      if (shape.arrows !== undefined) drawArrow(canvas, from, to, scale);
      if (shape.arrows === "both") drawArrow(canvas, to, from, scale);
      break;
    }
    case "path":
      canvas.path(shape.points.map(at), penOf(shape.weight, scale, shape.broken), shape.closed);
      break;
    case "ring":
      canvas.ring(at(shape.at), shape.radius * scale, penOf(shape.weight, scale));
      break;
    case "hatch": {
      const [left, top] = at([shape.x, shape.y]);
      canvas.hatch(left, top, shape.width * scale, shape.height * scale, { weight: 0.3 });
      break;
    }
    case "text":
      drawWord(setter, canvas, shape, at(shape.at), scale);
      break;
  }
}

/** Open head at the end of a dimension line. */
function drawArrow(
  canvas: Canvas,
  from: readonly [number, number],
  to: readonly [number, number],
  scale: number,
): void {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const [along, across] = [6 * scale, 3 * scale];
  const barb = (side: number) =>
    [to[0] - ux * along - uy * across * side, to[1] - uy * along + ux * across * side] as const;
  canvas.path([barb(1), to, barb(-1)], penOf(0.6, scale));
}

type Word = Extract<Shape, { type: "text" }>;

function drawWord(
  { fonts, known }: PageSetter,
  canvas: Canvas,
  shape: Word,
  [x, y]: readonly [number, number],
  scale: number,
): void {
  const size = Math.max(shape.size * scale, 6);
  const face = shape.strong === true ? "sans-strong" : "sans";
  const width = fonts.width(face, size, shape.text);
  const back = shape.anchor === "start" ? 0 : shape.anchor === "middle" ? width / 2 : width;
  if (shape.turned === true) {
    canvas.turnedText(x, y + back, face, size, shape.text);
    return;
  }
  canvas.text(x - back, y, face, size, shape.text);
  if (shape.to !== undefined && known(destOf(shape.to)))
    drawLink(canvas, x - back, y, width, size, { dest: destOf(shape.to) });
}

import type { Mark } from "../blocks.ts";
import type { Canvas } from "./canvas.ts";
import type { Face, Fonts } from "./fonts.ts";

const faces: Readonly<Record<Mark, { readonly face: Face; readonly soft: boolean }>> = {
  passed: { face: "sans", soft: false },
  computed: { face: "sans", soft: true },
  failed: { face: "sans-strong", soft: false },
  rejected: { face: "sans-strong", soft: false },
  "on record": { face: "sans", soft: false },
  answered: { face: "sans-italic", soft: false },
  "not judged": { face: "sans-italic", soft: false },
  "not applicable": { face: "sans", soft: true },
  "not due": { face: "sans", soft: true },
};

/** Distance from the left end of the mark to its word, as a share of the type size. */
const indent = 1.15;

/** Width of mark and word in points. */
export function markWidth(fonts: Fonts, mark: Mark, size: number): number {
  return size * indent + fonts.width(faces[mark].face, size, mark);
}

/** The mark an inspector leaves on a list, and its word. */
export function drawMark(canvas: Canvas, x: number, baseline: number, mark: Mark, size: number): void {
  drawSign(canvas, x + size * 0.38, baseline - size * 0.29, mark, size);
  const { face, soft } = faces[mark];
  canvas.text(x + size * indent, baseline, face, size, mark, soft);
}

function drawSign(canvas: Canvas, x: number, y: number, mark: Mark, size: number): void {
  const stroke = (across: number, up: number, weight: number) =>
    canvas.line([x - across * size, y + up * size], [x + across * size, y - up * size], { weight: weight * size });
  switch (mark) {
    case "passed":
      stroke(0.228, 0.365, 0.095);
      break;
    case "failed":
    case "rejected":
      stroke(0.268, 0.297, 0.15);
      stroke(-0.268, 0.297, 0.15);
      break;
    case "answered":
      canvas.line([x - 0.31 * size, y + 0.25 * size], [x - 0.31 * size, y - 0.25 * size], { weight: 0.095 * size });
      canvas.line([x - 0.31 * size, y - 0.25 * size], [x + 0.31 * size, y - 0.25 * size], { weight: 0.095 * size });
      break;
    case "not judged":
      canvas.ring([x, y], size * 0.258, { weight: size * 0.105 });
      break;
    case "computed":
    case "on record":
      for (const up of [-0.16, 0.16])
        canvas.line([x - 0.31 * size, y + up * size], [x + 0.31 * size, y + up * size], { weight: 0.095 * size });
      break;
    case "not applicable":
      stroke(0.31, 0, 0.095);
      break;
    case "not due":
      canvas.ring([x, y], size * 0.085, { weight: 0 }, true);
      break;
  }
}

const dotDistance = 2.2;

/** Dotted leader between two points of a line; the dots of one page stand below each other. */
export function drawLeader(canvas: Canvas, from: number, to: number, baseline: number): void {
  const start = Math.ceil((from + 3) / dotDistance) * dotDistance;
  const end = Math.floor((to - 3) / dotDistance) * dotDistance;
  if (end > start) canvas.line([start, baseline - 0.6], [end, baseline - 0.6], { weight: 0.55, dotted: true });
}

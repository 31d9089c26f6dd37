import type { Cell } from "../blocks.ts";
import type { Canvas } from "./canvas.ts";

type Range = Extract<Cell, { type: "range" }>;

/** Width of a range mark in points; drawn on a grid of 150 by 18. */
export const rangeWidth = 88;
const unit = rangeWidth / 150;
const upper = 114;
const lower = 38;

const thin = { weight: 0.4 };
const heavy = { weight: 1.7 };

/** Where value and limits stand on the grid: the upper limit always in one line down the table. */
function scaleOf({ low, high, value }: Range): (amount: number) => number {
  const scale =
    high !== undefined && high > 0
      ? upper / high
      : low !== undefined && low > 0
        ? lower / low
        : value === 0
          ? 1
          : upper / 2 / Math.abs(value);
  return (amount) => Math.min(Math.max(amount * scale, 0), 148);
}

/** A value against its limits; `middle` is the height of the rule. */
export function drawRange(canvas: Canvas, x: number, middle: number, range: Range): void {
  const at = scaleOf(range);
  const to = (grid: number) => x + grid * unit;
  const tick = (grid: number, half: number, pen: { readonly weight: number }) =>
    canvas.line([to(grid), middle - half * unit], [to(grid), middle + half * unit], pen);
  const { low, high, value } = range;
  const start = low === undefined ? 0 : at(low);
  const end = high === undefined ? 150 : at(high);
  canvas.line([to(start), middle], [to(end), middle], thin);
  if (low !== undefined) tick(start, 7, thin);
  if (high !== undefined) tick(end, 7, thin);
  else
    canvas.path(
      [
        [to(143), middle - 3.4 * unit],
        [to(150), middle],
        [to(143), middle + 3.4 * unit],
      ],
      thin,
    );
  if (range.below === true) canvas.line([to(0), middle], [to(at(value)), middle], heavy);
  else tick(at(value), 8, heavy);
}

import type { Measure } from "./quantity.ts";

/** A tested or repaired length of a seam; without both ends only its size is known. */
export interface SeamLength {
  readonly from: Measure | undefined;
  readonly to: Measure | undefined;
  readonly length: Measure;
}

type Span = readonly [number, number];

/** The stretches of a seam a length covers; on a closed seam it may run over the zero mark. Undefined: its place is not stated. */
export function spansOf({ from, to }: SeamLength, seam: Measure, closed: boolean): readonly Span[] | undefined {
  if (from === undefined || to === undefined) return undefined;
  const [a, b] = [from.value, to.value];
  if (a <= b) return [[a, b]];
  return closed
    ? [
        [a, seam.value],
        [0, b],
      ]
    : [[b, a]];
}

/** Length in mm that stretches cover together: overlaps count once. */
export function union(spans: readonly Span[]): number {
  let total = 0;
  let reached = Number.NEGATIVE_INFINITY;
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    total += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return total;
}

/** Whether a seam ends where it begins. */
export const isClosed = (role: string): boolean => role === "circumferential" || role === "nozzle";

/** "0 mm to 300 mm", or "300 mm" where the place is not stated. */
export const sayLength = ({ from, to, length }: SeamLength): string =>
  from === undefined || to === undefined ? length.text : `${from.text} to ${to.text}`;

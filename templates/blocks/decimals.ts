import type { Cell } from "../../src/publish/blocks.ts";

const plainNumber = /^[<>≤≥]?[+−-]?\d[\d\u00a0 ]*(?:\.(\d[\d\u00a0 ]*))?$/u;

/** Digits after the point; -1 without a point, null for what is not a plain number and is not aligned. */
function decimals(text: string): number | null {
  const found = plainNumber.exec(text);
  if (found === null) return null;
  return found[1] === undefined ? -1 : found[1].replaceAll(/\D/g, "").length;
}

/** The most decimals in a column, or -1 when no number of it has a point. */
export function decimalsOf(cells: readonly (Cell | undefined)[]): number {
  let most = -1;
  for (const cell of cells) if (cell?.type === "number") most = Math.max(most, decimals(cell.text) ?? -1);
  return most;
}

// The style sheet holds this many widths; longer tails than that are no measurements.
const widest = 9;

/** Class that pads a number at its right by the digits it has less than the longest: points align, no digit is added. */
export function paddingClass(text: string, longest: number): string {
  const own = decimals(text);
  if (own === null || own >= longest) return "";
  return own === -1 ? `pad-point pad-${Math.min(longest, widest)}` : `pad-${Math.min(longest - own, widest)}`;
}

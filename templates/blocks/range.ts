import type { Cell } from "../../src/publish/blocks.ts";
import { html, type Html } from "../html.ts";

type Range = Extract<Cell, { type: "range" }>;

// Drawn on a grid of 150 × 18: the upper limit always stands at 114, so the ticks form one line down a table.
const upper = 114;
const lower = 38;
const end = 150;

/** Where an amount stands on the grid: from zero, unless a limit lies below zero. */
function scaleOf({ low, high, value }: Range): (amount: number) => number {
  const clamp = (at: number) => Math.min(Math.max(Math.round(at * 10) / 10, 0), end - 2);
  if (low !== undefined && high !== undefined && low < 0)
    return (amount) => clamp(lower + ((amount - low) / (high - low || 1)) * (upper - lower));
  const unit =
    high !== undefined && high > 0
      ? upper / high
      : low !== undefined && low > 0
        ? lower / low
        : value > 0
          ? upper / 2 / value
          : 1;
  return (amount) => clamp(amount * unit);
}

/** A value against its limits: thin rule, ticks at limits, heavy stroke at the value, heavy rule if known as less than. */
export function rangeMark(range: Range): Html {
  const { low, high, value, below, spoken } = range;
  const at = scaleOf(range);
  const from = low === undefined ? 0 : at(low);
  const ticks =
    (low === undefined ? "" : `M${from} 3v12`) + (high === undefined ? "M144 6l6 3l-6 3" : `M${at(high)} 3v12`);
  const rule = `M${from} 9H${high === undefined ? end : at(high)}`;
  const stroke = below === true ? `M0 9H${at(value)}` : `M${at(value)} 1v16`;
  return html`<svg class="range" viewBox="0 0 150 18" role="img" aria-label="${spoken}">
    <path d="${rule}${ticks}" stroke-width=".8" />
    <path d="${stroke}" stroke-width="3" />
  </svg>`;
}

import type { ListResult } from "../../model/calculation.ts";
import { short } from "../../model/print-number.ts";
import { dateIn, quantityIn, type Row } from "./arguments.ts";
import { ofHold } from "./hold.ts";

const mean = (row: Row) => (quantityIn(row, "gaugeA").value + quantityIn(row, "gaugeB").value) / 2;
const temperature = (row: Row) => quantityIn(row, "waterTemperature").value;

/** Named function `pressureChange(readings, need, ΔA, ΔB, gap)` in bar: mean of both gauges at the end of the hold less at its start. */
export const pressureChange = ofHold(
  "pressureChange",
  "change of the mean of both gauges from the first to the last reading of the hold",
  "bar",
  (inside) => fromStartToEnd(inside, mean, "bar"),
);

/** Named function `waterChange(readings, need, ΔA, ΔB, gap)` in K: water temperature at the end of the hold less at its start. */
export const waterChange = ofHold(
  "waterChange",
  "change of the water temperature from the first to the last reading of the hold",
  "ΔK",
  (inside) => fromStartToEnd(inside, temperature, "°C"),
);

/** Named function `waterSpan(readings, need, ΔA, ΔB, gap)` in K: from the coldest to the warmest water of the hold. */
export const waterSpan = ofHold("waterSpan", "from the coldest to the warmest water of the hold", "ΔK", (inside) => {
  const values = inside.map(temperature);
  return { value: Math.max(...values) - Math.min(...values), lines: [] };
});

/** Named function `waterMean(readings, need, ΔA, ΔB, gap)` in °C: mean of the water temperatures at start and end of the hold. */
export const waterMean = ofHold("waterMean", "mean water temperature of the hold", "°C", (inside) => {
  const [from, to] = ends(inside, temperature);
  return { value: (from + to) / 2, lines: [] };
});

const slope = { name: "slope", unit: "bar/K" };

/**
 * Named function `greatestDrop(readings, need, ΔA, ΔB, gap, slope)` in bar: between any two readings of the hold, the change of
 * the mean of both gauges less what the water temperature explains, where that is lowest. What is pumped up later hides no drop.
 */
export const greatestDrop = ofHold(
  "greatestDrop",
  "greatest drop between any two readings of the hold that the water temperature leaves unexplained; negative",
  "bar",
  (inside, [perKelvin = Number.NaN]) => between(inside, perKelvin, -1),
  [slope],
);

/** Named function `greatestRise(readings, need, ΔA, ΔB, gap, slope)` in bar: as `greatestDrop`, where it is highest: pumped up. */
export const greatestRise = ofHold(
  "greatestRise",
  "greatest rise between any two readings of the hold that the water temperature leaves unexplained",
  "bar",
  (inside, [perKelvin = Number.NaN]) => between(inside, perKelvin, 1),
  [slope],
);

/** The unexplained change between two readings of a hold that is greatest in one direction; 0 where there is none. */
function between(inside: readonly Row[], perKelvin: number, sense: 1 | -1): ListResult {
  const unexplained = (row: Row) => mean(row) - perKelvin * temperature(row);
  let best: { readonly value: number; readonly from: Row; readonly to: Row } | undefined;
  let [base] = inside;
  for (const row of inside.slice(1)) {
    if (base === undefined) break;
    const value = unexplained(row) - unexplained(base);
    if (sense * value > sense * (best?.value ?? 0)) best = { value, from: base, to: row };
    // The later change is greatest from where the sum so far is most extreme the other way.
    if (sense * value < 0) base = row;
  }
  if (best === undefined) return { value: 0, lines: ["none"] };
  const told = (row: Row) => `${dateIn(row, "time").text} (${short(mean(row))} bar, ${short(temperature(row))} °C)`;
  return { value: best.value, lines: [`between ${told(best.from)} and ${told(best.to)}`], at: [best.to] };
}

function ends(inside: readonly Row[], valueOf: (row: Row) => number): readonly [number, number] {
  const values = inside.map(valueOf);
  return [values[0] ?? Number.NaN, values.at(-1) ?? Number.NaN];
}

function fromStartToEnd(inside: readonly Row[], valueOf: (row: Row) => number, unit: string): ListResult {
  const [from, to] = ends(inside, valueOf);
  return { value: to - from, lines: [`from ${short(from)} to ${short(to)} ${unit}`] };
}

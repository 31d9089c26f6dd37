import { scaleLinear } from "d3-scale";
import { printNumber } from "../../model/print-number.ts";
import type { Drawing, Figure, Shape } from "./shapes.ts";

export interface Series {
  readonly label: string;
  /** Minutes from the first reading, and value. */
  readonly points: readonly (readonly [number, number])[];
}

export interface TimeChart {
  readonly title: string;
  readonly description: string;
  readonly unit: string;
  readonly series: readonly Series[];
  /** Broken lines with a label at their end. */
  readonly levels: readonly { readonly value: number; readonly label: string }[];
  /** The span in which the values must lie between two levels, hatched. */
  readonly band?: {
    readonly from: number;
    readonly to: number;
    readonly low: number;
    readonly high: number;
    readonly label: string;
  };
  /** Clock time of a minute, for the axis. */
  clock(minute: number): string;
}

/** Readings over time: two series differ in form, every line is labelled where it runs, the band of the hold is hatched. */
export function timeChart(chart: TimeChart): Figure {
  return {
    title: chart.title,
    description: chart.description,
    wide: draw(chart, 900, 380),
    narrow: draw(chart, 350, 300),
  };
}

function draw(chart: TimeChart, width: number, height: number): Drawing {
  const size = width > 500 ? 14 : 12;
  const wide = width > 500;
  const left = 44;
  const right = wide ? 190 : 16;
  const bottom = 46;
  const top = 26;
  const all = chart.series.flatMap(({ points }) => points);
  const lastMinute = Math.max(1, ...all.map(([minute]) => minute));
  const highest = Math.max(...all.map(([, value]) => value), ...chart.levels.map(({ value }) => value)) * 1.05;
  const x = scaleLinear([0, lastMinute], [left, width - right]);
  const y = scaleLinear([0, highest], [height - bottom, top]);
  const shapes: Shape[] = [];
  if (chart.band !== undefined) {
    const { from, to, low, high, label } = chart.band;
    shapes.push({ type: "hatch", x: x(from), y: y(high), width: x(to) - x(from), height: y(low) - y(high) });
    const under = y(low) + 26;
    shapes.push(
      { type: "line", from: [x(from), under], to: [x(to), under], weight: 0.6, arrows: "both" },
      { type: "line", from: [x(from), y(low)], to: [x(from), under + 5], weight: 0.6 },
      { type: "line", from: [x(to), y(low)], to: [x(to), under + 5], weight: 0.6 },
      { type: "text", at: [(x(from) + x(to)) / 2, under + size + 4], text: label, size, anchor: "middle" },
    );
  }
  shapes.push(
    { type: "line", from: [left, y(0)], to: [width - right, y(0)], weight: 1 },
    { type: "line", from: [left, y(0)], to: [left, top], weight: 1 },
    { type: "text", at: [left, top - 10], text: chart.unit, size, anchor: "middle" },
  );
  for (const tick of y.ticks(wide ? 6 : 4)) {
    shapes.push(
      { type: "line", from: [left - 5, y(tick)], to: [left, y(tick)], weight: 0.6 },
      { type: "text", at: [left - 9, y(tick) + size * 0.35], text: printNumber(tick, 0), size, anchor: "end" },
    );
  }
  const step = niceMinutes(lastMinute, wide ? 8 : 3);
  for (let minute = 0; minute <= lastMinute; minute += step) {
    shapes.push(
      { type: "line", from: [x(minute), y(0)], to: [x(minute), y(0) + 5], weight: 0.6 },
      { type: "text", at: [x(minute), y(0) + 9 + size], text: chart.clock(minute), size, anchor: "middle" },
    );
  }
  const labels: { at: number; text: string; from: readonly [number, number] }[] = [];
  for (const { value, label } of chart.levels) {
    shapes.push({ type: "line", from: [left, y(value)], to: [width - right, y(value)], weight: 0.6, broken: true });
    if (wide) labels.push({ at: y(value), text: label, from: [width - right, y(value)] });
    else shapes.push({ type: "text", at: [width - right, y(value) - 5], text: label, size, anchor: "end" });
  }
  // Below the hold the curve leaves room, and no level runs there.
  const { band } = chart;
  const middle = band === undefined ? (left + width - right) / 2 : (x(band.from) + x(band.to)) / 2;
  const above = (index: number) => y(0) - 14 - (chart.series.length - 1 - index) * (size + 6);
  chart.series.forEach(({ label, points }, index) => {
    const path = points.map(([minute, value]) => [x(minute), y(value)] as const);
    if (index === 0) shapes.push({ type: "path", points: path, weight: 2 });
    else for (const at of path) shapes.push({ type: "ring", at, radius: wide ? 4 : 3, weight: 1 });
    shapes.push({
      type: "text",
      at: [middle, above(index)],
      text: `${index === 0 ? "line" : "rings"}: ${label}`,
      size,
      anchor: "middle",
    });
  });
  for (const { at, text, from } of spread(labels, size + 4)) {
    shapes.push(
      { type: "line", from: [from[0], from[1]], to: [from[0] + 10, at], weight: 0.6 },
      { type: "text", at: [from[0] + 14, at + size * 0.35], text, size, anchor: "start" },
    );
  }
  return { width, height, shapes };
}

function niceMinutes(span: number, count: number): number {
  return [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480].find((step) => span / step <= count) ?? Math.ceil(span / count);
}

/** Moves labels apart so that none covers another; their leaders show where they belong. */
function spread<L extends { at: number }>(labels: readonly L[], distance: number): L[] {
  const sorted = [...labels].sort((a, b) => a.at - b.at);
  sorted.forEach((label, index) => {
    const before = sorted[index - 1];
    if (before !== undefined && label.at - before.at < distance) label.at = before.at + distance;
  });
  return sorted;
}

import type { ListFunction, ListResult } from "../../model/calculation.ts";
import { ownChoice } from "../../model/basis.ts";
import { date, quantity } from "../../model/input.ts";
import { dateIn, quantityIn, rowsThenNumbers, type Row } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/** What a reading of a pressure test is read with: its time, both gauges, the medium, and the times of the report. */
export const reading = {
  time: date("time"),
  gaugeA: quantity("gaugeA", "bar"),
  gaugeB: quantity("gaugeB", "bar"),
  waterTemperature: quantity("waterTemperature", "°C"),
  isolated: date("record.pumpIsolated"),
  from: date("record.holdStart"),
  to: date("record.holdEnd"),
} as const;

export const readingBasis = ownChoice(
  "found from the raw readings after the pump was shut off, within the hold that the report states",
);
export const rows = { name: "readings", unit: "rows" };
const need = { name: "need", unit: "bar" };
export const heads = [
  { name: "ΔA", unit: "bar" },
  { name: "ΔB", unit: "bar" },
];
const gap = { name: "gap", unit: "min" };
const minute = 60_000;

/** What each gauge shows more than the pressure at the top, by the water above it. */
export type Heads = readonly [number, number];

/** A stretch of readings in which both gauges stand at or above what is needed, without a gap. */
interface Hold {
  readonly first: number;
  readonly last: number;
  readonly minutes: number;
}

const at = (row: Row) => dateIn(row, "time").from;
const said = (row: Row) => dateIn(row, "time").text;
/** Pressure at the top by the gauge that shows less. */
export const lowest = (row: Row, [a, b]: Heads) =>
  Math.min(quantityIn(row, "gaugeA").low - a, quantityIn(row, "gaugeB").low - b);
const isHigh = (row: Row, needed: number, above: Heads) => lowest(row, above) >= needed * (1 - 1e-9);

/** Why these readings cannot be followed in time, or undefined. */
function disorder(readings: readonly Row[]): string | undefined {
  if (readings.length < 2)
    return `${readings.length === 1 ? "there is 1 reading" : `there are ${readings.length} readings`}; a hold needs at least two`;
  const day = readings.find((row) => dateIn(row, "time").precision === "day");
  if (day !== undefined) return `the reading of ${said(day)} has no time of day`;
  const back = readings.find((row, index) => index > 0 && at(row) <= at(readings[index - 1] ?? row));
  return back === undefined ? undefined : `the reading of ${said(back)} is not later than the one before it`;
}

/** Readings after the pump was shut off and within the hold of the report; or why they cannot be told. */
export function windowOf(readings: readonly Row[]): readonly Row[] | string {
  const refused = disorder(readings);
  if (refused !== undefined) return refused;
  return readings.filter((row) => {
    const begins = Math.max(dateIn(row, "isolated").from, dateIn(row, "from").from);
    return at(row) >= begins && at(row) <= dateIn(row, "to").to;
  });
}

/** "the report states the hold from … to …, the pump shut off at …" */
function statedHold(readings: readonly Row[]): string {
  const [row] = readings;
  if (row === undefined) return "the report states no hold";
  const text = (name: string) => dateIn(row, name).text;
  return `the report states the hold from ${text("from")} to ${text("to")}, the pump shut off at ${text("isolated")}`;
}

/** The longest hold, the first of equals; undefined when no two readings in a row hold. */
function longestHold(readings: readonly Row[], needed: number, above: Heads, longestGap: number): Hold | undefined {
  let best: Hold | undefined;
  let first: number | undefined;
  for (const [index, row] of readings.entries()) {
    const before = readings[index - 1];
    if (!isHigh(row, needed, above)) {
      first = undefined;
      continue;
    }
    const late = before !== undefined && at(row) - at(before) > longestGap * minute * (1 + 1e-9);
    if (first === undefined || late) first = index;
    const start = readings[first];
    const minutes = start === undefined ? 0 : (at(row) - at(start)) / minute;
    if (minutes > 0 && (best === undefined || minutes > best.minutes)) best = { first, last: index, minutes };
  }
  return best;
}

/** The reading that broke the longest hold, where the pressure stands high again beyond it; else the two ends of it. */
function decidedBy(readings: readonly Row[], { first, last }: Hold, needed: number, above: Heads): readonly Row[] {
  const high = readings.map((row) => isHigh(row, needed, above));
  const [before, after] = [first - 1, last + 1];
  const broken =
    high[after] === false && high.includes(true, after)
      ? after
      : high[before] === false && high.slice(0, before).includes(true)
        ? before
        : undefined;
  return (broken === undefined ? [first, last] : [broken]).flatMap((index) => readings[index] ?? []);
}

/** Makes a function of the readings of the stated hold. */
const ofWindow = (
  name: string,
  means: string,
  unit: string,
  parameters: ListFunction["parameters"],
  compute: (inside: readonly Row[], values: readonly number[], all: readonly Row[]) => ListResult,
): ListFunction => ({
  name,
  means,
  basis: readingBasis,
  parameters: [rows, ...parameters],
  unit,
  compute: rowsThenNumbers((readings, values) => {
    const inside = windowOf(readings);
    return typeof inside === "string" ? { refused: inside } : compute(inside, values, readings);
  }),
});

/** Makes a function of the longest hold: refuses readings out of order, and a test in which nothing held. */
export const ofHold = (
  name: string,
  means: string,
  unit: string,
  compute: (inside: readonly Row[], further: readonly number[]) => ListResult,
  further: ListFunction["parameters"] = [],
): ListFunction =>
  ofWindow(name, means, unit, [need, ...heads, gap, ...further], (inside, values, all) => {
    const [needed = Number.NaN, a = Number.NaN, b = Number.NaN, longestGap = Number.NaN, ...rest] = values;
    const hold = longestHold(inside, needed, [a, b], longestGap);
    if (hold === undefined)
      return {
        refused: `no two readings in a row show ${short(needed)} bar at the top on both gauges within ${short(longestGap)} min; ${statedHold(all)}`,
      };
    return compute(inside.slice(hold.first, hold.last + 1), rest);
  });

/** Named function `holdMinutes(readings, need, ΔA, ΔB, gap)`: length of the longest hold in min, 0 where nothing held. */
export const holdMinutes = ofWindow(
  "holdMinutes",
  "longest time in which both gauges show at least the pressure needed at the top, after the pump was shut off and within the hold of the report, without a gap between readings",
  "min",
  [need, ...heads, gap],
  (inside, [needed = Number.NaN, a = Number.NaN, b = Number.NaN, longestGap = Number.NaN], all) => {
    const hold = longestHold(inside, needed, [a, b], longestGap);
    const [from, to] = [inside[hold?.first ?? -1], inside[hold?.last ?? -1]];
    if (hold === undefined || from === undefined || to === undefined)
      return {
        value: 0,
        lines: [`no two readings in a row show ${short(needed)} bar at the top on both gauges`, statedHold(all)],
      };
    return {
      value: hold.minutes,
      lines: [
        `${said(from)} to ${said(to)}: ${hold.last - hold.first + 1} of ${inside.length} readings of the hold, each at least ${short(needed)} bar at the top on both gauges`,
      ],
      at: decidedBy(inside, hold, needed, [a, b]),
    };
  },
);

/**
 * Named function `gapOfHold(readings, need, ΔA, ΔB, gap, least)` in min: the longest time without a reading, between two that
 * hold, where without such gaps the hold would have lasted the least time and with them it does not; else 0.
 */
export const gapOfHold = ofWindow(
  "gapOfHold",
  "longest time without a reading that shortens the hold below the least time; 0 where none does",
  "min",
  [need, ...heads, gap, { name: "least", unit: "min" }],
  (inside, values) => {
    const [needed = Number.NaN, a = Number.NaN, b = Number.NaN, longestGap = Number.NaN, least = Number.NaN] = values;
    const [whole, found] = [Number.POSITIVE_INFINITY, longestGap].map((one) =>
      longestHold(inside, needed, [a, b], one),
    );
    const none = { value: 0, lines: ["no gap between readings shortens the hold"] };
    if (whole === undefined || whole.minutes < least || (found?.minutes ?? 0) >= least * (1 - 1e-9)) return none;
    const held = inside.slice(whole.first, whole.last + 1);
    const gaps = held.slice(1).map((row, index) => (at(row) - at(held[index] ?? row)) / minute);
    const value = Math.max(...gaps);
    const [before, after] = [held[gaps.indexOf(value)], held[gaps.indexOf(value) + 1]];
    if (before === undefined || after === undefined) return none;
    return { value, lines: [`nothing was read between ${said(before)} and ${said(after)}`], at: [after] };
  },
);

/** Named function `lowestHeld(readings, ΔA, ΔB)` in bar: the lowest pressure at the top in the hold of the report. */
export const lowestHeld = ofWindow(
  "lowestHeld",
  "lowest pressure at the top, by either gauge, after the pump was shut off and within the hold of the report",
  "bar",
  heads,
  (inside, [a = Number.NaN, b = Number.NaN], all) => {
    const values = inside.map((row) => lowest(row, [a, b]));
    const value = Math.min(...values);
    const row = inside[values.indexOf(value)];
    if (row === undefined || !Number.isFinite(value))
      return { refused: `no reading lies in the hold: ${statedHold(all)}` };
    return { value, lines: [`${short(value)} bar at ${said(row)}`], at: [row] };
  },
);

import { ownChoice } from "../../model/basis.ts";
import type { ListFunction, ListResult } from "../../model/calculation.ts";
import { date, quantity } from "../../model/input.ts";
import { dateIn, quantityIn, rowsThenNumbers, type Row } from "./arguments.ts";
import { short } from "../../model/print-number.ts";

/** What a reading of a pressure test is read with: its time, both gauges, and the water. */
export const reading = {
  time: date("time"),
  gaugeA: quantity("gaugeA", "bar"),
  gaugeB: quantity("gaugeB", "bar"),
  waterTemperature: quantity("waterTemperature", "°C"),
} as const;

const basis = ownChoice("found from the raw readings, never from the times somebody typed");
const rows = { name: "readings", unit: "rows" };
const need = { name: "need", unit: "bar" };
const heads = [
  { name: "ΔA", unit: "bar" },
  { name: "ΔB", unit: "bar" },
];
const gap = { name: "gap", unit: "min" };
const minute = 60_000;

/** What each gauge shows more than the pressure at the top, by the water above it. */
type Heads = readonly [number, number];

/** A stretch of readings in which both gauges stand at or above what is needed, without a gap. */
interface Hold {
  readonly first: number;
  readonly last: number;
  readonly minutes: number;
}

const at = (row: Row) => dateIn(row, "time").from;
const lowest = (row: Row, [a, b]: Heads) =>
  Math.min(quantityIn(row, "gaugeA").low - a, quantityIn(row, "gaugeB").low - b);
const isHigh = (row: Row, needed: number, above: Heads) => lowest(row, above) >= needed * (1 - 1e-9);
const mean = (row: Row) => (quantityIn(row, "gaugeA").value + quantityIn(row, "gaugeB").value) / 2;

/** Why these readings cannot be followed in time, or undefined. */
function disorder(readings: readonly Row[]): string | undefined {
  if (readings.length < 2) return `there are ${readings.length} readings; a hold needs at least two`;
  const day = readings.find((row) => dateIn(row, "time").precision === "day");
  if (day !== undefined) return `the reading of ${dateIn(day, "time").text} has no time of day`;
  const back = readings.find((row, index) => index > 0 && at(row) <= at(readings[index - 1] ?? row));
  return back === undefined
    ? undefined
    : `the reading of ${dateIn(back, "time").text} is not later than the one before it`;
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

/** Makes a function of the longest hold: refuses readings out of order, and a test in which nothing held. */
function ofHold(
  name: string,
  means: string,
  unit: string,
  compute: (inside: readonly Row[], hold: Hold) => ListResult,
): ListFunction {
  return {
    name,
    means,
    basis,
    parameters: [rows, need, ...heads, gap],
    unit,
    compute: rowsThenNumbers(
      (readings, [needed = Number.NaN, a = Number.NaN, b = Number.NaN, longestGap = Number.NaN]) => {
        const refused = disorder(readings);
        if (refused !== undefined) return { refused };
        const hold = longestHold(readings, needed, [a, b], longestGap);
        if (hold === undefined)
          return {
            refused: `no two readings in a row show ${short(needed)} bar at the top on both gauges within ${short(longestGap)} min`,
          };
        return compute(readings.slice(hold.first, hold.last + 1), hold);
      },
    ),
  };
}

/** Named function `holdMinutes(readings, need, ΔA, ΔB, gap)`: length of the longest hold in min, 0 where nothing held. */
export const holdMinutes: ListFunction = {
  name: "holdMinutes",
  means:
    "longest time in which both gauges show at least the pressure needed at the top, without a gap between readings",
  basis,
  parameters: [rows, need, ...heads, gap],
  unit: "min",
  compute: rowsThenNumbers(
    (readings, [needed = Number.NaN, a = Number.NaN, b = Number.NaN, longestGap = Number.NaN]) => {
      const refused = disorder(readings);
      if (refused !== undefined) return { refused };
      const hold = longestHold(readings, needed, [a, b], longestGap);
      const [from, to] = [readings[hold?.first ?? -1], readings[hold?.last ?? -1]];
      if (hold === undefined || from === undefined || to === undefined)
        return { value: 0, lines: [`no two readings in a row show ${short(needed)} bar at the top on both gauges`] };
      const span = `${dateIn(from, "time").text} to ${dateIn(to, "time").text}`;
      return {
        value: hold.minutes,
        lines: [
          `${span}: ${hold.last - hold.first + 1} of ${readings.length} readings, each at least ${short(needed)} bar at the top on both gauges`,
        ],
        at: decidedBy(readings, hold, needed, [a, b]),
      };
    },
  ),
};

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
  (inside) => fromStartToEnd(inside, (row) => quantityIn(row, "waterTemperature").value, "°C"),
);

/** Named function `waterMean(readings, need, ΔA, ΔB, gap)` in °C: mean of the water temperatures at start and end of the hold. */
export const waterMean = ofHold("waterMean", "mean water temperature of the hold", "°C", (inside) => {
  const [from, to] = ends(inside, (row) => quantityIn(row, "waterTemperature").value);
  return { value: (from + to) / 2, lines: [] };
});

function ends(inside: readonly Row[], valueOf: (row: Row) => number): readonly [number, number] {
  const values = inside.map(valueOf);
  return [values[0] ?? Number.NaN, values.at(-1) ?? Number.NaN];
}

function fromStartToEnd(inside: readonly Row[], valueOf: (row: Row) => number, unit: string): ListResult {
  const [from, to] = ends(inside, valueOf);
  return { value: to - from, lines: [`from ${short(from)} to ${short(to)} ${unit}`] };
}

/** Makes a function of all readings. */
function ofAll(
  name: string,
  means: string,
  unit: string,
  parameters: ListFunction["parameters"],
  compute: (readings: readonly Row[], above: Heads) => ListResult,
): ListFunction {
  return {
    name,
    means,
    basis,
    parameters: [rows, ...parameters],
    unit,
    compute: rowsThenNumbers((readings, [a = 0, b = 0]) =>
      readings.length === 0 ? { refused: "there are no readings" } : compute(readings, [a, b]),
    ),
  };
}

/** Named function `highestReading(readings, ΔA, ΔB)` in bar: the highest pressure at the top by either gauge. */
export const highestReading = ofAll(
  "highestReading",
  "highest pressure at the top by either gauge",
  "bar",
  heads,
  (readings, [a, b]) =>
    extreme(
      readings,
      (row) => Math.max(quantityIn(row, "gaugeA").high - a, quantityIn(row, "gaugeB").high - b),
      Math.max,
      "bar",
    ),
);

/** Named function `greatestDifference(readings, ΔA, ΔB)` in bar: how far the gauges stood apart, both taken at the top. */
export const greatestDifference = ofAll(
  "greatestDifference",
  "greatest difference between the two gauges in one reading, both taken at the top",
  "bar",
  heads,
  (readings, [a, b]) =>
    extreme(
      readings,
      (row) => {
        const [one, two] = [quantityIn(row, "gaugeA"), quantityIn(row, "gaugeB")];
        return Math.max(one.high - a - (two.low - b), two.high - b - (one.low - a));
      },
      Math.max,
      "bar",
    ),
);

/** Named function `coldestWater(readings)` in °C. */
export const coldestWater = ofAll("coldestWater", "lowest water temperature of all readings", "°C", [], (readings) =>
  extreme(readings, (row) => quantityIn(row, "waterTemperature").low, Math.min, "°C"),
);

function extreme(
  readings: readonly Row[],
  valueOf: (row: Row) => number,
  choose: (...values: number[]) => number,
  unit: string,
): ListResult {
  const values = readings.map(valueOf);
  const value = choose(...values);
  const row = readings[values.indexOf(value)];
  if (row === undefined || !Number.isFinite(value)) return { refused: "a reading states a bound instead of a value" };
  return { value, lines: [`${short(value)} ${unit} at ${dateIn(row, "time").text}`], at: [row] };
}

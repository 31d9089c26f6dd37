import type { ListFunction, ListResult } from "../../model/calculation.ts";
import { dateIn, quantityIn, rowsThenNumbers, type Row } from "./arguments.ts";
import { heads, readingBasis, rows, type Heads } from "./hold.ts";
import { short } from "../../model/print-number.ts";

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
    basis: readingBasis,
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
  (readings, [a, b]) => extreme(readings, (row) => apart(row, [a, b]), Math.max, "bar"),
);

const apart = (row: Row, [a, b]: Heads) => {
  const [one, two] = [quantityIn(row, "gaugeA"), quantityIn(row, "gaugeB")];
  return Math.max(one.high - a - (two.low - b), two.high - b - (one.low - a));
};

/**
 * Named function `steadyDifference(readings, ΔA, ΔB)` in bar: the least difference of the gauges at the top in any reading.
 * A difference that never goes away is not misread: a height is wrong, or a gauge is.
 */
export const steadyDifference = ofAll(
  "steadyDifference",
  "difference between the gauges that no reading goes below, both taken at the top",
  "bar",
  heads,
  (readings, above) => {
    const asRead = extreme(readings, (row) => apart(row, [0, 0]), Math.min, "bar");
    const least = extreme(readings, (row) => apart(row, above), Math.min, "bar");
    if ("refused" in least || "refused" in asRead) return least;
    const heads = `water above gauge A ${short(above[0])} bar, above gauge B ${short(above[1])} bar`;
    return { value: least.value, lines: [`${heads}; as read the gauges stand ${short(asRead.value)} bar apart`] };
  },
);

/** Named function `lowestOn…(readings)` in bar: the lowest value read on one gauge, as read. */
const lowestOn = (name: string, gauge: "gaugeA" | "gaugeB") =>
  ofAll(name, `lowest value read on gauge ${gauge.slice(-1)}`, "bar", [], (readings) =>
    extreme(readings, (row) => quantityIn(row, gauge).low, Math.min, "bar"),
  );
export const lowestOnA = lowestOn("lowestOnA", "gaugeA");
export const lowestOnB = lowestOn("lowestOnB", "gaugeB");

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

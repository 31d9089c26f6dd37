import { ownChoice } from "../../model/basis.ts";
import { canPrecede, hoursBetween, type DateValue } from "../../model/dates.ts";
import { anyOf, date, list, optional, quantity, text, things, thing, type Values } from "../../model/input.ts";
import { rule } from "../../model/rule.ts";
import { chartExamples } from "./chart-examples.ts";

const inputs = {
  type: text("type"),
  started: date("started"),
  finished: date("finished"),
  loading: optional(quantity("loadingTemperature", "°C")),
  heating: optional(quantity("heatingRate", "K/h")),
  cooling: optional(quantity("coolingRate", "K/h")),
  lowest: quantity("holdingLowest", "°C"),
  highest: quantity("holdingHighest", "°C"),
  time: quantity("holdingTime", "min"),
  readings: list(thing("readings[]", { time: date("time"), temperatures: list(quantity("temperatures[]", "°C")) })),
  thermocouples: anyOf(things("thermocouples[]", {})),
} as const;
type Given = Values<typeof inputs>;
type Reading = Given["readings"][number];

/** Rates read off a chart are no better than this. */
const rateSpare = 1.05;
/** Between two points of a hold: longer, and nobody knows what happened. */
const longestGap = 30;

const minutes = (a: DateValue, b: DateValue) => 60 * hoursBetween(a, b).least;
const low = ({ temperatures }: Reading) => Math.min(...temperatures.map(({ value }) => value));
const high = ({ temperatures }: Reading) => Math.max(...temperatures.map(({ value }) => value));
const shown = (value: number) => `${Number(value.toFixed(1))}`;
const chartHint =
  "compare with the chart and correct the points or the logged figure; if the chart says so, raise a nonconformity report";

/** What is wrong with the points as a series: times, count, and how many stand beside each other. */
function* series({ type, started, finished, readings, thermocouples }: Given, name: string) {
  const [first] = readings;
  if (first === undefined) return;
  const back = readings.find((one, index) => {
    const before = readings[index - 1];
    return before !== undefined && (minutes(before.time, one.time) < 0 || before.time.text === one.time.text);
  });
  if (back !== undefined)
    yield {
      at: [back, "time"],
      name: "order",
      message: `the chart of ${name} runs backwards, or stands still, at ${back.time.text}`,
      why: readings.map(({ time }) => time.text).join(", "),
      hint: chartHint,
    } as const;
  const outside = readings.find(
    ({ time }) => canPrecede(started, time) === "no" || canPrecede(time, finished) === "no",
  );
  if (outside !== undefined && back === undefined)
    yield {
      at: [outside, "time"],
      name: "outside",
      message: `the chart of ${name} has a point at ${outside.time.text}, outside of ${started.text} to ${finished.text}`,
      why: `${type} is entered with these times`,
      hint: chartHint,
    } as const;
  if (readings.length === 1)
    yield {
      at: [first, "time"],
      name: "one",
      message: `the chart of ${name} has one point, which shows no time at temperature`,
      why: first.time.text,
      hint: "add the points at the beginning and the end of the hold, and those between",
    } as const;
  const places = thermocouples.length === 0 ? first.temperatures.length : thermocouples.length;
  const odd = readings.find(({ temperatures }) => temperatures.length !== places);
  if (odd !== undefined)
    yield {
      at: [odd, "temperatures"],
      name: "count",
      message: `the chart of ${name} has ${odd.temperatures.length} temperatures at ${odd.time.text}, and ${places} thermocouples`,
      why: "each thermocouple has one temperature at each point",
      hint: "compare with the chart; say in the remarks which thermocouple failed and when",
      unsure: true,
    } as const;
}

/** What the points say of the hold, against what is logged of it. */
function* hold({ started, finished, lowest, highest, time, readings }: Given, name: string) {
  const hottest = readings.find((one) => high(one) > highest.value + highest.halfUnit);
  if (hottest !== undefined)
    yield {
      at: [hottest, "temperatures"],
      name: "hot",
      accuses: ["highest", [hottest, "temperatures"]],
      message: `the chart of ${name} shows ${shown(high(hottest))} °C at ${hottest.time.text}, above the highest that is logged, ${highest.text}`,
      why: "a point of the chart is no hotter than the hottest of the hold",
      hint: chartHint,
    } as const;
  const within = readings.map((one) => low(one) >= lowest.value - lowest.halfUnit);
  const begin = within.indexOf(true);
  const end = within.lastIndexOf(true);
  const [from, to] = [readings[begin], readings[end]];
  if (from === undefined || to === undefined) {
    yield {
      at: "lowest",
      name: "never",
      message: `the chart of ${name} has no point at ${lowest.text} or above, the lowest that is logged for the hold`,
      why: readings.map((one) => `${one.time.text}: ${shown(low(one))} °C`).join(", "),
      hint: chartHint,
    } as const;
    return;
  }
  const dip = readings.slice(begin, end).find((_, index) => within[begin + index] === false);
  if (dip !== undefined)
    yield {
      at: [dip, "temperatures"],
      name: "dip",
      message: `the chart of ${name} falls to ${shown(low(dip))} °C at ${dip.time.text}, below the lowest that is logged for the hold, ${lowest.text}`,
      why: "points before and after it are hot enough",
      hint: chartHint,
    } as const;
  const surely = minutes(from.time, to.time);
  const most = minutes(readings[begin - 1]?.time ?? started, readings[end + 1]?.time ?? finished);
  const slack = time.halfUnit + 1e-9;
  if (time.value > most + slack)
    yield {
      at: "time",
      name: "time",
      message: `${name} is logged as held for ${time.text}; its chart leaves room for ${shown(most)} min`,
      why: `hot enough from ${from.time.text} to ${to.time.text}`,
      hint: chartHint,
    } as const;
  else if (time.value > surely + slack && readings.length > 1)
    yield {
      at: "time",
      name: "time",
      message: `${name} is logged as held for ${time.text}; the points of its chart show ${shown(surely)} min`,
      why: `hot enough from ${from.time.text} to ${to.time.text}`,
      hint: "add the points of the chart at the beginning and the end of the hold",
      unsure: true,
    } as const;
  const gap = readings.slice(begin + 1, end + 1).find((one, index) => {
    const before = readings[begin + index];
    return before !== undefined && minutes(before.time, one.time) > longestGap;
  });
  if (gap !== undefined)
    yield {
      at: [gap, "time"],
      name: "gap",
      message: `the chart of ${name} has no point for more than ${longestGap} min before ${gap.time.text}`,
      why: "what happened between is not shown",
      hint: "add points from the chart",
      unsure: true,
    } as const;
}

/** Rates between points, which no logged greatest rate can be below. */
function* paces({ started, loading, heating, cooling, readings }: Given, name: string) {
  const points = [
    ...(loading === undefined || readings[0] === undefined
      ? []
      : [{ time: started, values: readings[0].temperatures.map(() => loading.value) }]),
    ...readings.map(({ time, temperatures }) => ({ time, values: temperatures.map(({ value }) => value) })),
  ];
  const slopes = points.slice(1).flatMap((point, index) => {
    const before = points[index];
    const hours = before === undefined ? 0 : hoursBetween(before.time, point.time).least;
    return before === undefined || hours <= 0
      ? []
      : point.values.map((value, couple) => ({
          rate: (value - (before.values[couple] ?? value)) / hours,
          at: point.time.text,
        }));
  });
  const fastest = slopes.toSorted((one, other) => other.rate - one.rate);
  const logged = [
    ["heating", heating, fastest[0], 1, "heating"],
    ["cooling", cooling, fastest.at(-1), -1, "cooling"],
  ] as const;
  for (const [at, rate, slope, sign, called] of logged)
    if (rate !== undefined && slope !== undefined && sign * slope.rate > rateSpare * rate.value)
      yield {
        at,
        name: at,
        message: `${name} is logged with a greatest rate of ${called} of ${rate.text}; its chart shows ${Math.round(sign * slope.rate)} K/h up to ${slope.at}`,
        why: "between two points of the chart the rate was that on average",
        hint: chartHint,
      } as const;
}

export const heatTreatmentChart = rule({
  id: "heat-treatment-chart",
  title: "The chart of a heat treatment shows what is logged of it",
  basis: ownChoice("temperatures, times and rates are worked out again from the points of the chart"),
  kind: "heat-treatment",
  severity: "nonconformity",
  owner: "welding coordination",
  inputs,
  *check(given, charge) {
    // That it ends before it begins is found by another rule.
    if (canPrecede(given.started, given.finished) === "no") return;
    const name = `${given.type} ${charge.name}`;
    const ordered = [...series(given, name)];
    yield* ordered;
    // Of points in no order nothing is worked out.
    if (ordered.some(({ name: what }) => what === "order")) return;
    yield* hold(given, name);
    yield* paces(given, name);
    const between = minutes(given.started, given.finished);
    if (given.time.value > 60 * hoursBetween(given.started, given.finished).most + given.time.halfUnit)
      yield {
        at: "time",
        name: "whole",
        message: `${name} is logged as held for ${given.time.text}; it lasted ${shown(between)} min as a whole`,
        why: `${given.started.text} to ${given.finished.text}`,
        hint: chartHint,
      };
  },
  examples: chartExamples,
});

import type { CalculationExample } from "../model/calculation.ts";

/** Readings every `step` minutes from 10:00, each [gauge A, gauge B, water in °C]. */
export const readingsEvery = (
  step: number,
  values: readonly (readonly [number, number, number])[],
  report: Readonly<Record<string, string>> = {},
) =>
  values.map(([a, b, water], index) => ({
    isolated: "2026-04-14T10:00+02:00",
    from: "2026-04-14T10:00+02:00",
    to: "2026-04-14T23:00+02:00",
    ...report,
    time: `2026-04-14T${String(10 + Math.floor((index * step) / 60)).padStart(2, "0")}:${String((index * step) % 60).padStart(2, "0")}+02:00`,
    gaugeA: `${a} bar`,
    gaugeB: `${b} bar`,
    waterTemperature: `${water} °C`,
  }));

type Reading = readonly [number, number, number];
const at = (count: number, reading: Reading): readonly Reading[] => Array.from({ length: count }, () => reading);
const up: Reading = [12, 12, 16];
const held: Reading = [20.2, 20.1, 16];
const test = {
  medium: 0,
  pn: 20.1,
  PTu: 21.25,
  PTr: 20.1,
  zA: 0,
  zB: 0,
  FSA: 40,
  cA: 0.006,
  FSB: 40,
  cB: 0.01,
  tmin: 30,
  gap: 5,
  Tw: 10,
  FSl: 30.15,
  Sm: 80.4,
};

export const pressureHoldExamples: readonly CalculationExample[] = [
  {
    source: "counted by hand: seven readings five minutes apart, gauge B exactly at the specified pressure",
    class: "constructed",
    given: { ...test, readings: readingsEvery(5, [up, ...at(7, held), up]) },
    expect: { th: 30, ph: 20.2, Δp: 0.1, Δc: 0.64, Tc: 16 },
    within: 1e-9,
  },
  {
    source: "counted by hand: one reading in the middle a tenth too low, 15 minutes remain",
    class: "constructed",
    given: { ...test, readings: readingsEvery(5, [...at(4, held), [20.1, 20, 16], ...at(3, held)]) },
    expect: { th: 15 },
    within: 1e-9,
  },
  {
    source: "counted by hand: six-minute steps leave no two readings within five minutes",
    class: "constructed",
    given: { ...test, readings: readingsEvery(6, at(7, held)) },
    expect: { th: 0 },
    within: 1e-9,
  },
  {
    source: "worked by hand: gauge B 2 m below the top shows 0.0981·2 more than is there; what was held is not enough",
    class: "constructed",
    given: { ...test, zB: -2, readings: readingsEvery(5, at(7, held)) },
    expect: { hA: 0, hB: 0.1962, th: 0, ph: 20.2, Δp: 0.2962 },
    within: 1e-9,
  },
  {
    source: "worked by hand: both gauges 2 m below the top, 20.1 + 0.1962 is there; 20.0 is stated as held",
    class: "constructed",
    given: { ...test, zA: -2, zB: -2, PTr: 20, readings: readingsEvery(5, at(7, [20.3, 20.2962, 16])) },
    expect: { hA: 0.1962, hB: 0.1962, th: 30, ph: 20.1038, Δp: 0.0038 },
    within: 1e-9,
  },
  {
    source: "counted by hand: the pump was still on for the first ten minutes, and the report ends the hold five early",
    class: "constructed",
    given: {
      ...test,
      readings: readingsEvery(5, at(9, held), {
        isolated: "2026-04-14T10:10+02:00",
        from: "2026-04-14T10:05+02:00",
        to: "2026-04-14T10:35+02:00",
      }),
    },
    expect: { th: 25, tg: 0, pl: 20.1 },
    within: 1e-9,
  },
  {
    source: "counted by hand: twenty minutes without a reading in the middle of what would have been 35",
    class: "constructed",
    given: { ...test, readings: [...readingsEvery(5, at(3, held)), ...readingsEvery(5, at(8, held)).slice(6)] },
    expect: { th: 10, tg: 20 },
    within: 1e-9,
  },
  {
    source: "constructed: a tenth more is stated as held than the lowest reading",
    class: "constructed",
    given: { ...test, PTr: 20.2, readings: readingsEvery(5, at(7, held)) },
    expect: { pl: 20.1, th: 30 },
    within: 1e-9,
  },
  {
    source:
      "worked by hand: gauge B hangs 10 m below the top by the record, and reads as if it hung at the top: 0.981 + 0.1",
    class: "constructed",
    given: { ...test, zB: -10, readings: readingsEvery(5, at(7, held)) },
    expect: { hB: 0.981, Δs: 1.081, Δp: 1.081 },
    within: 1e-9,
    outside: ["the heights of the gauges carry both readings to one pressure at the top"],
  },
  {
    source: "worked by hand: air weighs nothing, so a gauge 10 m lower reads the same",
    class: "constructed",
    given: { ...test, medium: 3, zB: -10, readings: readingsEvery(5, at(7, held)) },
    expect: { hB: 0, Δs: 0.1, th: 30 },
    within: 1e-9,
  },
  {
    source:
      "worked by hand: both scales begin at 10 bar: classes of a span of 30, and a reading of 9 that no such gauge shows",
    class: "constructed",
    given: { ...test, F0A: 10, F0B: 10, readings: readingsEvery(5, [[9, 9.5, 16], ...at(7, held)]) },
    expect: { SA: 30, SB: 30, Δc: 0.48, lA: 9, lB: 9.5 },
    within: 1e-9,
  },
  {
    source: "constructed: pumped above the highest pressure",
    class: "constructed",
    given: { ...test, readings: readingsEvery(5, [...at(7, held), [21.3, 21.2, 16]]) },
    expect: { th: 35, ph: 21.3 },
    within: 1e-9,
  },
  {
    source: "constructed: gauges apart by more than both classes",
    class: "constructed",
    given: { ...test, readings: readingsEvery(5, [...at(6, held), [20.8, 20.15, 16]]) },
    expect: { Δp: 0.65, Δc: 0.64 },
    within: 1e-9,
  },
  {
    source: "constructed: water at 9.9 °C",
    class: "constructed",
    given: { ...test, readings: readingsEvery(5, at(7, [20.2, 20.1, 9.9])) },
    expect: { Tc: 9.9 },
    within: 1e-9,
  },
  {
    source: "constructed: water at 10 °C, ranges of exactly 1.5 and 4 times the pressure needed",
    class: "constructed",
    given: {
      ...test,
      FSA: 30.15,
      cA: 0.006,
      FSB: 80.4,
      cB: 0.01,
      readings: readingsEvery(5, at(7, [20.2, 20.1, 10])),
    },
    expect: { Tc: 10 },
    within: 1e-9,
  },
  {
    source: "constructed: gauge A too short, gauge B too coarse",
    class: "constructed",
    given: { ...test, FSA: 25, cA: 0.006, FSB: 100, cB: 0.01, readings: readingsEvery(5, at(7, held)) },
    expect: { th: 30 },
    within: 1e-9,
  },
  {
    source: "constructed: gauge A too coarse, gauge B too short",
    class: "constructed",
    given: { ...test, FSA: 100, cA: 0.006, FSB: 25, cB: 0.01, readings: readingsEvery(5, at(7, held)) },
    expect: { th: 30 },
    within: 1e-9,
  },
  {
    source: "constructed: classes no test gauge has",
    class: "constructed",
    given: { ...test, FSA: 40, cA: 0.06, FSB: 40, cB: 0.06, readings: readingsEvery(5, at(7, held)) },
    expect: { Δc: 4.8 },
    within: 1e-9,
    outside: ["the class of gauge A is at most 4 %", "the class of gauge B is at most 4 %"],
  },
];

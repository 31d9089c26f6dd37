import { heldWith } from "./shared/held-through.ts";
import { pressureHoldExamples } from "./pressure-hold-examples.ts";
import { gapOfHold, holdMinutes, lowestHeld, reading } from "./functions/hold.ts";
import {
  coldestWater,
  greatestDifference,
  highestReading,
  lowestOnA,
  lowestOnB,
  steadyDifference,
} from "./functions/readings.ts";
import { classLimit, gaugeClass, gaugeInputs, lowestRead, spanAndHead } from "./shared/test-gauges.ts";
import { holdAccepted } from "./shared/hold-accepted.ts";
import { headPerMetre, testMedia } from "./functions/test-medium.ts";
import { ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

export const pressureHold = calculation({
  id: "pressure-hold",
  title: "Hold of the pressure test",
  basis: ownChoice("the hold is found in the raw readings of two gauges, within the times of the report"),
  covers:
    "Whether both gauges stood at or above the pressure needed for the time required, after the pump was shut off and within the hold of the report, without a gap between readings, without exceeding the highest pressure, and in agreement with each other once each is carried to the top by its height. Of a test with gas no more is judged than this: neither the energy stored nor the other pressure that a test with gas may have. It never replaces the look at every joint.",
  appliesTo: heldWith("water", "water with additive", "air", "nitrogen"),
  inputs: {
    medium: { path: "medium", unit: "1", means: "test medium", options: testMedia },
    readings: { path: "readings[]", unit: "rows", means: "time-stamped readings of both gauges", rows: reading },
    pn: {
      path: "equipment.calculation(test-limits).pn",
      unit: "bar",
      means: "pressure needed at the top",
      display: "p_need",
    },
    PTr: { path: "testPressure", unit: "bar", means: "test pressure stated as held, at the top", display: "P_T,held" },
    PTu: {
      path: "equipment.calculation(test-limits).pu",
      unit: "bar",
      means: "highest test pressure, at the top",
      display: "P_T,max",
    },
    ...gaugeInputs("A"),
    ...gaugeInputs("B"),
    tmin: { path: "profile.holdMinutes", unit: "min", means: "least time at the test pressure", display: "t_min" },
    gap: { path: "profile.maxReadingGap", unit: "min", means: "longest time between two readings", display: "t_gap" },
    Tw: {
      path: "profile.minWaterTemperature",
      unit: "°C",
      means: "lowest water temperature permitted",
      display: "T_min",
    },
    FSl: {
      path: "equipment.calculation(test-limits).FSl",
      unit: "bar",
      means: "least end of the scale of a gauge",
      display: "FS_min",
    },
    Sm: {
      path: "equipment.calculation(test-limits).Sm",
      unit: "bar",
      means: "greatest span of the scale of a gauge",
      display: "S_max",
    },
  },
  owes: [owedBy("quality", "pressure-test", "FSA", "cA", "FSB", "cB")],
  functions: [
    headPerMetre,
    holdMinutes,
    gapOfHold,
    lowestHeld,
    highestReading,
    greatestDifference,
    steadyDifference,
    lowestOnA,
    lowestOnB,
    coldestWater,
  ],
  steps: [
    {
      symbol: "w",
      unit: "bar/m",
      means: "pressure of a column of the test medium",
      formula: "headPerMetre(medium)",
    },
    ...spanAndHead("A"),
    ...spanAndHead("B"),
    {
      symbol: "th",
      unit: "min",
      means: "longest hold found",
      formula: "holdMinutes(readings, pn, hA, hB, gap)",
      display: "t_hold",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "tg",
      unit: "min",
      means: "time without a reading that shortened the hold",
      formula: "gapOfHold(readings, pn, hA, hB, gap, tmin)",
      display: "t_none",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "pl",
      unit: "bar",
      means: "lowest pressure at the top during the hold of the report",
      formula: "lowestHeld(readings, hA, hB)",
      display: "p_low",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "ph",
      unit: "bar",
      means: "highest pressure at the top",
      formula: "highestReading(readings, hA, hB)",
      display: "p_high",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "Δp",
      unit: "bar",
      means: "greatest difference between the gauges",
      formula: "greatestDifference(readings, hA, hB)",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "Δs",
      unit: "bar",
      means: "difference between the gauges that never went away",
      formula: "steadyDifference(readings, hA, hB)",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "Δc",
      unit: "bar",
      means: "difference that the classes of both gauges explain",
      formula: "cA*SA + cB*SB",
      round: { decimals: 2, direction: "down" },
      basis: gaugeClass,
    },
    {
      symbol: "Tc",
      unit: "°C",
      means: "coldest test medium",
      formula: "coldestWater(readings)",
      display: "T_c",
      round: { decimals: 1, direction: "down" },
    },
    ...lowestRead("A"),
    ...lowestRead("B"),
  ],
  limits: [
    {
      left: "Δs",
      relation: "<=",
      right: "Δc",
      means: "the heights of the gauges carry both readings to one pressure at the top",
      wrong:
        "carried to the top, the readings of the gauges differ by {left} throughout, more than the {right} of their classes: a height is wrong, or a gauge",
      basis: gaugeClass,
    },
    ...classLimit("A"),
    ...classLimit("B"),
  ],
  accept: holdAccepted,
  compared: [{ symbol: "th", unsafe: "high" }],
  owner: "quality",
  examples: pressureHoldExamples,
});

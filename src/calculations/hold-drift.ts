import { holdDriftExamples } from "./hold-drift-examples.ts";
import { slenderness, wallOfCourse } from "./functions/parts.ts";
import { coarsest, thermometer } from "./functions/instruments.ts";
import { pressureChange, reading, waterChange, waterMean } from "./functions/readings.ts";
import { waterCompressibility, waterExpansion } from "./functions/water.ts";
import { commonPractice, derivedFrom, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const balance = derivedFrom(
  "balance of volumes of a full vessel: water and steel expand with temperature, water yields and steel stretches with pressure",
);

export const holdDrift = calculation({
  id: "hold-drift",
  title: "Pressure drop of the hold and the temperature of the water",
  basis: balance,
  scope:
    "Whether the change of pressure during the hold is explained by the change of water temperature in a full vessel without air. The shell courses stand for the whole vessel. Temperature never excuses a leak that was seen, and this never replaces the look at every joint.",
  appliesTo: { kind: "pressure-test", when: [{ path: "medium", equals: ["water", "water with additive"] }] },
  inputs: {
    readings: { path: "readings[]", unit: "rows", means: "time-stamped readings of both gauges", rows: reading },
    courses: {
      path: 'book.part[role="shell-course"][pressureBearing="true"]',
      unit: "rows",
      means: "shell courses with diameter and thickness",
      rows: wallOfCourse,
    },
    pn: { path: "calculation(pressure-hold).pn", unit: "bar", means: "pressure needed at the top", display: "p_need" },
    gap: { path: "profile.maxReadingGap", unit: "min", means: "longest time between two readings", display: "t_gap" },
    hA: { path: "calculation(pressure-hold).hA", unit: "bar", means: "water head on gauge A", display: "Δ_A" },
    hB: { path: "calculation(pressure-hold).hB", unit: "bar", means: "water head on gauge B", display: "Δ_B" },
    rA: {
      path: 'gauges[gauge="A"].instrument.resolution',
      unit: "bar",
      means: "smallest difference that can be read on gauge A",
      display: "r_A",
    },
    rB: {
      path: 'gauges[gauge="B"].instrument.resolution',
      unit: "bar",
      means: "smallest difference that can be read on gauge B",
      display: "r_B",
    },
    thermometers: {
      path: "thermometers[]",
      unit: "rows",
      means: "thermometers with the smallest difference that can be read on them",
      rows: thermometer,
    },
    k: { path: "profile.complianceFactor", unit: "1", means: "factor of the elastic enlargement of the shell" },
  },
  functions: [coarsest, pressureChange, waterChange, waterMean, waterExpansion, waterCompressibility, slenderness],
  steps: [
    {
      symbol: "ΔP",
      unit: "bar",
      means: "change of pressure during the hold",
      formula: "pressureChange(readings, pn, hA, hB, gap)",
      round: { decimals: 3, direction: "nearest" },
    },
    {
      symbol: "ΔT",
      unit: "ΔK",
      means: "change of water temperature during the hold",
      formula: "waterChange(readings, pn, hA, hB, gap)",
      round: { decimals: 2, direction: "nearest" },
    },
    {
      symbol: "T",
      unit: "°C",
      means: "mean water temperature of the hold",
      formula: "waterMean(readings, pn, hA, hB, gap)",
      round: { decimals: 2, direction: "nearest" },
    },
    { symbol: "αw", unit: "1/K", means: "thermal expansion of water", formula: "waterExpansion(T)", display: "α_w" },
    {
      symbol: "κw",
      unit: "1/bar",
      means: "compressibility of water",
      formula: "waterCompressibility(T)",
      display: "κ_w",
    },
    {
      symbol: "s",
      unit: "1",
      means: "slenderness of the shell, greatest Di/e",
      formula: "slenderness(courses)",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "C",
      unit: "1/bar",
      means: "elastic enlargement of the shell, upper bound",
      formula: "k*s/'2100000 bar'",
      basis: derivedFrom("thin closed cylinder of steel, E = 210 000 MPa"),
    },
    {
      symbol: "g",
      unit: "bar/K",
      means: "change of pressure for each kelvin",
      formula: "(αw - 3*'0.000012 1/K') / (κw + C)",
      round: { decimals: 4, direction: "nearest" },
    },
    {
      symbol: "ΔPe",
      unit: "bar",
      means: "change of pressure that the temperature explains",
      formula: "g*ΔT",
      display: "ΔP_e",
      round: { decimals: 3, direction: "nearest" },
    },
    {
      symbol: "x",
      unit: "bar",
      means: "change of pressure left unexplained",
      formula: "ΔP - ΔPe",
      round: { decimals: 3, direction: "nearest" },
    },
    {
      symbol: "uP",
      unit: "bar",
      means: "uncertainty of the change of the mean of both gauges",
      formula: "sqrt((rA^2 + rB^2)/24)",
      display: "u_P",
      basis: derivedFrom(
        "two readings of each gauge, anywhere within half a resolution: r/(2·√3)·√2; half of each for the mean",
      ),
    },
    {
      symbol: "rT",
      unit: "ΔK",
      means: "smallest difference that can be read on the thermometers",
      formula: "coarsest(thermometers)",
      display: "r_T",
    },
    {
      symbol: "uT",
      unit: "ΔK",
      means: "uncertainty of a difference of two temperature readings",
      formula: "rT/sqrt(6)",
      display: "u_T",
      basis: derivedFrom("two readings, each anywhere within half a resolution: r/(2·√3)·√2"),
    },
    {
      symbol: "u",
      unit: "bar",
      means: "uncertainty of what is left unexplained",
      formula: "sqrt(uP^2 + (g*uT)^2 + (0.2*ΔPe)^2)",
      basis: ownChoice("resolutions, and a fifth of the explained change for the model"),
      round: { decimals: 3, direction: "down" },
    },
  ],
  limits: [
    { left: "T", relation: ">=", right: "'1 °C'", means: "the water is not about to freeze" },
    { left: "T", relation: "<=", right: "'40 °C'", means: "the water is at most 40 °C, as at a test" },
    {
      left: "x",
      relation: "<=",
      right: "2*u",
      means: "nothing was pumped in during the hold, and the thermometer tells the temperature of the water",
      basis: commonPractice("a pressure that rises without warming means topping up, which hides a leak"),
    },
  ],
  accept: [
    {
      left: "x",
      relation: ">=",
      right: "-2*u",
      means: "the pressure drop is explained by the temperature of the water",
      accuses: "readings",
    },
  ],
  compared: [{ symbol: "ΔPe", unsafe: "low", within: 0.05 }],
  owner: "quality",
  examples: holdDriftExamples,
});

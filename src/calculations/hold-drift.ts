import { heldWith } from "./shared/held-through.ts";
import { holdDriftExamples } from "./hold-drift-examples.ts";
import { slenderness, wallOfCourse } from "./functions/parts.ts";
import { coarsest, thermometer } from "./functions/instruments.ts";
import { reading } from "./functions/hold.ts";
import {
  greatestDrop,
  greatestRise,
  pressureChange,
  waterChange,
  waterMean,
  waterSpan,
} from "./functions/hold-changes.ts";
import { cylinderInWater, displaced, hoopInWater, yieldOfInternals } from "./functions/internals.ts";
import { driftExplained } from "./shared/hold-accepted.ts";
import { readOn } from "./shared/test-gauges.ts";
import { waterCompressibility, waterExpansion } from "./functions/water.ts";
import { derivedFrom, ownChoice } from "../model/basis.ts";
import { calculation, type CalculationInput } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const balance = derivedFrom(
  "balance of volumes of a full vessel: water and steel expand with temperature, water yields and steel stretches with pressure",
);

const inWater = (role: string, means: string, rows: NonNullable<CalculationInput["rows"]>): CalculationInput => ({
  path: `book.part[role="${role}"][pressureBearing="true"]`,
  unit: "rows",
  means: `${means} that stand in the water`,
  need: "any",
  rows,
});
const internals = "furnaces, hoops, chambers, accessTubes, tubes, stayTubes, V";

export const holdDrift = calculation({
  id: "hold-drift",
  title: "Pressure drop of the hold and the temperature of the water",
  basis: balance,
  covers:
    "Whether the change of pressure during the hold is explained by the change of water temperature in a full vessel without air. The shell courses stand for the whole vessel; furnaces, chambers and tubes in the water count with their own share, flat plates and bars do not. Temperature never excuses a leak that was seen, and this never replaces the look at every joint.",
  appliesTo: heldWith("water", "water with additive"),
  inputs: {
    readings: { path: "readings[]", unit: "rows", means: "time-stamped readings of both gauges", rows: reading },
    courses: {
      path: 'book.part[role="shell-course"][pressureBearing="true"]',
      unit: "rows",
      means: "shell courses with diameter and thickness",
      rows: wallOfCourse,
    },
    furnaces: inWater("furnace", "furnaces", cylinderInWater),
    hoops: inWater("furnace-hoop", "furnace hoops", hoopInWater),
    chambers: inWater("reversal-chamber", "reversal chambers", cylinderInWater),
    accessTubes: inWater("access-tube", "access tubes", cylinderInWater),
    tubes: inWater("tube", "smoke tubes", cylinderInWater),
    stayTubes: inWater("stay-tube", "stay tubes", cylinderInWater),
    V: {
      path: "equipment.volume",
      unit: "l",
      means: "volume of the water: of the equipment when full",
      unsafe: "high",
    },
    pn: {
      path: "equipment.calculation(test-limits).pn",
      unit: "bar",
      means: "pressure needed at the top",
      display: "p_need",
    },
    gap: { path: "profile.maxReadingGap", unit: "min", means: "longest time between two readings", display: "t_gap" },
    hA: { path: "calculation(pressure-hold).hA", unit: "bar", means: "water head on gauge A", display: "Δ_A" },
    hB: { path: "calculation(pressure-hold).hB", unit: "bar", means: "water head on gauge B", display: "Δ_B" },
    ...readOn("A"),
    ...readOn("B"),
    thermometers: {
      path: "thermometers[]",
      unit: "rows",
      means: "thermometers with the smallest difference that can be read on them",
      rows: thermometer,
    },
    k: { path: "profile.complianceFactor", unit: "1", means: "factor of the elastic enlargement of the shell" },
  },
  owes: [
    owedBy("quality", "pressure-test", "rA", "rB", "thermometers.resolution"),
    owedBy("design", "design-approved", "chambers.length", "accessTubes.length", "tubes.length", "stayTubes.length"),
  ],
  functions: [
    coarsest,
    pressureChange,
    waterChange,
    waterMean,
    waterSpan,
    waterExpansion,
    waterCompressibility,
    slenderness,
    displaced,
    yieldOfInternals,
    greatestDrop,
    greatestRise,
  ],
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
      symbol: "φ",
      unit: "1",
      means: "volume that stands in the water, by the volume of the water",
      formula: `displaced(${internals})`,
      round: { decimals: 3, direction: "up" },
    },
    {
      symbol: "sw",
      unit: "1",
      means: "slenderness of what stands in the water, each with its share of the water",
      formula: `yieldOfInternals(${internals})`,
      display: "s_w",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "C",
      unit: "1/bar",
      means: "room that a bar gives to the water, by the volume of the water, upper bound",
      formula: "k*(s*(1 + φ) + sw)/'2100000 bar'",
      basis: derivedFrom(
        "thin closed cylinder of steel, E = 210 000 MPa: hoop strain (1 − ν/2)·p·D/(2·e·E) twice and axial strain (1/2 − ν)·p·D/(2·e·E) once enlarge it by (5/4 − ν)·p·D/(e·E) of its own volume. The shell encloses the water and what stands in it, 1 + φ of the water's volume; what stands in the water shrinks by as much of its own. k = 5/4 leaves out ν and bounds both from above",
      ),
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
      symbol: "xd",
      unit: "bar",
      means: "greatest drop between two readings left unexplained",
      formula: "greatestDrop(readings, pn, hA, hB, gap, g)",
      display: "x_drop",
      round: { decimals: 3, direction: "nearest" },
    },
    {
      symbol: "xr",
      unit: "bar",
      means: "greatest rise between two readings left unexplained",
      formula: "greatestRise(readings, pn, hA, hB, gap, g)",
      display: "x_rise",
      round: { decimals: 3, direction: "nearest" },
    },
    {
      symbol: "ΔTs",
      unit: "ΔK",
      means: "from the coldest to the warmest water of the hold",
      formula: "waterSpan(readings, pn, hA, hB, gap)",
      display: "ΔT_span",
      round: { decimals: 2, direction: "nearest" },
    },
    {
      symbol: "uP",
      unit: "bar",
      means: "uncertainty of the change of the mean of both gauges",
      formula: "sqrt((rA^2 + sA^2 + rB^2 + sB^2)/24)",
      display: "u_P",
      basis: derivedFrom(
        "two readings of each gauge, anywhere within half a resolution and half the spread of repeated readings: r/(2·√3)·√2; half of each for the mean. What a gauge shows wrong both times alike falls out of a difference",
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
      formula: "sqrt(uP^2 + (g*uT)^2 + (0.2*g*ΔTs)^2)",
      basis: ownChoice("resolutions and repeatabilities, and a fifth of what the water can explain for the model"),
      round: { decimals: 3, direction: "down" },
    },
  ],
  limits: [
    { left: "T", relation: ">=", right: "'1 °C'", means: "the water is not about to freeze" },
    { left: "T", relation: "<=", right: "'40 °C'", means: "the water is at most 40 °C, as at a test" },
  ],
  accept: driftExplained,
  compared: [{ symbol: "ΔPe", unsafe: "low", within: 0.05 }],
  owner: "quality",
  examples: holdDriftExamples,
});

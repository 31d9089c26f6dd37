import { commonPractice, fromMemory } from "../../model/basis.ts";
import type { Acceptance, CalculationInput, CalculationStep, Limit } from "../../model/calculation.ts";

const range = commonPractice("range of a test gauge between 1.5 and 4 times the test pressure");
export const gaugeClass = fromMemory("EN 837-1", "1996", "limit of error: the class in percent of the span");

/** One of the two gauges of a test: what is asked of one is asked of the other. */
type Gauge = "A" | "B";

const at = (gauge: Gauge, path: string) => `gauges[gauge="${gauge}"].${path}`;

/** Height, scale and class of a gauge. */
export const gaugeInputs = (gauge: Gauge): Readonly<Record<string, CalculationInput>> => ({
  [`z${gauge}`]: {
    path: at(gauge, "elevation"),
    unit: "m",
    means: `height of gauge ${gauge} above the top`,
    display: `z_${gauge}`,
  },
  [`FS${gauge}`]: {
    path: at(gauge, "instrument.range.maximum"),
    unit: "bar",
    means: `range of gauge ${gauge}`,
    display: `FS_${gauge}`,
  },
  [`F0${gauge}`]: {
    path: at(gauge, "instrument.range.minimum"),
    unit: "bar",
    means: `beginning of the scale of gauge ${gauge}; nothing where none is recorded`,
    need: "optional",
    otherwise: 0,
    display: `F_0${gauge}`,
  },
  [`c${gauge}`]: {
    path: at(gauge, "instrument.accuracyClass"),
    unit: "1",
    means: `class of gauge ${gauge}, of its range`,
    display: `c_${gauge}`,
  },
});

/** How finely it is read, and how well readings of it repeat. */
export const readOn = (gauge: Gauge): Readonly<Record<string, CalculationInput>> => ({
  [`r${gauge}`]: {
    path: at(gauge, "instrument.resolution"),
    unit: "bar",
    means: `smallest difference that can be read on gauge ${gauge}`,
    display: `r_${gauge}`,
  },
  [`s${gauge}`]: {
    path: at(gauge, "instrument.repeatability"),
    unit: "bar",
    means: `spread of repeated readings of gauge ${gauge}; nothing where none is recorded`,
    need: "optional",
    otherwise: 0,
    display: `s_${gauge}`,
  },
});

/** Span of its scale, and the column of the test medium that presses on it. */
export const spanAndHead = (gauge: Gauge): readonly CalculationStep[] => [
  {
    symbol: `S${gauge}`,
    unit: "bar",
    means: `span of the scale of gauge ${gauge}`,
    formula: `FS${gauge} - F0${gauge}`,
    display: `S_${gauge}`,
  },
  {
    symbol: `h${gauge}`,
    unit: "bar",
    means: `water head on gauge ${gauge}`,
    formula: `-w*z${gauge}`,
    display: `Δ_${gauge}`,
    round: { decimals: 3, direction: "up" },
  },
];

/** The lowest value read on it, through the named function `lowestOnA` or `lowestOnB`. */
export const lowestRead = (gauge: Gauge): readonly CalculationStep[] => [
  {
    symbol: `l${gauge}`,
    unit: "bar",
    means: `lowest value read on gauge ${gauge}`,
    formula: `lowestOn${gauge}(readings)`,
    display: `l_${gauge}`,
  },
];

export const classLimit = (gauge: Gauge): readonly Limit[] => [
  {
    left: `c${gauge}`,
    relation: "<=",
    right: "0.04",
    means: `the class of gauge ${gauge} is at most 4 %`,
    wrong: `the class of gauge ${gauge} is {left} of its range, above {right}`,
    basis: gaugeClass,
  },
];

/** Its range holds the test pressure, and is fine enough to read it. */
export const rangeFits = (gauge: Gauge): readonly Acceptance[] => [
  {
    left: `FS${gauge}`,
    relation: ">=",
    right: "FSl",
    means: `the range of gauge ${gauge} reaches far enough`,
    wrong: `the range of gauge ${gauge} ends at {left}, below the {right} that the pressure needed asks for`,
    accuses: `FS${gauge}`,
    basis: range,
  },
  {
    left: `S${gauge}`,
    relation: "<=",
    right: "Sm",
    means: `the range of gauge ${gauge} is not too wide for the pressure`,
    wrong: `the span of gauge ${gauge} is {left}, above the {right} that the pressure needed allows`,
    accuses: `FS${gauge}`,
    basis: range,
  },
];

/** Below the beginning of a scale a hand shows nothing. */
export const aboveBeginning = (gauge: Gauge): readonly Acceptance[] => [
  {
    left: `l${gauge}`,
    relation: ">=",
    right: `F0${gauge}`,
    means: `nothing was read below the beginning of the scale of gauge ${gauge}`,
    wrong: `{left} was read on gauge ${gauge}, whose scale begins at {right}`,
    accuses: "readings",
  },
];

import { headPerMetre } from "./functions/test-medium.ts";
import { commonPractice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const given = { PT: 15.73, PTs: 15.8, PTu: 16.6738, kL: 1.5, kM: 4 };

export const testLimits = calculation({
  id: "test-limits",
  title: "What the pressure test is held against",
  basis: commonPractice(
    "both gauges stand at or above what is required and what is specified; range of a gauge 1.5 to 4 times that",
  ),
  covers:
    "Limits of the hydrostatic test of this equipment, known before it is made: the pressure needed at the top, the highest one, and the gauges it can be read on. A test with gas has other dangers, which nothing here covers.",
  appliesTo: { kind: "equipment" },
  inputs: {
    PT: {
      path: "calculation(test-pressure).PT",
      unit: "bar",
      means: "required test pressure, at the top",
      display: "P_T",
    },
    PTs: { path: "testPressure", unit: "bar", means: "specified test pressure, at the top", display: "P_T,spec" },
    PTu: {
      path: "calculation(test-pressure).PTu",
      unit: "bar",
      means: "highest test pressure, at the top",
      display: "P_T,max",
    },
    kL: {
      path: "profile.testGaugeRangeLeast",
      unit: "1",
      means: "least range as a multiple of the test pressure",
      display: "k_L",
    },
    kM: {
      path: "profile.testGaugeRangeMost",
      unit: "1",
      means: "greatest range as a multiple of the test pressure",
      display: "k_M",
    },
  },
  functions: [headPerMetre],
  steps: [
    {
      symbol: "w",
      unit: "bar/m",
      means: "what a gauge must read more for each metre it stands below the top, with water",
      formula: "headPerMetre(0)",
      round: { decimals: 4, direction: "up" },
    },
    {
      symbol: "pn",
      unit: "bar",
      means: "pressure needed at the top",
      formula: "max(PT, PTs)",
      display: "p_need",
      round: { decimals: 2, direction: "up" },
    },
    {
      symbol: "pu",
      unit: "bar",
      means: "highest pressure at the top",
      formula: "PTu",
      display: "p_max",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "FSl",
      unit: "bar",
      means: "end of the scale of a gauge",
      formula: "kL*pn",
      display: "FS_min",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "Sm",
      unit: "bar",
      means: "span of the scale of a gauge",
      formula: "kM*pn",
      display: "S_max",
      round: { decimals: 1, direction: "down" },
    },
  ],
  limits: [],
  accept: [],
  compared: [
    { symbol: "pn", unsafe: "low" },
    { symbol: "FSl", unsafe: "low" },
    { symbol: "Sm", unsafe: "high" },
  ],
  owner: "quality",
  announces: [
    {
      awaits: "<pressure-test:equipment>.readings[].gaugeA",
      remark: "pressures at the top of the equipment; where the gauges will stand is not known yet",
      limits: [
        { symbol: "pn", is: "at least" },
        { symbol: "pu", is: "at most" },
        { symbol: "w", is: "is" },
        { parameter: "holdMinutes", means: "time at the test pressure", is: "at least" },
        { parameter: "maxReadingGap", means: "time between two readings", is: "at most" },
        { parameter: "minWaterTemperature", means: "temperature of the test medium", is: "at least" },
        { symbol: "FSl", is: "at least" },
        { symbol: "Sm", is: "at most" },
        {
          path: "limits.maximumAllowablePressure",
          means: "pressure at which every joint is looked at",
          is: "at least",
        },
      ],
    },
  ],
  examples: [
    {
      source: "worked by hand: 15.8 specified above 15.73 required; 1.5·15.8 and 4·15.8",
      class: "constructed",
      given,
      expect: { pn: 15.8, pu: 16.6738, FSl: 23.7, Sm: 63.2, w: 0.0981 },
      within: 1e-9,
    },
    {
      source: "worked by hand: less is specified than is required, so that what is required counts",
      class: "constructed",
      given: { ...given, PTs: 15.7 },
      expect: { pn: 15.73, FSl: 23.595, Sm: 62.92 },
      within: 1e-9,
    },
    {
      source:
        "ASME BPVC Section VIII Division 1: the range of a test gauge is not less than 1½ and not more than 4 times the test pressure; here of 20 bar",
      class: "from memory",
      given: { ...given, PT: 20, PTs: 20 },
      expect: { FSl: 30, Sm: 80 },
      within: 1e-9,
    },
  ],
});

import { fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const parameter = (name: string, unit: string, means: string, display: string) =>
  ({ path: `profile.${name}`, unit, means, display }) as const;

/** What any safety valve of an equipment may be set to, before one is bought. */
export const valveSettings = calculation({
  id: "valve-settings",
  title: "What safety valves may be set to",
  basis: fromMemory("Directive 2014/68/EU", undefined, "Annex I, protection against exceeding the allowable limits"),
  covers:
    "Highest set pressures of the safety valves of this equipment. What they must relieve is computed apart; losses in their lines are not covered.",
  appliesTo: { kind: "equipment" },
  inputs: {
    PS: {
      path: "limits.maximumAllowablePressure",
      unit: "bar",
      means: "maximum allowable pressure, to which the first valve may be set",
      display: "P_S",
      unsafe: "high",
    },
    x: parameter("laterValveExcess", "1", "how far a later valve may be set above it", "x"),
  },
  steps: [
    {
      symbol: "pl",
      unit: "bar",
      means: "pressure to which a valve behind the first may be set",
      formula: "PS*(1 + x)",
      display: "p_later",
      round: { decimals: 3, direction: "down" },
    },
  ],
  limits: [],
  accept: [],
  compared: [{ symbol: "pl", unsafe: "high" }],
  announces: [
    {
      awaits: "book.safety-valve.setPressure",
      limits: [
        { symbol: "PS", is: "at most" },
        { symbol: "pl", is: "at most" },
        {
          parameter: "setPressureTolerance",
          means: "tolerance of the set pressure on the bench, as a share of it",
          is: "is",
        },
        { parameter: "setPressureToleranceLeast", means: "the same, where that share is less", is: "is" },
        { parameter: "valveOpeningsLeast", means: "openings on the bench", is: "at least" },
      ],
    },
  ],
  examples: [
    {
      source: "worked by hand: 10 bar and 3 % of it",
      class: "constructed",
      given: { PS: 10, x: 0.03 },
      expect: { pl: 10.3 },
      within: 1e-9,
    },
    {
      source: "worked by hand: no excess is allowed",
      class: "constructed",
      given: { PS: 11, x: 0 },
      expect: { pl: 11 },
      within: 1e-9,
    },
  ],
});

const down = { decimals: 3, direction: "down" } as const;
const up = { decimals: 3, direction: "up" } as const;
const given = { pset: 10, s: 0.03, sl: 0.1, bl: 0.02, bm: 0.15, bp: 0.3 };

/** What one valve has to show on the bench, by its set pressure. */
export const valveBenchLimits = calculation({
  id: "valve-bench-limits",
  title: "What a safety valve has to show on the bench",
  basis: fromMemory(
    "EN ISO 4126-1",
    undefined,
    "tolerance of the set pressure, 3 % or 0.1 bar, the greater; limits of the blowdown",
  ),
  covers:
    "Pressures between which a safety valve opens and, for gas and steam, closes again. Tightness of the seat is not covered.",
  appliesTo: { kind: "safety-valve" },
  inputs: {
    pset: { path: "setPressure", unit: "bar", means: "set pressure", display: "p_set" },
    s: parameter("setPressureTolerance", "1", "tolerance of the set pressure, as a share of it", "s"),
    sl: parameter("setPressureToleranceLeast", "bar", "least tolerance of the set pressure", "s_min"),
    bl: parameter("blowdownLeast", "1", "least blowdown, as a share of the set pressure", "b_min"),
    bm: parameter("blowdownMost", "1", "greatest blowdown, as a share of the set pressure", "b_max"),
    bp: parameter("blowdownMostPressure", "bar", "greatest blowdown, where that share is less", "b_p"),
  },
  steps: [
    { symbol: "Δ", unit: "bar", means: "tolerance of the set pressure", formula: "max(s*pset, sl)", round: down },
    {
      symbol: "po",
      unit: "bar",
      means: "pressure at which it opens",
      formula: "pset - Δ",
      display: "p_o,min",
      round: up,
    },
    {
      symbol: "pO",
      unit: "bar",
      means: "pressure at which it opens",
      formula: "pset + Δ",
      display: "p_o,max",
      round: down,
    },
    {
      symbol: "pc",
      unit: "bar",
      means: "pressure at which it closes, where that is recorded",
      formula: "pset - max(bm*pset, bp)",
      display: "p_c,min",
      round: up,
    },
    {
      symbol: "pC",
      unit: "bar",
      means: "pressure at which it closes, where that is recorded",
      formula: "pset*(1 - bl)",
      display: "p_c,max",
      round: down,
    },
  ],
  limits: [],
  accept: [],
  compared: [
    { symbol: "po", unsafe: "low" },
    { symbol: "pO", unsafe: "high" },
    { symbol: "pc", unsafe: "low" },
    { symbol: "pC", unsafe: "high" },
  ],
  owner: "supplier",
  announces: [
    {
      awaits: "bench.readings[].pop",
      limits: [
        { symbol: "po", is: "at least" },
        { symbol: "pO", is: "at most" },
        { symbol: "pc", is: "at least" },
        { symbol: "pC", is: "at most" },
        { parameter: "valveOpeningsLeast", means: "openings on the bench", is: "at least" },
      ],
    },
  ],
  examples: [
    {
      source: "worked by hand: 3 % of 10 bar; closes between 85 % and 98 %",
      class: "constructed",
      given,
      expect: { Δ: 0.3, po: 9.7, pO: 10.3, pc: 8.5, pC: 9.8 },
      within: 1e-9,
    },
    {
      source: "worked by hand: 1 bar, where the least tolerance and the difference of 0.3 bar govern",
      class: "constructed",
      given: { ...given, pset: 1 },
      expect: { Δ: 0.1, po: 0.9, pO: 1.1, pc: 0.7, pC: 0.98 },
      within: 1e-9,
    },
  ],
});

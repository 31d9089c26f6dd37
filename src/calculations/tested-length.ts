import { fromMemory } from "../model/basis.ts";
import type { AnnouncedLimit, AnnouncedSymbol, Announcement } from "../model/announcement.ts";
import { calculation } from "../model/calculation.ts";

type Limit = AnnouncedLimit | AnnouncedSymbol;

const rest: readonly Limit[] = [
  {
    parameter: "testingDelay",
    means: "rest after the last run, where steel and thickness ask for it and no heat treatment follows",
    is: "at least",
  },
  { parameter: "testingDelayThickness", means: "thickness above which a joint rests", is: "is" },
];

/** What is asked of one method beside the length. */
const more: Readonly<Record<string, { readonly remark?: string; readonly limits: readonly Limit[] }>> = {
  VT: { limits: [] },
  MT: { limits: rest },
  PT: { limits: rest },
  RT: {
    limits: [
      ...rest,
      { parameter: "radiographicClass", means: "class of the films (A basic, B improved)", is: "at least" },
    ],
  },
  UT: { limits: rest },
};

const announces = Object.entries(more).map(([method, { remark, limits }]): Announcement<Limit> => ({
  awaits: `record.<ndt-report:rows[].joint>[record.method="${method}"].length`,
  when: [
    { path: "record.requiredTests[].method", equals: method },
    { path: "method", equals: method },
  ],
  remark: remark ?? "overlaps count once",
  limits: [
    { symbol: "Lt", is: "at least" },
    { path: "record.qualityLevel", means: "quality level it is judged to, or a stricter one", is: "is" },
    ...limits,
  ],
}));

export const testedLength = calculation({
  id: "tested-length",
  title: "Length of a joint to be tested",
  basis: fromMemory("EN 13445-5", "2021", "extent of testing; the extent is the one the joint states"),
  covers:
    "Length that one method has to cover of one joint, by the extent its design asks for. Where on the joint, and what an extent in part is chosen by, is not covered.",
  appliesTo: { kind: "joint#requiredTests" },
  inputs: {
    x: { path: "extent", unit: "1", means: "share of the length to be tested", unsafe: "low" },
    L: { path: "record.length", unit: "mm", means: "length of the joint", unsafe: "low" },
  },
  steps: [
    {
      symbol: "Lt",
      unit: "mm",
      means: "length to be tested",
      formula: "x*L",
      display: "L_test",
      round: { decimals: 1, direction: "up" },
    },
  ],
  limits: [],
  accept: [],
  compared: [{ symbol: "Lt", unsafe: "low" }],
  owner: "testing",
  announces,
  examples: [
    {
      source: "worked by hand: a tenth of 3795 mm",
      class: "constructed",
      given: { x: 0.1, L: 3795 },
      expect: { Lt: 379.5 },
      within: 1e-9,
    },
    {
      source: "worked by hand: the whole length",
      class: "constructed",
      given: { x: 1, L: 1098 },
      expect: { Lt: 1098 },
      within: 1e-9,
    },
  ],
});

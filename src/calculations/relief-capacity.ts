import { capacityOfValve, totalCapacity } from "./functions/parts.ts";
import { fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const valve = (certified: number, recomputed: number) => ({
  certified: `${certified} kg/h`,
  recomputed: `${recomputed} kg/h`,
});

export const reliefCapacity = calculation({
  id: "relief-capacity",
  scope: "gas",
  title: "Relief capacity of all safety valves",
  basis: fromMemory("Directive 2014/68/EU", undefined, "Annex I, protection against exceeding the allowable limits"),
  covers:
    "Sum of the capacities of the safety valves for gas against the flow of the source they protect from. The flow of the source is taken as recorded.",
  appliesTo: { kind: "equipment", when: [{ path: "fluid.state", equals: "gas" }] },
  inputs: {
    valves: {
      path: 'book.safety-valve[medium.state="gas"]',
      unit: "rows",
      means: "safety valves with certified and recomputed capacity",
      rows: capacityOfValve,
    },
    Q: { path: "requiredFlow", unit: "kg/h", means: "flow of the source of pressure to be relieved", unsafe: "low" },
  },
  functions: [totalCapacity],
  steps: [
    {
      symbol: "Qs",
      unit: "kg/h",
      means: "capacity of all valves",
      formula: "totalCapacity(valves)",
      display: "Q_Σ",
      round: { decimals: 0, direction: "down" },
    },
  ],
  limits: [],
  accept: [
    {
      left: "Qs",
      relation: ">=",
      right: "Q",
      means: "the capacity of all valves covers the flow of the source",
      accuses: "Q",
    },
  ],
  compared: [{ symbol: "Qs", unsafe: "high" }],
  announces: [
    {
      awaits: "book.safety-valve.certifiedCapacity",
      remark: "certified capacities of all valves together",
      limits: [{ symbol: "Q", is: "at least" }],
    },
  ],
  examples: [
    {
      source: "worked by hand: 1980 + 1950, the lower of each pair",
      class: "constructed",
      given: { valves: [valve(1980, 1981.3), valve(1990, 1950)], Q: 3930 },
      expect: { Qs: 3930 },
      within: 1e-9,
    },
    {
      source: "constructed: one kilogram per hour short",
      class: "constructed",
      given: { valves: [valve(1980, 1981.3), valve(1990, 1950)], Q: 3931 },
      expect: { Qs: 3930 },
      within: 1e-9,
    },
  ],
});

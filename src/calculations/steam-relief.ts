import { capacityOfSteamValve, totalCapacity } from "./functions/parts.ts";
import { fromMemory, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const valve = (certified: number, recomputed: number) => ({
  certified: `${certified} kg/h`,
  recomputed: `${recomputed} kg/h`,
});

export const steamRelief = calculation({
  id: "steam-relief",
  scope: "steam",
  title: "Relief capacity of the safety valves of a boiler",
  basis: fromMemory("EN 12953-8", undefined, "capacity of the safety valves of a boiler"),
  covers:
    "Sum of the capacities of the safety valves for steam against the steam that the boiler can raise. The valves must be open to the same steam space; losses of inlet and discharge lines are not covered.",
  appliesTo: { kind: "equipment", when: [{ path: "fluid.state", equals: "steam" }] },
  inputs: {
    valves: {
      path: 'book.safety-valve[medium.state="steam"]',
      unit: "rows",
      means: "safety valves with certified and recomputed capacity",
      rows: capacityOfSteamValve,
    },
    D: { path: "duty.steamOutput", unit: "kg/h", means: "greatest continuous steam output", unsafe: "low" },
    Dmax: {
      path: "calculation(heat-balance).Dmax",
      unit: "kg/h",
      means: "steam that the greatest input of the burner can raise",
      display: "D_max",
      unsafe: "low",
    },
    Qr: {
      path: "requiredFlow",
      unit: "kg/h",
      means: "flow the safety valves must relieve, as recorded",
      display: "Q_rec",
      unsafe: "low",
    },
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
    {
      symbol: "Q",
      unit: "kg/h",
      means: "steam that the boiler can raise",
      formula: "max(D, Dmax)",
      basis: ownChoice("whatever was declared, the burner raises what its heat can raise"),
      round: { decimals: 0, direction: "up" },
    },
    {
      symbol: "Qn",
      unit: "kg/h",
      means: "flow to be relieved",
      formula: "max(Q, Qr)",
      display: "Q_req",
      round: { decimals: 0, direction: "up" },
    },
  ],
  limits: [],
  accept: [
    {
      left: "Qr",
      relation: ">=",
      right: "Q",
      means: "the recorded flow is not below what the boiler can raise",
      accuses: "Qr",
    },
    {
      left: "Qs",
      relation: ">=",
      right: "Qn",
      means: "the capacity of all valves covers the flow to be relieved",
      accuses: "valves",
    },
  ],
  compared: [
    { symbol: "Qs", unsafe: "high" },
    { symbol: "Qn", unsafe: "low" },
  ],
  announces: [
    {
      awaits: "book.safety-valve.certifiedCapacity",
      remark: "certified capacities of all valves together",
      limits: [{ symbol: "Qn", is: "at least" }],
    },
  ],
  examples: [
    {
      source: "worked by hand: 2100 + 2050, the lower of each pair, against the output",
      class: "constructed",
      given: { valves: [valve(2100, 2110), valve(2150, 2050)], D: 4150, Dmax: 4120.5, Qr: 4150 },
      expect: { Qs: 4150, Q: 4150, Qn: 4150 },
      within: 1e-9,
    },
    {
      source: "constructed: the burner raises half a kilogram per hour more than the valves relieve",
      class: "constructed",
      given: { valves: [valve(2100, 2110), valve(2150, 2050)], D: 4000, Dmax: 4150.5, Qr: 4200 },
      expect: { Qs: 4150, Q: 4150.5, Qn: 4200 },
      within: 1e-9,
    },
    {
      source: "constructed: the recorded flow was taken from the declared output alone",
      class: "constructed",
      given: { valves: [valve(4300, 4310)], D: 4000, Dmax: 4150.5, Qr: 4000 },
      expect: { Qs: 4300, Q: 4150.5, Qn: 4150.5 },
      within: 1e-9,
    },
  ],
});

import { breathingSorts, leastBreathing } from "./functions/breathing.ts";
import { excerptSeen } from "../model/basis.ts";
import { calculation, type CalculationInput } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const parameter = (name: string, unit: string, means: string, display: string): CalculationInput => ({
  path: `profile.${name}`,
  unit,
  means,
  display,
});
const law = { share: 0.05, so: 0.03, a0: 50, a1: 100, ats: 40, agt: 100, agf: 250 };
const between = (sort: string) => breathingSorts.indexOf(sort);

export const breathingSpace = calculation({
  id: "breathing-space",
  scope: "shell-boilers",
  title: "Breathing space of an end plate",
  basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 590"),
  covers:
    "Least clear width of flat plate between what holds it stiffly, so that furnace and tubes may grow without tearing it. Spaces to the wrapper of a reversal chamber need not be kept. That every space of the plate is recorded, and at its narrowest, is not checked; nor are reverse-flame, Cornish and Lancashire boilers covered.",
  appliesTo: { kind: "part#breathingSpaces" },
  inputs: {
    D: {
      path: "record.outsideDiameter",
      unit: "mm",
      means: "outside diameter of the plate, which is the shell's inside",
      unsafe: "low",
    },
    sort: { path: "between", unit: "1", means: "what the space lies between", options: breathingSorts },
    a: { path: "width", unit: "mm", means: "clear width at the narrowest place", unsafe: "high" },
    share: parameter("breathingShare", "1", "share of the diameter beside a furnace", "k_a"),
    so: parameter("breathingShareOther", "1", "share of the diameter elsewhere", "k_o"),
    a0: parameter("breathingLeast", "mm", "least space by diameter", "a_0"),
    a1: parameter("breathingMost", "mm", "space by diameter that is always enough", "a_1"),
    ats: parameter("breathingTubesShell", "mm", "least space between tubes and shell", "a_ts"),
    agt: parameter("breathingGussetTubes", "mm", "least space between gussets and tubes", "a_gt"),
    agf: parameter("breathingGussetFurnace", "mm", "least space between gussets and furnace", "a_gf"),
  },
  owes: [owedBy("design", "design-approved", "D")],
  functions: [leastBreathing],
  steps: [
    {
      symbol: "amin",
      unit: "mm",
      means: "least breathing space",
      formula: "leastBreathing(sort, D, share, so, a0, a1, ats, agt, agf)",
      display: "a_min",
      round: { decimals: 1, direction: "up" },
    },
  ],
  limits: [{ left: "a", relation: "<", right: "D", means: "the space lies within the plate" }],
  accept: [
    {
      left: "a",
      relation: ">=",
      right: "amin",
      means: "the breathing space is at least the least one",
      accuses: "a",
    },
  ],
  compared: [{ symbol: "amin", unsafe: "low" }],
  adopted: "a",
  examples: [
    {
      source: "Indian Boiler Regulations 1950, regulation 590, worked by hand: 5 % of 1900; exactly as wide",
      class: "second method",
      given: { ...law, D: 1900, sort: between("furnace-shell"), a: 95 },
      expect: { amin: 95 },
      within: 1e-9,
    },
    {
      source: "Indian Boiler Regulations 1950, regulation 590, worked by hand: 5 % of 1900, a millimetre too narrow",
      class: "second method",
      given: { ...law, D: 1900, sort: between("furnace-tubes"), a: 94 },
      expect: { amin: 95 },
      within: 1e-9,
    },
    {
      source: "Indian Boiler Regulations 1950, regulation 590, worked by hand: elsewhere 3 % of 1900",
      class: "second method",
      given: { ...law, D: 1900, sort: between("other"), a: 60 },
      expect: { amin: 57 },
      within: 1e-9,
    },
    {
      source: "constructed: wider than the plate",
      class: "constructed",
      given: { ...law, D: 900, sort: between("tubes-shell"), a: 900 },
      expect: { amin: 40 },
      within: 1e-9,
      outside: ["the space lies within the plate"],
    },
  ],
});

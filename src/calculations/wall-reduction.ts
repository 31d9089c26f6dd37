import { wallReduction as reduced } from "./functions/expansion.ts";
import { wallReductionExamples } from "./wall-reduction-examples.ts";
import { commonPractice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

export const wallReduction = calculation({
  id: "wall-reduction",
  title: "Reduction of the wall of an expanded tube end",
  basis: commonPractice("reduction of the wall by rolling, from the sizes of hole, tube and bore as measured"),
  covers:
    "One tube end of the sample, from its own measured sizes. What the joint holds, the length that is expanded, and the yielding of the hole are not covered.",
  appliesTo: {
    kind: "tube-end-group#measured",
    when: [{ path: "record.joining", equals: ["expanded", "expanded-and-welded"] }],
  },
  inputs: {
    H: { path: "holeDiameter", unit: "mm", means: "diameter of the hole" },
    D: { path: "tubeOutside", unit: "mm", means: "outside diameter of the tube before" },
    d0: { path: "insideBefore", unit: "mm", means: "inside diameter of the tube before", display: "d_0" },
    d1: { path: "insideAfter", unit: "mm", means: "inside diameter of the tube after", display: "d_1" },
    j: {
      path: "record.joining",
      unit: "1",
      means: "how the end is joined",
      options: ["expanded", "expanded-and-welded", "welded"],
    },
    r: {
      path: "wallReduction",
      unit: "%",
      means: "reduction as the shop recorded it",
      need: "optional",
      display: "ε_r",
    },
    εe: {
      path: "profile.wallReductionLeast",
      unit: "%",
      means: "least reduction of an end that only expanding holds",
      display: "ε_e",
    },
    εw: {
      path: "profile.wallReductionLeastWelded",
      unit: "%",
      means: "least reduction of an end that is welded as well",
      display: "ε_w",
    },
    εmax: { path: "profile.wallReductionMost", unit: "%", means: "greatest reduction", display: "ε_max" },
    Δ: { path: "profile.wallReductionTolerance", unit: "%", means: "tolerance of the recorded figure" },
  },
  functions: [reduced],
  steps: [
    {
      symbol: "ε",
      unit: "%",
      means: "reduction of the wall",
      formula: "wallReduction(H, D, d0, d1)",
      round: { decimals: 1, direction: "nearest" },
    },
    {
      symbol: "εmin",
      unit: "%",
      means: "least reduction of an end joined so",
      formula: "εe - j*(εe - εw)",
      display: "ε_min",
    },
    {
      symbol: "s",
      unit: "mm",
      means: "clearance of the tube in its hole",
      formula: "H - D",
      round: { decimals: 2, direction: "nearest" },
    },
  ],
  announces: [
    {
      awaits: "insideAfter",
      limits: [
        { symbol: "εmin", is: "at least" },
        { symbol: "εmax", is: "at most" },
      ],
    },
  ],
  limits: [
    { left: "j", relation: "<=", right: "1", means: "the end is expanded", wrong: "the end is not expanded" },
    { left: "s", relation: "<=", right: "'2 mm'", means: "the hole belongs to this tube: at most 2 mm wider" },
  ],
  accept: [
    { left: "ε", relation: ">=", right: "εmin", means: "the wall is reduced enough to hold", accuses: "d1" },
    { left: "ε", relation: "<=", right: "εmax", means: "the wall is not rolled too thin", accuses: "d1" },
    {
      left: "r",
      relation: "<=",
      right: "ε + Δ",
      means: "the recorded reduction is not more than the measured sizes give",
      wrong:
        "the recorded reduction is {left}, but the measured sizes give {ε} and their digits explain {right} at most",
      accuses: "r",
      needs: "r",
    },
    {
      left: "r",
      relation: ">=",
      right: "ε - Δ",
      means: "the recorded reduction is not less than the measured sizes give",
      wrong:
        "the recorded reduction is {left}, but the measured sizes give {ε} and their digits explain {right} at least",
      accuses: "r",
      needs: "r",
    },
  ],
  compared: [{ symbol: "ε", unsafe: "any" }],
  owner: "shop",
  examples: wallReductionExamples,
});

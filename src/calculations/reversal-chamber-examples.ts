import { cylinder, sharedExamples } from "./shared/external-examples.ts";
import type { CalculationExample } from "../model/calculation.ts";

const own = { enmin: 10, enmax: 30 };

export const chamberExamples: readonly CalculationExample[] = [
  ...sharedExamples(own),
  {
    source:
      "both conditions solved for the thickness by bisection on the pressure, outside this program; a short wide wrapper",
    class: "second method",
    given: { ...cylinder, ...own, p: 1, Do: 1300, en: 16, L: 600, Rp02: 184.07, t: 263.1 },
    expect: { d: 1284, E: 194583, epl: 12.10805, eel: 7.68452, ereq: 13.15805, ppl: 1.328069, pel: 5.279116 },
    within: 0.000001,
  },
  {
    source: "constructed: thinner than any reversal chamber",
    class: "constructed",
    given: { ...cylinder, ...own, en: 9.9 },
    expect: { ea: 8.85 },
    within: 1e-9,
    outside: ["the nominal thickness is at least the least of a reversal chamber"],
  },
  {
    source: "constructed: thicker than a heated cylinder may be",
    class: "constructed",
    given: { ...cylinder, ...own, en: 30.1 },
    expect: { ea: 29.05 },
    within: 1e-9,
    outside: ["the nominal thickness is at most the greatest of a heated cylinder"],
  },
];

import { cylinder, sharedExamples } from "./shared/external-examples.ts";
import type { CalculationExample } from "../model/calculation.ts";

export const accessTubeExamples: readonly CalculationExample[] = [
  ...sharedExamples({ heat: 0 }),
  {
    source:
      "both conditions solved for the thickness by bisection on the pressure, outside this program; a pipe with the factor 2 of parts no flame reaches",
    class: "second method",
    given: { ...cylinder, heat: 1, p: 1, Do: 406.4, en: 10, L: 350, Rp02: 209, t: 190, S1: 2, δ: 1.25 },
    expect: { d: 396.4, E: 199800, epl: 3.595614, eel: 3.027808, ereq: 5.595614, ppl: 3.092449, pel: 11.3476 },
    within: 0.000001,
  },
  {
    source: "constructed: in the path of the flame",
    class: "constructed",
    given: { ...cylinder, heat: 2 },
    expect: { ea: 18.95 },
    within: 1e-9,
    outside: ["no flame reaches the tube, as its safety factor takes for granted"],
  },
];

import { cylinder, sharedExamples } from "./shared/external-examples.ts";
import type { CalculationExample } from "../model/calculation.ts";

const own = { l: 900, enmin: 7, enmax: 22, Lmax: 3000 };
const bisection = "both conditions solved for the thickness by bisection on the pressure, outside this program";

export const furnaceExamples: readonly CalculationExample[] = [
  ...sharedExamples(own),
  {
    source: `${bisection}; two hoops part 4.1 m into three lengths`,
    class: "second method",
    given: { ...cylinder, ...own, l: 4100, hoops: [{ quantity: 2 }] },
    expect: { Lm: 1366.666667, epl: 16.836428 },
    within: 0.000001,
  },
  {
    source: "constructed: one hoop of two is not recorded",
    class: "constructed",
    given: { ...cylinder, ...own, l: 4100, hoops: [{ quantity: 1 }] },
    expect: { Lm: 2050 },
    within: 1e-9,
  },
  {
    source: `${bisection}; plain over the greatest length, exactly`,
    class: "second method",
    given: { ...cylinder, ...own, l: 3000, L: 3000, hoops: [] },
    expect: { Lm: 3000, epl: 20.095886, eel: 14.29008 },
    within: 0.000001,
  },
  {
    source: `${bisection}; plain over 3.1 m`,
    class: "second method",
    given: { ...cylinder, ...own, l: 3100, L: 3100, hoops: [] },
    expect: { Lm: 3100, epl: 20.225169, eel: 14.478742 },
    within: 0.000001,
  },
  {
    source: "constructed: thinner than any furnace",
    class: "constructed",
    given: { ...cylinder, ...own, Do: 500, en: 6.9 },
    expect: { ea: 5.85 },
    within: 1e-9,
    outside: ["the nominal thickness is at least the least of a furnace"],
  },
  {
    source: "constructed: thicker than any furnace",
    class: "constructed",
    given: { ...cylinder, ...own, en: 22.1 },
    expect: { ea: 21.05 },
    within: 1e-9,
    outside: ["the nominal thickness is at most the greatest of a furnace"],
  },
];

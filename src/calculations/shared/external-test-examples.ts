import type { CalculationExample } from "../../model/calculation.ts";

const cylinder = { PT: 2, d: 1030, uc: 1.5, L: 1370, en: 20, δ: 0.3, ReH: 255, S1: 1.6, S20: 2.2, S2u: 3, us: 1.5 };
const bisection = "both conditions for the thickness solved for the pressure by bisection, outside this program";

export const externalTestExamples: readonly CalculationExample[] = [
  {
    source: `${bisection}; yielding out of round governs`,
    class: "second method",
    given: cylinder,
    expect: { e: 19.7, E: 212000, S2: 2.2, ppl: 3.831129, pel: 9.529622, pmax: 3.831129 },
    within: 0.000001,
  },
  {
    source: `${bisection}; less round: the greater factor`,
    class: "second method",
    given: { ...cylinder, uc: 1.8 },
    expect: { S2: 3, ppl: 3.546306, pel: 6.988389 },
    within: 0.000001,
  },
  {
    source: `${bisection}; a long thin cylinder collapses before it yields, at less than the test pressure`,
    class: "second method",
    given: { ...cylinder, PT: 0.7, L: 3000, en: 9, δ: 0 },
    expect: { ppl: 0.837542, pel: 0.613926, pmax: 0.613926 },
    within: 0.000001,
  },
];

import type { CalculationExample } from "../model/calculation.ts";

const boiler = { D: 4000, x: 0.03, pw: 9, PS: 10, patm: 1.013, tw: 105, th: 105, B: 2900, η: 0.9, kB: 0.1, kA: 0.01 };
const another = "the same equations of state in another program";

export const heatBalanceExamples: readonly CalculationExample[] = [
  {
    source: `${another}; the stated output from and at 100 °C rounded to 10 kg/h`,
    class: "second method",
    given: { ...boiler, DA: 4140 },
    expect: {
      hs: 2777.1689,
      hb: 762.9322,
      hw: 440.8642,
      Φ: 2606.6296,
      ΦB: 2610,
      F: 1.0351372,
      DF: 4140.5488,
      Dmax: 4021.7358,
    },
    within: 0.0001,
  },
  {
    source: `${another}; hotter feedwater raises more steam, and the actual output is stated as that from and at 100 °C`,
    class: "second method",
    given: { ...boiler, th: 110, DA: 4000 },
    expect: { hh: 461.9876, DF: 4140.5488, Dmax: 4058.4296 },
    within: 0.0001,
  },
  {
    source: `${another}; above 31 bar the enthalpy of steam falls with pressure`,
    class: "second method",
    given: { ...boiler, pw: 32, PS: 40, D: 3900 },
    expect: { hs: 2803.1284, hS: 2800.3879, hm: 2800.3879, Dmax: 3985.0349 },
    within: 0.0001,
  },
  {
    source: "constructed: a tenth more output than the burner can give",
    class: "constructed",
    given: { ...boiler, D: 4400 },
    expect: { Φ: 2867.2926, ΦB: 2610 },
    within: 0.0001,
  },
  {
    source: "constructed: a burner a fifth too large, and feedwater hotter at full output than at most",
    class: "constructed",
    given: { ...boiler, B: 3480, th: 100 },
    expect: { ΦB: 3132 },
    within: 0.0001,
  },
  {
    source: "constructed: more heat than the fuel holds",
    class: "constructed",
    given: { ...boiler, η: 1.01 },
    expect: { ΦB: 2929 },
    within: 1e-9,
    outside: ["the efficiency is at most 100 % of the net calorific value"],
  },
  {
    source: "constructed: working pressure above the allowable one",
    class: "constructed",
    given: { ...boiler, pw: 10.1 },
    expect: { ΦB: 2610 },
    within: 1e-9,
    outside: ["the working pressure is not above the maximum allowable pressure"],
  },
];

import type { CalculationExample } from "../model/calculation.ts";

const profile = { kc: 2, kr: 4, Δ: 15, tmin: 250 };

export const metalTemperatureExamples: readonly CalculationExample[] = [
  {
    source: "worked by hand: a furnace of 16 mm at 10 bar, 184.1 + 4·16 + 15, stated so",
    class: "constructed",
    given: { ts: 184.1, heating: 2, e: 16, ...profile, tP: 263.1 },
    expect: { tr: 263.1, t: 263.1 },
    within: 1e-9,
  },
  {
    source: "worked by hand: a thin wrapper, 184.1 + 4·10 + 15 is below 250; stated as the sum",
    class: "constructed",
    given: { ts: 184.1, heating: 2, e: 10, ...profile, tP: 239.1 },
    expect: { tr: 250, t: 250 },
    within: 1e-9,
  },
  {
    source: "worked by hand: a tube plate of 20 mm swept by gas, 184.1 + 2·20 + 15",
    class: "constructed",
    given: { ts: 184.1, heating: 1, e: 20, ...profile },
    expect: { tc: 239.1, t: 239.1 },
    within: 1e-9,
  },
  {
    source: "constructed: a shell that no gas heats is as warm as the water",
    class: "constructed",
    given: { ts: 184.1, heating: 0, e: 12, ...profile },
    expect: { t: 184.1 },
    within: 1e-9,
  },
];

import type { CalculationExample } from "../model/calculation.ts";

const points = (values: readonly (readonly [number, number])[]) =>
  values.map(([temperature, strength]) => ({ temperature: `${temperature} °C`, proofStrength: `${strength} MPa` }));
const plate265 = points([
  [50, 256],
  [100, 241],
  [150, 223],
  [200, 205],
  [250, 188],
]);

export const designStressExamples: readonly CalculationExample[] = [
  {
    source: "worked by hand: tabulated temperature, the yield strength governs: 205/1.5 against 410/2.4",
    class: "constructed",
    given: { tE: 200, ReH: 265, Rm: 410, points: plate265, SY: 1.5, ST: 2.4 },
    expect: { Rp02: 205, f: 136.6667, f20: 170.8333 },
    within: 0.0001,
  },
  {
    source: "worked by hand: 20 °C to 50 °C from the yield strength, 265 − 9·(10/30); the tensile strength governs",
    class: "constructed",
    given: { tE: 30, ReH: 265, Rm: 410, points: plate265, SY: 1.5, ST: 2.4 },
    expect: { Rp02: 262, f: 170.8333, f20: 170.8333 },
    within: 0.0001,
  },
  {
    source: "worked by hand: interpolation between 100 °C and 150 °C, 241 − 18·0.4",
    class: "constructed",
    given: { tE: 100, tP: 120, ReH: 265, Rm: 410, points: plate265, SY: 1.5, ST: 2.4 },
    expect: { Rp02: 233.8, f: 155.8667 },
    within: 0.0001,
  },
  {
    source: "worked by hand: at the end of the range without creep, 160 − 10·0.6 between 350 °C and 400 °C",
    class: "constructed",
    given: {
      tE: 380,
      ReH: 265,
      Rm: 410,
      points: points([
        [350, 160],
        [400, 150],
      ]),
      SY: 1.5,
      ST: 2.4,
    },
    expect: { Rp02: 154, f: 102.6667 },
    within: 0.0001,
  },
  {
    source: "constructed: one kelvin into the creep range",
    class: "constructed",
    given: {
      tE: 381,
      ReH: 265,
      Rm: 410,
      points: points([
        [350, 160],
        [400, 150],
      ]),
      SY: 1.5,
      ST: 2.4,
    },
    expect: { Rp02: 153.8 },
    within: 0.0001,
    outside: ["the calculation temperature lies below the creep range"],
  },
  {
    source: "worked by hand: a furnace hotter than the equipment, 188 − 15·13.1/50 between 250 °C and 300 °C",
    class: "constructed",
    given: {
      tE: 185,
      tM: 263.1,
      ReH: 265,
      Rm: 410,
      points: points([
        [200, 205],
        [250, 188],
        [300, 173],
      ]),
      SY: 1.5,
      ST: 2.4,
    },
    expect: { t: 263.1, Rp02: 184.07, f: 122.7133 },
    within: 0.0001,
  },
  {
    source: "worked by hand: a tube hotter than the equipment, 170 − 20·9.1/50 between 200 °C and 250 °C",
    class: "constructed",
    given: {
      tE: 185,
      tT: 209.1,
      ReH: 235,
      Rm: 360,
      points: points([
        [200, 170],
        [250, 150],
      ]),
      SY: 1.5,
      ST: 2.4,
    },
    expect: { t: 209.1, Rp02: 166.36, f: 110.9067 },
    within: 0.0001,
  },
];

import type { CalculationExample } from "../model/calculation.ts";

export const saturationExamples: readonly CalculationExample[] = [
  {
    source: "the same equations in another program, saturation by bisection of the pressure equation",
    class: "second method",
    given: { PS: 10, patm: 1.013, TS: 185, limits: [{ temperature: "185 °C" }] },
    expect: { p: 11.013, ts: 184.122062, vs: 0.177235437, hb: 781.430012, hs: 2780.710174, τ: 0.293347414 },
    within: 1e-6,
  },
  {
    source: "the same equations in another program; the temperature was taken at 13 bar absolute instead of gauge",
    class: "second method",
    given: { PS: 13, patm: 1.013, TS: 191.6, limits: [{ temperature: "191.6 °C" }] },
    expect: { ts: 195.090726, vs: 0.140642015, hb: 830.326552, hs: 2788.92227 },
    within: 1e-6,
  },
  {
    source: "constructed: 184.12 °C, written as a whole degree",
    class: "constructed",
    given: { PS: 10, patm: 1.013, TS: 184, limits: [{ temperature: "184 °C" }] },
    expect: { r: 0.5 },
    within: 1e-9,
  },
  {
    source: "constructed: the same with a decimal is too low",
    class: "constructed",
    given: { PS: 10, patm: 1.013, TS: 184, limits: [{ temperature: "184.0 °C" }] },
    expect: { r: 0.05 },
    within: 1e-9,
  },
];

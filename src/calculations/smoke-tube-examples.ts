import type { CalculationExample } from "../model/calculation.ts";

const tube = { p: 1.3, do: 60.3, en: 4, f: 100, c: 0.75, δ: 0.5 };
const mm = (...values: readonly number[]) => values.map((value) => ({ value: `${value} mm` }));

export const smokeTubeExamples: readonly CalculationExample[] = [
  {
    source: "worked by hand: 1.3·60.3/(1.6·100), every wall thick enough",
    class: "constructed",
    given: { ...tube, measured: mm(3.8, 3.9) },
    expect: { e: 0.4899375, ereq: 1.7399375, ea: 2.75, pmax: 7.296849, em: 3.8, emin: 1.2399375 },
    within: 0.000001,
  },
  {
    source: "worked by hand: 10·50/(1.6·100) = 3.125, nominal and measured exactly what is needed",
    class: "constructed",
    given: { ...tube, p: 10, do: 50, en: 4.375, measured: mm(3.875) },
    expect: { e: 3.125, ereq: 4.375, ea: 3.125, pmax: 10, em: 3.875, emin: 3.875 },
    within: 1e-9,
  },
  {
    source: "worked by hand: the same, nominal and measured a tenth of a millimetre too thin",
    class: "constructed",
    given: { ...tube, p: 10, do: 50, en: 4.275, measured: mm(3.775) },
    expect: { ereq: 4.375, emin: 3.875 },
    within: 1e-9,
  },
  {
    source: "worked by hand: pressure a fifth of the design stress, 20·60.3/160",
    class: "constructed",
    given: { ...tube, p: 20, en: 12 },
    expect: { e: 7.5375 },
    within: 1e-9,
  },
  {
    source: "constructed: pressure above a fifth of the design stress",
    class: "constructed",
    given: { ...tube, p: 20.1, en: 12 },
    expect: { ea: 10.75 },
    within: 1e-9,
    outside: ["the pressure is small against the design stress"],
  },
  {
    source: "constructed: walls that meet in the middle",
    class: "constructed",
    given: { ...tube, do: 60, en: 30 },
    expect: { ea: 28.75 },
    within: 1e-9,
    outside: ["the walls leave a bore"],
  },
  {
    source: "worked by hand: the greatest tube, 1.3·200/160",
    class: "constructed",
    given: { ...tube, do: 200, en: 8 },
    expect: { e: 1.625 },
    within: 1e-9,
  },
  {
    source: "constructed: wider than a tube",
    class: "constructed",
    given: { ...tube, do: 201, en: 8 },
    expect: { ea: 6.75 },
    within: 1e-9,
    outside: ["it is a tube: the outside diameter is at most 200 mm"],
  },
  {
    source: "constructed: a wall at 0.03 of the diameter",
    class: "constructed",
    given: { ...tube, do: 60, en: 3.05 },
    expect: { ea: 1.8 },
    within: 1e-9,
  },
  {
    source: "constructed: a wall below 0.03 of the diameter",
    class: "constructed",
    given: { ...tube, do: 60, en: 3.04 },
    expect: { ea: 1.79 },
    within: 1e-9,
    outside: ["elastic collapse need not be judged: the analysis thickness is at least 0.03·d"],
  },
];

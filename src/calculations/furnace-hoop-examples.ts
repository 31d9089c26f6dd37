import type { CalculationExample } from "../model/calculation.ts";

const span = ($: string, value: number) => ({ $, role: "furnace", span: `${value} mm` });
const sections = [{ $: "P07", role: "furnace-hoop" }, span("P05", 1300), span("P06", 1400)];
const hoop = {
  ...{ p: 1, L: 1550, h: 100, b: 200, en: 16, c: 0.75, δ: 0.3 },
  ...{ DF: 850, eF: 16, cF: 0.75, δF: 0.3, t: 263, S2: 3, dmax: 1800 },
  sections,
} as const;
const polygons = "moments of the section as polygons (Green's theorem), outside this program";
const mm = (...values: readonly number[]) => values.map((value) => ({ value: `${value} mm` }));

export const furnaceHoopExamples: readonly CalculationExample[] = [
  {
    source: `${polygons}; measured exactly what the calculation takes for granted`,
    class: "second method",
    given: { ...hoop, measured: mm(16.2, 15.7) },
    expect: { d: 834, Ireq: 676049.0535, I: 5513986.9271, em: 15.7, emin: 15.7 },
    within: 0.0001,
  },
  {
    source: `${polygons}; 1.3·1030³·1370/1.33·10⁶ worked by hand`,
    class: "second method",
    given: { ...hoop, p: 1.3, L: 1370, en: 20, DF: 1050, eF: 20, t: 290 },
    expect: { E: 192700, Ireq: 1463268.2609, I: 6755265.9782 },
    within: 0.0001,
  },
  {
    source: `${polygons}; too shallow`,
    class: "second method",
    given: { ...hoop, h: 50, b: 120 },
    expect: { I: 595570.5278 },
    within: 0.0001,
  },
  {
    source: `${polygons}; thinner than its furnace, and thinner than nominal less undertolerance`,
    class: "second method",
    given: { ...hoop, en: 15, measured: mm(14.6) },
    expect: { I: 5426615.6243, emin: 14.7 },
    within: 0.0001,
  },
  {
    source: "worked by hand: (1600 + 1502)/2 is a millimetre more than stated",
    class: "constructed",
    given: { ...hoop, sections: [span("P05", 1600), span("P06", 1502), span("P05", 1600)] },
    expect: { Lm: 1551 },
    within: 1e-9,
  },
  {
    source: "constructed: a mean diameter of 1810 mm",
    class: "constructed",
    given: { ...hoop, DF: 1826 },
    expect: { d: 1810 },
    within: 0,
    outside: ["the mean diameter is at most the greatest the conditions cover"],
  },
];

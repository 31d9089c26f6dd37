import type { CalculationExample } from "../../model/calculation.ts";

/** Values all examples of cylinders under external pressure start from. */
export const cylinder = {
  ...{ p: 1.3, Do: 1050, en: 20, L: 1370, u: 1.5, Rp02: 169, t: 290, c: 0.75, δ: 0.3 },
  ...{ S1: 2.5, S20: 3, S2u: 4, u0: 1.5, us: 1.5, umax: 2, dmax: 1800 },
} as const;

const bisection = "both conditions solved for the thickness by bisection on the pressure, outside this program";
const mm = (...values: readonly number[]) => values.map((value) => ({ value: `${value} mm` }));

const shared: readonly CalculationExample[] = [
  {
    source: `${bisection}; yielding out of round governs`,
    class: "second method",
    given: { ...cylinder, measured: mm(20.2, 20.1), diameters: mm(1052, 1046) },
    expect: { d: 1030, E: 192700, S2: 3, B: 9.431142, epl: 16.836428, eel: 10.444181, ereq: 17.886428, em: 20.1 },
    within: 0.000001,
  },
  {
    source: "worked by hand: pressures that 18.95 mm carry, and the out-of-roundness 200·6/2098",
    class: "constructed",
    given: { ...cylinder, diameters: mm(1052, 1046, 1050) },
    expect: { ea: 18.95, ppl: 1.538679, pel: 5.764749, pmax: 1.538679, um: 0.571973 },
    within: 0.000001,
  },
  {
    source: `${bisection}; a great thin cylinder of strong steel, elastic collapse governs`,
    class: "second method",
    given: { ...cylinder, p: 0.3, Do: 1514, en: 14, L: 3000, Rp02: 260, t: 200 },
    expect: { epl: 8.401559, eel: 9.83263, e: 9.83263, ereq: 10.88263, ppl: 0.628028, pel: 0.597202, pmax: 0.597202 },
    within: 0.000001,
  },
  {
    source: `${bisection}; less round: the greater factor, nominal and measured thickness too small, less round still`,
    class: "second method",
    given: { ...cylinder, u: 1.8, en: 18, measured: mm(18.5, 18.6), diameters: mm(1060, 1040) },
    expect: { S2: 4, epl: 17.850322, eel: 11.731549, ereq: 18.900322, emin: 18.600322, em: 18.5, um: 1.904762 },
    within: 0.000001,
  },
  {
    source: `${bisection}; rounder than always reckoned with`,
    class: "second method",
    given: { ...cylinder, u: 0.5 },
    expect: { uc: 1.5, S2: 3, epl: 16.836428, eel: 10.444181 },
    within: 0.000001,
  },
  {
    source: `${bisection}; at the greatest e/d`,
    class: "second method",
    given: { ...cylinder, p: 5, Do: 110, en: 10, L: 150, Rp02: 188, t: 250 },
    expect: { d: 100, epl: 4.23311, eel: 1.813113, ppl: 12.161401, pel: 270.68562 },
    within: 0.000001,
  },
  {
    source: `${bisection}; at the greatest out-of-roundness`,
    class: "second method",
    given: { ...cylinder, u: 2 },
    expect: { S2: 4, epl: 18.44418, eel: 11.717902, ppl: 1.353304 },
    within: 0.000001,
  },
  {
    source: `${bisection}; at the greatest mean diameter`,
    class: "second method",
    given: { ...cylinder, Do: 1820 },
    expect: { d: 1800, epl: 25.361655, eel: 14.599418, ppl: 0.862621 },
    within: 0.000001,
  },
  {
    source: "constructed: the wall is thick, e/d = 12/108",
    class: "constructed",
    given: { ...cylinder, Do: 120, en: 12, L: 200 },
    expect: { d: 108, ea: 10.95 },
    within: 1e-9,
    outside: ["the wall is thin: e/d is at most 0.1"],
  },
  {
    source: "constructed: a mean diameter of 1810 mm",
    class: "constructed",
    given: { ...cylinder, Do: 1830 },
    expect: { d: 1810 },
    within: 1e-9,
    outside: ["the mean diameter is at most the greatest the conditions cover"],
  },
  {
    source: "constructed: out of round by 2.1 %",
    class: "constructed",
    given: { ...cylinder, u: 2.1 },
    expect: { uc: 2.1, S2: 4 },
    within: 1e-9,
    outside: ["the out-of-roundness is at most the greatest the conditions cover"],
  },
  {
    source: "constructed: allowances eat the whole thickness",
    class: "constructed",
    given: { ...cylinder, en: 10, c: 8, δ: 2 },
    expect: { ea: 0, pmax: 0 },
    within: 1e-9,
    outside: ["a thickness is left after allowances"],
  },
  {
    source: "worked by hand: supports 100 mm apart, where strips of 76.8 mm belong to each",
    class: "constructed",
    given: { ...cylinder, L: 100 },
    expect: { B: 5.871846 },
    within: 0.000001,
    outside: ["the supports stand far enough apart to be a cylinder between them: at least 1.1·√(d·e)"],
  },
  {
    source: "constructed: supports 9 m apart, beyond 1.11·1030·√(1030/18.95) = 8429 mm",
    class: "constructed",
    given: { ...cylinder, L: 9000 },
    expect: { ea: 18.95 },
    within: 1e-9,
    outside: ["the supports still help against collapse: the length is at most 1.11·d·√(d/e)"],
  },
];

/** The examples every cylinder under external pressure shares, with the values its own inputs need. */
export function sharedExamples(own: CalculationExample["given"]): readonly CalculationExample[] {
  return shared.map((example) => ({ ...example, given: { ...example.given, ...own } }));
}

import type { CalculationExample } from "../model/calculation.ts";

const limits = { kl: 0.125, l0: 12.7, ds: 50.8, e1: 12.7, e2: 14.3 };
const field = { d: 60.3, s: 0.5, P: 84, nt: 84, ns: 26, ...limits };

export const tubeNestExamples: readonly CalculationExample[] = [
  {
    source: "worked by hand: 84 − 60.8 against 0.125·60.8 + 12.7",
    class: "constructed",
    given: field,
    expect: { n: 110, dh: 60.8, l: 23.2, lreq: 20.3, emin: 14.3 },
    within: 0.00001,
  },
  {
    source: "worked by hand: holes as wide as small holes may be; the ligament exactly as required, 0.125·50.8 + 12.7",
    class: "constructed",
    given: { ...field, d: 50.4, s: 0.4, P: 69.85 },
    expect: { dh: 50.8, l: 19.05, lreq: 19.05, emin: 12.7 },
    within: 1e-9,
  },
  {
    source: "constructed: a pitch of 70 for holes of 51.5",
    class: "constructed",
    given: { ...field, d: 51, P: 70 },
    expect: { l: 18.5, lreq: 19.1375 },
    within: 1e-9,
  },
  {
    source: "constructed: no tubes",
    class: "constructed",
    given: { ...field, nt: 0, ns: 0 },
    expect: { n: 0 },
    within: 0,
    outside: ["the field has tubes"],
  },
  {
    source: "constructed: fewer than no stay tubes",
    class: "constructed",
    given: { ...field, ns: -2 },
    expect: { n: 82 },
    within: 0,
    outside: ["no count of tubes is negative"],
  },
  {
    source: "constructed: holes that touch each other",
    class: "constructed",
    given: { ...field, P: 60.8 },
    expect: { l: 0 },
    within: 1e-9,
    outside: ["the holes leave plate between them"],
  },
];

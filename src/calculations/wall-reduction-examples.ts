import type { CalculationExample } from "../model/calculation.ts";

const profile = { εe: 5, εw: 2, εmax: 14, Δ: 0.5 };
const end = { H: 51.5, D: 51, d0: 43.8, d1: 44.948, j: 0, ...profile };

export const wallReductionExamples: readonly CalculationExample[] = [
  {
    source: "worked by hand: (44.948 − 43.8 − 0.5)/7.2 = 0.648/7.2; recorded to the whole percent",
    class: "constructed",
    given: { ...end, r: 9 },
    expect: { ε: 9, εmin: 5, s: 0.5 },
    within: 1e-9,
  },
  {
    source: "worked by hand: 0.36/7.2, just enough; nothing recorded",
    class: "constructed",
    given: { ...end, d1: 44.66 },
    expect: { ε: 5 },
    within: 1e-9,
  },
  {
    source: "worked by hand: 0.324/7.2, too little for an end that only expanding holds",
    class: "constructed",
    given: { ...end, d1: 44.624 },
    expect: { ε: 4.5 },
    within: 1e-9,
  },
  {
    source: "worked by hand: the same, enough for an end that is welded as well",
    class: "constructed",
    given: { ...end, d1: 44.624, j: 1 },
    expect: { ε: 4.5, εmin: 2 },
    within: 1e-9,
  },
  {
    source: "worked by hand: 1.08/7.2, rolled too thin",
    class: "constructed",
    given: { ...end, d1: 45.38 },
    expect: { ε: 15 },
    within: 1e-9,
  },
  {
    source: "constructed: the clearance was forgotten in the record, 1.148/7.2 = 15.9 %",
    class: "constructed",
    given: { ...end, r: 15.9 },
    expect: { ε: 9 },
    within: 1e-9,
  },
  {
    source: "constructed: half of it recorded, 4.5 %",
    class: "constructed",
    given: { ...end, r: 4.5 },
    expect: { ε: 9 },
    within: 1e-9,
  },
  {
    source: "constructed: an end that is welded only",
    class: "constructed",
    given: { ...end, j: 2 },
    expect: { ε: 9 },
    within: 1e-9,
    outside: ["the end is expanded"],
  },
  {
    source: "constructed: the hole of another tube",
    class: "constructed",
    given: { ...end, H: 53.5, d1: 46.948 },
    expect: { ε: 9, s: 2.5 },
    within: 1e-9,
    outside: ["the hole belongs to this tube: at most 2 mm wider"],
  },
];

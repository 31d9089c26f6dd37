import type { CalculationExample } from "../model/calculation.ts";

const air = { patm: 1.013, pb: 0, A: 254, Kdr: 0.7, k: 1.4, M: 28.97, Z: 1, T0: 293.15, PS: 11, tol: 0.02, kmax: 1.1 };

export const gasValveExamples: readonly CalculationExample[] = [
  {
    source: "the same equations in another program, agreeing within 0.002 % with one-dimensional isentropic flow",
    class: "second method",
    given: { ...air, pset: 11, op: 0.1, Qc: 1980 },
    expect: { pr: 12.1, p0: 13.113, C: 2.70332, rc: 0.528282, rb: 0.077252, Kb: 1, Qm: 1981.347 },
    within: 0.001,
  },
  {
    source: "constructed: set so high that full discharge exceeds 1.1 times the maximum allowable pressure",
    class: "constructed",
    given: { ...air, pset: 11.1, op: 0.1, Qc: 1995 },
    expect: { pr: 12.21 },
    within: 1e-9,
  },
  {
    source: "constructed: certified 5 % above what the data give",
    class: "constructed",
    given: { ...air, pset: 11, op: 0.1, Qc: 2080 },
    expect: { Qm: 1981.347 },
    within: 0.001,
  },
  {
    source: "constructed: certified 5 % below what the data give",
    class: "constructed",
    given: { ...air, pset: 11, op: 0.1, Qc: 1880 },
    expect: { Qm: 1981.347 },
    within: 0.001,
  },
  {
    source: "the same equations in another program; subcritical flow at 0.5 bar set pressure",
    class: "second method",
    given: { ...air, pset: 0.5, op: 0.1, PS: 0.5, Qc: 228 },
    expect: { p0: 1.563, rb: 0.648113, Kb: 0.967687, Qm: 228.535 },
    within: 0.001,
    outside: ["the flow is critical, as the coefficient of discharge was certified"],
  },
  {
    source: "constructed: back pressure just below the critical one, 5.914/13.113 bar",
    class: "constructed",
    given: { ...air, pset: 11, op: 0.1, pb: 5.914, Qc: 1980 },
    expect: { rb: 0.528254, Kb: 1 },
    within: 0.000001,
  },
  {
    source: "the same equations in another program; largest exponent and coefficient",
    class: "second method",
    given: { ...air, pset: 11, op: 0.1, k: 1.8, Kdr: 0.9, Qc: 2770 },
    expect: { C: 2.939607, rc: 0.469042, Qm: 2770.109 },
    within: 0.001,
  },
  {
    source: "constructed: isentropic exponent below 1",
    class: "constructed",
    given: { ...air, pset: 11, op: 0.1, k: 0.9, Qc: 1690 },
    expect: { p0: 13.113 },
    within: 1e-9,
    outside: ["the isentropic exponent is above 1"],
  },
  {
    source: "constructed: isentropic exponent no gas has",
    class: "constructed",
    given: { ...air, pset: 11, op: 0.1, k: 1.81, Qc: 2160 },
    expect: { p0: 13.113 },
    within: 1e-9,
    outside: ["the isentropic exponent is at most 1.8"],
  },
  {
    source: "constructed: the measured instead of the certified coefficient",
    class: "constructed",
    given: { ...air, pset: 11, op: 0.1, Kdr: 0.91, Qc: 2570 },
    expect: { p0: 13.113 },
    within: 1e-9,
    outside: ["the certified coefficient of discharge is at most 0.9"],
  },
];

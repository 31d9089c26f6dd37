import type { CalculationExample } from "../model/calculation.ts";

const valve = { pset: 10, op: 0.1, patm: 1.013, pb: 0, A: 500, Kdr: 0.7, t0: 188, PS: 10, tol: 0.02, kmax: 1.1 };
const another =
  "the same equations in another program, the wet exponent by finite differences, the flux by trying all throat pressures";

const helmholtz =
  "properties of IAPWS-95 from another library, the exponent as in the example at 12 K, the flux by a search of the throat pressure";

export const steamValveExamples: readonly CalculationExample[] = [
  {
    source: `${another}; dry saturated steam`,
    class: "second method",
    given: { ...valve, Qc: 2170 },
    expect: {
      p0: 12.013,
      ts: 188.01357,
      v0: 0.16308,
      kw: 1.13855,
      kd: 1.28793,
      C: 2.51219,
      Kb: 1,
      Qm: 2175.651,
      G: 1727.018,
    },
    within: 0.001,
  },
  {
    source: `${another}; 12 K of superheat, the wet exponent decides; certified 5 % too much`,
    class: "second method",
    given: { ...valve, t0: 200, Qc: 2245 },
    expect: { ΔT: 11.98643, v0: 0.169122, k: 1.138546, kd: 1.295183, Qm: 2136.436, G: 1717.694 },
    within: 0.001,
  },
  {
    source: `${helmholtz}; 35 K of superheat, rated at the flux in equilibrium, 4.5 % above the wet exponent`,
    class: "second method",
    given: { ...valve, t0: 223, Qc: 2164 },
    expect: { Qm: 2070.6, Qe: 2164.7, G: 1718.04, Qlo: 2029.2, Qhi: 2208 },
    within: 0.3,
  },
  {
    source: `${helmholtz}; 35 K of superheat, rated 2.05 % above the flux in equilibrium`,
    class: "second method",
    given: { ...valve, t0: 223, Qc: 2209 },
    expect: { Qe: 2164.7, Qhi: 2208 },
    within: 0.3,
  },
  {
    source: `${helmholtz}; 35 K of superheat, rated 2.1 % below the wet exponent`,
    class: "second method",
    given: { ...valve, t0: 223, Qc: 2027 },
    expect: { Qm: 2070.6, Qlo: 2029.2 },
    within: 0.3,
  },
  {
    source: `${another}; 42 K of superheat, the steam stays dry; certified 5 % too little`,
    class: "second method",
    given: { ...valve, t0: 230, Qc: 2044 },
    expect: { ΔT: 41.98643, v0: 0.183235, k: 1.298776, C: 2.633478, Qm: 2151.611, G: 1708.497 },
    within: 0.001,
  },
  {
    source: `${another}; a valve set so high that full discharge exceeds 1.1 times the maximum allowable pressure`,
    class: "second method",
    given: { ...valve, pset: 12, A: 975, t0: 195, PS: 11.9, Qc: 5000 },
    expect: { pr: 13.2, p0: 14.213, v0: 0.138734, kw: 1.136352, C: 2.510423, rc: 0.577154, Qm: 4999.722, G: 2035.657 },
    within: 0.005,
  },
  {
    source: `${another}; subcritical flow at 0.5 bar set pressure`,
    class: "second method",
    given: { ...valve, pset: 0.5, t0: 112, PS: 0.5, Qc: 296 },
    expect: { p0: 1.563, rb: 0.648113, Kb: 0.986889, Qm: 296.203, G: 234.98 },
    within: 0.001,
    outside: ["the flow is critical, as the coefficient of discharge was certified"],
  },
  {
    source: `${another}; so near the critical point the exponent falls below 1`,
    class: "second method",
    given: { ...valve, pset: 110, t0: 326, PS: 110, Qc: 22400 },
    expect: { kw: 0.978907, C: 2.375471 },
    within: 0.0001,
    outside: ["the isentropic exponent is above 1"],
  },
  {
    source: `${another}; the largest certified coefficient, and a temperature rounded from the set pressure`,
    class: "second method",
    given: { ...valve, t0: 184, Kdr: 0.9, Qc: 2797 },
    expect: { tset: 184.12206, ΔT: 0, Qm: 2797.266 },
    within: 0.001,
  },
  {
    source: "constructed: water, not steam, at the inlet",
    class: "constructed",
    given: { ...valve, t0: 105, Qc: 2170 },
    expect: { ΔT: 0 },
    within: 0.001,
    outside: ["the steam is not colder than saturated steam at the set pressure"],
  },
  {
    source: "constructed: the measured instead of the certified coefficient",
    class: "constructed",
    given: { ...valve, Kdr: 0.91, Qc: 2828 },
    expect: { p0: 12.013 },
    within: 1e-9,
    outside: ["the certified coefficient of discharge is at most 0.9"],
  },
];

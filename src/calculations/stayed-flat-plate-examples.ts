import type { CalculationExample } from "../model/calculation.ts";

const shares = { kf: 0.85, Cf: 0.35, Cw: 0.38, Cg: 0.4, Cs: 0.45, Ct: 0.45, Cd: 0.49, Ce: 0.41 };
const supports = (...sorts: readonly string[]) => sorts.map((support) => ({ support }));
const stays = supports("bar-stay", "stay-tube", "access-tube");

export const stayedFlatPlateExamples: readonly CalculationExample[] = [
  {
    source: "worked by hand: stays on all sides, 0.45·330·√(1.3/(0.85·109.1))",
    class: "constructed",
    given: { p: 1.3, d: 330, f: 109.1, supports: stays, ...shares },
    expect: { C: 0.45, e: 17.582325 },
    within: 0.000001,
  },
  {
    source: "worked by hand: an edge and two stays, (0.38 + 2·0.45)/3·320·√(1/(0.85·130))",
    class: "constructed",
    given: { p: 1, d: 320, f: 130, supports: supports("welded-edge", "bar-stay", "bar-stay"), ...shares },
    expect: { C: 0.4266667, e: 12.9884568 },
    within: 0.0000001,
  },
  {
    source: "worked by hand: edges only, 0.41·400·√(0.85/85)",
    class: "constructed",
    given: { p: 0.85, d: 400, f: 100, supports: supports("welded-edge", "welded-edge", "flanged-edge"), ...shares },
    expect: { C: 0.41, e: 16.4 },
    within: 1e-9,
  },
  {
    source: "constructed: as thick as a thin plate may be, a fifth of the circle",
    class: "constructed",
    given: { p: 21.25, d: 100, f: 100, supports: supports("gusset", "gusset", "gusset"), ...shares },
    expect: { C: 0.4, e: 20 },
    within: 1e-9,
  },
  {
    source: "constructed: thicker than a fifth of the circle",
    class: "constructed",
    given: { p: 21.25, d: 100, f: 100, supports: stays, ...shares },
    expect: { e: 22.5 },
    within: 1e-9,
    outside: ["the plate bends like a thin plate: e is at most a fifth of the circle"],
  },
  {
    source: "constructed: a coefficient as low as physics permits",
    class: "constructed",
    given: { p: 0.85, d: 300, f: 100, supports: stays, ...shares, Cs: 0.298 },
    expect: { C: 0.298, e: 8.94 },
    within: 1e-9,
  },
  {
    source: "constructed: a coefficient below what physics permits",
    class: "constructed",
    given: { p: 0.85, d: 300, f: 100, supports: stays, ...shares, Cs: 0.29 },
    expect: { C: 0.29, e: 8.7 },
    within: 1e-9,
    outside: ["the coefficient is at least that of a clamped plate at its plastic limit"],
  },
];

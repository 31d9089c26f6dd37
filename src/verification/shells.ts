import { cylindricalShell } from "../calculations/cylindrical-shell.ts";
import { nozzleNeck } from "../calculations/nozzle-neck.ts";
import { smokeTube } from "../calculations/smoke-tube.ts";
import { testStress } from "../calculations/test-stress.ts";
import type { AnswerSource, PrintedAnswer } from "../model/answer.ts";
import { ask, inches, mm, MPa, psi } from "./ask.ts";

export const meanDiameter = (ratio: string) =>
  `the printed rule takes the force on the inside diameter, ours on the mean one: they differ by ${ratio}`;

/** Pressure a shell stands with a thickness and a stress, in MPa, from the calculation's own line for the adopted wall. */
export const pressureOf = (Di: number, ea: number, f: number): number =>
  ask(cylindricalShell, { p: 0.1, Di, f, z: 1, c: 0, δ: 0, en: ea }, "pmax");

/** Pressure the neck of a nozzle stands, in MPa. */
const neckPressure = (De: number, ea: number, f: number): number =>
  ask(nozzleNeck, { p: 0.1, De, f, c: 0, δ: 0, en: ea }, "pmax");

/** Thickness a shell needs, in mm. */
export const thicknessOf = (p: number, Di: number, f: number): number =>
  ask(cylindricalShell, { p, Di, f, z: 1, c: 0 }, "e");

/** Stress in a shell under a pressure, in MPa. */
export const stressOf = (PT: number, Di: number, en: number): number =>
  ask(testStress, { PT, Di, en, δ: 0, z: 1 }, "σ");

/** Pressure a smoke tube stands, in MPa. */
export const tubePressure = (outside: number, en: number, f: number): number =>
  ask(smokeTube, { p: 0.1, do: outside, en, f, c: 0, δ: 0 }, "pmax");

const rivetedShell = ([diameter, thickness, tensile, double, printed]: readonly [
  number,
  number,
  number,
  boolean,
  number,
]): PrintedAnswer => ({
  what: `greatest working pressure of a shell, ${double ? "double riveted (a fifth more)" : "single riveted"}`,
  given: `${diameter} in inside, ${thickness} in thick, tensile strength ${tensile} psi, one sixth of it allowed`,
  printed,
  unit: "psi",
  ours: () => psi(pressureOf(mm(diameter), mm(thickness), MPa((tensile / 6) * (double ? 1.2 : 1)))),
  within: (1.1 * thickness) / diameter,
  because: meanDiameter("the ratio of thickness to diameter"),
  reaches: ["cylindrical-shell"],
});

type Tube = readonly [outside: number, wall: number, tons: number, printed: number];

const asShell = ([outside, wall, tons, printed]: Tube): PrintedAnswer => ({
  what: "bursting pressure of a tube",
  given: `${outside} in outside, wall ${wall} in, ${tons} tons per square inch`,
  printed,
  unit: "psi",
  // The ton is of 2240 lb.
  ours: () => psi(pressureOf(mm(outside - 2 * wall), mm(wall), MPa(tons * 2240))),
  within: wall / (outside - 2 * wall) + 0.011,
  because: `${meanDiameter("the ratio of wall to bore")}; printed to two figures`,
  reaches: ["cylindrical-shell"],
});

const asNeck = (row: Tube): PrintedAnswer => {
  const [outside, wall, tons] = row;
  return {
    ...asShell(row),
    what: "bursting pressure of a tube, as a neck",
    ours: () => psi(neckPressure(mm(outside), mm(wall), MPa(tons * 2240))),
    reaches: ["nozzle-neck"],
  };
};

const tubes: readonly Tube[] = [
  [1.25, 0.083, 22.4, 7700],
  [2, 0.083, 22.4, 4500],
  [2.5, 0.109, 22.4, 4800],
  [4, 0.134, 22.4, 3600],
];

export const hawkins: AnswerSource = {
  source:
    "Hawkins, Maxims and Instructions for the Boiler Room, New York 1897–1903, pp. 117 ff. (rule of the U.S. Board of Supervising Inspectors of Steam Vessels) and p. 264",
  class: "published",
  answers: [
    ...(
      [
        [60, 0.375, 60000, false, 125],
        [60, 0.375, 60000, true, 150],
        [36, 0.25, 55000, false, 127.31],
        [42, 0.29, 65000, true, 179.52],
        [48, 0.375, 60000, false, 156.25],
      ] as const
    ).map(rivetedShell),
    ...tubes.map(asShell),
    ...tubes.map(asNeck),
    {
      what: "pressure of a tube of given wall under the allowed stress",
      given: "4 in outside, wall 0.134 in, stress of 22.4 tons per square inch taken as the design stress",
      printed: 3600,
      unit: "psi",
      ours: () => psi(tubePressure(mm(4), mm(0.134), MPa(22.4 * 2240))),
      within: 0.27,
      because:
        "ours is a rule of design: it takes the outside diameter and four fifths of the stress, so that it stays a quarter below",
      reaches: ["smoke-tube"],
    },
  ],
};

export const bourne: AnswerSource = {
  source: "Bourne, A Catechism of the Steam Engine, new ed., New York 1856, questions 301 and 302",
  class: "published",
  answers: [
    {
      what: "stress in the plates of a boiler",
      given: "39 in across, plates 5/16 in, 80 psi",
      printed: 4992,
      unit: "psi",
      ours: () => psi(stressOf(MPa(80), mm(39), mm(0.3125))),
      within: 0.009,
      because: meanDiameter("0.8 %"),
      reaches: ["test-stress"],
    },
    {
      what: "thickness of the plates of a boiler",
      given: "39 in across, 80 psi (62.832 lb on the circular inch), stress 4472 psi by the printed divisor of 17 800",
      printed: 0.349,
      unit: "in",
      // 2.54·D·p/17800 with p per circular inch (π/4 of a square inch): a stress of 17800·2/(2.54·π) = 4461 psi.
      ours: () => inches(thicknessOf(MPa(80), mm(39), MPa((17800 * 2) / (2.54 * Math.PI)))),
      within: 0.013,
      because: meanDiameter("0.9 %"),
      reaches: ["cylindrical-shell"],
    },
  ],
};

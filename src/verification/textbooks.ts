import { collapseOfCylinder } from "../calculations/functions/external-pressure.ts";
import { torisphericalEnd } from "../calculations/torispherical-end.ts";
import type { AnswerSource } from "../model/answer.ts";
import { plateThickness } from "./plates-and-stays.ts";
import { ask, mm, MPa, psi } from "./ask.ts";
import { meanDiameter, pressureOf, stressOf, thicknessOf, tubePressure } from "./shells.ts";

export const textbooks: readonly AnswerSource[] = [
  {
    source: "Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed., example 3-14",
    class: "from memory",
    answers: [
      {
        what: "greatest pressure in a thin cylinder",
        given: "8 in outside, wall 1/4 in, stress 12 000 psi",
        printed: 774,
        unit: "psi",
        ours: () => psi(pressureOf(mm(7.5), mm(0.25), MPa(12000))),
        within: 0.0005,
        reaches: ["cylindrical-shell"],
      },
    ],
  },
  {
    source: "Hearn, Mechanics of Materials 1, example 9.1",
    class: "from memory",
    answers: [
      {
        what: "hoop stress in a thin cylinder",
        given: "75 mm inside, wall 2.5 mm, 7 MPa",
        printed: 105,
        unit: "MPa",
        ours: () => stressOf(7, 75, 2.5),
        within: 0.034,
        because: meanDiameter("3.3 %, the ratio of wall to diameter"),
        reaches: ["test-stress"],
      },
    ],
  },
  {
    source: "Beer and Johnston, Mechanics of Materials, sample problem 7.5 (compressed-air tank)",
    class: "from memory",
    answers: [
      {
        what: "hoop stress in an air tank",
        given: "30 in outside, wall 3/8 in, 180 psi",
        printed: 7020,
        unit: "psi",
        ours: () => psi(stressOf(MPa(180), mm(29.25), mm(0.375))),
        within: 0.013,
        because: meanDiameter("1.3 %"),
        reaches: ["test-stress"],
      },
    ],
  },
  {
    source: "Hibbeler, Mechanics of Materials, 10th ed. in SI units, example 8.1",
    class: "from memory",
    answers: [
      {
        what: "greatest pressure in a thin cylinder",
        given: "1.2 m inside, wall 12 mm, stress 140 MPa",
        printed: 2.8,
        unit: "MPa",
        ours: () => pressureOf(1200, 12, 140),
        within: 0.0101,
        because: meanDiameter("1 %"),
        reaches: ["cylindrical-shell"],
      },
    ],
  },
  {
    source: "Sinnott, Coulson and Richardson's Chemical Engineering vol. 6, example 13.1",
    class: "from memory",
    answers: [
      {
        what: "thickness of a shell",
        given: "1500 mm inside, 1.43 MPa, design stress 85 MPa",
        printed: 12.7,
        unit: "mm",
        ours: () => thicknessOf(1.43, 1500, 85),
        within: 0.004,
        reaches: ["cylindrical-shell"],
      },
      {
        what: "crown of a torispherical end: thickness without a factor of shape",
        given: "crown radius 1500 mm, 1.43 MPa, 85 MPa; the printed 22.0 mm divided by its factor of shape 1.77",
        printed: 12.43,
        unit: "mm",
        ours: () => ask(torisphericalEnd, { p: 1.43, R: 1500, f: 85, z: 1, c: 0 }, "es"),
        within: 0.02,
        because: "ours takes p/2 from the denominator, the printed rule 0.2·p before its factor of shape",
        reaches: ["torispherical-end"],
      },
      {
        what: "thickness of a flat cover",
        given: "1700 mm, 1.43 MPa, 85 MPa, constant 0.4",
        printed: 88.4,
        unit: "mm",
        ours: () => plateThickness(1.43, 1700, 85, 0.4),
        within: 0.003,
        because: "the source rounds a root to 0.13",
        reaches: ["stayed-flat-plate"],
      },
    ],
  },
  {
    source: "API Bulletin 5C2, performance of casing: 7 in, 26 lb/ft, N-80",
    class: "from memory",
    answers: [
      {
        what: "pressure at which a pipe yields inside",
        given: "7 in outside, wall 0.362 in, 80 000 psi, seven eighths of the wall",
        printed: 7240,
        unit: "psi",
        // The source has 2·0.875 where our rule of design has 1.6.
        ours: () => psi(tubePressure(mm(7), mm(0.362), (MPa(80000) * 2 * 0.875) / 1.6)),
        within: 0.001,
        reaches: ["smoke-tube"],
      },
    ],
  },
  {
    source: "Bhandari, Design of Machine Elements, 3rd ed. 2010, example 22.2, as repeated elsewhere",
    class: "excerpt seen",
    answers: [
      {
        what: "thickness of a thin cylinder",
        given: "492.3725 mm inside, 5 MPa, stress 85 MPa",
        printed: 14.4815,
        unit: "mm",
        ours: () => thicknessOf(5, 492.3725, 85),
        within: 0.031,
        because: meanDiameter("3 %"),
        reaches: ["cylindrical-shell"],
      },
    ],
  },
  {
    source: "Young, Roark's Formulas for Stress and Strain, table 35 case 19a, electronic worksheet",
    class: "excerpt seen",
    answers: [
      {
        what: "elastic collapse of a long tube (two waves, without ends)",
        given: "radius 6.75 in, wall 0.375 in, 29·10⁶ psi, Poisson's ratio 0.29",
        printed: 1357,
        unit: "psi",
        // The ends lie so far away that they play no part.
        ours: () => psi(collapseOfCylinder(MPa(29e6), mm(0.375), mm(6.75), mm(13500)).pressure),
        within: 0.007,
        because: "ours takes 0.3 for Poisson's ratio",
        reaches: ["furnace"],
      },
    ],
  },
];

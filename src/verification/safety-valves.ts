import { gasSafetyValve } from "../calculations/gas-safety-valve.ts";
import { steamSafetyValve } from "../calculations/steam-safety-valve.ts";
import type { AnswerSource, PrintedAnswer } from "../model/answer.ts";
import { convert } from "../model/units.ts";
import { ask, bar, celsius, inches2, kelvin, kilograms } from "./ask.ts";

/** Area in mm² through which a gas valve lets `flow` kg/h at an absolute pressure in bar: the flow is proportional to it. */
const gasArea = (flow: number, given: Readonly<Record<string, number>>): number =>
  flow / ask(gasSafetyValve, { op: 0, patm: 0, pb: 0, A: 1, ...given }, "Qm");

/** The constant of the printed formulas is 520·√(k·(2/(k+1))^((k+1)/(k−1))), ours has 3.948 before the same root. */
const gasConstant = ([k, printed]: readonly [number, number]): PrintedAnswer => ({
  what: "coefficient of a gas by its isentropic exponent",
  given: `exponent ${k}`,
  printed,
  unit: "1",
  ours: () => (ask(gasSafetyValve, { k }, "C") * 520) / 3.948,
  within: 0.002,
  because: "printed to whole numbers",
  reaches: ["gas-safety-valve"],
});

/** Saturated steam in lb/h, by Napier's 51.5, through the area that a flow of gas in lb/h at °F needs. */
const steamRating = (
  gas: string,
  flow: number,
  temperature: number,
  k: number,
  M: number,
  printed: number,
): PrintedAnswer => ({
  what: "steam rating of a valve for gas",
  given: `${gas}: ${flow} lb/h at ${temperature} °F, exponent ${k}, ${M} kg/kmol`,
  printed,
  unit: "lb/h",
  ours: () => {
    const pressure = 100;
    const area = gasArea(kilograms(flow), { pset: bar(pressure), Kdr: 1, k, M, Z: 1, T0: kelvin(temperature) });
    return 51.5 * inches2(area) * pressure;
  },
  within: 0.004,
  because:
    "slide-rule figures in the source, which takes its coefficient from a table and 460 for the zero of its scale",
  reaches: ["gas-safety-valve"],
});

export const sizingOfValves: readonly AnswerSource[] = [
  {
    source: "ASME VIII-1, figure 11-1, and API Standard 520 part I, table of the coefficient of a gas: C of air",
    class: "excerpt seen",
    answers: [gasConstant([1.4, 356])],
  },
  {
    source: "ASME VIII-1, figure 11-1, and API Standard 520 part I, table of the coefficient of a gas: other gases",
    class: "from memory",
    answers: (
      [
        [1.33, 350],
        [1.11, 328],
      ] as const
    ).map(gasConstant),
  },
  {
    source: "API Standard 520 part I, 8th ed., examples of sizing for gas and for steam (inputs seen as an excerpt)",
    class: "from memory",
    answers: [
      {
        what: "area of a valve for gas, critical flow",
        given:
          "24 270 kg/h, 348 K, compressibility 0.90, 51 kg/kmol, exponent 1.11, 670 kPa absolute, coefficient 0.975",
        printed: 3698,
        unit: "mm²",
        ours: () => gasArea(24270, { pset: 6.7, Kdr: 0.975, k: 1.11, M: 51, Z: 0.9, T0: 348 }),
        within: 0.002,
        reaches: ["gas-safety-valve"],
      },
      {
        what: "area of a valve for gas, subcritical flow",
        given: "the same gas against 532 kPa absolute",
        printed: 4226,
        unit: "mm²",
        ours: () => gasArea(24270, { pset: 6.7, pb: 5.32, Kdr: 0.975, k: 1.11, M: 51, Z: 0.9, T0: 348 }),
        within: 0.01,
        because: "the source rounds its coefficient of subcritical flow from 0.8548 to 0.86",
        reaches: ["gas-safety-valve"],
      },
      {
        what: "area of a valve for saturated steam",
        given: "69 615 kg/h, 12 236 kPa absolute, coefficient 0.975",
        printed: 1100,
        unit: "mm²",
        ours: () => {
          const given = { pset: 122.36, op: 0, patm: 0, pb: 0, A: 1, Kdr: 0.975, t0: 0 };
          return 69615 / ask(steamSafetyValve, given, "Qm");
        },
        within: 0.015,
        because:
          "the printed formula is an empirical one with a factor for high pressure; ours expands steam that turns wet",
        reaches: ["steam-safety-valve"],
      },
    ],
  },
  {
    source: "ASME VIII-1, appendix 11, capacity conversions for safety valves, examples 1 to 4",
    class: "from memory",
    answers: [
      {
        what: "air through a valve that is rated for steam",
        given: "3020 lb/h of steam at 200 psi set pressure, 10 % overpressure; air at 100 °F, exponent 1.4, 28.97",
        printed: 4750,
        unit: "lb/h",
        ours: () => {
          // 3020 = 51.5·K·A·P: the area that belongs to it, then our flow of air through that area.
          const KAP = 3020 / 51.5;
          const P = 1.1 * 200 + 14.7;
          const given = { pset: bar(P), Kdr: 0.9, k: 1.4, M: 28.97, Z: 1, T0: kelvin(100), op: 0, patm: 0, pb: 0 };
          const flow = ask(gasSafetyValve, { ...given, A: ((KAP / P) * 25.4 ** 2) / 0.9 }, "Qm");
          return convert(flow, "kg", "lb");
        },
        within: 0.003,
        because: "the source works with a constant of 356 and 460 for the zero of its scale",
        reaches: ["gas-safety-valve"],
      },
      steamRating("propane", 5000, 125, 1.001, 44.09, 2970),
      steamRating("ammonia", 1000, 150, 1.33, 17.03, 880),
      steamRating("air of 0.0766 lb/ft³, 10 000 ft³/min", 10000 * 60 * 0.0766, 60, 1.4, 28.97, 28200),
    ],
  },
  {
    source: "Napier's rule for saturated steam, 51.5 lb/h for each square inch and psi, as in ASME VIII-1 appendix 11",
    class: "from memory",
    answers: [
      {
        what: "flow of saturated steam through one square inch",
        given: "100 psi absolute, coefficient 1",
        printed: 5150,
        unit: "lb/h",
        ours: () => {
          const given = {
            pset: bar(100),
            op: 0,
            patm: 0,
            pb: 0,
            A: 25.4 ** 2,
            Kdr: 1,
            t0: celsius(327.8),
          };
          return convert(ask(steamSafetyValve, given, "Qm"), "kg", "lb");
        },
        within: 0.005,
        reaches: ["steam-safety-valve"],
      },
    ],
  },
];

import { densityOfWater } from "../model/water.ts";
import { saturation } from "../calculations/saturation.ts";
import type { AnswerSource, PrintedAnswer } from "../model/answer.ts";
import { convert } from "../model/units.ts";
import { liquid, saturationPressure, vapour } from "../steam/index.ts";
import { ask, bar, btu, celsius, feet3, known } from "./ask.ts";

/** A property of saturated steam at an absolute pressure in psi, from the calculation of saturation. */
const saturated = (absolute: number, symbol: string): number =>
  ask(saturation, { PS: bar(absolute), patm: 0, TS: 400 }, symbol);

const boiling = ([absolute, printed]: readonly [number, number]): PrintedAnswer => ({
  what: "boiling temperature",
  given: `${absolute} psi absolute`,
  printed,
  unit: "°F",
  ours: () => convert(saturated(absolute, "ts"), "°C", "°F"),
  within: 0.0015,
  because: "the scale of temperature of 1909 lies up to 0.15 °F from today's",
  reaches: ["saturation"],
});

const volume = ([absolute, printed]: readonly [number, number]): PrintedAnswer => ({
  what: "volume of saturated steam",
  given: `${absolute} psi absolute`,
  printed,
  unit: "ft³/lb",
  ours: () => feet3(saturated(absolute, "vs")),
  within: 0.002,
  because: "volumes of the tables of 1909 lie up to 0.2 % from today's",
  reaches: ["saturation"],
});

const evaporation = ([absolute, printed]: readonly [number, number]): PrintedAnswer => ({
  what: "heat of evaporation",
  given: `${absolute} psi absolute`,
  printed,
  unit: "Btu/lb",
  ours: () => btu(saturated(absolute, "hs") - saturated(absolute, "hb")),
  within: 0.0015,
  because: "heats of the tables of 1909 lie about 0.1 % from today's",
  reaches: ["saturation"],
});

const expanded = ([temperature, printed]: readonly [number, number]): PrintedAnswer => ({
  what: "volume of water, that at 39.2 °F being 1",
  given: `${temperature} °F`,
  printed,
  unit: "1",
  ours: () => densityOfWater(celsius(39.2)) / densityOfWater(celsius(temperature)),
  within: 0.00002,
  reaches: ["hold-drift", "density of water"],
});

export const tablesOf1919: AnswerSource = {
  source:
    "Babcock & Wilcox Co., Steam, Its Generation and Use, 35th ed., New York 1919, properties of saturated steam (Marks and Davis 1909); table 11, distilled water",
  class: "published",
  answers: [
    ...(
      [
        [1, 101.83],
        [10, 193.22],
        [50, 281],
        [100, 327.8],
        [150, 358.5],
        [200, 381.9],
        [225, 391.9],
      ] as const
    ).map(boiling),
    ...(
      [
        [10, 38.38],
        [50, 8.51],
        [100, 4.429],
      ] as const
    ).map(volume),
    ...(
      [
        [100, 888],
        [150, 863.2],
        [200, 843.2],
      ] as const
    ).map(evaporation),
    ...(
      [
        [50, 1.00027],
        [90, 1.00504],
        [110, 1.00915],
        [150, 1.02011],
        [200, 1.03835],
      ] as const
    ).map(expanded),
  ],
};

const digits = 1e-8;

/** Figures of the release by which a program is checked. */
export const if97: AnswerSource = {
  source: "IAPWS R7-97, Industrial Formulation 1997, computer-program verification, tables 5, 15, 35 and 36",
  class: "from memory",
  answers: [
    {
      what: "enthalpy of water",
      given: "300 K, 3 MPa",
      printed: 115.331273,
      unit: "kJ/kg",
      ours: () => known(liquid(3, 300)).h,
      within: digits,
      reaches: ["properties of steam"],
    },
    ...(
      [
        [0.0035, 3335.68375],
        [30, 2631.49474],
      ] as const
    ).map(([p, printed]): PrintedAnswer => ({
      what: "enthalpy of steam",
      given: `700 K, ${p} MPa`,
      printed,
      unit: "kJ/kg",
      ours: () => known(vapour(p, 700)).h,
      within: digits,
      reaches: ["properties of steam"],
    })),
    {
      what: "saturation pressure",
      given: "500 K",
      printed: 2.63889776,
      unit: "MPa",
      ours: () => known(saturationPressure(500)),
      within: digits,
      reaches: ["properties of steam"],
    },
    ...(
      [
        [1, 453.035632],
        [10, 584.149488],
      ] as const
    ).map(([p, printed]): PrintedAnswer => ({
      what: "saturation temperature",
      given: `${p} MPa`,
      printed,
      unit: "K",
      ours: () => ask(saturation, { PS: p * 10, patm: 0, TS: 400 }, "ts") + 273.15,
      within: digits,
      reaches: ["saturation"],
    })),
  ],
};

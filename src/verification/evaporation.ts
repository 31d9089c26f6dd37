import { heatBalance } from "../calculations/heat-balance.ts";
import type { AnswerSource, PrintedAnswer } from "../model/answer.ts";
import { liquid, vapour, saturationTemperature } from "../steam/index.ts";
import { ask, atmosphere, bar, celsius, kelvin, kilograms, known, MPa, pounds } from "./ask.ts";

/** Factor of evaporation at a gauge pressure in psi, of feedwater in °F. */
const factor = (gauge: number, feed: number): number =>
  ask(heatBalance, { pw: bar(gauge), PS: bar(gauge), patm: bar(atmosphere), tw: celsius(feed) }, "F");

const oldTables = "steam tables of 1909 (Marks and Davis) against IAPWS-IF97: about 0.1 % apart in enthalpy";

const factorRow = ([gauge, feed, printed]: readonly [number, number, number]): PrintedAnswer => ({
  what: "factor of evaporation",
  given: `steam at ${gauge} psi gauge, feedwater at ${feed} °F`,
  printed,
  unit: "1",
  ours: () => factor(gauge, feed),
  within: 0.0015,
  because: oldTables,
  reaches: ["heat-balance"],
});

/** Factors of evaporation, evaporation from and at 212 °F, efficiency. */
export const strohm: AnswerSource = {
  source:
    "Strohm, Boiler and Furnace Testing, Engineering Bulletin No. 1, United States Fuel Administration, Washington 1918, pp. 8–18",
  class: "published",
  answers: [
    ...(
      [
        [100, 180, 1.0727],
        [30, 32, 1.2073],
        [50, 104, 1.1403],
        [70, 101, 1.1484],
        [100, 212, 1.0396],
        [120, 140, 1.1168],
        [150, 80, 1.182],
        [160, 200, 1.0593],
        [180, 62, 1.2032],
        [200, 32, 1.2358],
        [200, 212, 1.0503],
      ] as const
    ).map(factorRow),
    {
      what: "evaporation from and at 212 °F",
      given: "35 000 lb of water made into steam of 100 psi gauge, fed at 180 °F",
      printed: 37545,
      unit: "lb",
      ours: () =>
        pounds(
          ask(
            heatBalance,
            { D: kilograms(35000), x: 0, pw: bar(100), PS: bar(100), patm: bar(atmosphere), tw: celsius(180) },
            "DF",
          ),
        ),
      within: 0.0015,
      because: oldTables,
      reaches: ["heat-balance"],
    },
    {
      what: "efficiency of a boiler",
      given: "7.5 lb from and at 212 °F for a pound of coal of 13 500 Btu",
      printed: 0.54,
      unit: "1",
      ours: () => efficiency(7.5, 13500),
      within: 0.003,
      reaches: ["heat-balance"],
    },
  ],
};

/** Heat that `water` lb from and at 212 °F take up, as a share of what a pound of coal gives in Btu. */
const efficiency = (water: number, coal: number): number => {
  // A hundredth of a bar above the atmosphere, so that water of 212 °F is still water.
  const given = { D: kilograms(water), x: 0, pw: 0.01, PS: 0.01, patm: 1.01325, tw: celsius(212) };
  return (ask(heatBalance, given, "Φ") * 3600) / (coal * 1.05505585262);
};

/** A boiler horsepower is 34.5 lb of water an hour from and at 212 °F. */
const horsepower = ([gauge, feed, printed]: readonly [number, number, number]): PrintedAnswer => ({
  what: "actual evaporation for one boiler horsepower (34.5 lb/h from and at 212 °F)",
  given: `steam at ${gauge} psi gauge, feedwater at ${feed} °F`,
  printed,
  unit: "lb/h",
  ours: () => 34.5 / factor(gauge, feed),
  within: 0.0015,
  because: oldTables,
  reaches: ["heat-balance"],
});

export const steamOf1919: AnswerSource = {
  source:
    "Babcock & Wilcox Co., Steam, Its Generation and Use, 35th ed., New York 1919, efficiency and capacity of boilers; table 60",
  class: "published",
  answers: [
    factorRow([200, 180, 1.0834]),
    factorRow([70, 100, 1.1494]),
    {
      what: "efficiency of boiler and grate",
      given: "9.75 lb from and at 212 °F for a pound of coal of 13 516 Btu",
      printed: 0.7,
      unit: "1",
      ours: () => efficiency(9.75, 13516),
      within: 0.001,
      reaches: ["heat-balance"],
    },
    ...(
      [
        [50, 32, 28.41],
        [100, 100, 29.87],
        [150, 200, 32.6],
        [200, 180, 31.84],
        [250, 210, 32.68],
        [120, 150, 31.18],
      ] as const
    ).map(horsepower),
    {
      what: "evaporation from and at 212 °F",
      given: "152 775 lb of dry steam of 200 psi gauge, fed at 180 °F",
      printed: 165516,
      unit: "lb",
      ours: () =>
        pounds(
          ask(
            heatBalance,
            { D: kilograms(152775), x: 0, pw: bar(200), PS: bar(200), patm: bar(atmosphere), tw: celsius(180) },
            "DF",
          ),
        ),
      within: 0.0015,
      because: oldTables,
      reaches: ["heat-balance"],
    },
    {
      what: "factor of evaporation of superheated steam",
      given: "steam at 192 psi gauge and 115.2 °F of superheat, feedwater at 180 °F",
      printed: 1.1514,
      unit: "1",
      ours: () => {
        const p = MPa(192 + atmosphere);
        const boiling = known(saturationTemperature(p));
        return (known(vapour(p, boiling + 115.2 / 1.8)).h - known(liquid(p, kelvin(180))).h) / (970.4 * 2.326);
      },
      within: 0.003,
      because: "steam tables of 1909 against IAPWS-IF97: about 0.25 % apart in superheated steam",
      reaches: ["properties of steam"],
    },
  ],
};

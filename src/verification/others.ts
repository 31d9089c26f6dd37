import { equipmentCategory } from "../calculations/equipment-category.ts";
import { categories } from "../calculations/functions/category.ts";
import { heatInput } from "../calculations/heat-input.ts";
import { shellOpening } from "../calculations/shell-opening.ts";
import { testPressure } from "../calculations/test-pressure.ts";
import type { AnswerSource, PrintedAnswer } from "../model/answer.ts";
import { convert } from "../model/units.ts";
import { ask, bar, inches2, mm, psi } from "./ask.ts";

export const hawkinsTest: AnswerSource = {
  source:
    "Hawkins, Maxims and Instructions for the Boiler Room, New York 1897–1903, p. 117 (rule of the U.S. Board of Supervising Inspectors of Steam Vessels)",
  class: "published",
  answers: [
    {
      what: "hydrostatic test pressure",
      given: "100 psi working pressure, 150 to 100",
      printed: 150,
      unit: "psi",
      // The factor of the source, in place of that of the profile; cold and hot the plate is as strong.
      ours: () => psi(convert(ask(testPressure, { q: 1, PS: bar(100), kP: 1.5, kf: 1 }, "PT"), "bar", "MPa")),
      within: 1e-9,
      reaches: ["test-pressure"],
    },
  ],
};

export const hyperbaric: AnswerSource = {
  source: "UFC 4-159-01N, Design: Hyperbaric Facilities, U.S. Department of Defense 2004, worked example, openings",
  class: "excerpt seen",
  answers: [
    {
      what: "area to be replaced at an opening",
      given: "opening of 40 in, 2.72 in of shell required",
      printed: 108.8,
      unit: "in²",
      ours: () => {
        // A pressure that asks for 2.72 in of the shell, and a branch as strong as it: nothing is added for the wall set in.
        const [Di, fs, tr] = [mm(100), 100, mm(2.72)];
        const p = (2 * fs * tr) / (Di + tr);
        return inches2(ask(shellOpening, { p, Di, fs, fb: fs, do: 0, w: mm(40), c: 0, en: mm(4), δ: 0, k: 1 }, "Ar"));
      },
      within: 1e-9,
      reaches: ["shell-opening"],
    },
  ],
};

const heat = ([process, I, U, v, k, printed, unit]: readonly [
  string,
  number,
  number,
  number,
  number,
  number,
  "kJ/cm" | "kJ/mm",
]): PrintedAnswer => ({
  what: `heat input, ${process}`,
  given: `${I} A, ${U} V, ${v} mm/min, efficiency ${k}`,
  printed,
  unit,
  ours: () => convert(ask(heatInput, { k, U, I, v, tol: 0 }, "Q"), "kJ/mm", unit),
  within: 0.0005,
  reaches: ["heat-input"],
});

export const aptitudeTest: AnswerSource = {
  source:
    "Graduate Aptitude Test in Engineering (Indian Institutes of Technology), paper PI 2003 and a question on a TIG weld (inputs seen as an excerpt)",
  class: "from memory",
  answers: [heat(["MIG", 200, 25, 180, 0.65, 10.83, "kJ/cm"]), heat(["TIG", 500, 20, 20, 0.9, 27, "kJ/mm"])],
};

const category = ([volume, printed]: readonly [number, number]): PrintedAnswer => ({
  what: "category of a vessel for a gas of group 2",
  given: `10 bar, ${volume} l (categories counted from 0, sound engineering practice)`,
  printed,
  unit: "1",
  ours: () => ask(equipmentCategory, { PS: 10, V: volume, group: 2, state: 1, declared: categories.length - 1 }, "cat"),
  within: 1e-9,
  reaches: ["equipment-category"],
});

export const directive: AnswerSource = {
  source: "Directive 2014/68/EU, annex II, table 2: limits of pressure times volume at 50, 200, 1000 and 3000 bar·l",
  class: "from memory",
  answers: (
    [
      [5, 0],
      [5.01, 1],
      [20, 1],
      [20.01, 2],
      [100, 2],
      [100.01, 3],
      [300, 3],
      [300.01, 4],
    ] as const
  ).map(category),
};

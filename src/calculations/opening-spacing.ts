import { leastClear, openingOfShell } from "./functions/opening-spacing.ts";
import { fromMemory } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";

const shell = { Di: 2400, Dc: 2400, en: 16, es: 14.95 };
const at = (opening: string, along: number, around: number, outside: number) => ({
  opening,
  along: `${along} mm`,
  around: `${around} mm`,
  outside: `${outside} mm`,
  width: "0 mm",
});

export const openingSpacing = calculation({
  id: "opening-spacing",
  title: "Distance of neighbouring openings",
  basis: fromMemory("EN 12953-3", undefined, "adjacent openings: independent beyond the sum of the lengths that carry"),
  covers:
    "Whether the openings of a shell course lie so far apart that each may be judged by itself: the lengths of shell that carry two of them must not overlap. Nearer openings are left to design. Openings of the next course, seams, and the rims of the course are not covered.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: "shell-course" },
      { path: "openings", exists: true },
    ],
  },
  inputs: {
    Di: { path: "insideDiameter", unit: "mm", means: "inside diameter of the shell", display: "D_i", unsafe: "low" },
    Dc: {
      path: "calculation(cylindrical-shell).Dc",
      unit: "mm",
      means: "inside diameter of the shell, corroded",
      display: "D_c",
      unsafe: "low",
    },
    en: { path: "nominalThickness", unit: "mm", means: "nominal thickness", display: "e_n" },
    es: {
      path: "calculation(cylindrical-shell).ea",
      unit: "mm",
      means: "analysis thickness of the shell",
      display: "e_s",
      unsafe: "low",
    },
    openings: {
      path: "openings[]",
      unit: "rows",
      means: "openings of the course",
      need: "any",
      rows: openingOfShell,
    },
  },
  functions: [leastClear],
  steps: [
    { symbol: "Do", unit: "mm", means: "outside diameter of the shell", formula: "Di + 2*en", display: "D_o" },
    {
      symbol: "ls",
      unit: "mm",
      means: "length of shell that carries an opening, on each side",
      formula: "sqrt((Dc + es)*es)",
      display: "l_s",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "a",
      unit: "mm",
      means: "least clear distance of two openings",
      formula: "leastClear(openings, Do)",
      round: { decimals: 1, direction: "down" },
    },
  ],
  limits: [
    {
      left: "a",
      relation: ">=",
      right: "2*ls",
      decides: true,
      means: "the openings lie so far apart that each is judged by itself",
      wrong: "the openings stand {left} apart, nearer than the {right} from which each is judged by itself",
    },
  ],
  accept: [],
  compared: [
    { symbol: "ls", unsafe: "low" },
    { symbol: "a", unsafe: "high" },
  ],
  examples: [
    {
      source: "worked by hand: √(2414.95·14.95) = 190.0092; 3-4-5 on the unrolled shell: 500 − 2·50",
      class: "constructed",
      given: { ...shell, openings: [at("N1", 300, 100, 100), at("N2", 600, 500, 100)] },
      expect: { Do: 2432, ls: 190.009217, a: 400 },
      within: 0.000001,
    },
    {
      source: "worked by hand: corrosion opens the bore to 2430, and the shell carries farther: √(2444.95·14.95)",
      class: "constructed",
      given: { ...shell, Dc: 2430, openings: [at("N1", 300, 100, 100), at("N2", 600, 500, 100)] },
      expect: { Do: 2432, ls: 191.18578 },
      within: 0.000001,
    },
    {
      source: "worked by hand: the short way round, 7640.353 − 7400, less 2·20",
      class: "constructed",
      given: { ...shell, openings: [at("N1", 0, 7500, 40), at("N2", 0, 100, 40)] },
      expect: { a: 200.353334 },
      within: 0.000001,
      outside: ["the openings lie so far apart that each is judged by itself"],
    },
    {
      source: "constructed: exactly as far apart as two lengths that carry: 2·√(1000·10) = 200",
      class: "constructed",
      given: { Di: 990, Dc: 990, en: 12, es: 10, openings: [at("N1", 0, 0, 60), at("N2", 260, 0, 60)] },
      expect: { ls: 100, a: 200 },
      within: 1e-9,
    },
  ],
});

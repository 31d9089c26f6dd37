import { thicknessReading } from "./functions/parts.ts";
import { thinner, wire } from "./functions/wires.ts";
import { fromMemory } from "../model/basis.ts";
import { calculation, type CalculationInput } from "../model/calculation.ts";
import { wireNames, wirePoint } from "../model/wires.ts";

const wires = (table: string, how: string): CalculationInput => ({
  path: `table(${table}, profile.radiographicClass).points[]`,
  unit: "rows",
  means: `wires by thickness, ${how}, for the class that is asked for`,
  rows: wirePoint,
});

const ways = {
  s: "single wall, indicator on the source side",
  f: "double wall, indicator on the film side",
  d: "double wall, double image, indicator on the source side",
} as const;

const asked = (symbol: string, how: string, formula: string) => ({
  symbol,
  unit: "1",
  means: `wire that must be seen, a higher number being a thinner wire: ${how}`,
  formula,
  options: wireNames,
  display: `W_${symbol.slice(1)}`,
});

export const imageQuality = calculation({
  id: "image-quality",
  title: "Wire that radiographs of a joint must show",
  basis: fromMemory("EN ISO 17636-1", undefined, "annex B, least image quality by wires of ISO 19232-1"),
  covers:
    "The wire of the image quality indicator by the thickness of the thinner part at the joint and the class the profile asks for, in each arrangement that has a table. Single wall with the indicator on the film side has none: a comparison exposure shows what is asked there. Not covered are step-hole and duplex-wire indicators, and the thicker wires that may be agreed for Ir-192 and Se-75.",
  appliesTo: { kind: "joint", when: [{ path: "requiredTests[].method", equals: "RT" }] },
  inputs: {
    walls: {
      path: "thicknesses[]",
      unit: "rows",
      means: "thicknesses of the parts at the joint",
      rows: thicknessReading,
    },
    single: wires("image-quality-single-wall", ways.s),
    film: wires("image-quality-double-wall-film", ways.f),
    source: wires("image-quality-double-wall-source", ways.d),
  },
  functions: [thinner, wire],
  steps: [
    { symbol: "t", unit: "mm", means: "nominal thickness of the thinner part", formula: "thinner(walls)" },
    { symbol: "w", unit: "mm", means: "thickness penetrated through two walls", formula: "2*t" },
    asked("Ws", ways.s, "wire(single, t)"),
    asked("Wf", ways.f, "wire(film, w)"),
    asked("Wd", ways.d, "wire(source, w)"),
  ],
  limits: [],
  accept: [],
  compared: [
    { symbol: "Ws", unsafe: "low" },
    { symbol: "Wf", unsafe: "low" },
    { symbol: "Wd", unsafe: "low" },
  ],
  owner: "testing",
  announces: [
    {
      awaits: '<ndt-report:rows[].joint>[record.method="RT"].wire',
      remark:
        "which wire counts is decided by how the film is exposed and where the indicator stands; with the indicator on the film side of a single wall no table knows it: a comparison exposure shows what is asked",
      limits: [
        { symbol: "Ws", is: "at least" },
        { symbol: "Wf", is: "at least" },
        { symbol: "Wd", is: "at least" },
      ],
    },
  ],
  examples: [
    {
      source: "lines of the tables of EN ISO 17636-1, annex B, class B, read by hand: 8 mm, twice 16 mm",
      class: "from memory",
      given: {
        walls: [{ value: "8.0 mm" }, { value: "10 mm" }],
        single: points([4, 16], [6, 15], [8, 14]),
        film: points([6, 15], [12, 14], [18, 13]),
        source: points([8, 14], [15, 13], [25, 12]),
      },
      expect: { t: 8, w: 16, Ws: 15, Wf: 14, Wd: 13 },
      within: 0,
    },
    {
      source: "the same tables: just above the end of a line",
      class: "from memory",
      given: {
        walls: [{ value: "8.1 mm" }],
        single: points([4, 16], [6, 15], [8, 14]),
        film: points([6, 15], [12, 14], [18, 13]),
        source: points([8, 14], [15, 13], [25, 12]),
      },
      expect: { w: 16.2, Ws: 14, Wf: 14, Wd: 13 },
      within: 1e-9,
    },
  ],
});

function points(...lines: readonly (readonly [over: number, wire: number])[]) {
  return lines.map(([over, number]) => ({ over: `${over} mm`, wire: `W${number}` }));
}

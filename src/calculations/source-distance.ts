import { thicker } from "./functions/wires.ts";
import { thicknessReading } from "./functions/parts.ts";
import { fromMemory } from "../model/basis.ts";
import { calculation, type CalculationStep } from "../model/calculation.ts";
import { arrangements } from "../model/wires.ts";
import { owedBy } from "../model/owes.ts";

const { singleSource, singleFilm, doubleSingle, doubleFilm, doubleSource } = arrangements;
const up = { decimals: 1, direction: "up" } as const;

const least = (
  symbol: string,
  means: string,
  formula: string,
  when: NonNullable<CalculationStep["when"]>,
): CalculationStep => ({
  symbol,
  unit: "mm",
  means: `least distance from source to object, ${means}`,
  formula,
  empirical: true,
  when,
  display: `f_${symbol.slice(1)}`,
  round: up,
});

const held = (symbol: string, relation: "<" | ">=") =>
  ({
    left: "f",
    relation: ">=",
    right: symbol,
    means: `the source is as far from the object as its size asks for, ${symbol === "fs" ? "single" : "double"} image`,
    wrong: "the source stood {left} from the object; {right} is the least for a source of its size",
    accuses: "f",
    name: `distance ${symbol}`,
    when: { left: "w", relation, right: "3" },
  }) as const;

export const sourceDistance = calculation({
  id: "source-distance",
  title: "Least distance from source to object of a radiograph",
  basis: fromMemory(
    "EN ISO 17636-1",
    undefined,
    "least distance from source to object: k·d·b^(2/3), k 7.5 for class A and 15 for class B",
  ),
  covers:
    "The distance that keeps the geometric unsharpness small, with the film against the object: b is the thickness of the thicker part, of a double image the outside diameter. A source inside the part may stand nearer by a fifth, one at the centre by half, if the wire is seen. A distance between object and film, and the length that one exposure may show, are not covered: reports do not state them.",
  appliesTo: { kind: "ndt-report#rows", when: [{ path: "record.method", equals: "RT" }] },
  inputs: {
    d: { path: "record.radiography.sourceSize", unit: "mm", means: "size of the source", unsafe: "low" },
    f: { path: "record.radiography.distance", unit: "mm", means: "distance from source to object", unsafe: "high" },
    k: {
      path: "table(source-distance-factor, record.radiography.techniqueClass).factor",
      unit: "1",
      means: "factor of the class",
    },
    walls: {
      path: "joint.thicknesses[]",
      unit: "rows",
      means: "thicknesses of the parts at the joint",
      rows: thicknessReading,
    },
    De: { path: "joint.outsideDiameter", unit: "mm", means: "outside diameter", need: "optional", display: "D_e" },
    w: {
      path: "record.radiography.arrangement",
      unit: "1",
      means: "arrangement",
      need: "optional",
      otherwise: 0,
      options: [singleSource, singleFilm, doubleSingle, doubleFilm, doubleSource],
    },
    c: {
      path: "record.radiography.sourcePlace",
      unit: "1",
      means: "place of the source",
      need: "optional",
      otherwise: 0,
      options: ["outside the part", "inside, off the centre", "at the centre"],
    },
  },
  owes: [owedBy("testing", "testing-complete", "d", "f")],
  functions: [thicker],
  steps: [
    { symbol: "t", unit: "mm", means: "thickness of the thicker part", formula: "thicker(walls)" },
    {
      symbol: "r",
      unit: "1",
      means: "share of the distance that is left to a source inside, or at the centre",
      formula: "1 - 0.2*min(c, 1) - 0.3*max(c - 1, 0)",
    },
    least("fs", "a single image", "r*k*d*t^(2/3)", { left: "w", relation: "<", right: "3" }),
    least("fd", "a double image", "k*d*De^(2/3)", { left: "w", relation: ">=", right: "3" }),
    { symbol: "Ug", unit: "mm", means: "geometric unsharpness of a single image", formula: "d*t/f", display: "U_g" },
  ],
  limits: [],
  accept: [held("fs", "<"), { ...held("fd", ">="), needs: "De" }],
  compared: [],
  owner: "testing",
  examples: [
    {
      source: "formula of EN ISO 17636-1, worked by hand: class A, source of 3 mm, 20 mm thick; 7.5·3·7.3681",
      class: "from memory",
      given: { d: 3, f: 166, k: 7.5, walls: [{ value: "20 mm" }, { value: "8 mm" }], w: 0, c: 0 },
      expect: { t: 20, fs: 165.78 },
      within: 0.01,
    },
    {
      source: "the same, class B: 15·3·7.3681, with the source too near",
      class: "from memory",
      given: { d: 3, f: 331, k: 15, walls: [{ value: "20 mm" }], w: 0, c: 0 },
      expect: { fs: 331.56 },
      within: 0.01,
    },
    {
      source: "the same, source at the centre: half of it",
      class: "from memory",
      given: { d: 3, f: 170, k: 15, walls: [{ value: "20 mm" }], w: 0, c: 2 },
      expect: { r: 0.5, fs: 165.78 },
      within: 0.01,
    },
    {
      source: "the same, source inside, off the centre: four fifths of it",
      class: "from memory",
      given: { d: 3, f: 270, k: 15, walls: [{ value: "20 mm" }], w: 0, c: 1 },
      expect: { r: 0.8, fs: 265.25 },
      within: 0.01,
    },
    {
      source: "the same, double image of a pipe of 64 mm: 15·3·16",
      class: "from memory",
      given: { d: 3, f: 700, k: 15, walls: [{ value: "8 mm" }], De: 64, w: 3, c: 0 },
      expect: { fd: 720 },
      within: 1e-9,
    },
    {
      source: "the same, far enough",
      class: "from memory",
      given: { d: 3, f: 720, k: 15, walls: [{ value: "8 mm" }], De: 64, w: 4, c: 0 },
      expect: { fd: 720 },
      within: 1e-9,
    },
    {
      source:
        "a teaching page of X-ray optics (seen): focal spot 0.3 mm, object to film 250 mm, source to film 1000 mm; the page divides by the wrong distance, 0.3·250/750 is right",
      class: "constructed",
      given: { d: 0.3, f: 750, k: 7.5, walls: [{ value: "250 mm" }], w: 0, c: 0 },
      expect: { Ug: 0.1 },
      within: 1e-9,
    },
  ],
});

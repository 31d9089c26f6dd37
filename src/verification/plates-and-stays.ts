import { stay } from "../calculations/stay.ts";
import { stayedFlatPlate } from "../calculations/stayed-flat-plate.ts";
import { tubeNest } from "../calculations/tube-nest.ts";
import type { AnswerSource, PrintedAnswer } from "../model/answer.ts";
import { ask, inches, mm, MPa, newtons, rows } from "./ask.ts";

const brace = ([diameter, stress, printed]: readonly [number, number, number]): PrintedAnswer => ({
  what: "diameter of a brace for its safe load",
  given: `load ${printed} lb, ${stress} psi allowed`,
  printed: diameter,
  unit: "in",
  // Any area carries that load at the pressure that gives it.
  ours: () => inches(ask(stay, { p: newtons(printed) / 100, A: 100, a: 0, σs: MPa(stress), f: MPa(stress) }, "ds")),
  within: 0.0002,
  reaches: ["stay"],
});

const braces = ([area, printed]: readonly [number, number]): PrintedAnswer => ({
  what: "number of braces of 1 in",
  given: `${area} square inches to be braced at 100 psi, 7500 psi allowed`,
  printed,
  unit: "1",
  ours: () =>
    ask(stay, { p: MPa(100), A: area * 25.4 ** 2, a: 0, σs: MPa(7500), f: MPa(7500), d: 25.4, c: 0, δ: 0 }, "σ") /
    MPa(7500),
  within: 0.005,
  reaches: ["stay"],
});

export const hawkinsBraces: AnswerSource = {
  source: "Hawkins, Maxims and Instructions for the Boiler Room, New York 1897–1903, pp. 103–109, tables of braces",
  class: "published",
  answers: [
    ...(
      [
        [1, 7500, 5890],
        [1.25, 7500, 9204],
        [1.5, 6000, 10602],
        [2, 7500, 23562],
        [0.75, 7500, 3313],
        [1.125, 5000, 4970],
      ] as const
    ).map(brace),
    ...(
      [
        [930, 15.8],
        [714, 12.1],
        [485, 8.2],
      ] as const
    ).map(braces),
  ],
};

const ligament = ([pitch, holes, hole, printed]: readonly [number, number, number, number]): PrintedAnswer => ({
  what: holes === 1 ? "share of plate left by a row of holes" : `share of plate left by ${holes} holes in one repeat`,
  given: `pitch ${pitch} in, holes of ${hole} in`,
  printed,
  unit: "1",
  // One hole as wide as all holes of a repeat leaves the same plate.
  ours: () => ask(tubeNest, { d: mm(hole * holes), s: 0, P: mm(pitch) }, "l") / mm(pitch),
  within: 0.001,
  reaches: ["tube-nest"],
});

export const indianRegulations: AnswerSource = {
  source: "Indian Boiler Regulations 1950, regulation 215, efficiency of ligaments, equations 54 and 55",
  class: "excerpt seen",
  answers: (
    [
      [5.25, 1, 3.281, 0.375],
      [12, 2, 3.281, 0.453],
      [29.25, 5, 3.281, 0.439],
    ] as const
  ).map(ligament),
};

/** Thickness in mm of a plate with a constant of its own, whatever supports it; `d` is the circle through the supports. */
export const plateThickness = (p: number, d: number, f: number, C: number): number =>
  ask(
    stayedFlatPlate,
    { p, d, f, kf: 1, supports: rows(4, { support: "bar-stay" }), Cf: C, Cw: C, Cg: C, Cs: C, Ct: C, Cd: C, Ce: C },
    "e",
  );

/** The circle through four stays is √2 times their pitch, so that t = p·√(P/(S·C)) is ours with the constant 1/√(2·C). */
const inSquares = (pressure: number, pitch: number, stress: number, C: number): number =>
  inches(plateThickness(MPa(pressure), mm(Math.SQRT2 * pitch), MPa(stress), 1 / Math.sqrt(2 * C)));

const staybolts = ([thickness, pitch, printed]: readonly [number, number, number]): PrintedAnswer => ({
  what: "thickness of a plate with staybolts in squares",
  given: `${printed} psi, pitch ${pitch} in, stress 13 800 psi, constant 2.1`,
  printed: thickness,
  unit: "in",
  ours: () => inSquares(printed, pitch, 13800, 2.1),
  within: 0.004,
  because:
    "pressures printed to whole pounds; stress and constant inferred from the table, all of whose cells they give",
  reaches: ["stayed-flat-plate"],
});

export const inspectionCode: AnswerSource = {
  source: "National Board Inspection Code (NB-23) part 2, supplement 2, table of S2.10.4, as printed in file NB12-1201",
  class: "excerpt seen",
  answers: (
    [
      [0.19, 3.5, 85],
      [0.3, 3.5, 213],
      [0.35, 3.5, 290],
      [0.4, 3.5, 379],
      [0.2, 3.625, 88],
      [0.31, 3.625, 212],
      [0.41, 3.625, 371],
      [0.25, 3.75, 129],
      [0.3, 3.75, 185],
      [0.33, 3.75, 224],
    ] as const
  ).map(staybolts),
};

export const boilerCode1914: AnswerSource = {
  source: "ASME Boiler Code 1914, table of staybolt pitches (constant 112, thickness in sixteenths of an inch)",
  class: "from memory",
  answers: (
    [
      [5, 5.25],
      [6, 6.375],
    ] as const
  ).map(([sixteenths, printed]): PrintedAnswer => ({
    what: "thickness of a plate with staybolts in squares",
    given: `100 psi, pitch ${printed} in`,
    printed: sixteenths,
    unit: "1/16 in",
    // P = C·t²/p² with t in sixteenths of an inch: in inches the constant is 256 times as great.
    ours: () => inSquares(100, printed, 256 * 112, 1) * 16,
    within: 0.01,
    because: "pitches are printed to the eighth of an inch",
    reaches: ["stayed-flat-plate"],
  })),
};

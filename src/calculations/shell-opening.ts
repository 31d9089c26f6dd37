import { countedWall } from "./functions/openings.ts";
import { replacementAccept, replacementInputs, replacementSteps } from "./shared/area-replacement.ts";
import { shellOpeningExamples } from "./shell-opening-examples.ts";
import { derivedFrom, fromMemory } from "../model/basis.ts";
import { calculation, type CalculationInput } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const method = fromMemory("EN 12953-3", undefined, "openings in cylindrical shells, pressure area");
const setIn: readonly string[] = ["false", "true"];
const profile = (name: string, unit: string, means: string, display: string): CalculationInput => ({
  path: `profile.${name}`,
  unit,
  means,
  display,
});

export const shellOpening = calculation({
  id: "shell-opening",
  title: "Opening of a shell with its branch",
  basis: method,
  covers:
    "Reinforcement of a single opening in a cylindrical shell by its radial branch, in the plane of the shell's axis. Pads, metal inside the shell, oblique branches, welds across the opening, and loads of pipes are not covered. A shell's own thickness is judged by its own calculation.",
  caution:
    "Two schools judge an opening. Pressure area counts the shell as far as l_s from the branch; area replacement only within one bore of the centre, and of the shell only what it has to spare. A small branch in a large shell may hold by the first and lack half the metal of the second: the profile says what share must be replaced.",
  appliesTo: {
    kind: "part#openings",
    when: [
      { path: "record.pressureBearing", equals: true },
      { path: "record.role", equals: "shell-course" },
      { path: "branch", exists: true },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    Di: {
      path: "record.calculation(cylindrical-shell).Dc",
      unit: "mm",
      means: "inside diameter of the shell, corroded",
      display: "D_i",
      unsafe: "low",
    },
    es: {
      path: "record.calculation(cylindrical-shell).ea",
      unit: "mm",
      means: "analysis thickness of the shell",
      display: "e_s",
      unsafe: "high",
    },
    fs: {
      path: "record.calculation(design-stress).f",
      unit: "MPa",
      means: "design stress of the shell",
      display: "f_s",
      unsafe: "high",
    },
    fb: {
      path: "branch.calculation(design-stress).f",
      unit: "MPa",
      means: "design stress of the branch",
      display: "f_b",
      unsafe: "high",
    },
    do: {
      path: "branch.outsideDiameter",
      unit: "mm",
      means: "outside diameter of the branch, where it is round",
      need: "optional",
      otherwise: 0,
      display: "d_o",
      unsafe: "low",
    },
    w: {
      path: "axialWidth",
      unit: "mm",
      means: "width along the axis of the shell, of an opening that is not round",
      need: "optional",
      otherwise: 0,
      unsafe: "low",
    },
    en: { path: "branch.nominalThickness", unit: "mm", means: "wall of the branch", display: "e_n", unsafe: "high" },
    c: { path: "branch.corrosionAllowance", unit: "mm", means: "corrosion allowance of the branch", unsafe: "low" },
    δ: {
      path: "branch.thicknessUndertolerance",
      unit: "mm",
      means: "undertolerance of the wall of the branch",
      unsafe: "low",
    },
    h: { path: "branchLength", unit: "mm", means: "length of the branch outside the shell", unsafe: "high" },
    k: { path: "setIn", unit: "1", means: "whether the branch passes through the shell", options: setIn },
    ks: profile("branchBoreSmall", "mm", "greatest bore of a small branch", "d_small"),
    k1: profile("branchWallSmall", "1", "greatest counted wall of a small branch, to the shell's", "k_1"),
    k2: profile("branchWallLarge", "1", "greatest counted wall of a larger branch, to the shell's", "k_2"),
    k3: profile("frameWall", "1", "greatest counted wall of a frame, to the shell's", "k_3"),
    kd: profile("branchDiameterShare", "1", "greatest bore, to the inside diameter of the shell", "k_d"),
    ...replacementInputs,
  },
  owes: [owedBy("design", "design-approved", "c", "δ", "h", "k")],
  functions: [countedWall],
  steps: [
    {
      symbol: "ea",
      unit: "mm",
      means: "analysis wall of the branch",
      formula: "en - c - δ",
      display: "e_a",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "di",
      unit: "mm",
      means: "bore, or width along the axis, when corroded",
      formula: "max(do - 2*ea, w + 2*c)",
      display: "d_i",
      round: { decimals: 1, direction: "up" },
    },
    {
      symbol: "eb",
      unit: "mm",
      means: "wall of the branch that counts",
      formula: "countedWall(ea, es, di, w, ks, k1, k2, k3)",
      display: "e_b",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "ls",
      unit: "mm",
      means: "length of shell that carries",
      formula: "sqrt((Di + es)*es)",
      display: "l_s",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "lb",
      unit: "mm",
      means: "length of branch that carries",
      formula: "min(sqrt((di + eb)*eb), h)",
      display: "l_b",
      round: { decimals: 1, direction: "down" },
    },
    {
      symbol: "Ap",
      unit: "mm²",
      means: "area under pressure",
      formula: "Di/2*(ls + ea + di/2) + di/2*(lb + es)",
      display: "A_p",
      round: { decimals: 0, direction: "up" },
    },
    {
      symbol: "Af",
      unit: "mm²",
      means: "area of metal",
      formula: "ls*es + eb*(lb + k*es)",
      display: "A_f",
      round: { decimals: 0, direction: "down" },
    },
    {
      symbol: "σ",
      unit: "MPa",
      means: "mean stress around the opening",
      formula: "p*(Ap/Af + 0.5)",
      round: { decimals: 1, direction: "up" },
      basis: derivedFrom(
        "equilibrium of pressure and metal in the plane of the axis, half the pressure for the wall's mean",
      ),
    },
    {
      symbol: "f",
      unit: "MPa",
      means: "design stress: the lower of shell and branch",
      formula: "min(fs, fb)",
      round: { decimals: 1, direction: "down" },
    },
    ...replacementSteps,
  ],
  limits: [
    {
      left: "di",
      relation: "<=",
      right: "kd*Di",
      means: "the opening is small against the shell",
      wrong: "the opening is {left} wide, above {kd} of the inside diameter of the shell, {right}",
      basis: method,
    },
    {
      name: "no size",
      left: "max(do, w)",
      relation: ">",
      right: "'0 mm'",
      means: "the branch has a diameter, or the opening a width",
      wrong: "neither a diameter of the branch nor a width of the opening is above {right}",
    },
  ],
  accept: [
    {
      left: "σ",
      relation: "<=",
      right: "f",
      means: "the mean stress around the opening is at most the design stress",
      accuses: "en",
    },
    replacementAccept,
  ],
  compared: [
    { symbol: "ls", unsafe: "high" },
    { symbol: "lb", unsafe: "high" },
    { symbol: "Ap", unsafe: "low" },
    { symbol: "Af", unsafe: "high" },
    { symbol: "σ", unsafe: "low" },
    { symbol: "Ar", unsafe: "low" },
    { symbol: "Aa", unsafe: "high" },
  ],
  adopted: "en",
  examples: shellOpeningExamples,
});

import {
  collapsePressure,
  diameterReading,
  elasticFactor,
  meanDiameter,
  ovality,
} from "../functions/external-pressure.ts";
import { steelModulus } from "../functions/modulus.ts";
import { least } from "../functions/parts.ts";
import { accept, limits, steps, wall } from "./external-conditions.ts";
import { fromMemory } from "../../model/basis.ts";
import type { Calculation } from "../../model/calculation.ts";
import { owedBy } from "../../model/owes.ts";

const en12953 = fromMemory("EN 12953-3", undefined, "cylinders under external pressure: plastic and elastic condition");

/** What a cylinder under external pressure brings of its own to the two conditions. */
export interface ExternalCylinder extends Pick<Calculation, "id" | "title" | "covers" | "examples" | "caution"> {
  readonly role: string;
  /** Parameter of the profile that holds the safety factor of the plastic condition. */
  readonly plasticFactor: string;
  readonly inputs?: Calculation["inputs"];
  /** Those of its own inputs that design owes. */
  readonly owes?: readonly string[];
  readonly functions?: Calculation["functions"];
  readonly steps?: Calculation["steps"];
  readonly limits: Calculation["limits"];
  readonly accept?: Calculation["accept"];
}

/**
 * The calculation of a plain cylinder between two effective supports under external pressure: thickness against plastic
 * yielding of a cylinder out of round, thickness against elastic collapse, and back from the wall the pressure of each.
 */
export function externalPressure(own: ExternalCylinder): Calculation {
  const { id, title, covers, role, plasticFactor, examples, caution } = own;
  return {
    id,
    title,
    scope: "shell-boilers",
    basis: en12953,
    covers,
    ...(caution !== undefined && { caution }),
    appliesTo: {
      kind: "part",
      when: [
        { path: "pressureBearing", equals: true },
        { path: "role", equals: role },
      ],
    },
    inputs: { ...inputs(plasticFactor), ...own.inputs },
    owes: [
      owedBy("design", "design-approved", "Do", "L", "u", "c", "δ", ...(own.owes ?? [])),
      owedBy("quality", "final-inspection", "measured", "diameters"),
    ],
    functions: [meanDiameter, steelModulus, elasticFactor, collapsePressure, least, ovality, ...(own.functions ?? [])],
    steps: [...steps, ...(own.steps ?? [])],
    limits: [...limits, ...own.limits],
    accept: [...accept, ...(own.accept ?? [])],
    compared: [
      { symbol: "epl", unsafe: "low" },
      { symbol: "eel", unsafe: "low" },
      { symbol: "ereq", unsafe: "low" },
      { symbol: "pmax", unsafe: "high" },
    ],
    adopted: "en",
    announces: wall.announces,
    crossCheck: {
      means:
        "elastic collapse of a perfect cylinder after R. von Mises, less the end effect 0.45·√(d·e)/L of D. F. Windenburg and C. Trilling, which the formula leaves out",
      symbol: "pel",
      formula: "pM/S2*(1 - 0.45*sqrt(d*ea)/L)",
      unit: "MPa",
      within: "0.2*pel",
      basis: fromMemory("D. F. Windenburg and C. Trilling, Trans. ASME 56", "1934", "collapse by instability"),
    },
    examples,
  };
}

const inputs = (plasticFactor: string): Calculation["inputs"] => ({
  p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
  Do: { path: "outsideDiameter", unit: "mm", means: "outside diameter", display: "D_o", unsafe: "low" },
  en: wall.inputs.en,
  L: { path: "unsupportedLength", unit: "mm", means: "length between effective supports", unsafe: "low" },
  u: { path: "outOfRoundness", unit: "%", means: "greatest out-of-roundness allowed for", unsafe: "low" },
  Rp02: {
    path: "calculation(design-stress).Rp02",
    unit: "MPa",
    means: "least 0.2 % proof strength at the calculation temperature",
    display: "R_p0.2/t",
    unsafe: "high",
  },
  t: { path: "calculation(design-stress).t", unit: "°C", means: "calculation temperature", unsafe: "low" },
  c: wall.inputs.c,
  δ: wall.inputs.δ,
  S1: {
    path: `profile.${plasticFactor}`,
    unit: "1",
    means: "safety factor of the plastic condition",
    display: "S_1",
  },
  S20: {
    path: "profile.externalFactorElastic",
    unit: "1",
    means: "safety factor of the elastic condition",
    display: "S_2,0",
  },
  S2u: {
    path: "profile.externalFactorElasticOval",
    unit: "1",
    means: "safety factor of the elastic condition for a cylinder less round",
    display: "S_2,u",
  },
  u0: {
    path: "profile.outOfRoundnessLeast",
    unit: "%",
    means: "out-of-roundness always reckoned with",
    display: "u_0",
  },
  us: {
    path: "profile.outOfRoundnessUsual",
    unit: "%",
    means: "out-of-roundness above which the greater elastic factor holds",
    display: "u_s",
  },
  umax: {
    path: "profile.outOfRoundnessMost",
    unit: "%",
    means: "greatest out-of-roundness the conditions cover",
    display: "u_max",
  },
  dmax: {
    path: "profile.externalDiameterMost",
    unit: "mm",
    means: "greatest mean diameter the conditions cover",
    display: "d_max",
  },
  measured: wall.inputs.measured,
  diameters: {
    path: "measuredDiameters[]",
    unit: "rows",
    means: "measured outside diameters",
    need: "optional",
    rows: diameterReading,
  },
});

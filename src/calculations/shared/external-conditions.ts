import { derivedFrom, excerptSeen, fromMemory } from "../../model/basis.ts";
import type { Calculation } from "../../model/calculation.ts";
import { carried } from "./carried-pressure.ts";
import { wallLeft, wallOf } from "./wall.ts";

export const wall = wallOf("thickness");

const up = { decimals: 2, direction: "up" } as const;

/** From pressure to thickness, and back from the wall to the pressure of each condition. */
export const steps: Calculation["steps"] = [
  { symbol: "d", unit: "mm", means: "mean diameter", formula: "meanDiameter(Do, en)", round: up },
  { symbol: "E", unit: "MPa", means: "Young's modulus", formula: "steelModulus(t)" },
  {
    symbol: "uc",
    unit: "%",
    means: "out-of-roundness to reckon with",
    formula: "max(u, u0)",
    display: "u_c",
    round: up,
  },
  {
    symbol: "S2",
    unit: "1",
    means: "safety factor of the elastic condition",
    formula: "elasticFactor(uc, us, S20, S2u)",
    display: "S_2",
  },
  {
    symbol: "B",
    unit: "mm",
    means: "thickness of a round cylinder against plastic yielding",
    formula: "p*d*S1 / (2*Rp02*(1 + d/(15*L)))",
    round: up,
  },
  {
    symbol: "epl",
    unit: "mm",
    means: "thickness against plastic yielding, out of round",
    formula: "B/2*(1 + sqrt(1 + 0.12*d*(uc/'1 %') / (B*(1 + d/(0.3*L)))))",
    display: "e_pl",
    round: up,
  },
  {
    symbol: "eel",
    unit: "mm",
    means: "thickness against elastic collapse",
    formula: "d^0.6*(L*S2*p / (2.6*E))^0.4",
    display: "e_el",
    round: up,
  },
  { symbol: "e", unit: "mm", means: "required thickness without allowances", formula: "max(epl, eel)", round: up },
  wall.required,
  wall.analysis,
  ...carried("ea", "Rp02", "the analysis thickness", derivedFrom("the same condition solved for the pressure")),
  ...wall.measured,
  {
    symbol: "um",
    unit: "%",
    means: "out-of-roundness as measured",
    formula: "ovality(diameters)",
    display: "u_m",
    round: up,
  },
];

/** Where both conditions hold. */
export const limits: Calculation["limits"] = [
  {
    name: "wall too thick",
    left: "en/d",
    relation: "<=",
    right: "0.1",
    means: "the wall is thin: e/d is at most 0.1",
    wrong: "the wall is {left} of the mean diameter, above {right}",
    basis: excerptSeen("TRD 306", "section 1: range of the conditions"),
  },
  {
    left: "d",
    relation: "<=",
    right: "dmax",
    means: "the mean diameter is at most the greatest the conditions cover",
    basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 592"),
  },
  {
    left: "uc",
    relation: "<=",
    right: "umax",
    means: "the out-of-roundness is at most the greatest the conditions cover",
    basis: excerptSeen("TRD 306", "section 9"),
  },
  wallLeft,
  {
    left: "L",
    relation: ">=",
    right: "1.1*sqrt(d*ea)",
    means: "the supports stand far enough apart to be a cylinder between them: at least 1.1·√(d·e)",
    wrong: "the supports stand {left} apart, nearer than the {right} from which there is a cylinder between them",
    basis: derivedFrom(
      "a strip of 0.55·√(d·e) on each side acts with a support; nearer supports leave nothing between",
    ),
  },
  {
    left: "L",
    relation: "<=",
    right: "1.11*d*sqrt(d/ea)",
    means: "the supports still help against collapse: the length is at most 1.11·d·√(d/e)",
    wrong: "the supports stand {left} apart, farther than the {right} within which they help against collapse",
    basis: fromMemory("D. F. Windenburg and C. Trilling, Trans. ASME 56", "1934", "critical length"),
  },
];

export const accept: Calculation["accept"] = [
  wall.thickEnough,
  wall.measuredEnough,
  {
    left: "um",
    relation: "<=",
    right: "u",
    means: "the measured out-of-roundness is at most the one allowed for",
    accuses: "diameters",
    needs: "diameters",
    owner: "quality",
  },
];

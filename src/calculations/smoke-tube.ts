import { smokeTubeExamples } from "./smoke-tube-examples.ts";
import { least } from "./functions/parts.ts";
import { wallOf } from "./shared/wall.ts";
import { derivedFrom, excerptSeen, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

const wall = wallOf("wall");

export const smokeTube = calculation({
  id: "smoke-tube",
  scope: "tube-nests",
  title: "Smoke tube under external pressure",
  basis: excerptSeen("Indian Boiler Regulations 1950", "tubes under external pressure: 1.6·f·(T − C)/D"),
  covers:
    "Required wall of a straight smoke tube or stay tube for external pressure alone. What a stay tube carries of its plates, and what expanding and wear ask for beyond the pressure, are not covered.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: ["tube", "stay-tube"] },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    do: { path: "outsideDiameter", unit: "mm", means: "outside diameter", display: "d_o", unsafe: "low" },
    en: wall.inputs.en,
    f: { path: "calculation(design-stress).f", unit: "MPa", means: "design stress", unsafe: "high" },
    c: wall.inputs.c,
    δ: wall.inputs.δ,
    measured: wall.inputs.measured,
  },
  owes: [owedBy("design", "design-approved", "do", "c", "δ")],
  functions: [least],
  steps: [
    {
      symbol: "e",
      unit: "mm",
      means: "required wall without allowances",
      formula: "p*do / (1.6*f)",
      round: { decimals: 2, direction: "up" },
    },
    wall.required,
    wall.analysis,
    {
      symbol: "pmax",
      unit: "MPa",
      means: "highest pressure the analysis thickness carries",
      formula: "1.6*f*ea / do",
      display: "p_max",
      round: { decimals: 3, direction: "down" },
    },
    ...wall.measured,
  ],
  limits: [
    {
      left: "p",
      relation: "<=",
      right: "0.2*f",
      means: "the pressure is small against the design stress",
      wrong: "the pressure is {left}, above a fifth of the design stress, {right}",
      basis: ownChoice("the formula is one of thin walls"),
    },
    {
      left: "do",
      relation: ">",
      right: "2*en",
      means: "the walls leave a bore",
      wrong: "the outside diameter is {left}; it must be above twice the wall, {right}",
    },
    {
      left: "do",
      relation: "<=",
      right: "'200 mm'",
      means: "it is a tube: the outside diameter is at most 200 mm",
      basis: excerptSeen("TRD 306", "section 1: tubes of at most 200 mm"),
    },
    {
      left: "ea",
      relation: ">=",
      right: "0.03*do",
      means: "elastic collapse need not be judged: the analysis thickness is at least 0.03·d",
      wrong:
        "the analysis thickness is {left}, below 0.03 of the outside diameter, {right}, so that elastic collapse would have to be judged",
      basis: derivedFrom("at 0.03·d even an endless tube of steel collapses elastically above 11 MPa only"),
    },
  ],
  accept: [wall.thickEnough, wall.measuredEnough],
  compared: [
    { symbol: "e", unsafe: "low" },
    { symbol: "ereq", unsafe: "low" },
    { symbol: "pmax", unsafe: "high" },
  ],
  adopted: "en",
  crossCheck: {
    means: "thick-walled tube: the wall at which the compressive hoop stress at the bore equals 0.8·f",
    symbol: "e",
    formula: "do/2*(1 - sqrt(1 - 2*p/(0.8*f)))",
    unit: "mm",
    within: "1.2*e*p/f",
    basis: derivedFrom("G. Lamé's solution of the thick-walled cylinder; the series of both differ by 0.625·p/f"),
  },
  examples: smokeTubeExamples,
});

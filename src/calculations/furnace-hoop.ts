import { furnaceHoopExamples } from "./furnace-hoop-examples.ts";
import { leastMeasured } from "./shared/wall.ts";
import { meanDiameter } from "./functions/external-pressure.ts";
import { hoopSecondMoment, meanOfSpans, sectionAtHoop } from "./functions/hoop.ts";
import { steelModulus } from "./functions/modulus.ts";
import { least, thicknessReading } from "./functions/parts.ts";
import { derivedFrom, excerptSeen, fromMemory, ownChoice } from "../model/basis.ts";
import { calculation } from "../model/calculation.ts";
import { owedBy } from "../model/owes.ts";

export const furnaceHoop = calculation({
  id: "furnace-hoop",
  scope: "shell-boilers",
  title: "Hoop of a furnace as an effective support",
  basis: fromMemory("rules of ship classification societies", undefined, "stiffeners of furnaces, p·D³·L/1.33·10⁶"),
  covers:
    "Whether a formed hoop, with the furnace beside it, is stiff enough to count as a support of the furnace. Flat rings welded on, the springing of the hoop along the axis, and its fatigue are not covered.",
  appliesTo: {
    kind: "part",
    when: [
      { path: "pressureBearing", equals: true },
      { path: "role", equals: "furnace-hoop" },
    ],
  },
  inputs: {
    p: { path: "book.equipment.calculationPressure", unit: "MPa", means: "calculation pressure", unsafe: "low" },
    L: {
      path: "unsupportedLength",
      unit: "mm",
      means: "length of furnace the hoop supports: mean of the two it parts",
      unsafe: "low",
    },
    sections: {
      path: "<joint:parts[]>.parts[]",
      unit: "rows",
      means: "parts that joints name with the hoop",
      need: "any",
      rows: sectionAtHoop,
    },
    h: { path: "hoop.depth", unit: "mm", means: "radial depth of the hoop over all", unsafe: "high" },
    b: { path: "hoop.width", unit: "mm", means: "axial width of the hoop over all", unsafe: "high" },
    en: { path: "nominalThickness", unit: "mm", means: "nominal wall of the hoop", display: "e_n", unsafe: "high" },
    c: { path: "corrosionAllowance", unit: "mm", means: "corrosion allowance of the hoop", unsafe: "low" },
    δ: { path: "thicknessUndertolerance", unit: "mm", means: "undertolerance of the hoop's wall", unsafe: "low" },
    DF: {
      path: "hoop.furnace.outsideDiameter",
      unit: "mm",
      means: "outside diameter of the furnace",
      display: "D_F",
      unsafe: "low",
    },
    eF: {
      path: "hoop.furnace.nominalThickness",
      unit: "mm",
      means: "nominal thickness of the furnace",
      display: "e_F",
    },
    cF: {
      path: "hoop.furnace.corrosionAllowance",
      unit: "mm",
      means: "corrosion allowance of the furnace",
      display: "c_F",
      unsafe: "low",
    },
    δF: {
      path: "hoop.furnace.thicknessUndertolerance",
      unit: "mm",
      means: "undertolerance of the furnace's thickness",
      display: "δ_F",
      unsafe: "low",
    },
    t: { path: "calculation(design-stress).t", unit: "°C", means: "calculation temperature", unsafe: "low" },
    S2: {
      path: "profile.externalFactorElastic",
      unit: "1",
      means: "safety factor of the elastic condition, for the second method",
      display: "S_2",
    },
    dmax: {
      path: "profile.externalDiameterMost",
      unit: "mm",
      means: "greatest mean diameter of a furnace",
      display: "d_max",
    },
    measured: {
      path: "measuredThickness[]",
      unit: "rows",
      means: "measured thicknesses of the hoop",
      need: "optional",
      rows: thicknessReading,
    },
  },
  owes: [
    owedBy("design", "design-approved", "L", "h", "b", "c", "δ", "DF", "cF", "δF"),
    owedBy("quality", "final-inspection", "measured"),
  ],
  functions: [meanDiameter, steelModulus, meanOfSpans, hoopSecondMoment, least],
  steps: [
    {
      symbol: "d",
      unit: "mm",
      means: "mean diameter of the furnace",
      formula: "meanDiameter(DF, eF)",
      round: { decimals: 2, direction: "up" },
    },
    { symbol: "E", unit: "MPa", means: "Young's modulus, for the second method", formula: "steelModulus(t)" },
    {
      symbol: "Lm",
      unit: "mm",
      means: "mean length between supports of the sections beside the hoop",
      formula: "meanOfSpans(sections)",
      display: "L_m",
      round: { decimals: 0, direction: "up" },
    },
    {
      symbol: "Ireq",
      unit: "mm⁴",
      means: "required second moment of area",
      formula: "p*d^3*L / '1330000 MPa'",
      display: "I_req",
      round: { decimals: 0, direction: "up" },
    },
    {
      symbol: "I",
      unit: "mm⁴",
      means: "second moment of area of the hoop and the furnace beside it, less their allowances",
      formula: "hoopSecondMoment(h, b, en, en - c - δ, eF - cF - δF, d)",
      round: { decimals: 0, direction: "down" },
    },
    {
      symbol: "em",
      unit: "mm",
      means: "least measured thickness",
      formula: "least(measured)",
      display: "e_m",
      round: { decimals: 2, direction: "down" },
    },
    {
      symbol: "emin",
      unit: "mm",
      means: "least thickness the calculation takes for granted before corrosion",
      formula: "en - δ",
      display: "e_min",
      round: { decimals: 2, direction: "up" },
    },
  ],
  limits: [
    {
      left: "d",
      relation: "<=",
      right: "dmax",
      means: "the mean diameter is at most the greatest the conditions cover",
      basis: excerptSeen("Indian Boiler Regulations 1950", "regulation 592"),
    },
  ],
  accept: [
    {
      left: "L",
      relation: ">=",
      right: "Lm",
      means: "the length the hoop supports is at least the mean of the sections beside it",
      accuses: "L",
      basis: derivedFrom("a hoop carries half of the length on each side of it"),
    },
    {
      left: "I",
      relation: ">=",
      right: "Ireq",
      means: "the hoop is stiff enough to support the furnace",
      wrong: "the hoop and the furnace beside it have a second moment of area of {left}, below the required {right}",
      accuses: "h",
    },
    {
      left: "en",
      relation: ">=",
      right: "eF",
      means: "the hoop is at least as thick as its furnace",
      accuses: "en",
      basis: ownChoice("the hoop carries the same pressure and heat as the furnace"),
    },
    {
      left: "em",
      relation: ">=",
      right: "emin",
      means: "the least measured thickness is at least the nominal one less its undertolerance",
      accuses: "measured",
      needs: "measured",
      owner: "quality",
    },
  ],
  compared: [
    { symbol: "Ireq", unsafe: "low" },
    { symbol: "I", unsafe: "high" },
  ],
  adopted: "en",
  announces: leastMeasured,
  crossCheck: {
    means: "collapse of a ring, 3·E·I/R³ with R = d/2, under the load p·L times the safety factor",
    symbol: "Ireq",
    formula: "S2*p*L*(d/2)^3 / (3*E)",
    unit: "mm⁴",
    within: "0.25*Ireq",
    basis: derivedFrom("M. Lévy's ring under outer pressure; 1.33·10⁶ MPa stands for 8·E at a lower modulus"),
  },
  examples: furnaceHoopExamples,
});

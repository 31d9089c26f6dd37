import { collapsePressure, elasticFactor } from "./functions/external-pressure.ts";
import { steelModulus } from "./functions/modulus.ts";
import { externalTestExamples } from "./shared/external-test-examples.ts";
import { derivedFrom, excerptSeen, fromMemory } from "../model/basis.ts";
import { calculation, type Calculation, type CalculationInput } from "../model/calculation.ts";
import { testWall } from "./shared/test-wall.ts";
import { carried } from "./shared/carried-pressure.ts";

const conditions = derivedFrom("the conditions of the calculation at working pressure, solved for the pressure");

const parameter = (name: string, unit: string, means: string, display: string): CalculationInput => ({
  path: `profile.${name}`,
  unit,
  means,
  display,
});

/** A cylinder that the water of the pressure test loads from outside: cold, as built, with the factors of a test. */
function externalTest(role: string, title: string): Calculation {
  return calculation({
    id: `${role}-test`,
    scope: "shell-boilers",
    title: `${title} at the hydrostatic test`,
    basis: excerptSeen("TRD 306", "section 9: factors against elastic collapse at the test"),
    covers:
      "Pressure that a cylinder carries from outside at the test, in the wall as built without corrosion, cold, between the supports of its calculation at working pressure and as much out of round; where that calculation holds, this one does. The weight of the water is not covered.",
    appliesTo: {
      kind: "part",
      when: [
        { path: "pressureBearing", equals: true },
        { path: "role", equals: role },
      ],
    },
    inputs: {
      PT: testWall.PT,
      d: { path: `calculation(${role}).d`, unit: "mm", means: "mean diameter", unsafe: "low" },
      uc: {
        path: `calculation(${role}).uc`,
        unit: "%",
        means: "out-of-roundness to reckon with",
        display: "u_c",
        unsafe: "low",
      },
      L: { path: "unsupportedLength", unit: "mm", means: "length between effective supports", unsafe: "low" },
      en: testWall.en,
      δ: testWall.δ,
      ReH: testWall.ReH,
      S1: parameter("testFactorPlastic", "1", "safety factor of the plastic condition at the test", "S_1"),
      S20: parameter("testFactorElastic", "1", "safety factor of the elastic condition at the test", "S_2,0"),
      S2u: parameter("testFactorElasticOval", "1", "the same for a cylinder less round", "S_2,u"),
      us: parameter("outOfRoundnessUsual", "%", "out-of-roundness above which the greater factor holds", "u_s"),
    },
    functions: [steelModulus, elasticFactor, collapsePressure],
    steps: [
      {
        symbol: "e",
        unit: "mm",
        means: "least thickness as built",
        formula: "en - δ",
        round: { decimals: 2, direction: "down" },
      },
      { symbol: "E", unit: "MPa", means: "Young's modulus at 20 °C", formula: "steelModulus('20 °C')" },
      {
        symbol: "S2",
        unit: "1",
        means: "safety factor of the elastic condition",
        formula: "elasticFactor(uc, us, S20, S2u)",
        display: "S_2",
      },
      ...carried("e", "ReH", "the wall", conditions),
    ],
    limits: [],
    accept: [
      {
        left: "PT",
        relation: "<=",
        right: "pmax",
        means: "the test pressure is at most what the wall as built carries from outside",
        accuses: "PT",
      },
    ],
    compared: [
      { symbol: "ppl", unsafe: "high" },
      { symbol: "pel", unsafe: "high" },
      { symbol: "pmax", unsafe: "high" },
    ],
    crossCheck: {
      means:
        "elastic collapse of a perfect cylinder after R. von Mises, less the end effect 0.45·√(d·e)/L of D. F. Windenburg and C. Trilling",
      symbol: "pel",
      formula: "pM/S2*(1 - 0.45*sqrt(d*e)/L)",
      unit: "MPa",
      within: "0.2*pel",
      basis: fromMemory("D. F. Windenburg and C. Trilling, Trans. ASME 56", "1934", "collapse by instability"),
    },
    examples: externalTestExamples,
  });
}

export const furnaceTest = externalTest("furnace", "Furnace");
export const chamberTest = externalTest("reversal-chamber", "Wrapper of a reversal chamber");
export const accessTubeTest = externalTest("access-tube", "Access tube");

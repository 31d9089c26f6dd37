import { describe, expect, it } from "vitest";
import { designStress } from "../../src/calculations/design-stress.ts";
import { categories, heatedCategory } from "../../src/calculations/functions/category.ts";
import { proofStrengthPoint } from "../../src/calculations/functions/proof-strength.ts";
import { stressOfPart } from "../../src/calculations/functions/parts.ts";
import { testPressure } from "../../src/calculations/test-pressure.ts";
import { run } from "../../src/compute/run.ts";
import type { ListArgument } from "../../src/model/calculation.ts";
import { cautious, type ParameterName } from "../../src/profiles/cautious.ts";
import { rows, valueOf } from "../calculations/rows.ts";

const factor = (name: ParameterName) => Number(cautious.parameters[name].value);

describe("Directive 2014/68/EU", () => {
  it("Directive 2014/68/EU, Annex I, 7.1.2 (excerpt seen): two thirds of the proof strength, five twelfths of the tensile strength", () => {
    const points = rows(proofStrengthPoint, [{ temperature: "200 °C", proofStrength: "205 MPa" }]);
    const stress = (t: number) =>
      run(
        designStress,
        new Map<string, ListArgument>([
          ["tE", t],
          ["ReH", 300],
          ["Rm", 410],
          ["points", points],
          ["SY", factor("safetyFactorYield")],
          ["ST", factor("safetyFactorTensile")],
        ]),
      ).values.get("f");
    expect(stress(200)).toBeCloseTo((205 * 2) / 3, 9);
    expect(stress(20)).toBeCloseTo((410 * 5) / 12, 9);
  });

  it("Directive 2014/68/EU, Annex I, 7.4 (excerpt seen): the greater of 1.43·PS and 1.25 with the ratio of stresses", () => {
    const pressure = (f20: number, f: number) => {
      const part = rows(stressOfPart, [{ f20: `${f20} MPa`, f: `${f} MPa` }]);
      const given = new Map<string, ListArgument>([
        ["PS", 13],
        ["courses", part],
        ["ends", part],
        ["PTs", 20],
        ["kP", factor("testFactorPressure")],
        ["kf", factor("testFactorStress")],
        ["kU", factor("testUpperFactor")],
      ]);
      return run(testPressure, given).values.get("PT");
    };
    expect(pressure(170, 137.8)).toBeCloseTo(20.05, 2);
    expect(pressure(170, 160)).toBeCloseTo(18.59, 9);
  });

  it.each([
    [20, 2.2, "I"],
    [10, 15, "II"],
    [10, 200, "III"],
    [13, 8000, "IV"],
    [40, 10, "IV"],
    [10, 1.5, "sound engineering practice"],
  ] as const)("Directive 2014/68/EU, Annex II, table 5 (excerpt seen): %s bar, %s l is %s", (PS, V, category) => {
    expect(categories[Number(valueOf(heatedCategory, PS, V))]).toBe(category);
  });

  it("Pennsylvania Code, title 34, boiler rules (excerpt seen): at most 106 % of the test pressure, 21.306 bar for 20.1", () => {
    expect(factor("testUpperFactor") * 20.1).toBeCloseTo(21.306, 9);
  });
});

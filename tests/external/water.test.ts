import { describe, expect, it } from "vitest";
import { waterCompressibility, waterExpansion } from "../../src/calculations/functions/water.ts";
import { compressibilityOfWater, densityOfWater, expansionOfWater } from "../../src/model/water.ts";
import { valueOf } from "../calculations/rows.ts";

/** Temperature in °C, expansion in 10⁻³/K, compressibility in 1/GPa, density in kg/m³, as printed. */
const printed = [
  [10, 0.088, 0.4781, 999.7],
  [20, 0.207, 0.4589, 998.2],
  [30, 0.303, 0.4477, 995.7],
  [40, 0.385, 0.4424, 992.2],
] as const;

describe("water", () => {
  it.each(printed)(
    "London South Bank University, Water Structure and Science, physical data of water (excerpt seen): %s °C",
    (t, expansion, compressibility, density) => {
      expect(Math.abs(expansionOfWater(t) * 1e3 - expansion)).toBeLessThanOrEqual(0.0006);
      expect(Math.abs(compressibilityOfWater(t) * 1e4 - compressibility)).toBeLessThanOrEqual(0.0001);
      expect(Math.abs(densityOfWater(t) - density)).toBeLessThanOrEqual(0.1);
    },
  );

  it("Kell, J. Chem. Eng. Data 20 (1975) 97 (second method): the expansion is the slope of the density", () => {
    for (const t of [0.1, 4, 10, 25, 60, 99]) {
      const step = 1e-4;
      const slope = (densityOfWater(t + step) - densityOfWater(t - step)) / (2 * step);
      expect(expansionOfWater(t)).toBeCloseTo(-slope / densityOfWater(t), 9);
    }
  });

  it("common knowledge (from memory): the density is greatest near 3.98 °C", () => {
    expect(expansionOfWater(3.9)).toBeLessThan(0);
    expect(expansionOfWater(4.05)).toBeGreaterThan(0);
  });

  it("thermodynamic balance (constructed): a full steel vessel stops answering to temperature at 6.32 °C", () => {
    const steel = 3 * 12e-6;
    expect(expansionOfWater(6.31)).toBeLessThan(steel);
    expect(expansionOfWater(6.33)).toBeGreaterThan(steel);
  });

  it("own limits: refused outside 0 to 100 °C", () => {
    for (const named of [waterExpansion, waterCompressibility]) {
      expect(valueOf(named, 0)).toBeTypeOf("number");
      expect(valueOf(named, 100)).toBeTypeOf("number");
      expect(valueOf(named, -0.1)).toBe(
        "water temperature -0.1 °C lies outside 0 to 100 °C, where the correlation was fitted",
      );
      expect(valueOf(named, 100.1)).toMatch(/^water temperature 100\.1/);
    }
  });
});

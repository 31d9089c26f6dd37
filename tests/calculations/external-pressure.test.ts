import { describe, expect, it } from "vitest";
import {
  collapsePressure,
  diameterReading,
  elasticFactor,
  meanDiameter,
  ovality,
} from "../../src/calculations/functions/external-pressure.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

const diameters = (...values: readonly string[]) =>
  rows(
    diameterReading,
    values.map((value) => ({ value })),
  );

describe("mean diameter", () => {
  it("is the outside diameter less one wall", () => {
    expect(valueOf(meanDiameter, 1050, 20)).toBe(1030);
  });

  it("is refused where no bore is left", () => {
    expect(valueOf(meanDiameter, 40, 20)).toBe("an outside diameter of 40 mm and a wall of 20 mm leave no bore");
    expect(valueOf(meanDiameter, 1050, 0)).toBeTypeOf("string");
    expect(valueOf(meanDiameter, Number.NaN, 20)).toBeTypeOf("string");
  });
});

describe("out-of-roundness", () => {
  it("is worked by hand: 200·6/2098, of the largest and the least", () => {
    expect(valueOf(ovality, diameters("1052 mm", "1050 mm", "1046 mm"))).toBeCloseTo(1200 / 2098, 12);
    expect(linesOf(ovality, diameters("1052 mm", "1046 mm"))).toEqual([
      "largest 1052 mm, least 1046 mm, of 2 readings",
    ]);
  });

  it("is nothing for a circle, and does not depend on the unit", () => {
    expect(valueOf(ovality, diameters("500 mm", "500 mm"))).toBe(0);
    expect(valueOf(ovality, diameters("1.052 m", "1046 mm"))).toBeCloseTo(1200 / 2098, 9);
  });

  it("is refused of fewer than two readings, and of readings that are none", () => {
    expect(valueOf(ovality, [])).toBe("out-of-roundness takes at least two measured diameters");
    expect(valueOf(ovality, diameters("1050 mm"))).toBe("out-of-roundness takes at least two measured diameters");
    expect(valueOf(ovality, diameters("1050 mm", ">1040 mm"))).toBeTypeOf("string");
    expect(valueOf(ovality, diameters("1050 mm", "0 mm"))).toBeTypeOf("string");
  });
});

describe("factor against elastic collapse", () => {
  it("is the usual one up to the limit, the greater one above it", () => {
    expect(valueOf(elasticFactor, 1.5, 1.5, 3, 4)).toBe(3);
    expect(valueOf(elasticFactor, 1.51, 1.5, 3, 4)).toBe(4);
    expect(linesOf(elasticFactor, 1.5, 1.5, 3, 4)).toEqual(["out-of-roundness at most 1.5 %: the usual factor"]);
    expect(linesOf(elasticFactor, 2, 1.5, 3, 4)).toEqual(["out-of-roundness above 1.5 %: the greater factor"]);
  });

  it("never falls where the greater one is set lower by mistake, and is the greater one for what is no number", () => {
    expect(valueOf(elasticFactor, 1.8, 1.5, 3, 2)).toBe(3);
    expect(valueOf(elasticFactor, Number.NaN, 1.5, 3, 4)).toBe(4);
  });
});

describe("collapse pressure of a perfect cylinder", () => {
  it("says the number of waves", () => {
    expect(linesOf(collapsePressure, 192_700, 11, 1030, 1370)).toEqual(["collapse in 4 waves"]);
  });

  it("is nothing without a wall, and refused for sizes that are none", () => {
    expect(valueOf(collapsePressure, 192_700, 0, 1030, 1370)).toBe(0);
    for (const values of [
      [0, 11, 1030, 1370],
      [192_700, -1, 1030, 1370],
      [192_700, 11, 0, 1370],
      [192_700, 11, 1030, 0],
      [Number.NaN, 11, 1030, 1370],
    ])
      expect(valueOf(collapsePressure, ...values)).toBe(
        "modulus, wall, diameter and length must be positive for a collapse pressure",
      );
  });

  it("is refused where it would take more waves than a shell has", () => {
    expect(valueOf(collapsePressure, 192_700, 0.001, 2000, 5)).toBe(
      "the cylinder would collapse in more than 200 waves: it is no shell",
    );
  });
});

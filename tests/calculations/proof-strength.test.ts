import { describe, expect, it } from "vitest";
import { proofStrength, proofStrengthPoint } from "../../src/calculations/functions/proof-strength.ts";
import { linesOf, rows, valueOf } from "./rows.ts";

const points = rows(proofStrengthPoint, [
  { temperature: "50 °C", proofStrength: "256 MPa" },
  { temperature: "100 °C", proofStrength: "241 MPa" },
  { temperature: "150 °C", proofStrength: "223 MPa" },
]);
const at = (t: number) => valueOf(proofStrength, points, 265, t);

describe("proof strength at temperature", () => {
  it("is the yield strength at 20 °C and below", () => {
    expect(at(20)).toBe(265);
    expect(at(-10)).toBe(265);
  });

  it("starts falling just above 20 °C", () => {
    expect(at(21)).toBeCloseTo(265 - 9 / 30, 9);
  });

  it("is as tabulated at a tabulated temperature", () => {
    expect(at(50)).toBe(256);
    expect(at(150)).toBe(223);
  });

  it("is linear between two temperatures, and says which", () => {
    expect(at(120)).toBeCloseTo(233.8, 9);
    expect(linesOf(proofStrength, points, 265, 120)).toEqual([
      "linear between 241 MPa at 100 °C and 223 MPa at 150 °C",
    ]);
  });

  it("is refused above the last temperature", () => {
    expect(at(150.001)).toBe(
      "the temperature 150.001 °C lies above 150 °C, the last at which a proof strength is known",
    );
  });

  it("is refused without points, and with points out of order", () => {
    expect(valueOf(proofStrength, [], 265, 20)).toBe("no proof strength is known at any temperature above 20 °C");
    expect(valueOf(proofStrength, points.toReversed(), 265, 60)).toBe(
      "the proof strengths are not in rising order of temperature at 100 °C",
    );
  });

  it("takes the lower end of a bound", () => {
    const bound = rows(proofStrengthPoint, [{ temperature: "100 °C", proofStrength: ">200 MPa" }]);
    expect(valueOf(proofStrength, bound, 265, 100)).toBe(200);
  });

  it("refuses a bound without lower end", () => {
    const bound = rows(proofStrengthPoint, [{ temperature: "100 °C", proofStrength: "<200 MPa" }]);
    expect(valueOf(proofStrength, bound, 265, 60)).toBe(
      "the strength at 100 °C is stated as a bound without lower end",
    );
  });
});

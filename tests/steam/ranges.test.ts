import { describe, expect, it } from "vitest";
import {
  equilibriumFlux,
  isRefusal,
  liquid,
  saturated,
  saturationPressure,
  saturationTemperature,
  vapour,
  wetExponent,
} from "../../src/steam/index.ts";
import { known } from "../support/known.ts";

const refused = (value: unknown) => (isRefusal(value) ? value.refused : "a value");

describe("what lies outside the equations is refused", () => {
  it("saturation below 0 °C, above the critical point, and of no number", () => {
    expect(known(saturationPressure(273.15))).toBeCloseTo(0.000611213, 9);
    expect(known(saturationPressure(647.096))).toBeCloseTo(22.064, 6);
    expect(refused(saturationPressure(273.14))).toMatch(
      /^the temperature 273\.14 K lies outside 273\.15 to 647\.096 K/,
    );
    expect(isRefusal(saturationPressure(647.1))).toBe(true);
    expect(isRefusal(saturationTemperature(0.0006))).toBe(true);
    expect(isRefusal(saturationTemperature(22.07))).toBe(true);
    expect(isRefusal(saturationTemperature(Number.NaN))).toBe(true);
  });

  it("saturated states above 623.15 K, where region 3 begins", () => {
    expect(known(saturated(16.529)).T).toBeCloseTo(623.149, 3);
    expect(refused(saturated(16.53))).toMatch(/^the absolute pressure 16\.53 MPa lies above 16\.529 MPa/);
    expect(isRefusal(saturated(-1))).toBe(true);
    expect(isRefusal(wetExponent(17))).toBe(true);
    expect(isRefusal(wetExponent(0))).toBe(true);
  });

  it("liquid that boils, and steam that condenses", () => {
    expect(refused(liquid(0.1, 400))).toBe("at 0.1 MPa and 400 K there is no liquid: it boils below 0.245753 MPa");
    expect(refused(vapour(1, 400))).toBe("at 1 MPa and 400 K there is no steam known here: it ends at 0.245753 MPa");
  });

  it("liquid and steam at saturation, from either side, is not", () => {
    for (let p = 0.001; p < 16.5; p *= 1.07) {
      const T = known(saturationTemperature(p));
      expect(isRefusal(liquid(p, T)), `liquid at ${p}`).toBe(false);
      expect(isRefusal(vapour(p, T)), `vapour at ${p}`).toBe(false);
    }
  });

  it("pressures and temperatures beyond the regions", () => {
    for (const value of [liquid(101, 300), liquid(50, 273), liquid(50, 624), liquid(Number.NaN, 300)])
      expect(isRefusal(value)).toBe(true);
    for (const value of [vapour(0, 300), vapour(-1, 300), vapour(1, 1074), vapour(1, 273), vapour(30, 640)])
      expect(isRefusal(value)).toBe(true);
    expect(isRefusal(vapour(100, 900))).toBe(false);
    expect(isRefusal(vapour(100.1, 900))).toBe(true);
  });

  it("a flow against the pressure", () => {
    expect(refused(equilibriumFlux(1, 500, 1))).toBe(
      "the back pressure 1 MPa is not below 1 MPa, the pressure at the inlet",
    );
    expect(isRefusal(equilibriumFlux(1, 500, Number.NaN))).toBe(true);
    expect(isRefusal(equilibriumFlux(1, 400, 0.1))).toBe(true);
  });
});

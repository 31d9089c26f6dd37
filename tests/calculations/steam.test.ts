import { describe, expect, it } from "vitest";
import { byHeating } from "../../src/calculations/functions/heating.ts";
import {
  dryExponent,
  exponentOfFlow,
  exponentTurningWet,
  fluxInEquilibrium,
  volumeOfSuperheated,
} from "../../src/calculations/functions/steam-flow.ts";
import {
  boilingTemperature,
  enthalpyOfBoilingWater,
  enthalpyOfSteam,
  enthalpyOfWater,
  volumeOfSteam,
} from "../../src/calculations/functions/steam.ts";
import { linesOf, valueOf } from "./rows.ts";

// Table 36 of IAPWS R7-97(2012) and the same equations in another program.
describe("properties of steam in the units of calculations", () => {
  it("take bar absolute, and give °C, kJ/kg and m³/kg", () => {
    expect(valueOf(boilingTemperature, 10)).toBeCloseTo(453.035632 - 273.15, 6);
    expect(valueOf(volumeOfSteam, 11.013)).toBeCloseTo(0.177235437, 8);
    expect(valueOf(enthalpyOfBoilingWater, 11.013)).toBeCloseTo(781.430012, 5);
    expect(valueOf(enthalpyOfSteam, 11.013)).toBeCloseTo(2780.710174, 5);
    expect(valueOf(enthalpyOfWater, 10.013, 105)).toBeCloseTo(440.864232, 5);
  });

  it("are refused outside the equations", () => {
    expect(valueOf(boilingTemperature, -0.5)).toMatch(/^the absolute pressure -0\.05 MPa lies outside/);
    for (const named of [volumeOfSteam, enthalpyOfSteam, enthalpyOfBoilingWater, exponentTurningWet])
      expect(valueOf(named, 170)).toMatch(/^the absolute pressure 17 MPa lies above 16\.529 MPa/);
    expect(valueOf(enthalpyOfWater, 1.013, 105)).toBe(
      "at 0.1013 MPa and 378.15 K there is no liquid: it boils below 0.120902 MPa",
    );
    expect(valueOf(enthalpyOfWater, 10, -5)).toMatch(/^the water temperature 268\.15 K lies outside/);
  });
});

describe("steam at an inlet", () => {
  it("dry saturated is the same by either function", () => {
    expect(valueOf(volumeOfSuperheated, 12.013, 0)).toBe(valueOf(volumeOfSteam, 12.013));
  });

  it("superheated has more volume, and a dry exponent of its own", () => {
    expect(valueOf(volumeOfSuperheated, 12.013, 11.98643)).toBeCloseTo(0.169122207, 7);
    expect(valueOf(dryExponent, 12.013, 11.98643)).toBeCloseTo(1.295183, 5);
  });

  it("is not colder than saturation", () => {
    for (const named of [volumeOfSuperheated, dryExponent])
      expect(valueOf(named, 12, -1)).toBe("steam is not colder than saturation");
    expect(valueOf(fluxInEquilibrium, 12, -1, 1)).toBe("steam is not colder than saturation");
    expect(valueOf(exponentOfFlow, 1.14, 1.29, -1)).toBe("steam is not colder than saturation");
    expect(valueOf(volumeOfSuperheated, 12, Number.NaN)).toBe("steam is not colder than saturation");
  });

  it("flows with the smaller exponent up to 40 K of superheat, and says so", () => {
    expect(valueOf(exponentOfFlow, 1.14, 1.29, 0)).toBe(1.14);
    expect(valueOf(exponentOfFlow, 1.14, 1.29, 40)).toBe(1.14);
    expect(valueOf(exponentOfFlow, 1.31, 1.29, 40)).toBe(1.29);
    expect(valueOf(exponentOfFlow, 1.14, 1.29, 40.1)).toBe(1.29);
    expect(linesOf(exponentOfFlow, 1.14, 1.29, 41)).toEqual(["superheated by more than 40 K: it stays dry"]);
  });

  it("says where the throat lies", () => {
    expect(linesOf(fluxInEquilibrium, 10, 0, 1.013)).toEqual(["throat at 5.767 bar(a), 96.1 % of it vapour"]);
    expect(linesOf(fluxInEquilibrium, 10, 60, 1.013)[0]).toMatch(/, all of it vapour$/);
    expect(valueOf(fluxInEquilibrium, 10, 0, 10)).toMatch(/^the back pressure 1 MPa is not below 1 MPa/);
  });
});

describe("temperature by heating", () => {
  it("is the one that belongs to the heating", () => {
    expect([0, 1, 2].map((heating) => valueOf(byHeating, heating, 184, 240, 263))).toEqual([184, 240, 263]);
    expect(linesOf(byHeating, 2, 184, 240, 263)).toEqual(["heating: radiation"]);
  });

  it("is refused for a heating that is not known", () => {
    expect(valueOf(byHeating, 3, 184, 240, 263)).toBe("how the part is heated is not known");
  });
});

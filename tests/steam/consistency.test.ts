import { describe, expect, it } from "vitest";
import {
  equilibriumFlux,
  liquid,
  saturated,
  saturationPressure,
  saturationTemperature,
  vapour,
  type State,
} from "../../src/steam/index.ts";
import { known } from "../support/known.ts";

const points: readonly (readonly [name: string, state: (p: number, T: number) => State, p: number, T: number])[] = [
  ["liquid", (p, T) => known(liquid(p, T)), 2, 350],
  ["liquid", (p, T) => known(liquid(p, T)), 20, 560],
  ["vapour", (p, T) => known(vapour(p, T)), 0.1, 420],
  ["vapour", (p, T) => known(vapour(p, T)), 3, 600],
];

describe.each(points)("derivatives of the state, %s %#", (_name, state, p, T) => {
  const slope = (pick: (state: State) => number, dp: number, dT: number) =>
    (pick(state(p + dp, T + dT)) - pick(state(p - dp, T - dT))) / (2 * (dp + dT));
  const at = state(p, T);
  const relative = (found: number, expected: number) => expect(found / expected).toBeCloseTo(1, 6);

  it("volume by pressure and by temperature", () => {
    relative(
      at.vp,
      slope(({ v }) => v, 1e-4 * p, 0),
    );
    relative(
      at.vT,
      slope(({ v }) => v, 0, 1e-3),
    );
  });

  it("heat capacity is the slope of enthalpy and, divided by T, of entropy", () => {
    relative(
      at.cp,
      slope(({ h }) => h, 0, 1e-3),
    );
    relative(
      at.cp / T,
      slope(({ s }) => s, 0, 1e-3),
    );
  });

  it("entropy falls with pressure as volume rises with temperature (Maxwell)", () => {
    relative(
      -1000 * at.vT,
      slope(({ s }) => s, 1e-4 * p, 0),
    );
  });

  it("the speed of sound follows from volume, heat capacity and their derivatives", () => {
    const alongIsentrope = at.vp + (1000 * T * at.vT ** 2) / at.cp;
    relative(at.w, at.v * Math.sqrt(-1e6 / alongIsentrope));
  });
});

describe("saturation", () => {
  it("both equations are one: temperature from pressure and back", () => {
    for (let T = 273.16; T < 647; T += 3.7)
      expect(known(saturationTemperature(known(saturationPressure(T)))) / T).toBeCloseTo(1, 9);
  });

  it("obeys Clapeyron's equation and has one free enthalpy in both phases, within the fit of the regions", () => {
    for (const p of [0.01, 0.1, 1, 3, 10]) {
      const { T, liquid: water, vapour: steam } = known(saturated(p));
      const slope = (known(saturationPressure(T + 0.01)) - known(saturationPressure(T - 0.01))) / 0.02;
      expect((steam.h - water.h) / (T * (steam.v - water.v) * 1000 * slope)).toBeCloseTo(1, 3);
      expect(Math.abs(steam.h - water.h - T * (steam.s - water.s))).toBeLessThan(0.05);
    }
  });
});

describe("greatest flux in equilibrium", () => {
  const saturationAt = (p: number) => known(saturationTemperature(p));

  it("is that of the back pressure once it rises above the throat's", () => {
    const free = known(equilibriumFlux(1, saturationAt(1), 0.1));
    const low = known(equilibriumFlux(1, saturationAt(1), 0.5));
    expect(low.flux / free.flux).toBeCloseTo(1, 12);
    const choked = known(equilibriumFlux(1, saturationAt(1), 0.8));
    expect(choked.p).toBeCloseTo(0.8, 8);
    expect(choked.flux).toBeLessThan(free.flux);
    expect(known(equilibriumFlux(1, saturationAt(1), 0.999999)).flux).toBeLessThan(10);
  });

  it("no other throat pressure gives more", () => {
    for (const superheat of [0, 15, 39, 80]) {
      const T = saturationAt(2) + superheat;
      const found = known(equilibriumFlux(2, T, 0.1));
      // With the back pressure at a trial value, the throat cannot lie below it.
      for (let part = 0.95; part > found.p / 2; part -= 0.05)
        expect(known(equilibriumFlux(2, T, 2 * part)).flux).toBeLessThanOrEqual(found.flux * (1 + 1e-12));
    }
  });
});

import { describe, expect, it } from "vitest";
import { steamSafetyValve } from "../../src/calculations/steam-safety-valve.ts";
import { heatBalance } from "../../src/calculations/heat-balance.ts";
import { run } from "../../src/compute/run.ts";
import {
  equilibriumFlux,
  isentropicExponent,
  saturated,
  saturationTemperature,
  vapour,
  wetExponent,
} from "../../src/steam/index.ts";
import { known } from "../support/known.ts";

const shellBoilers = [0.2, 0.5, 1, 1.6, 2, 2.5, 3, 3.5] as const;
const base = { pset: 10, op: 0.1, patm: 1.013, pb: 0, A: 500, Kdr: 0.7, t0: 0, PS: 10, Qc: 0, tol: 0.02, kmax: 1.1 };
/** Results of a valve that relieves at `p0` in bar absolute, so many kelvin above saturation. */
function valve(p0: number, superheat = 0) {
  const t0 = known(saturationTemperature(p0 / 10)) - 273.15 + superheat;
  return run(steamSafetyValve, new Map(Object.entries({ ...base, pset: (p0 - base.patm) / (1 + base.op), t0 }))).values;
}
const flowOf = (values: ReadonlyMap<string, number>) => values.get("Qm") ?? Number.NaN;

describe("isentropic exponent of steam", () => {
  it("EN ISO 4126-7, worked example near 122.4 bar (from memory): 0.966, the wet side", () => {
    expect(Math.abs(known(wetExponent(12.24)) / 0.966 - 1)).toBeLessThanOrEqual(0.015);
  });

  it("G. Zeuner, k = 1.035 + 0.1·x (from memory): 1.135 for dry saturated steam that turns wet", () => {
    for (const p of [0.2, 0.5, 1, 2]) expect(Math.abs(known(wetExponent(p)) - 1.135)).toBeLessThanOrEqual(0.01);
  });

  it("textbooks of thermodynamics (from memory): 1.3 for moderately superheated steam", () => {
    for (const [p, T] of [
      [0.5, 500],
      [1, 550],
      [2, 600],
    ] as const)
      expect(Math.abs(isentropicExponent(p, known(vapour(p, T))) - 1.3)).toBeLessThanOrEqual(0.02);
  });

  it("finite differences along the isentrope (second method)", () => {
    for (const p of [0.06, ...shellBoilers, 8, 14]) {
      const { vapour: dry } = known(saturated(p));
      const slope = (part: number) => {
        const { liquid, vapour: steam } = known(saturated(p * part));
        const x = (dry.s - liquid.s) / (steam.s - liquid.s);
        return Math.log(part) / Math.log((liquid.v + x * (steam.v - liquid.v)) / dry.v);
      };
      const epsilon = 1e-4;
      const limit = -(2 * slope(1 - epsilon) - slope(1 - 2 * epsilon));
      expect(Math.abs(known(wetExponent(p)) / limit - 1)).toBeLessThanOrEqual(1e-4);
    }
  });
});

describe("safety valve for steam", () => {
  it("homogeneous equilibrium (second method): the formula is within 0.3 % of the greatest flux, 2 to 35 bar", () => {
    for (const p of shellBoilers) {
      const values = valve(10 * p);
      const ideal = known(equilibriumFlux(p, known(saturationTemperature(p)), 0.1)).flux;
      expect(Math.abs(flowOf(values) / (3600e-6 * base.Kdr * base.A * ideal) - 1)).toBeLessThanOrEqual(0.003);
    }
  });

  it("homogeneous equilibrium (second method): superheated, the capacity is never above the greatest flux by 0.3 %", () => {
    for (const p of shellBoilers)
      for (const superheat of [1, 5, 10, 20, 30, 38, 39.9, 40.1, 60, 100]) {
        const ideal = known(equilibriumFlux(p, known(saturationTemperature(p)) + superheat, 0.1)).flux;
        const ratio = flowOf(valve(10 * p, superheat)) / (3600e-6 * base.Kdr * base.A * ideal);
        expect(ratio, `${p} MPa, ${superheat} K`).toBeLessThanOrEqual(1.003);
        expect(ratio, `${p} MPa, ${superheat} K`).toBeGreaterThan(0.94);
      }
  });

  it("homogeneous equilibrium (second method): the throat of saturated steam is wet, that of steam 40 K hotter dry", () => {
    for (const p of shellBoilers) {
      const boiling = known(saturationTemperature(p));
      expect(known(equilibriumFlux(p, boiling, 0.1)).quality).toBeLessThan(1);
      expect(known(equilibriumFlux(p, boiling + 30, 0.1)).quality).toBeLessThan(1);
      expect(known(equilibriumFlux(p, boiling + 40, 0.1)).quality).toBe(1);
    }
  });

  it("ASME BPVC VIII-1 (1998), Appendix 11 (excerpt seen): Napier's W = 51.5·A·P agrees within 4 %", () => {
    const [pound, squareInch, psi] = [0.45359237, 645.16, 0.0689475729];
    for (const p of shellBoilers) {
      const napier = 51.5 * (base.A / squareInch) * ((10 * p) / psi) * base.Kdr * pound;
      expect(Math.abs(flowOf(valve(10 * p)) / napier - 1)).toBeLessThanOrEqual(0.04);
    }
  });

  it("the dry exponent (constructed): would overstate the capacity of saturated steam by 4 to 6 %", () => {
    for (const p of shellBoilers) {
      const values = valve(10 * p);
      const C = (k: number) => Math.sqrt(k * (2 / (k + 1)) ** ((k + 1) / (k - 1)));
      const over = C(values.get("kd") ?? Number.NaN) / C(values.get("kw") ?? Number.NaN) - 1;
      expect(over).toBeGreaterThan(0.04);
      expect(over).toBeLessThan(0.06);
    }
  });
});

const duty = { D: 1000, x: 0, tw: 100, th: 100, B: 1000, η: 1, kB: 0.1, kA: 0.01, patm: 1.01325 };
const factor = (pw: number, tw: number) =>
  run(heatBalance, new Map(Object.entries({ ...duty, pw, PS: Math.max(pw, 1), tw, th: tw }))).values.get("F") ??
  Number.NaN;

describe("evaporation from and at 100 °C", () => {
  it("its definition (constructed): water of 100 °C into steam of 100 °C is a factor of 1", () => {
    expect(Math.abs(factor(1e-9, 99.97) - 1)).toBeLessThanOrEqual(3e-4);
  });

  it("boiler horsepower (from memory): 34.5 lb/h from and at 212 °F are 33 475 Btu/h, that is 2257 kJ/kg", () => {
    const kilojoulePerPound = (33475 / 34.5) * 1.05505585262;
    expect(kilojoulePerPound / 0.45359237).toBeCloseTo(2257, 0);
  });

  // Steam in lb/h per boiler horsepower, one decimal; the publisher of the chart could not be named.
  it.each([
    [100, 0, 30.9],
    [100, 10, 30.6],
    [100, 100, 29.8],
    [120, 120, 30.3],
    [130, 10, 31.5],
    [140, 10, 31.8],
  ] as const)(
    "chart of factors of evaporation (formula only): feed %s °F, %s psi, %s lb/h",
    (fahrenheit, psi, printed) => {
      const found = 34.5 / factor(Math.max(psi * 0.0689475729, 1e-9), (fahrenheit - 32) / 1.8);
      expect(Math.abs(found / printed - 1)).toBeLessThanOrEqual(0.0035);
    },
  );
});

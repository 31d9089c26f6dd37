import { describe, expect, it } from "vitest";
import { gasSafetyValve } from "../../src/calculations/gas-safety-valve.ts";
import { run } from "../../src/compute/run.ts";

const air = { pset: 11, op: 0.1, patm: 1.013, pb: 0, A: 254, Kdr: 0.7, k: 1.4, M: 28.97, Z: 1, T0: 293.15, PS: 11 };
const valve = (values: Readonly<Record<string, number>> = {}) =>
  run(gasSafetyValve, new Map(Object.entries({ ...air, Qc: 1980, tol: 0.02, kmax: 1.1, ...values }))).values;
const C = (k: number) => valve({ k }).get("C") ?? Number.NaN;

describe("safety valve for gas", () => {
  it.each([
    [1.1, 2.48],
    [1.2, 2.56],
    [1.3, 2.63],
    [1.4, 2.7],
  ] as const)("EN ISO 4126-7, table of C (from memory): k = %s", (k, printed) => {
    expect(Math.abs(C(k) - printed)).toBeLessThanOrEqual(0.005);
  });

  it.each([
    [1.4, 356],
    [1.001, 315],
  ] as const)("ASME BPVC VIII-1 (1998), Appendix 11 (excerpt seen), constant C = 520·√…: k = %s", (k, printed) => {
    expect(Math.abs((C(k) * 520) / 3.948 / printed - 1)).toBeLessThanOrEqual(0.002);
  });

  it("ASME BPVC VIII-1 (1998), Appendix 11, example 1 (excerpt seen): 3020 lb/h of steam at 200 psi is 4750 lb/h of air at 100 °F", () => {
    const [pound, squareInch, psi] = [0.45359237, 645.16, 0.0689475729];
    // What the example calls KAP: coefficient times area times absolute pressure, from W = 51.5·K·A·P.
    const KAP = 3020 / 51.5;
    // The same product in bar and mm², put in as the area; its own pressure and coefficient are divided out.
    const p0 = valve().get("p0") ?? Number.NaN;
    const A = (KAP * squareInch * psi) / (p0 * air.Kdr);
    const found = (valve({ A, T0: 560 / 1.8 }).get("Qm") ?? Number.NaN) / pound;
    expect(Math.abs(found / 4750 - 1)).toBeLessThanOrEqual(0.002);
  });

  it("isentropic nozzle (second method): the factor for back pressure is 1 up to the critical ratio and falls from there", () => {
    const at = (pb: number) => valve({ pb }).get("Kb") ?? Number.NaN;
    expect(at(0)).toBeCloseTo(1, 12);
    expect(at(5.914)).toBeCloseTo(1, 12);
    expect(at(6.5)).toBeLessThan(1);
    expect(at(9)).toBeLessThan(at(7));
    expect(at(12.1)).toBeCloseTo(0, 6);
  });

  it("isentropic nozzle (second method): k 1.3 at a pressure ratio of 0.8 gives 0.833", () => {
    expect(valve({ k: 1.3, pb: 0.8 * 13.113 - 1.013 }).get("Kb")).toBeCloseTo(0.833, 3);
  });

  it("isentropic nozzle (second method): the capacity grows with area and pressure in proportion", () => {
    const base = valve().get("Qm") ?? Number.NaN;
    expect((valve({ A: 508 }).get("Qm") ?? Number.NaN) / base).toBeCloseTo(2, 12);
    expect((valve({ pset: (2 * 13.113 - 1.013) / 1.1 }).get("Qm") ?? Number.NaN) / base).toBeCloseTo(2, 9);
  });

  it("isentropic nozzle (second method): C rises with the exponent", () => {
    const found = [1.01, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.67].map(C);
    expect(found).toEqual(found.toSorted((a, b) => a - b));
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { furnaceHoop } from "../../src/calculations/furnace-hoop.ts";
import { collapseOfCylinder } from "../../src/calculations/functions/external-pressure.ts";
import { smokeTube } from "../../src/calculations/smoke-tube.ts";
import { tubePullOut } from "../../src/calculations/tube-pull-out.ts";
import { run, type PlainValues } from "../../src/compute/run-plain.ts";
import type { Calculation } from "../../src/model/calculation.ts";

const of = (one: Calculation, start: PlainValues) => (values: PlainValues) => run(one, { ...start, ...values });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("smoke tube", () => {
  const tube = of(smokeTube, { p: 1, do: 60.3, en: 4, f: 100, c: 0.75, δ: 0 });

  it("Indian Boiler Regulations 1950 (excerpt, formula only): 1.6·f·(T − C)/D in kgf/cm², 63.5 × 3.25", () => {
    const found = tube({ do: 63.5, en: 3.25, f: 870 }).values.get("pmax");
    expect(found).toBeCloseTo((1.6 * 870 * 2.5) / 63.5, 9);
    expect(found).toBeCloseTo(54.8031, 3);
  });

  it("Lamé, thick-walled cylinder (second method): at the second method's wall the bore is pressed with 0.8·f", () => {
    for (const p of [0.5, 2, 15]) {
      const [outer, wall] = [30.15, tube({ p }).crossCheck?.value ?? Number.NaN];
      const inner = outer - wall;
      expect((2 * p * outer ** 2) / (outer ** 2 - inner ** 2)).toBeCloseTo(80, 9);
      expect(tube({ p }).crossCheck?.agrees).toBe(true);
    }
  });

  it("von Mises (second method): a tube of a wall of 0.03·d collapses above 11 MPa at any length, even at 400 °C", () => {
    for (const length of [50, 500, 5000, 1e7])
      expect(collapseOfCylinder(184_000, 0.03 * 50, (0.97 * 50) / 2, length).pressure).toBeGreaterThan(11);
  });

  it("own inverse (second method): the required wall carries the calculation pressure", () => {
    fc.assert(
      fc.property(between(0.1, 5), between(20, 200), between(60, 180), (p, outside, f) => {
        const en = tube({ p, do: outside, f }).values.get("ereq") ?? Number.NaN;
        expect((tube({ p, do: outside, f, en }).values.get("pmax") ?? Number.NaN) / p).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("pull on expanded tubes", () => {
  const start = { p: 1.3, pattern: 1, P: 84, dh: 60.8, do: 60.3, et: 4, lw: 25, eP: 25, n: 84, qmax: 40, σw: 150 };
  const field = of(tubePullOut, start);

  it("equilibrium of a whole field (derived): the pulls on all tubes add up to the pressure on the plate between them", () => {
    const [tubes, pitch] = [144, 84];
    const plate = (12 * pitch) ** 2 - (tubes * Math.PI * 60.3 ** 2) / 4;
    expect(((field({}).values.get("F") ?? Number.NaN) * tubes) / (1.3 * plate)).toBeCloseTo(1, 12);
  });

  it("worked by hand (constructed): 22 612 N, and 119.4 N for each millimetre, that a joint 25 mm long may carry", () => {
    expect(field({}).values.get("Fw")).toBeCloseTo(22612.5, 9);
    expect((field({}).values.get("Fw") ?? Number.NaN) / (Math.PI * 60.3)).toBeCloseTo(119.4, 1);
  });

  it("a triangular pattern pulls less than a square one of the same pitch, by 1 − √3/2 of the pitch squared", () => {
    const difference = (field({}).values.get("A") ?? 0) - (field({ pattern: 0 }).values.get("A") ?? 0);
    expect(difference).toBeCloseTo((1 - Math.sin(Math.PI / 3)) * 84 ** 2, 9);
  });

  it("refuses tubes that overlap", () => {
    expect(field({ P: 60 }).refused).toBe("tubes of 60.3 mm overlap at a pitch of 60 mm, or have no diameter");
    expect(field({ do: 0 }).refused).toBeTypeOf("string");
  });
});

describe("hoop of a furnace", () => {
  const start = { p: 1.3, L: 1370, h: 100, b: 200, en: 20, c: 0.75, δ: 0.3, DF: 1050, eF: 20, cF: 0.75, δF: 0.3 };
  const hoop = of(furnaceHoop, {
    ...start,
    t: 290,
    S2: 3,
    dmax: 1800,
    sections: [{ role: "furnace", span: "1370 mm" }],
  });

  it("ring under outer pressure, 3·E·I/R³ (derived): 1 262 420 mm⁴ of 1 463 268 required", () => {
    const found = hoop({});
    expect(found.values.get("Ireq")).toBeCloseTo(1_463_268.26, 2);
    expect(found.crossCheck?.value).toBeCloseTo(1_262_420.07, 2);
    // The other way round: a ring of that section collapses at three times the load.
    const [E, I, R] = [192_700, found.crossCheck?.value ?? Number.NaN, 515];
    expect((3 * E * I) / R ** 3 / (1.3 * 1370)).toBeCloseTo(3, 12);
  });

  it("the requirement stays above the ring's at every temperature steel has a modulus for", () => {
    for (let t = 20; t <= 400; t += 20) {
      const found = hoop({ t });
      expect(found.crossCheck?.agrees, `${t} °C`).toBe(true);
      expect(found.crossCheck?.value).toBeLessThan(found.values.get("Ireq") ?? 0);
    }
  });

  it("mechanics: stiffness rises with depth, width and wall, the requirement with pressure, diameter and length", () => {
    const section = (values: Readonly<Record<string, number>>) => hoop(values).values.get("I") ?? Number.NaN;
    for (const more of [{ h: 101 }, { b: 205 }, { en: 20.5 }, { eF: 20.5 }])
      expect(section(more)).toBeGreaterThan(section({}));
    const required = (values: Readonly<Record<string, number>>) => hoop(values).values.get("Ireq") ?? Number.NaN;
    for (const more of [{ p: 1.31 }, { DF: 1051 }, { L: 1371 }]) expect(required(more)).toBeGreaterThan(required({}));
  });

  it("refuses a hoop without room", () => {
    expect(hoop({ h: 30 }).refused).toBe("a hoop 30 mm deep and 200 mm wide has no room for two walls");
    expect(hoop({ c: 20 }).refused).toBe("allowances leave no wall of the hoop or of the furnace");
    expect(hoop({ DF: 30 }).refused).toBe("an outside diameter of 30 mm and a wall of 20 mm leave no bore");
  });
});

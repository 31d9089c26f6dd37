import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shellOpening } from "../../src/calculations/shell-opening.ts";
import { stayTube } from "../../src/calculations/stay-tube.ts";
import { stay } from "../../src/calculations/stay.ts";
import { stayedFlatPlate } from "../../src/calculations/stayed-flat-plate.ts";
import { tubeNest } from "../../src/calculations/tube-nest.ts";
import { unreinforcedOpening } from "../../src/calculations/unreinforced-opening.ts";
import { run } from "../../src/compute/run-plain.ts";
import type { Calculation, CalculationExample } from "../../src/model/calculation.ts";
import { convert } from "../../src/model/units.ts";
import { profiles } from "../../src/profiles/index.ts";

type Given = CalculationExample["given"];
const value = (calculation: Calculation, given: Given, symbol: string): number =>
  run(calculation, given).values.get(symbol) ?? Number.NaN;
const parameter = (name: string): number => Number.parseFloat(profiles[0]?.parameters[name]?.value ?? "");
const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const gussets = ["gusset", "gusset", "gusset"].map((support) => ({ support }));
const plate = (given: Given, symbol = "e") =>
  value(
    stayedFlatPlate,
    { supports: gussets, kf: 0.85, Cf: 0.35, Cw: 0.38, Cg: 0.4, Cs: 0.45, Ct: 0.45, Cd: 0.49, Ce: 0.41, ...given },
    symbol,
  );

describe("stayed flat plate", () => {
  it("Indian Boiler Regulations 1950, reg. 574 (formula only): P = 0.85·f·((e − 0.75)/(C·d))² in kgf/cm²", () => {
    // Plate of 16 mm, circle of 450 mm, f 1406 kgf/cm², C 0.4: any unit of stress will do.
    const pressure = 0.85 * 1406 * ((16 - 0.75) / (0.4 * 450)) ** 2;
    expect(pressure).toBeCloseTo(8.578254, 6);
    expect(plate({ p: pressure, d: 450, f: 1406 })).toBeCloseTo(15.25, 9);
  });

  it("ASME BPVC I, PG-46 (formula only): P = t²·S·C/p² for a square pitch p, whose circle is √2·p", () => {
    // Thickness and pitch in inches, S in psi, as in tables for stayed surfaces; C is 2.1 up to 7/16 in, 2.2 above.
    for (const [t, pitch, C] of [
      [0.19, 3.5, 2.1],
      [0.43, 3.5, 2.1],
      [0.48, 3.5, 2.2],
      [0.25, 3.75, 2.1],
    ] as const) {
      const pressure = (t ** 2 * 13800 * C) / pitch ** 2;
      const own = { p: pressure, d: Math.SQRT2 * pitch, f: 13800, kf: 1, Cg: 1 / Math.sqrt(2 * C) };
      expect(plate(own)).toBeCloseTo(t, 12);
    }
  });

  it("theory of plates (second method): the plate of the second method has σ = 0.75·p·(r/e)² = f at its clamped edge", () => {
    const given = { p: 1.3, d: 330, f: 109.1, supports: gussets };
    const shares = { kf: 0.85, Cf: 0.35, Cw: 0.38, Cg: 0.4, Cs: 0.45, Ct: 0.45, Cd: 0.49, Ce: 0.41 };
    const example = {
      source: "",
      class: "constructed",
      given: { ...given, ...shares },
      expect: {},
      within: 0,
    } as const;
    const e = run(stayedFlatPlate, example.given).crossCheck?.value ?? Number.NaN;
    expect(0.75 * 1.3 * (165 / e) ** 2).toBeCloseTo(109.1, 9);
  });

  it("theory of plates (second method): every shipped coefficient lies between clamped and simply supported plates", () => {
    const clampedPlastic = 1 / Math.sqrt(11.26);
    const simplySupported = Math.sqrt((3 * (3 + 0.3)) / 32);
    for (const name of ["FlangedEdge", "WeldedEdge", "Gusset", "Stay", "SmokeTube", "Doubtful", "EdgesOnly"]) {
      const C = parameter(`plate${name}`);
      expect(C, name).toBeGreaterThan(clampedPlastic);
      expect(C / Math.sqrt(parameter("plateStressShare")), name).toBeLessThan(simplySupported);
    }
    // Without a stay the plate is a clamped one, which must not be thinner than its elastic solution.
    expect(parameter("plateEdgesOnly") / Math.sqrt(0.85)).toBeGreaterThanOrEqual(Math.sqrt(3 / 16));
  });

  it("equilibrium (second method): thickness rises with pressure and circle, falls with stress, and vanishes with p", () => {
    fc.assert(
      fc.property(positive(0.05, 4), positive(50, 900), positive(60, 250), (p, d, f) => {
        const e = plate({ p, d, f });
        expect(plate({ p: 1.001 * p, d, f })).toBeGreaterThan(e);
        expect(plate({ p, d: 1.001 * d, f })).toBeGreaterThan(e);
        expect(plate({ p, d, f: 1.001 * f })).toBeLessThan(e);
        // A plate twice as thick carries four times the pressure.
        expect(plate({ p: 4 * p, d, f }) / e).toBeCloseTo(2, 9);
      }),
    );
    expect(plate({ p: 1e-12, d: 300, f: 100 })).toBeLessThan(1e-4);
  });
});

describe("fields of tubes", () => {
  const nest = (given: Given, symbol: string) =>
    value(tubeNest, { nt: 60, ns: 16, kl: 0.125, l0: 12.7, ds: 50.8, e1: 12.7, e2: 14.3, ...given }, symbol);

  it("Indian Boiler Regulations 1950, reg. 580: the ligament is at least D/8 + ½ in", () => {
    fc.assert(
      fc.property(positive(20, 100), positive(0.3, 0.8), (d, s) => {
        const inches = (d + s) / 25.4;
        expect(nest({ d, s, P: 200 }, "lreq")).toBeCloseTo(25.4 * (inches / 8 + 0.5), 9);
      }),
    );
    expect([parameter("ligamentShare"), parameter("ligamentLeast")]).toEqual([1 / 8, 25.4 / 2]);
  });

  it("Indian Boiler Regulations 1950, reg. 580: plates of at least ½ in up to holes of 2 in, of 9/16 in above", () => {
    expect(parameter("tubePlateHoleSmall")).toBe(50.8);
    expect(parameter("tubePlateLeastSmall")).toBeGreaterThanOrEqual(25.4 / 2);
    expect(parameter("tubePlateLeastLarge")).toBeGreaterThanOrEqual((25.4 * 9) / 16);
  });
});

describe("stays", () => {
  const bar = { a: 0, en: 40, c: 0.75, δ: 0.5, f: 140, dmin: 0 };
  const tube = { a: 0, en: 6.3, c: 0.75, δ: 0.75, f: 140, emin: 0 };

  it("Indian Boiler Regulations 1950, regs. 202 and 581: constants of stays as stresses of the section, 4·C/π", () => {
    const stress = (constant: number) => convert((4 * constant) / Math.PI, "psi", "MPa");
    expect([stress(7100), stress(8640), stress(5900)].map((one) => one.toFixed(2))).toEqual([
      "62.33",
      "75.85",
      "51.79",
    ]);
    expect(parameter("stayStress")).toBeLessThanOrEqual(stress(7100));
    expect(parameter("stayTubeStress")).toBeLessThanOrEqual(stress(5900));
  });

  it("own inverse (second method): at the required size the corroded section bears the permitted stress", () => {
    fc.assert(
      fc.property(positive(0.1, 4), positive(2000, 60000), positive(30, 100), (p, A, σs) => {
        const d = value(stay, { ...bar, p, A, σs, d: 40 }, "dreq");
        expect(value(stay, { ...bar, p, A, σs, d }, "σ") / σs).toBeCloseTo(1, 9);
        // A tube of 200 mm is wide enough for any of these loads.
        const en = value(stayTube, { ...tube, p, A: A / 10, σs, d: 200 }, "ereq");
        expect(value(stayTube, { ...tube, p, A: A / 10, σs, d: 200, en }, "σ") / σs).toBeCloseTo(1, 6);
      }),
    );
  });

  it("mensuration (second method): the section of a tube is the difference of two circles", () => {
    const As = value(stayTube, { ...tube, p: 1, A: 1000, σs: 62, d: 60.3 }, "As");
    expect(As).toBeCloseTo((Math.PI / 4) * ((60.3 - 1.5) ** 2 - (60.3 - 1.5 - 2 * 4.8) ** 2), 9);
  });
});

describe("openings of a shell", () => {
  const shares = { ks: 50, k1: 2, k2: 1, k3: 2, kd: 0.8, kA: 1 };
  const shell = { p: 1.3, Di: 2400, es: 14.95 };
  const opening = (given: Given, symbol = "σ") =>
    value(
      shellOpening,
      { ...shell, ...shares, fs: 137.8, fb: 137.8, do: 139.7, en: 8, c: 0, δ: 0, h: 100, k: 1, ...given },
      symbol,
    );
  const plain = (given: Given, symbol: string) => value(unreinforcedOpening, { ...shell, f: 137.8, ...given }, symbol);

  it("pressure area by hand (second method): efficiencies of plain openings of 30, 60, 100 and 200 mm", () => {
    const found = [30, 60, 100, 200].map((d) => plain({ d }, "vA").toFixed(6));
    expect(found).toEqual(["0.927253", "0.864372", "0.792697", "0.656585"]);
  });

  it("membrane stress (second method): an opening of next to nothing leaves the mean stress of the shell", () => {
    const membrane = (shell.p * (shell.Di + shell.es)) / (2 * shell.es);
    expect(opening({ do: 0.002, en: 0.0005, h: 0 })).toBeCloseTo(membrane, 2);
    expect(plain({ d: 1e-9 }, "vA")).toBeCloseTo(1, 9);
  });

  it("membrane stress (second method): at the greatest opening by efficiency the shell bears its design stress", () => {
    const d = plain({ d: 50 }, "dA");
    const stress = (shell.p * (shell.Di + shell.es)) / (2 * shell.es * plain({ d }, "vA"));
    expect(stress).toBeCloseTo(137.8, 9);
  });

  it("rules for classification of ships, from memory (formula only): the greatest plain opening lies below theirs", () => {
    for (const p of [0.8, 1, 1.3, 1.5]) {
      const K = (p * 2432) / (1.82 * 137.8 * 14.95);
      const other = Math.min(8.08 * Math.cbrt(2432 * 14.95 * (1 - K)), 200);
      expect(plain({ p, d: 50 }, "dmax"), `p = ${p}`).toBeLessThan(other);
    }
  });

  it("equilibrium (second method): the stress rises with pressure and bore, and falls with the walls", () => {
    fc.assert(
      fc.property(positive(0.1, 3), positive(70, 400), positive(2, 14), (p, outside, wall) => {
        const given = { p, do: outside, en: wall };
        const σ = opening(given);
        expect(opening({ ...given, p: 1.01 * p })).toBeGreaterThan(σ);
        expect(opening({ ...given, es: 15.5 })).toBeLessThan(σ);
        expect(opening({ ...given, do: 1.05 * outside })).toBeGreaterThan(σ);
        expect(opening({ ...given, k: 0 })).toBeGreaterThan(σ);
      }),
    );
  });

  it("ASME BPVC VIII-1, area replacement, from memory (formula only): A = d·tr; A1, A2 as the greater and the smaller of two", () => {
    fc.assert(
      fc.property(positive(0.2, 1.3), positive(60, 600), positive(5, 14), (p, outside, tn) => {
        const f = 137.8;
        const t = shell.es;
        // Walls after p·R/(S − 0.6·p), which exceeds p·D/(2·S − p) by less than 0.1 % here.
        const wall = (bore: number) => (p * bore) / 2 / (f - 0.6 * p);
        const d = outside - 2 * tn;
        const [tr, trn] = [wall(shell.Di), wall(d)];
        const A1 = Math.max(d * (t - tr), 2 * (t + tn) * (t - tr));
        const A2 = Math.min(5 * (tn - trn) * t, 5 * (tn - trn) * tn);
        const given = { p, do: outside, en: tn, k: 0 };
        expect(opening(given, "Ar") / (d * tr)).toBeCloseTo(1, 2);
        expect(Math.abs(opening(given, "Aa") - A1 - A2)).toBeLessThan(0.001 * (outside + 5 * t) * t);
      }),
    );
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { unitGroups } from "../../src/model/unit-list.ts";
import {
  convert,
  convertDifference,
  knownUnit,
  sameDimension,
  unitHint,
  unitLabel,
  unitOf,
  unitsOf,
} from "../../src/model/units.ts";

const allNames = unitGroups.flatMap((group) => Object.keys(group.units));

describe("published factors", () => {
  // Half a unit of the last digit a source prints is the tolerance; factors it marks as exact are compared as equal.
  const ams = "Abramowitz and Stegun, Handbook of Mathematical Functions (AMS 55), tables 2.4 and 2.5";
  const nist = "NIST SP 811, appendix B.8";
  const brochure = "SI brochure (9th edition), table 8 (from memory)";
  const published: readonly (readonly [source: string, from: string, to: string, factor: number, within: number])[] = [
    [ams, "in", "m", 0.0254, 0],
    [ams, "lb", "kg", 0.45359237, 0],
    [ams, "bar", "Pa", 1e5, 0],
    [ams, "l", "m³", 1e-3, 0],
    [nist, "psi", "Pa", 6894.757, 0.0005],
    [brochure, "t", "kg", 1e3, 0],
    [brochure, "d", "s", 86400, 0],
    [brochure, "h", "s", 3600, 0],
    [brochure, "min", "s", 60, 0],
  ];
  for (const [source, from, to, factor, within] of published)
    test(`${source}: 1 ${from} = ${factor} ${to}`, () => {
      expect(Math.abs(convert(1, from, to) - factor)).toBeLessThanOrEqual(within);
    });

  test(`${ams}: standard gravity 9.80665 m/s², pound-force 4.44822 N`, () => {
    expect(convert(1, "kgf/cm²", "Pa")).toBeCloseTo(9.80665 / 0.01 ** 2, 9);
    const poundForce = convert(1, "psi", "Pa") * 0.0254 ** 2;
    expect(Math.abs(poundForce - 4.44822)).toBeLessThanOrEqual(0.000005);
    expect(convert(1, "ksi", "psi")).toBe(1000);
  });

  test(`${ams}: Fahrenheit is 32 + 9/5 Celsius`, () => {
    for (const celsius of [-40, 0, 37, 100])
      expect(convert(celsius, "°C", "°F")).toBeCloseTo(32 + (9 / 5) * celsius, 12);
    expect(convert(32, "°F", "°C")).toBe(0);
    expect(convert(212, "°F", "°C")).toBe(100);
  });

  test("SI brochure (9th edition), 2.3.1: t/°C = T/K − 273.15", () => {
    expect(convert(0, "°C", "K")).toBe(273.15);
    expect(convert(36.6, "°C", "K")).toBe(309.75);
    expect(convert(453.035632, "K", "°C")).toBeCloseTo(179.885632, 9);
  });

  test("a degree is π/180 rad", () => {
    expect(convert(30, "°", "rad")).toBeCloseTo(Math.PI / 6, 15);
    expect(convert(Math.PI, "rad", "°")).toBeCloseTo(180, 12);
  });
});

describe("conversion", () => {
  test("decimal values stay the nearest number", () => {
    expect(convert(14.3, "mm", "m")).toBe(0.0143);
    expect(convert(1.85, "MPa", "bar")).toBe(18.5);
    expect(convert(12.5, "bar", "MPa")).toBe(1.25);
    expect(convert(235, "N/mm²", "MPa")).toBe(235);
    expect(convert(85, "%", "1")).toBe(0.85);
    expect(convert(4, "t/h", "kg/h")).toBe(4000);
    expect(convert(5, "ml/100g", "m³/kg")).toBe(5e-5);
  });

  test("there and back gives the same value, in every unit of a dimension", () => {
    const pairs = allNames.flatMap((from) => unitsOf(from).map((to) => [from, to] as const));
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (pair, value) => {
        const [from, to] = pair;
        const back = convert(convert(value, from, to), to, from);
        // Beside a shift of some hundred kelvin, digits below 1e-12 of it are lost.
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(value), 1000));
      }),
    );
  });

  test("a difference knows no zero", () => {
    expect(convertDifference(10, "°C", "K")).toBe(10);
    expect(convertDifference(9, "°F", "K")).toBe(5);
    expect(convertDifference(0.5, "bar", "MPa")).toBe(0.05);
  });

  test("of another dimension, or of points to differences, is a mistake in the program", () => {
    expect(() => convert(1, "mm", "bar")).toThrow("mm cannot be converted to bar");
    expect(() => convert(1, "bar", "bar(a)")).toThrow("bar cannot be converted to bar(a)");
    expect(() => convert(1, "K", "ΔK")).toThrow("K cannot be converted to ΔK");
    expect(() => convert(1, "HV", "HBW")).toThrow("HV cannot be converted to HBW");
    expect(() => convert(1, "mm", "furlong")).toThrow('there is no unit "furlong"');
  });
});

describe("names", () => {
  test("other spellings", () => {
    const spellings = { mm2: "mm²", m3: "m³", mm4: "mm⁴", "N/mm2": "N/mm²", "kg/m3": "kg/m³", "m3/h": "m³/h" };
    for (const [written, name] of Object.entries(spellings)) expect(unitOf(written)?.name).toBe(name);
    expect(unitOf("\u00b5m")?.name).toBe(unitOf("\u03bcm")?.name);
    expect(unitOf("\u2103")?.name).toBe("°C");
    expect(unitOf("L")?.name).toBe("l");
    expect(unitOf("°C/h")?.name).toBe("K/h");
    expect(unitOf("\u2206K")?.name).toBe("ΔK");
  });

  test("products and quotients of listed units", () => {
    expect(sameDimension("N/mm²", "kg/(m·s2)")).toBe(true);
    expect(sameDimension("N·m", "J")).toBe(true);
    expect(sameDimension("A·V", "W")).toBe(true);
    expect(convert(1, "kW·h", "MJ")).toBe(3.6);
    expect(sameDimension("1/K", "1/°C")).toBe(true);
    expect(unitOf("m/s2")?.name).toBe("m/s²");
    for (const broken of ["mm/", "/mm", "(mm", "mm)", "mm//s", "mm/bar(a)", "(", "", "mm²³", "m9"])
      expect(unitOf(broken), broken).toBeUndefined();
  });

  test("what everybody knows but leaves something to guess is refused, with what to write", () => {
    for (const [written, hint] of [
      ["barg", 'a gauge pressure is written "bar"'],
      ["bara", 'an absolute pressure is written "bar(a)"'],
      ["C", 'a temperature is written "°C"'],
      ["kg/cm²", 'a pressure or stress is written "kgf/cm²"'],
      ["MPA", 'write "MPa"'],
    ] as const) {
      expect(unitOf(written), written).toBeUndefined();
      expect(unitHint(written)).toBe(hint);
    }
    expect(unitHint("furlong")).toBeUndefined();
  });

  test("gauge pressure is a difference, absolute pressure and temperature are points", () => {
    expect(sameDimension("bar", "MPa")).toBe(true);
    expect(sameDimension("bar", "bar(a)")).toBe(false);
    expect(sameDimension("K", "°C")).toBe(true);
    expect(sameDimension("K", "ΔK")).toBe(false);
    expect(["bar(a)", "kPa(a)", "MPa(a)", "°C", "K"].every((name) => knownUnit(name).point)).toBe(true);
  });

  test("each listed unit is found by its name, and measures the same as the others of its group", () => {
    for (const group of unitGroups) {
      for (const name of Object.keys(group.units)) expect(unitOf(name)?.name).toBe(name);
      const [first = ""] = Object.keys(group.units);
      expect(unitsOf(first)).toEqual(Object.keys(group.units));
    }
    expect(new Set(allNames).size).toBe(allNames.length);
  });

  test("units of a composed unit are those listed for its dimension", () => {
    expect(unitsOf("kg/(m·s²)")).toContain("bar");
    expect(unitsOf("kg/(h·mm²)")).toEqual([]);
  });

  test("as printed after a number", () => {
    expect(["mm", "ΔK", "1"].map(unitLabel)).toEqual(["mm", "K", ""]);
  });
});

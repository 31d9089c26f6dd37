import { describe, expect, test } from "vitest";
import { parseFormula } from "../../../src/model/formula/parse.ts";
import {
  comparisonUnitProblem,
  formulaUnitProblem,
  type FunctionUnits,
  type UnitContext,
} from "../../../src/model/formula/units.ts";

const context: UnitContext = {
  symbols: new Map(
    Object.entries({
      p: "MPa",
      pb: "bar",
      pa: "bar(a)",
      pa2: "bar(a)",
      pk: "kPa(a)",
      f: "N/mm²",
      D: "mm",
      L: "m",
      z: "1",
      C: "%",
      Mn: "%",
      t: "°C",
      t2: "°C",
      T: "K",
      T2: "K",
      dT: "ΔK",
      α: "1/K",
      angle: "rad",
      degrees: "°",
      V: "m³",
      m: "kg",
      h: "kJ/kg",
      A: "mm²",
      F: "N",
      ρ: "kg/m³",
      readings: "rows",
    }),
  ),
  functions: new Map<string, FunctionUnits>([
    ["psat", { parameters: ["°C"], unit: "bar(a)" }],
    ["hold", { parameters: ["rows", "bar"], unit: "min" }],
  ]),
};

const problem = (formula: string, unit: string) =>
  formulaUnitProblem({ ...context, formula: parseFormula(formula), unit });

describe("formulas whose units multiply out", () => {
  const table: readonly (readonly [formula: string, unit: string])[] = [
    ["p*D / (2*f*z - p)", "mm"],
    ["D + '1 mm'", "mm"],
    ["F/A", "N/mm²"],
    ["F/A", "MPa"],
    ["C + Mn/6", "%"],
    ["100*z", "1"],
    ["D^2", "mm²"],
    ["D^3*D", "mm⁴"],
    ["sqrt(A)", "mm"],
    ["A^(1/2)", "mm"],
    ["A^0.5*D^-1", "1"],
    ["D*sqrt(p/f)", "mm"],
    ["(D/'1 mm')^z", "1"],
    ["z^z", "1"],
    ["exp(-p/f) + ln(z) + log10(L/'1 m')", "1"],
    ["ln(pa/pa2)", "1"],
    ["D*sin(angle)", "mm"],
    ["D*angle", "mm"],
    ["max(D, '3 mm', 0)", "mm"],
    ["abs(D - '3 mm')", "mm"],
    ["-D", "mm"],
    ["min(p, f)", "MPa"],
    ["0", "mm"],
    // Points: differences of them, and what is added to them.
    ["t - t2", "ΔK"],
    ["t + dT", "°C"],
    ["dT + t", "°C"],
    ["t - dT", "°C"],
    ["t + (t2 - t)/2", "°C"],
    ["T - T2", "ΔK"],
    ["pa - pa2", "bar"],
    ["pa + pb", "bar(a)"],
    ["max(t, t2)", "°C"],
    ["min(pa, '3 bar(a)')", "bar(a)"],
    ["α*(t - t2)*D", "mm"],
    // Absolute pressure and kelvin multiply freely.
    ["pa*T/T2", "bar(a)"],
    ["pa*(2/(z + 1))^(z/(z - 1))", "bar(a)"],
    ["0.5*pa", "bar(a)"],
    ["pa/2 - pa*z/3", "bar"],
    ["abs(pa)", "bar(a)"],
    ["sqrt(pa*ρ)*sqrt('1 bar(a)'/ρ)", "bar(a)"],
    // A product with a point in it may be either, as declared; what is added to a point makes a point.
    ["ρ*'1 J/(kg·K)'*T", "Pa(a)"],
    ["ρ*'1 J/(kg·K)'*T", "Pa"],
    ["ρ*'1 J/(kg·K)'*T - '1 Pa(a)'", "Pa"],
    ["'1 Pa(a)' - ρ*'1 J/(kg·K)'*T", "Pa"],
    ["'1 Pa(a)' + ρ*'1 J/(kg·K)'*T", "Pa(a)"],
    ["'1 Pa' + ρ*'1 J/(kg·K)'*T", "Pa(a)"],
    ["max('1 Pa(a)', ρ*'1 J/(kg·K)'*T)", "Pa(a)"],
    ["-0 + pb", "bar"],
    ["0 + pb", "bar"],
    ["psat(t)", "bar(a)"],
    ["hold(readings, pb)", "min"],
  ];
  for (const [formula, unit] of table)
    test(`${formula} in ${unit}`, () => expect(problem(formula, unit)).toBeUndefined());
});

describe("formulas whose units do not", () => {
  const table: readonly (readonly [formula: string, unit: string, problem: string])[] = [
    ["p + pb", "MPa", '"p + pb": MPa and bar differ by a factor of 10: declare one unit'],
    ["D + L", "mm", '"D + L": mm and m differ by a factor of 1000: declare one unit'],
    ["D + p", "mm", '"D + p": mm and MPa do not go together'],
    ["max(D, p)", "mm", '"max(D, p)": mm and MPa do not go together'],
    ["D + 1", "mm", '"D + 1": mm and no unit do not go together'],
    ["pb*D/(2*f)", "mm", '"pb·D/(2·f)" is in 0.0001·m, declared is mm: a factor of 10 lies between'],
    ["p*D", "mm", '"p·D" is in 1000·kg·s^-2, declared is mm'],
    ["C*D", "mm", '"C·D" is in 0.00001·m, declared is mm: a factor of 100 lies between'],
    ["100 - C", "%", '"100 − C": no unit and % differ by a factor of 100: declare one unit'],
    ["1 - C", "1", '"1 − C": no unit and % differ by a factor of 100: declare one unit'],
    ["sin(degrees)", "1", '"degrees" is in °, sin takes a pure number (an angle in rad)'],
    ["exp(D)", "1", '"D" is in mm, exp takes a pure number'],
    ["D^z", "mm", '"D" is in mm, so its exponent must be a constant'],
    ["z^D", "1", 'the exponent "D" is in mm, it must be a pure number'],
    ["D^psat('20 °C')", "mm", 'the exponent "psat(20\u00a0°C)" is in bar(a), it must be a pure number'],
    // °C is never a factor.
    ["2*t", "°C", '"t" in °C cannot be multiplied: declare it in K, or take a difference'],
    ["t/2", "°C", '"t" in °C cannot be divided: declare it in K, or take a difference'],
    ["p/t", "MPa", '"t" in °C cannot be divided: declare it in K, or take a difference'],
    ["t^2", "°C", '"t" in °C cannot be raised to a power: declare it in K, or take a difference'],
    ["sqrt(t)", "°C", '"t" in °C cannot be put under a root: declare it in K, or take a difference'],
    ["-t", "°C", '"t" is a point and has no negative: subtract it from another'],
    ["-pa + pa2", "bar", '"pa" is a point and has no negative: subtract it from another'],
    ["abs(t)", "°C", '"t" in °C cannot be taken without its sign: declare it in K, or take a difference'],
    ["t + 0", "°C", '"t + 0": °C and any unit do not go together'],
    // Points and differences.
    ["t + t2", "°C", '"t + t2" adds two points; add a difference: a + (b - a)/2 is their mean'],
    ["pa + pa2", "bar(a)", '"pa + pa2" adds two points; add a difference: a + (b - a)/2 is their mean'],
    ["t - T", "ΔK", '"t − T" subtracts points of two scales'],
    ["max(t, T)", "K", '"max(t, T)" are points of two scales'],
    [
      "'1 Pa(a)' + ρ*'1 J/(kg·K)'*T",
      "Pa",
      '"1\u00a0Pa(a) + ρ·1\u00a0J/(kg·K)·T" is in Pa(a), declared is Pa: a point is no difference',
    ],
    ["t + T*T2/T2", "°C", '"t + T·T2/T2" may join points of two scales'],
    ["pb - pa", "bar", '"pb − pa" takes a point from a difference'],
    ["t - t2", "°C", '"t − t2" is in ΔK, declared is °C: a point is no difference'],
    ["t + dT", "ΔK", '"t + dT" is in °C, declared is ΔK: a point is no difference'],
    ["pa - pa2", "bar(a)", '"pa − pa2" is in bar, declared is bar(a): a point is no difference'],
    ["pa", "bar", '"pa" is in bar(a), declared is bar: a point is no difference'],
    ["0.5*pa", "bar", '"0.5·pa" is in bar(a), declared is bar: a point is no difference'],
    ["F/A", "MPa(a)", '"F/A" is in MPa, declared is MPa(a): a point is no difference'],
    [
      "max(pa, pb)",
      "bar(a)",
      '"max(pa, pb)": a point stands beside a difference (gauge meets absolute in a named function only)',
    ],
    ["pa - pk", "bar", '"pa − pk": bar(a) and kPa(a) differ by a factor of 100: declare one unit'],
    // Named functions.
    ["psat(T)", "bar(a)", '"T" is in K, "psat" takes °C'],
    ["psat(t, t2)", "bar(a)", '"psat" takes 1 arguments, not 2'],
    ["hold(pb, readings)", "min", '"hold" takes rows as argument 1, not "pb"'],
    ["hold(readings, readings)", "min", '"hold" takes bar as argument 2, not "readings"'],
    ["hold(readings, pa)", "min", '"pa" is in bar(a), "hold" takes bar'],
    ["readings + 1", "1", '"readings" is a list and enters through a named function only'],
    ["sqrt(A, A)", "mm", '"sqrt(A, A)" takes one argument'],
    ["q + 1", "1", '"q" is neither an input nor an earlier step'],
    ["mean(D)", "mm", '"mean" is no known function'],
  ];
  for (const [formula, unit, expected] of table)
    test(`${formula} in ${unit}`, () => expect(problem(formula, unit)).toBe(expected));

  test("a function of a calculation may not take the name of one that every formula has", () => {
    const functions = new Map([["max", { parameters: ["mm"], unit: "mm" }]]);
    const formula = parseFormula("max(D)");
    expect(formulaUnitProblem({ ...context, functions, formula, unit: "mm" })).toContain("rename it");
  });

  test("a unit nobody knows is a mistake in the program", () => {
    expect(() => problem("D", "furlong")).toThrow('there is no unit "furlong"');
    expect(() => problem("D + '1 furlong'", "mm")).toThrow('there is no unit "furlong"');
  });
});

describe("an empirical formula", () => {
  const empirical = (formula: string) =>
    formulaUnitProblem({ ...context, formula: parseFormula(formula), unit: "mm", empirical: true });

  test("trusts the declared units", () => {
    expect(empirical("1.1*D^0.7 + 2*t")).toBeUndefined();
  });

  test("still knows every name", () => {
    expect(empirical("1.1*q")).toBe('"q" is neither an input nor an earlier step');
    expect(empirical("curve(D)")).toBe('"curve" is no known function');
  });
});

describe("a comparison", () => {
  const compare = (left: string, right: string) =>
    comparisonUnitProblem(parseFormula(left), parseFormula(right), context);

  test("of like with like", () => {
    expect(compare("p", "0.385*f*z")).toBeUndefined();
    expect(compare("D", "'1800 mm'")).toBeUndefined();
    expect(compare("t", "'120 °C'")).toBeUndefined();
    expect(compare("D", "0")).toBeUndefined();
    expect(compare("pa", "2*pa2")).toBeUndefined();
  });

  test("of unlike", () => {
    expect(compare("D", "1800")).toBe('"D" and "1800": mm and no unit do not go together');
    expect(compare("D", "L")).toBe('"D" and "L": mm and m differ by a factor of 1000: declare one unit');
    expect(compare("pa", "pb")).toContain("a point stands beside a difference");
    expect(compare("t", "T")).toContain("are points of two scales");
    expect(compare("q", "0")).toContain('"q" is neither');
  });
});

import type { CalculationSheet } from "../../generated/records.ts";

type Values = Readonly<Record<string, string>>;

interface Sheet {
  readonly id: string;
  readonly calculation: string;
  readonly subject: string;
  readonly inputs: Values;
  readonly results: Values;
  readonly adopted?: string;
  readonly date?: string;
  readonly basis: string;
}

const listed = (values: Values) => Object.entries(values).map(([symbol, value]) => ({ symbol, value }));

const sheet = ({ id, calculation, subject, inputs, results, adopted, date, basis }: Sheet): CalculationSheet => ({
  id,
  calculation,
  subject,
  number: `TQ423-03-${id}`,
  revision: "0",
  date: date ?? "2026-03-02",
  preparedBy: "R1",
  checkedBy: "R2",
  basis,
  inputs: listed(inputs),
  results: listed(results),
  ...(adopted !== undefined && { adopted }),
  signatures: [
    { role: "design", person: "R1", date: date ?? "2026-03-02" },
    { role: "checker", person: "R2", date: date ?? "2026-03-04" },
  ],
});

const strength = "Directive 2014/68/EU, Annex I, permissible membrane stress; strengths of the material standard";
const stress = (id: string, part: string): CalculationSheet =>
  sheet({
    id,
    calculation: "design-stress",
    subject: `part:${part}`,
    inputs: { tE: "60 °C", ReH: "265 MPa", Rm: "410 MPa", SY: "1.5", ST: "2.4" },
    results: { t: "60 °C", Rp02: "253.0 MPa", f: "168.66 MPa", f20: "170.84 MPa" },
    basis: strength,
  });

const shell = (id: string, part: string): CalculationSheet =>
  sheet({
    id,
    calculation: "cylindrical-shell",
    subject: `part:${part}`,
    inputs: { p: "1.1 MPa", Di: "1184 mm", f: "168.66 MPa", z: "0.85", c: "1.0 mm", δ: "0.3 mm", en: "8.0 mm" },
    results: { e: "4.57 mm", ereq: "5.87 mm", ea: "6.70 mm", pmax: "1.610 MPa" },
    adopted: "8.0 mm",
    basis: "EN 13445-3, cylindrical shell under internal pressure",
  });

const end = (id: string, part: string): CalculationSheet =>
  sheet({
    id,
    calculation: "torispherical-end",
    subject: `part:${part}`,
    inputs: {
      p: "1.1 MPa",
      Di: "1184 mm",
      R: "960 mm",
      r: "185 mm",
      f: "168.66 MPa",
      Rp02: "253.0 MPa",
      SY: "1.5",
      z: "1.00",
      c: "1.0 mm",
      δ: "1.0 mm",
      en: "8.0 mm",
      ed: "7.0 mm",
    },
    results: { es: "3.14 mm", ey: "4.48 mm", eb: "4.03 mm", e: "4.48 mm", ereq: "6.48 mm", ea: "6.00 mm" },
    adopted: "8.0 mm",
    basis: "EN 13445-3, torispherical ends under internal pressure",
  });

const underTest = (id: string, part: string): CalculationSheet =>
  sheet({
    id,
    calculation: "test-stress",
    subject: `part:${part}`,
    inputs: { PT: "1.58 MPa", Di: "1184 mm", en: "8.0 mm", δ: "0.3 mm", z: "0.85", ReH: "265 MPa", kS: "0.95" },
    results: { e: "7.70 mm", σ: "143.9 MPa", σT: "251.7 MPa" },
    basis: "EN 13445-3, general membrane stress under test conditions",
  });

const afterTest = "2026-06-23";

export const calculationSheets: readonly CalculationSheet[] = [
  stress("CAL-01", "P01"),
  stress("CAL-02", "P02"),
  stress("CAL-03", "P03"),
  stress("CAL-04", "P04"),
  shell("CAL-05", "P01"),
  shell("CAL-06", "P02"),
  end("CAL-07", "P03"),
  end("CAL-08", "P04"),
  sheet({
    id: "CAL-09",
    calculation: "test-pressure",
    subject: "equipment:TQ423-01",
    inputs: { PS: "11 bar", PTs: "15.8 bar", kP: "1.43", kf: "1.25", kU: "1.06" },
    results: { q: "1.0129", PT: "15.73 bar", PTu: "16.67 bar" },
    adopted: "15.8 bar",
    basis: "Directive 2014/68/EU, Annex I, hydrostatic test pressure",
  }),
  underTest("CAL-10", "P01"),
  underTest("CAL-11", "P02"),
  sheet({
    id: "CAL-12",
    calculation: "equipment-category",
    subject: "equipment:TQ423-01",
    inputs: { PS: "11 bar", V: "3000 l", group: "2", state: "gas", declared: "IV" },
    results: { PSV: "33000 bar·l", cat: "IV" },
    basis: "Directive 2014/68/EU, Annex II, table 2",
  }),
  sheet({
    id: "CAL-13",
    calculation: "gas-safety-valve",
    subject: "safety-valve:SV-01",
    date: "2026-06-29",
    inputs: {
      pset: "11 bar",
      op: "10 %",
      patm: "1.013 bar(a)",
      pb: "0 bar",
      A: "314.2 mm²",
      Kdr: "0.70",
      k: "1.40",
      M: "28.96 kg/kmol",
      Z: "1.00",
      T0: "20 °C",
      PS: "11 bar",
      Qc: "2450 kg/h",
    },
    results: { pr: "12.1 bar", p0: "13.113 bar(a)", C: "2.703", rc: "0.5283", Kb: "1.000", Qm: "2450 kg/h" },
    basis: "EN ISO 4126-7, discharge capacity for gas",
  }),
  sheet({
    id: "CAL-14",
    calculation: "relief-capacity",
    subject: "equipment:TQ423-01",
    date: "2026-06-29",
    inputs: { Q: "1800 kg/h" },
    results: { Qs: "2450 kg/h" },
    basis: "Directive 2014/68/EU, Annex I, protection against exceeding the allowable limits",
  }),
  sheet({
    id: "CAL-15",
    calculation: "pressure-hold",
    subject: "pressure-test:HYD-01",
    date: afterTest,
    inputs: {
      pn: "15.8 bar",
      FSl: "23.7 bar",
      PTr: "15.8 bar",
      PTu: "16.67 bar",
      zA: "0 m",
      zB: "-1.2 m",
      FSA: "25 bar",
      FSB: "25 bar",
      cA: "1.0 %",
      cB: "1.0 %",
      tmin: "30 min",
      medium: "water",
      F0A: "0 bar",
      F0B: "0 bar",
      Sm: "63.2 bar",
    },
    results: { hB: "0.118 bar", hA: "0 bar", th: "35 min", Δc: "0.50 bar", Tc: "14.5 °C" },
    basis: "procedure TB-QP-09, hydrostatic test",
  }),
];

import type { NdtReport } from "../../generated/records.ts";

type Rows = NonNullable<NdtReport["rows"]>;
type Row = Rows[number];
type Method = NdtReport["method"];

const done: Readonly<Record<Method, Partial<NdtReport>>> = {
  VT: {
    procedure: "PRC-VT@4",
    acceptance: { standard: "EN ISO 5817", edition: "2014", level: "C" },
    technique: "direct",
    illuminance: "650 lx",
    instruments: ["LM-01", "WG-01"],
  },
  RT: {
    procedure: "PRC-RT@3",
    acceptance: { standard: "EN ISO 10675-1", edition: "2021", level: "2" },
    technique: "EN ISO 17636-1 class B, single wall, source inside, film outside",
    instruments: ["DM-01"],
    radiography: {
      techniqueClass: "B",
      source: "X-ray 180 kV, 4 mA",
      sourceSize: "2.3 mm",
      distance: "700 mm",
      sourcePlace: "inside, off the centre",
      filmClass: "C4",
    },
  },
  MT: {
    procedure: "PRC-MT@3",
    acceptance: { standard: "EN ISO 23278", edition: "2015", level: "2X" },
    technique: "yoke, alternating current, wet black on white",
    seenBy: "colour contrast",
    directions: 2,
    fieldStrength: "3.4 kA/m",
    illuminance: "800 lx",
    instruments: ["MY-01", "FM-01", "LM-01"],
  },
  PT: {
    procedure: "PRC-PT@2",
    acceptance: { standard: "EN ISO 23277", edition: "2015", level: "2X" },
    technique: "red dye, solvent removable, type II C e",
    seenBy: "colour contrast",
    instruments: ["TH-05", "LM-01"],
    surfaceTemperature: "21 °C",
    penetrationTime: "15 min",
    developmentTime: "15 min",
    illuminance: "900 lx",
  },
  UT: {},
};

/** A report of the testers of the order, to their procedures. */
export function report(id: string, method: Method, date: string, rows: Rows): NdtReport {
  const operator = method === "RT" ? "N2" : "N1";
  return {
    id,
    method,
    date: `${date}+02:00`,
    drawing: "DRG-02@B",
    qualityLevel: "C",
    ...done[method],
    operator,
    reviewer: "N3",
    laboratory: "GLIMMERFIELD",
    rows,
    signatures: [{ role: "testing", person: operator, date: date.slice(0, 10) }],
  };
}

/** A weld tested over its whole length, nothing found. */
export const whole = (joint: string, length: string): Row => ({
  joint,
  from: "0 mm",
  to: length,
  length,
  result: "accepted",
});

/** Films of a job: joint, number, from and to in mm, densities. */
export const filmsOf =
  (stamp: string) =>
  (joint: string, number: number, from: number, to: number, density: string[], more: Partial<Row> = {}): Row => ({
    row: `${joint}-${number}`,
    joint,
    film: `${stamp}-${joint}-${number}`,
    from: `${from} mm`,
    to: `${to} mm`,
    length: `${to - from} mm`,
    wire: "W15",
    density,
    result: "accepted",
    ...more,
  });

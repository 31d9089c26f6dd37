import type { HeatTreatment, MaterialCertificate, MillApproval, PieceMark } from "../../../src/generated/records.ts";

type Row = NonNullable<MaterialCertificate["rows"]>[number];
type Analysis = NonNullable<Row["chemistry"]>;

const elements = ["C", "Si", "Mn", "P", "S", "N", "Al", "Cr", "Cu", "Mo", "Ni", "Nb", "Ti", "V"] as const;

/** Ladle analysis in per cent, in the order of the columns every mill here prints; "-" where a mill prints none. */
function ladle(line: string): Analysis {
  const values = line.split(" ");
  return elements.flatMap((element, index) => {
    const value = values[index];
    return value === undefined || value === "-" ? [] : [{ element, value: `${value} %` }];
  });
}

const tensile = (test: string, direction: "longitudinal" | "transverse", line: string): NonNullable<Row["tensile"]> => {
  const [yieldStrength = "", tensileStrength = "", elongation = ""] = line.split(" ");
  return [
    {
      test,
      direction,
      temperature: "20 °C",
      yieldKind: "ReH",
      yieldStrength: `${yieldStrength} MPa`,
      tensileStrength: `${tensileStrength} MPa`,
      elongation: `${elongation} %`,
      gaugeLength: "5.65·√S0",
    },
  ];
};

const impact = (
  test: string,
  direction: "longitudinal" | "transverse",
  temperature: string,
  specimenWidth: string,
  line: string,
): NonNullable<Row["impact"]> => {
  const [mean = "", ...values] = line.split(" ");
  return [
    {
      test,
      direction,
      temperature,
      specimenWidth,
      values: values.map((value) => `${value} J`),
      mean: `${mean} J`,
    },
  ];
};

const surface: NonNullable<Row["otherTests"]> = [
  { test: "surface and dimensions", requirement: "as ordered", result: "accepted" },
];
const plateSteel = { standard: "EN 10028-2", edition: "2017", grade: "P265GH", deliveryCondition: "+N" } as const;
const forgedSteel = {
  standard: "EN 10222-2",
  edition: "2017",
  grade: "P245GH",
  form: "forging",
  deliveryCondition: "+N",
} as const;

const formedEnd = (heat: string, unit: string, chemistry: string, ce: string, pull: string, bars: string): Row => ({
  heat,
  testUnit: unit,
  pieces: 1,
  ...plateSteel,
  form: "formed-end",
  thickness: "8.0 mm",
  diameter: "1200 mm",
  mass: "97 kg",
  meltingProcess: "basic oxygen, fully killed",
  chemistry: ladle(chemistry),
  carbonEquivalent: ce,
  tensile: tensile(unit, "transverse", pull),
  impact: impact(unit, "transverse", "-20 °C", "7.5 mm", bars),
  otherTests: [
    ...surface,
    {
      test: "magnetic particle test of the knuckle, inside and outside",
      requirement: "no linear indication",
      result: "accepted",
    },
  ],
});

const plate = (
  heat: string,
  unit: string,
  chemistry: string,
  sum: string,
  ce: string,
  pull: string,
  bars: string,
): Row => ({
  heat,
  testUnit: unit,
  pieces: 1,
  ...plateSteel,
  form: "plate",
  thickness: "8.0 mm",
  width: "1250 mm",
  length: "4000 mm",
  mass: "314 kg",
  meltingProcess: "basic oxygen, fully killed",
  chemistry: ladle(chemistry),
  sumCrCuMoNi: sum,
  carbonEquivalent: ce,
  tensile: tensile(unit, "transverse", pull),
  impact: impact(unit, "transverse", "-20 °C", "7.5 mm", bars),
  otherTests: surface,
});

interface Forging {
  readonly heat: string;
  readonly pieces: number;
  readonly thickness: string;
  readonly diameter: string;
  readonly mass: string;
  readonly chemistry: string;
  readonly pull: string;
  readonly bars: string;
}

const forging = ({ heat, pieces, thickness, diameter, mass, chemistry, pull, bars }: Forging): Row => ({
  heat,
  testUnit: `${heat}/1`,
  pieces,
  ...forgedSteel,
  thickness,
  diameter,
  mass,
  meltingProcess: "electric, vacuum degassed",
  chemistry: ladle(chemistry),
  tensile: tensile(`${heat}/1`, "longitudinal", pull),
  impact: impact(`${heat}/1`, "longitudinal", "-10 °C", "10 mm", bars),
  otherTests: surface,
});

const bolting = (heat: string, grade: string, deliveryCondition: string, mass: string, hardness: string): Row => ({
  heat,
  pieces: 12,
  standard: "EN 10269",
  edition: "2013",
  grade,
  form: "bolting",
  deliveryCondition,
  thickness: "24.0 mm",
  diameter: "24.0 mm",
  mass,
  hardness: [{ test: `${heat}/H`, value: hardness }],
  otherTests: [{ test: "thread gauges", requirement: "ISO metric, 6g and 6H", result: "accepted" }],
});

const en10204 = { standard: "EN 10204", edition: "2004" };

const certificate = (
  id: string,
  number: string,
  mill: string,
  item: string,
  issued: string,
  received: string,
  validator: string,
  rows: Row[],
  supplier?: string,
): MaterialCertificate => ({
  id,
  number,
  type: "3.1",
  documentStandard: en10204,
  mill,
  ...(supplier !== undefined && { supplier }),
  order: `TQ-PO-2231 item ${item}`,
  issued,
  received,
  pages: 1,
  validatedBy: { name: validator, function: "inspection representative, independent of manufacture" },
  statesCompliance: true,
  rows,
});

export const certificates: readonly MaterialCertificate[] = [
  certificate("CRT-001", "BE-26-0318", "BOWLTHORNE", "1", "2026-04-24", "2026-05-11", "N. Hollowmere", [
    formedEnd(
      "83950",
      "83950-4",
      "0.13 0.24 1.14 0.012 0.003 0.0058 0.036 0.06 0.08 0.01 0.05 0.001 0.002 0.003",
      "0.35 %",
      "312 448 30",
      "96 92 101 95",
    ),
  ]),
  certificate("CRT-002", "BE-26-0319", "BOWLTHORNE", "1", "2026-04-24", "2026-05-11", "N. Hollowmere", [
    formedEnd(
      "83962",
      "83962-1",
      "0.15 0.22 1.10 0.010 0.004 0.0063 0.031 0.04 0.10 0.01 0.04 0.001 0.002 0.002",
      "0.35 %",
      "321 460 28",
      "88 84 90 90",
    ),
  ]),
  certificate(
    "CRT-003",
    "GV-26-00417",
    "GREYVAULT",
    "2",
    "2026-04-21",
    "2026-05-08",
    "L. Farrowmint",
    [
      plate(
        "84713",
        "1041",
        "0.14 0.21 1.12 0.011 0.004 0.0062 0.034 0.05 0.09 0.01 0.04 <0.003 0.002 0.003",
        "0.19 %",
        "0.35 %",
        "318 456 29",
        "117 118 124 109",
      ),
      plate(
        "84721",
        "1042",
        "0.15 0.23 1.09 0.013 0.003 0.0057 0.038 0.06 0.08 0.01 0.05 <0.003 0.002 0.003",
        "0.20 %",
        "0.36 %",
        "325 463 28",
        "104 99 108 105",
      ),
    ],
    "UMBERHITHE",
  ),
  certificate("CRT-004", "HF-26-1107", "HAMMERQUIST", "3", "2026-04-15", "2026-05-06", "B. Cinderway", [
    forging({
      heat: "51806",
      pieces: 2,
      thickness: "20.0 mm",
      diameter: "200 mm",
      mass: "13.6 kg",
      chemistry: "0.17 0.26 0.94 0.012 0.005 - - 0.09 0.12 0.02 0.08",
      pull: "288 468 30",
      bars: "112 106 115 115",
    }),
  ]),
  certificate(
    "CRT-005",
    "NT-26-2291",
    "NETTLEWEIR",
    "4",
    "2026-04-02",
    "2026-05-06",
    "S. Reedlocke",
    [
      {
        heat: "70344",
        testUnit: "70344/2",
        pieces: 1,
        standard: "EN 10216-2",
        edition: "2013+A1:2019",
        grade: "P265GH",
        form: "tube",
        deliveryCondition: "+N",
        thickness: "4.5 mm",
        diameter: "33.7 mm",
        length: "2000 mm",
        mass: "6.5 kg",
        meltingProcess: "electric, fully killed",
        chemistry: ladle("0.15 0.22 0.98 0.011 0.004 - 0.028 0.07 0.11 0.02 0.06 - - 0.003"),
        carbonEquivalent: "0.34 %",
        tensile: tensile("70344/2", "longitudinal", "308 452 31"),
        otherTests: [
          { test: "tightness, eddy current", requirement: "EN ISO 10893-1", result: "accepted" },
          { test: "flattening", requirement: "EN ISO 8492", result: "accepted" },
          ...surface,
        ],
      },
    ],
    "UMBERHITHE",
  ),
  certificate("CRT-006", "HF-26-1108", "HAMMERQUIST", "5", "2026-04-15", "2026-05-06", "B. Cinderway", [
    forging({
      heat: "51822",
      pieces: 1,
      thickness: "18.0 mm",
      diameter: "165 mm",
      mass: "5.1 kg",
      chemistry: "0.16 0.25 0.97 0.010 0.004 - - 0.08 0.11 0.02 0.07",
      pull: "291 472 29",
      bars: "108 101 110 113",
    }),
    forging({
      heat: "51840",
      pieces: 1,
      thickness: "28.0 mm",
      diameter: "460 mm",
      mass: "44.0 kg",
      chemistry: "0.17 0.27 0.99 0.011 0.004 - - 0.10 0.12 0.02 0.09",
      pull: "284 465 31",
      bars: "97 92 99 100",
    }),
  ]),
  certificate("CRT-007", "HF-26-1109", "HAMMERQUIST", "6", "2026-04-16", "2026-05-06", "B. Cinderway", [
    forging({
      heat: "51853",
      pieces: 1,
      thickness: "28.0 mm",
      diameter: "460 mm",
      mass: "35.9 kg",
      chemistry: "0.16 0.24 1.01 0.012 0.003 - - 0.09 0.10 0.02 0.08",
      pull: "287 469 30",
      bars: "103 98 104 107",
    }),
  ]),
  certificate("CRT-008", "TF-26-0076", "THREADLOW", "7", "2026-03-30", "2026-05-07", "O. Pinbury", [
    bolting("62011", "25CrMo4", "+QT", "5.6 kg", "268 HV"),
    bolting("62017", "C35E", "+QT", "1.4 kg", "205 HV"),
  ]),
];

const approval = (
  id: string,
  mill: string,
  certificate: string,
  scope: string,
  forms: NonNullable<MillApproval["forms"]>,
): MillApproval => ({
  id,
  mill,
  body: "PENQUILLITH",
  certificate,
  scope,
  forms,
  bodyInUnion: true,
  validFrom: "2024-06-01",
  validTo: "2027-05-31",
});

export const millApprovals: readonly MillApproval[] = [
  approval("MA-01", "GREYVAULT", "PQ-QS-1180", "hot rolled plate for pressure purposes, 5 mm to 60 mm", ["plate"]),
  approval(
    "MA-02",
    "BOWLTHORNE",
    "PQ-QS-1194",
    "dished ends of ferritic plate up to 20 mm, cold formed and heat treated",
    ["formed-end"],
  ),
  approval("MA-03", "NETTLEWEIR", "PQ-QS-1203", "seamless tubes for pressure purposes up to 219.1 mm", [
    "tube",
    "pipe",
  ]),
  approval("MA-04", "HAMMERQUIST", "PQ-QS-1211", "forged flanges and welding necks of ferritic steel", ["forging"]),
  approval("MA-05", "THREADLOW", "PQ-QS-1226", "bolts and nuts for pressure purposes", ["bolting"]),
];

/** The ends were formed cold and normalised again by their maker, together, in one charge. */
export const heatTreatments: readonly HeatTreatment[] = [
  {
    id: "HT-01",
    charge: "BE-26-N-077",
    type: "normalising",
    procedure: "PRC-FORM@3",
    parts: ["P03", "P04"],
    started: "2026-04-22T06:40+02:00",
    finished: "2026-04-22T13:10+02:00",
    loadingTemperature: "310 °C",
    heatingRate: "210 K/h",
    holdingLowest: "898 °C",
    holdingHighest: "914 °C",
    holdingTime: "32 min",
    readings: [
      { time: "2026-04-22T09:38+02:00", temperatures: ["898 °C", "902 °C"] },
      { time: "2026-04-22T09:50+02:00", temperatures: ["906 °C", "911 °C"] },
      { time: "2026-04-22T10:10+02:00", temperatures: ["908 °C", "914 °C"] },
    ],
    instruments: ["TR-11"],
    result: "accepted",
    signatures: [{ role: "supplier", person: "F1", date: "2026-04-23" }],
  },
];

const cutOn = "2026-05-19";

interface Piece {
  readonly id: string;
  readonly part: string;
  readonly row: string;
  readonly from: string;
  readonly more?: Partial<PieceMark>;
}

const piece = ({ id, part, row, from, more }: Piece): PieceMark => ({
  id,
  part,
  mark: `423/${part.slice(1).replace(/^0/, "")}-A`,
  certificateRow: row,
  pieceNumber: from,
  cut: cutOn,
  pieces: 1,
  transfers: [
    {
      from,
      to: `423/${part.slice(1).replace(/^0/, "")}-A`,
      method: "hard stamp",
      by: "S1",
      date: "2026-05-18",
      witness: "D2",
    },
  ],
  ...more,
});

export const pieceMarks: readonly PieceMark[] = [
  piece({ id: "PM-01", part: "P01", row: "CRT-003#84713", from: "84713-1041", more: { area: "4.21 m²" } }),
  piece({ id: "PM-02", part: "P02", row: "CRT-003#84721", from: "84721-1042", more: { area: "4.21 m²" } }),
  piece({ id: "PM-03", part: "P03", row: "CRT-001#83950", from: "83950-4" }),
  piece({ id: "PM-04", part: "P04", row: "CRT-002#83962", from: "83962-1" }),
  piece({ id: "PM-05", part: "P05", row: "CRT-004#51806", from: "51806-A" }),
  piece({ id: "PM-06", part: "P06", row: "CRT-004#51806", from: "51806-B" }),
  piece({ id: "PM-07", part: "P07", row: "CRT-006#51822", from: "51822-A" }),
  piece({ id: "PM-08", part: "P08", row: "CRT-005#70344", from: "70344/2", more: { length: "120 mm" } }),
  piece({ id: "PM-09", part: "P09", row: "CRT-005#70344", from: "70344/2", more: { length: "120 mm" } }),
  piece({ id: "PM-10", part: "P10", row: "CRT-006#51840", from: "51840-A" }),
  piece({ id: "PM-11", part: "P11", row: "CRT-007#51853", from: "51853-A" }),
  piece({ id: "PM-12", part: "P12", row: "CRT-008#62011", from: "TF 62011", more: { pieces: 12 } }),
  piece({ id: "PM-13", part: "P13", row: "CRT-008#62017", from: "TF 62017", more: { pieces: 12 } }),
];

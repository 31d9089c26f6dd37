import type { MaterialCertificate } from "../../generated/records.ts";
import { bolting, forging, formedEnd, ladle, plate, surface, tensile, type Row } from "./certificate-rows.ts";

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

const large = { pieces: 1, diameter: "1200 mm", mass: "97 kg" };
const small = { pieces: 2, diameter: "355.6 mm", mass: "19.6 kg" };

export const certificates: readonly MaterialCertificate[] = [
  certificate("CRT-001", "BE-26-0318", "BOWLTHORNE", "1", "2026-04-24", "2026-05-11", "N. Hollowmere", [
    formedEnd(
      large,
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
      large,
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
  certificate("CRT-009", "BE-26-0320", "BOWLTHORNE", "8", "2026-04-24", "2026-05-11", "N. Hollowmere", [
    formedEnd(
      small,
      "83978",
      "83978-2",
      "0.14 0.23 1.12 0.011 0.003 0.0060 0.034 0.05 0.09 0.01 0.05 0.001 0.002 0.003",
      "0.35 %",
      "316 453 29",
      "91 95 87 91",
    ),
  ]),
];

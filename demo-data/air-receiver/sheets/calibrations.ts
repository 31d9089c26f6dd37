import type { Instrument } from "../../../src/generated/records.ts";
import { fields, heading, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { instruments } from "../facts/instruments.ts";
import { nameOf } from "../facts/people.ts";
import { printed, type OriginalSheet } from "./original.ts";

/** Readings of a calibration, made from the instrument's range: reference, rising, falling. */
function points(instrument: Instrument): string[][] {
  const most = Number((instrument.range?.maximum ?? "25 bar").split(" ")[0]);
  const deviations = [
    [0, 0],
    [0.2, 2],
    [0.4, 2],
    [0.6, 3],
    [0.8, 2],
    [1, 1],
  ] as const;
  return deviations.map(([share, thousandths]) => {
    const reference = most * share;
    const off = most * 0.001 * thousandths;
    return [
      reference.toFixed(2),
      (reference + off).toFixed(2),
      (reference + off * 1.4).toFixed(2),
      (off * 1.4).toFixed(2),
    ];
  });
}

function drawCalibrations(paper: Paper, chosen: readonly Instrument[]): void {
  for (const instrument of chosen)
    for (const calibration of instrument.calibrations ?? []) {
      const sheet = newSheet(paper, "Calibration certificate");
      fields(sheet, [
        ["Certificate", calibration.certificate],
        ["Instrument", `${instrument.id}, ${printed(instrument.name)}`],
        ["Maker, serial", `${printed(instrument.manufacturer)}, ${printed(instrument.serial)}`],
        [
          "Range",
          instrument.range === undefined
            ? "–"
            : `${printed(instrument.range.minimum)} to ${printed(instrument.range.maximum)}`,
        ],
        ["Class, resolution", `${printed(instrument.accuracyClass)}, ${printed(instrument.resolution)}`],
        ["Calibrated, valid to", `${printed(calibration.date)}, ${printed(calibration.validTo)}`],
        ["As found", printed(calibration.asFound)],
        ["As left", printed(calibration.asLeft)],
        ["Uncertainty", printed(calibration.uncertainty)],
        ["Surroundings", "20 °C, 45 % relative humidity"],
      ]);
      if (instrument.type === "pressure gauge") {
        heading(sheet, "Readings in bar");
        table(
          sheet,
          ["Reference", "Rising", "Falling", "Greatest deviation"].map((title) => ({
            title,
            share: 10,
            align: "right" as const,
          })),
          points(instrument),
          9,
        );
      }
      signatures(sheet, [
        { role: "laboratory", name: nameOf("L1"), date: printed(calibration.date), stamp: "LARKMETRIC\n041" },
      ]);
    }
}

const calibrationSheet = (id: string, title: string, day: string, ids: readonly string[]): OriginalSheet => {
  const chosen = instruments.filter((one) => ids.includes(one.id));
  return {
    id: `ORG-CALIBRATION-${id}`,
    path: `instruments/calibration-${id.toLowerCase()}.pdf`,
    title,
    number: `${printed(chosen[0]?.calibrations?.[0]?.certificate)} ff.`,
    by: "LARKMETRIC",
    day,
    compared: "2026-05-21",
    shows: chosen.map((one, index) => ["instrument", one.id, index + 1]),
    draw: (paper) => {
      drawCalibrations(paper, chosen);
    },
  };
};

export const calibrationSheets: readonly OriginalSheet[] = [
  calibrationSheet("GAUGES", "Calibration of the gauges and thermometer of the pressure test", "2026-05-04", [
    "PG-03",
    "PG-04",
    "TH-02",
  ]),
  calibrationSheet("SHOP", "Calibration of measuring equipment of the shop", "2026-04-13", [
    "WM-02",
    "UT-03",
    "TAPE-03",
    "CA-05",
    "CT-01",
    "WG-01",
  ]),
  calibrationSheet("TESTERS", "Calibration of measuring equipment of the testers", "2026-03-30", [
    "DM-01",
    "LM-01",
    "MY-01",
    "FM-01",
    "TH-05",
  ]),
  calibrationSheet("SUPPLIERS", "Calibration of measuring equipment of suppliers", "2026-03-16", ["PG-07", "TR-11"]),
];

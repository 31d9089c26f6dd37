import type { DimensionCheck, Instrument, NdtReport } from "../../../src/generated/records.ts";
import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { height, newSheet, type Paper, type Sheet } from "../../paper/paper.ts";
import { dimensionChecks } from "../facts/dimensions.ts";
import { instruments } from "../facts/instruments.ts";
import { nameOf } from "../facts/people.ts";
import { ndtReports, nonconformities } from "../facts/testing.ts";
import { ndtPersonnel } from "../facts/welders.ts";
import { radiograph } from "./radiograph.ts";
import { daysLater, printed, type OriginalSheet } from "./original.ts";

const methods = {
  VT: "Visual test",
  MT: "Magnetic particle test",
  PT: "Penetrant test",
  RT: "Radiographic test",
  UT: "Ultrasonic test",
} as const;
const listed = (values: readonly string[] | undefined) => (values ?? []).join(", ");

function drawReport(paper: Paper, report: NdtReport): void {
  let sheet = newSheet(paper, `${methods[report.method]}, report ${report.id}`);
  fields(sheet, [
    ["Object", "air receiver, serial TQ423-01"],
    ["Date", printed(report.date).slice(0, 16).replace("T", ", ")],
    ["Procedure", printed(report.procedure).replace("@", " revision ")],
    ["Drawing", printed(report.drawing).replace("@", " revision ")],
    ["Quality level", printed(report.qualityLevel)],
    [
      "Acceptance",
      `${printed(report.acceptance?.standard)}:${printed(report.acceptance?.edition)}, level ${printed(report.acceptance?.level)}`,
    ],
    ["Technique", printed(report.technique)],
    ["Instruments", listed(report.instruments)],
    ...(report.radiography === undefined
      ? []
      : ([
          ["Source, distance", `${printed(report.radiography.source)}, ${printed(report.radiography.distance)}`],
          ["Film class, focus", `${printed(report.radiography.filmClass)}, ${printed(report.radiography.sourceSize)}`],
        ] as const)),
    ...(report.surfaceTemperature === undefined
      ? []
      : ([
          ["Surface", report.surfaceTemperature],
          ["Lighting", "900 lx"],
        ] as const)),
  ]);
  heading(sheet, "Results");
  const film = report.method === "RT";
  table(
    sheet,
    [
      { title: "Joint", share: 8 },
      ...(film ? [{ title: "Film", share: 15 }] : []),
      { title: "From", share: 10, align: "right" },
      { title: "To", share: 10, align: "right" },
      { title: "Length", share: 10, align: "right" },
      ...(film
        ? [
            { title: "Wire", share: 8 },
            { title: "Density", share: 12 },
          ]
        : []),
      { title: "Indications", share: 34 },
      { title: "Result", share: 12 },
    ],
    (report.rows ?? []).map((row) => [
      row.row === undefined || film ? row.joint : `${row.joint} (${row.row})`,
      ...(film ? [printed(row.film)] : []),
      printed(row.from),
      printed(row.to),
      printed(row.length),
      ...(film ? [printed(row.wire), (row.density ?? []).join(" – ")] : []),
      (row.indications ?? [])
        .map((one) =>
          [one.type, one.at === undefined ? "" : `at ${one.at}`, one.length ?? one.size ?? ""]
            .filter((part) => part !== "")
            .join(", "),
        )
        .join("; ") || "none to record",
      printed(row.result),
    ]),
    7.6,
  );
  signatures(sheet, [
    { role: `tested, level 2`, name: nameOf(printed(report.operator)), date: printed(report.date).slice(0, 10) },
    {
      role: "reviewed, level 3",
      name: nameOf(printed(report.reviewer)),
      date: printed(report.date).slice(0, 10),
      stamp: "GLIMMERFIELD\n112",
    },
  ]);
  if (!film) return;
  heading(sheet, "Films, as drawn from the viewer");
  for (const row of report.rows ?? []) {
    if (sheet.y > height - 180) sheet = newSheet(paper, `Report ${report.id}, films`);
    drawFilm(sheet, row);
  }
}

function drawFilm(sheet: Sheet, row: NonNullable<NdtReport["rows"]>[number]): void {
  const number = (text: string | undefined) => Number((text ?? "0").split(" ")[0]);
  const rejected = row.indications?.find(({ verdict }) => verdict === "rejected");
  const long = number(row.to) - number(row.from);
  radiograph(sheet, {
    mark: printed(row.film),
    from: printed(row.from).replace(" mm", ""),
    to: printed(row.to).replace(" mm", ""),
    wire: printed(row.wire),
    ...(rejected !== undefined && {
      defect: [(number(rejected.at) - number(row.from)) / long, number(rejected.length) / long] as const,
    }),
  });
}

const reportSheet = (report: NdtReport): OriginalSheet => {
  const day = printed(report.date).slice(0, 10);
  return {
    id: `ORG-${report.id}`,
    path: `testing/${report.id.toLowerCase()}.pdf`,
    title: `${methods[report.method]}, report ${report.id}`,
    number: `GT-26-423-${report.id}`,
    by: "GLIMMERFIELD",
    day,
    compared: daysLater(day, 2),
    shows: [["ndt-report", report.id]],
    draw: (paper) => {
      drawReport(paper, report);
    },
  };
};

function drawPersonnel(paper: Paper): void {
  for (const one of ndtPersonnel) {
    const sheet = newSheet(paper, "Certificate of testing personnel");
    fields(sheet, [
      ["Certificate", printed(one.certificate)],
      ["Standard", `${printed(one.standard?.standard)}:${printed(one.standard?.edition)}`],
      ["Holder, mark", `${nameOf(one.person)}, ${one.person}`],
      ["Method, level", `${one.method}, level ${printed(one.level)}`],
      ["Sector", printed(one.sector)],
      ["Valid", `${printed(one.issued)} to ${printed(one.validTo)}`],
      ["Near vision tested", printed(one.visionTest)],
      ["Authorised by the employer", printed(one.employerAuthorisation)],
    ]);
    paragraph(
      sheet,
      "The holder is approved for tests of permanent joints of pressure equipment of categories III and IV.",
    );
    signatures(sheet, [
      { role: "for the body", name: nameOf("E2"), date: printed(one.issued), stamp: "PENQUILLITH\n0000" },
    ]);
  }
}

function drawDimensions(paper: Paper, check: DimensionCheck): void {
  const sheet = newSheet(paper, printed(check.title));
  fields(sheet, [
    ["Sheet", check.id],
    ["Date", printed(check.date)],
    ["Drawing", printed(check.drawing).replace("@", " revision ")],
    ["Instruments", listed(check.instruments)],
  ]);
  table(
    sheet,
    [
      { title: "Feature", share: 38 },
      { title: "Nominal", share: 11, align: "right" },
      { title: "From", share: 11, align: "right" },
      { title: "To", share: 11, align: "right" },
      { title: "Measured", share: 32 },
      { title: "Result", share: 11 },
    ],
    (check.rows ?? []).map((row) => [
      row.feature,
      printed(row.nominal),
      printed(row.minimum),
      printed(row.maximum),
      listed(row.measured),
      printed(row.result),
    ]),
  );
  signatures(sheet, [
    { role: "quality control", name: nameOf(printed(check.by)), date: printed(check.date) },
    ...(check.id === "DIM-03"
      ? [{ role: "inspection body", name: nameOf("E1"), date: printed(check.date), stamp: "PENQUILLITH\n0000" }]
      : []),
  ]);
}

function drawNonconformity(paper: Paper): void {
  for (const report of nonconformities) {
    const sheet = newSheet(paper, `Nonconformity report ${report.id}: ${printed(report.title)}`);
    fields(sheet, [
      ["Raised", `${printed(report.raised)} by ${nameOf(printed(report.foundBy))}`],
      ["State", printed(report.state)],
      ["Affected", listed(report.affected).replaceAll(":", " ")],
      ["Pressure related", report.pressureRelated === true ? "yes" : "no"],
      ["Disposition", printed(report.disposition)],
      ["Corrected by", nameOf(printed(report.correctedBy))],
    ]);
    for (const [title, text] of [
      ["Requirement", report.requirement],
      ["Found", report.found],
      ["Cause", report.cause],
      ["Containment", report.containment],
      ["Reason", report.reason],
      ["Correction", report.correction],
      ["Verified by", listed(report.verification).replaceAll(":", " ")],
    ] as const) {
      heading(sheet, title);
      paragraph(sheet, `${printed(text)}.`);
    }
    signatures(sheet, [
      { role: "welding coordinator", name: nameOf("M1"), date: "2026-06-12" },
      { role: "inspection body", name: nameOf("E1"), date: "2026-06-12", stamp: "PENQUILLITH\n0000" },
      { role: "closed, quality control", name: nameOf("D2"), date: printed(report.closed) },
    ]);
  }
}

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

export const testingSheets: readonly OriginalSheet[] = [
  ...ndtReports.map(reportSheet),
  {
    id: "ORG-TESTERS",
    path: "testing/testers.pdf",
    title: "Certificates of the testers",
    number: "PQ-9712-0417 ff.",
    by: "PENQUILLITH",
    day: "2026-02-02",
    compared: "2026-05-21",
    shows: ndtPersonnel.map(({ id }, index) => ["ndt-personnel", id, index + 1]),
    draw: drawPersonnel,
  },
  ...dimensionChecks.map((check): OriginalSheet => ({
    id: `ORG-${check.id}`,
    path: `testing/${check.id.toLowerCase()}.pdf`,
    title: printed(check.title),
    number: `TQ423-10-${check.id}`,
    by: "TARNEQUILL",
    day: printed(check.date),
    compared: daysLater(printed(check.date), 2),
    shows: [["dimension-check", check.id]],
    draw: (paper) => {
      drawDimensions(paper, check);
    },
  })),
  {
    id: "ORG-NCR-01",
    path: "testing/ncr-01.pdf",
    title: "Nonconformity report NCR-01",
    number: "TQ423-16-NCR-01",
    by: "TARNEQUILL",
    day: "2026-06-17",
    compared: "2026-06-18",
    shows: [["nonconformity-report", "NCR-01"]],
    draw: drawNonconformity,
  },
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

import { calibrationSheets } from "./calibrations.ts";
import { dimensionChecks } from "../facts/dimensions.ts";
import { ndtReports, nonconformities } from "../facts/testing.ts";
import type { DimensionCheck } from "../../../src/generated/records.ts";
import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { nameOf } from "../facts/people.ts";
import { ndtPersonnel } from "../facts/welders.ts";
import { daysLater, printed, type OriginalSheet } from "./original.ts";
import { reportSheet } from "./reports.ts";

const listed = (values: readonly string[] | undefined) => (values ?? []).join(", ");

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
  ...calibrationSheets,
];

import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { left, newSheet, type Paper } from "../../paper/paper.ts";
import { bodyCertificates, nameplate } from "../facts/legal.ts";
import { nameOf } from "../facts/people.ts";
import { safetyValve } from "../facts/pressure-test.ts";
import { drawPlate } from "./nameplate.ts";
import { printed, type OriginalSheet } from "./original.ts";
import { drawCertificate, drawDeclaration } from "./legal-papers.ts";
import { drawForming, drawTest } from "./test-papers.ts";

function drawValve(paper: Paper): void {
  const valve = safetyValve;
  const sheet = newSheet(paper, "Certificate of a safety valve");
  fields(sheet, [
    ["Certificate", printed(valve.certificate?.number)],
    ["Date", printed(valve.certificate?.date)],
    ["Tag, serial", `${printed(valve.tag)}, ${printed(valve.serial)}`],
    ["Model, size", `${printed(valve.model)}, ${printed(valve.size)}`],
    ["Type examination", printed(valve.certificate?.typeExamination)],
    ["Category, body", `${printed(valve.category)}, ${printed(valve.bodyNumber)}`],
    ["Flow diameter, area", `${printed(valve.flowDiameter)}, ${printed(valve.flowArea)}`],
    ["Coefficient of discharge Kdr", printed(valve.coefficient)],
    ["Set pressure", printed(valve.setPressure)],
    ["Overpressure, back pressure", `${printed(valve.overpressure)}, ${printed(valve.backPressure)}`],
    ["Medium", `${printed(valve.medium?.name)}, ${printed(valve.medium?.temperature)}`],
    [
      "M, k, Z",
      `${printed(valve.medium?.molarMass)}, ${printed(valve.medium?.isentropicExponent)}, ${printed(valve.medium?.compressibilityFactor)}`,
    ],
    ["Certified capacity", printed(valve.certifiedCapacity)],
    ["Atmospheric pressure", printed(valve.atmosphericPressure)],
    [
      "Stamped on the plate",
      `${printed(valve.plate?.serial)}, ${printed(valve.plate?.setPressure)}, ${printed(valve.plate?.capacity)}`,
    ],
    ["Seal", printed(valve.bench?.sealNumber)],
  ]);
  heading(sheet, `Bench test of ${printed(valve.bench?.date)}, gauge PG-07, dry air`);
  table(
    sheet,
    ["Opening", "Opened at", "Closed at"].map((title) => ({ title, share: 10 })),
    (valve.bench?.readings ?? []).map((row) => [String(row.number), printed(row.pop), printed(row.reseat)]),
    9,
  );
  paragraph(
    sheet,
    `Seat tight at ${printed(valve.bench?.seatTestPressure)}. Sealed with lead seal ${printed(valve.bench?.sealNumber)}.`,
  );
  signatures(sheet, [
    { role: "bench tester", name: nameOf("V1"), date: printed(valve.certificate?.date), stamp: "HOLLYVANE\nBENCH 2" },
  ]);
}

function drawNameplate(paper: Paper): void {
  const sheet = newSheet(paper, "Facsimile of the nameplate");
  drawPlate(sheet, left + 40, sheet.y + 14, true);
  sheet.y += 340;
  paragraph(
    sheet,
    `Rubbing taken after stamping, ${printed(nameplate.fixed)}. Plate fixed with four rivets to its holder at nozzle N6.`,
  );
  signatures(sheet, [
    { role: "shop", name: nameOf("S1"), date: printed(nameplate.fixed) },
    { role: "inspection body", name: nameOf("E1"), date: printed(nameplate.fixed), stamp: "PENQUILLITH\n0000" },
  ]);
}

const sheetOf = (
  id: string,
  path: string,
  title: string,
  number: string,
  by: string,
  day: string,
  compared: string,
) => ({
  id: `ORG-${id}`,
  path,
  title,
  number,
  by,
  day,
  compared,
});

export const completionSheets: readonly OriginalSheet[] = [
  {
    ...sheetOf(
      "FORMING",
      "materials/forming-record.pdf",
      "Forming record of the ends",
      "BE-26-N-077",
      "BOWLTHORNE",
      "2026-05-11",
      "2026-05-12",
    ),
    shows: [["heat-treatment", "HT-01"]],
    draw: drawForming,
  },
  {
    ...sheetOf(
      "HYD-01",
      "testing/hyd-01.pdf",
      "Hydrostatic test",
      "TQ423-11-HYD-01",
      "TARNEQUILL",
      "2026-06-23",
      "2026-06-24",
    ),
    shows: [["pressure-test", "HYD-01"]],
    draw: drawTest,
  },
  {
    ...sheetOf(
      "SV-01",
      "completion/safety-valve.pdf",
      "Certificate of the safety valve",
      "HV-C-55102",
      "HOLLYVANE",
      "2026-06-26",
      "2026-06-30",
    ),
    shows: [["safety-valve", "SV-01"]],
    draw: drawValve,
  },
  {
    ...sheetOf(
      "NP-01",
      "completion/nameplate.pdf",
      "Facsimile of the nameplate",
      "TQ423-12-NP-01",
      "TARNEQUILL",
      "2026-07-08",
      "2026-07-09",
    ),
    shows: [["nameplate", "NP-01"]],
    draw: drawNameplate,
  },
  ...bodyCertificates.map((record): OriginalSheet => ({
    ...sheetOf(
      record.id,
      `completion/${record.id.toLowerCase()}.pdf`,
      printed(record.type),
      printed(record.number),
      "PENQUILLITH",
      printed(record.date),
      record.id === "BC-01" ? "2026-05-14" : "2026-07-15",
    ),
    shows: [["body-certificate", record.id]],
    draw: (paper) => {
      drawCertificate(paper, record);
    },
  })),
  {
    ...sheetOf(
      "EU-01",
      "completion/declaration.pdf",
      "EU declaration of conformity",
      "TQ423-EU-01",
      "TARNEQUILL",
      "2026-07-15",
      "2026-07-16",
    ),
    shows: [["declaration", "EU-01"]],
    draw: drawDeclaration,
  },
];

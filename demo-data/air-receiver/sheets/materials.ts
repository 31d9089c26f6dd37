import type { MaterialCertificate } from "../../../src/generated/records.ts";
import { fields, heading, paragraph, table } from "../../paper/blocks.ts";
import { signatures } from "../../paper/marks.ts";
import { newSheet, type Paper } from "../../paper/paper.ts";
import { certificates } from "../facts/certificates.ts";
import { millApprovals, pieceMarks } from "../facts/materials.ts";
import { nameOf, organisationOf } from "../facts/people.ts";
import { parts } from "../facts/vessel.ts";
import { batches } from "../facts/welders.ts";
import { daysLater, printed, type OriginalSheet } from "./original.ts";
import { drawCertificate } from "./certificate.ts";

const byMill = (certificate: MaterialCertificate): OriginalSheet => ({
  id: `ORG-${certificate.id}`,
  path: `materials/${certificate.id.toLowerCase()}.pdf`,
  title: `Inspection certificate ${printed(certificate.number)}`,
  number: printed(certificate.number),
  by: printed(certificate.mill),
  day: printed(certificate.received),
  compared: "2026-05-12",
  shows: [["material-certificate", certificate.id]],
  draw: (paper) => {
    drawCertificate(paper, certificate);
  },
});

function drawApprovals(paper: Paper): void {
  for (const approval of millApprovals) {
    const sheet = newSheet(paper, "Certificate of a quality-assurance system of a material maker");
    fields(sheet, [
      ["Certificate", printed(approval.certificate)],
      ["Maker of the material", organisationOf(approval.mill).name],
      ["Works", printed(organisationOf(approval.mill).address)],
      ["Products", (approval.forms ?? []).join(", ")],
      ["Valid from", printed(approval.validFrom)],
      ["Valid to", printed(approval.validTo)],
    ]);
    heading(sheet, "Scope");
    paragraph(sheet, `${printed(approval.scope)}.`);
    paragraph(
      sheet,
      "The system was assessed specifically for materials. Documents of type 3.1 that the maker issues within this scope are accepted as certificates of specific product control.",
    );
    signatures(sheet, [
      { role: "for the body", name: nameOf("E2"), date: printed(approval.validFrom), stamp: "PENQUILLITH\n0000" },
    ]);
  }
}

function drawMarks(paper: Paper): void {
  const sheet = newSheet(paper, "Marking list and cutting list");
  table(
    sheet,
    [
      { title: "Part", share: 6 },
      { title: "Name", share: 34 },
      { title: "Certificate, heat", share: 20 },
      { title: "Piece", share: 14 },
      { title: "New mark", share: 12 },
      { title: "Area, length", share: 12 },
      { title: "Marked", share: 12 },
      { title: "Cut", share: 12 },
    ],
    pieceMarks.map((mark) => [
      mark.part,
      printed(parts.find(({ id }) => id === mark.part)?.name),
      printed(mark.certificateRow).replace("#", ", "),
      printed(mark.pieceNumber),
      printed(mark.mark),
      mark.area ?? mark.length ?? "",
      printed(mark.transfers?.[0]?.date),
      printed(mark.cut),
    ]),
    7.5,
  );
  paragraph(
    sheet,
    "All marks with hard stamps, 6 mm, low stress, before the piece was cut off. Pipe for N4 and N5: both pieces stamped on the bar.",
  );
  signatures(sheet, [
    { role: "marked by", name: nameOf("S1"), date: "2026-05-18" },
    { role: "looked on", name: nameOf("D2"), date: "2026-05-18" },
    { role: "inspection body", name: nameOf("E1"), date: "2026-05-19", stamp: "PENQUILLITH\n0000" },
  ]);
}

function drawBatches(paper: Paper): void {
  for (const batch of batches) {
    const sheet = newSheet(paper, `Inspection document ${printed(batch.certificate?.type)} for a welding consumable`);
    fields(sheet, [
      ["Number", printed(batch.certificate?.number)],
      ["Date", printed(batch.certificate?.issued)],
      ["Product", `${printed(batch.type)}, ${printed(batch.tradeName)}`],
      ["Designation", printed(batch.designation)],
      ["Batch", printed(batch.certificate?.batch)],
      ["Diameter", printed(batch.diameter)],
      ["Quantity", printed(batch.quantity)],
      ["Received", `${printed(batch.received)}, store number ${batch.id}`],
    ]);
    paragraph(
      sheet,
      "The product complies with its standard. The figures of the batch are held by the maker and shown on request.",
    );
    signatures(sheet, [
      { role: "quality control of the supplier", name: "R. Fluxborne", date: printed(batch.certificate?.issued) },
    ]);
  }
}

export const materialSheets: readonly OriginalSheet[] = [
  ...certificates.map(byMill),
  {
    id: "ORG-MILLS",
    path: "materials/mill-approvals.pdf",
    title: "Approvals of the material makers",
    number: "PQ-QS-2026-TQ",
    by: "PENQUILLITH",
    day: "2026-03-20",
    compared: "2026-05-12",
    shows: millApprovals.map(({ id }, index) => ["mill-approval", id, index + 1]),
    draw: drawApprovals,
  },
  {
    id: "ORG-MARKS",
    path: "materials/marking-list.pdf",
    title: "Marking list and cutting list",
    number: "TQ423-06-ML-01",
    by: "TARNEQUILL",
    day: "2026-05-19",
    compared: daysLater("2026-05-19", 2),
    shows: pieceMarks.map(({ id }) => ["piece-mark", id]),
    draw: drawMarks,
  },
  {
    id: "ORG-CONSUMABLES",
    path: "materials/consumables.pdf",
    title: "Documents of the welding consumables",
    number: "SA-77120 ff.",
    by: "SORRELARC",
    day: "2026-05-18",
    compared: "2026-05-20",
    shows: batches.map(({ id }, index) => ["consumable-batch", id, index + 1]),
    draw: drawBatches,
  },
];

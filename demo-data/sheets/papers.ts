import type { RecordTypes } from "../generated/records.ts";
import { orderOf, type Facts } from "../book/facts.ts";
import type { Kind } from "../book/records.ts";
import { drawDimensions } from "./dimension-report.ts";
import { drawHeatTreatment, furnaceWords } from "./heat-treatment.ts";
import { drawBodyCertificate, drawDeclaration } from "./legal-papers.ts";
import { drawMaterialCertificate } from "./material-certificate.ts";
import { drawFacsimile } from "./nameplate.ts";
import { drawReport, testOf } from "./ndt-report.ts";
import { drawNonconformity } from "./nonconformity.ts";
import { dayIn, printed, weekdayLater, type OriginalSheet } from "./original.ts";
import { drawPressureTest } from "./pressure-test.ts";
import { drawProductionTest, drawRepair } from "./repair.ts";
import { drawValve } from "./safety-valve.ts";
import { drawQualification, drawWeldingProcedure } from "./welding-papers.ts";

/** What the cover of an original says. */
export type Cover = Pick<OriginalSheet, "id" | "path" | "title" | "number" | "by" | "day">;

/** An original of one record; its data are compared with it two days later. */
export function paperOf(
  kind: Kind,
  { id }: { readonly id: string },
  cover: Omit<Cover, "id"> & Partial<Pick<Cover, "id">>,
  draw: OriginalSheet["draw"],
): OriginalSheet {
  return { id: `ORG-${id}`, ...cover, compared: weekdayLater(cover.day, 2), shows: [[kind, id]], draw };
}

/** An original that holds several records of a kind, one after the other. */
export function binderOf<K extends Kind>(
  kind: K,
  records: readonly RecordTypes[K][],
  cover: Cover,
  drawEach: (paper: Parameters<OriginalSheet["draw"]>[0], record: RecordTypes[K]) => void,
): OriginalSheet {
  return {
    ...cover,
    compared: weekdayLater(cover.day, 2),
    shows: records.map(({ id }) => [kind, id]),
    draw: (paper) => {
      for (const record of records) drawEach(paper, record);
    },
  };
}

type PaperOf<K extends Kind> = (facts: Facts, record: RecordTypes[K]) => OriginalSheet;

const place = (folder: string, { id }: { readonly id: string }) => `${folder}/${id.toLowerCase()}.pdf`;

export const materialCertificate: PaperOf<"material-certificate"> = (facts, record) =>
  paperOf(
    "material-certificate",
    record,
    {
      path: place("materials", record),
      title: `Inspection certificate ${printed(record.number)}`,
      number: printed(record.number),
      by: record.mill ?? record.supplier ?? facts.maker,
      day: printed(record.received),
    },
    (paper) => drawMaterialCertificate(paper, facts, record),
  );

export const weldingProcedure: PaperOf<"welding-procedure"> = (facts, record) =>
  paperOf(
    "welding-procedure",
    record,
    {
      path: place("welding", record),
      title: `Welding procedure ${record.id}`,
      number: record.id,
      by: facts.maker,
      day: printed(record.revisions?.at(-1)?.approved),
    },
    (paper) => drawWeldingProcedure(paper, facts, record),
  );

export const procedureQualification: PaperOf<"procedure-qualification"> = (facts, record) =>
  paperOf(
    "procedure-qualification",
    record,
    {
      path: place("welding", record),
      title: `Procedure qualification ${record.id}`,
      number: printed(record.certificate),
      by: record.approvedBy ?? facts.body,
      day: printed(record.approved),
    },
    (paper) => drawQualification(paper, facts, record),
  );

export const heatTreatment: PaperOf<"heat-treatment"> = (facts, record) =>
  paperOf(
    "heat-treatment",
    record,
    {
      path: place("welding", record),
      title: `Heat treatment ${record.id}`,
      number: printed(record.charge),
      by: facts.maker,
      day: dayIn(record.finished),
    },
    (paper) => drawHeatTreatment(paper, facts, record, furnaceWords(record)),
  );

export const repair: PaperOf<"repair"> = (facts, record) =>
  paperOf(
    "repair",
    record,
    {
      path: `welding/repair-${record.id.toLowerCase()}.pdf`,
      title: `Repair ${record.id}`,
      number: `${orderOf(facts)}-07-R-${String(facts.all("repair").indexOf(record) + 1).padStart(2, "0")}`,
      by: facts.maker,
      day: dayIn(record.date),
    },
    (paper) => drawRepair(paper, facts, record),
  );

export const productionTest: PaperOf<"production-test"> = (facts, record) =>
  paperOf(
    "production-test",
    record,
    {
      path: place("welding", record),
      title: `Production test plate ${printed(record.mark)}`,
      number: printed(record.report),
      by: record.laboratory ?? facts.maker,
      day: printed(record.date),
    },
    (paper) => drawProductionTest(paper, facts, record),
  );

export const ndtReport: PaperOf<"ndt-report"> = (facts, record) =>
  paperOf(
    "ndt-report",
    record,
    {
      path: place("testing", record),
      title: `${testOf(record.method)}, report ${record.id}`,
      number: `GT-${String(facts.equipment.year).slice(2)}-${orderOf(facts).slice(2)}-${record.id}`,
      by: record.laboratory ?? facts.maker,
      day: dayIn(record.date),
    },
    (paper) => drawReport(paper, facts, record),
  );

export const dimensionCheck: PaperOf<"dimension-check"> = (facts, record) =>
  paperOf(
    "dimension-check",
    record,
    {
      path: place("testing", record),
      title: printed(record.title),
      number: `${orderOf(facts)}-10-${record.id}`,
      by: facts.maker,
      day: printed(record.date),
    },
    (paper) => drawDimensions(paper, facts, record, facts.all("dimension-check").at(-1) === record),
  );

export const nonconformityReport: PaperOf<"nonconformity-report"> = (facts, record) =>
  paperOf(
    "nonconformity-report",
    record,
    {
      path: place("testing", record),
      title: `Nonconformity report ${record.id}`,
      number: `${orderOf(facts)}-16-${record.id}`,
      by: facts.maker,
      day: printed(record.closed ?? record.raised),
    },
    (paper) => drawNonconformity(paper, facts, record),
  );

export const pressureTest: PaperOf<"pressure-test"> = (facts, record) =>
  paperOf(
    "pressure-test",
    record,
    {
      path: place("testing", record),
      title: "Hydrostatic test",
      number: `${orderOf(facts)}-11-${record.id}`,
      by: facts.maker,
      day: dayIn(record.date),
    },
    (paper) => drawPressureTest(paper, facts, record),
  );

export const safetyValve: PaperOf<"safety-valve"> = (facts, record) =>
  paperOf(
    "safety-valve",
    record,
    {
      path: place("completion", record),
      title: `Certificate of the safety valve ${printed(record.tag)}`,
      number: printed(record.certificate?.number),
      by: record.manufacturer ?? facts.maker,
      day: printed(record.certificate?.date),
    },
    (paper) => drawValve(paper, facts, record),
  );

/** The nameplate; `holder` says what it is fixed to. */
export const nameplate = (facts: Facts, record: RecordTypes["nameplate"], holder: string): OriginalSheet =>
  paperOf(
    "nameplate",
    record,
    {
      path: "completion/nameplate.pdf",
      title: "Facsimile of the nameplate",
      number: `${orderOf(facts)}-12-${record.id}`,
      by: facts.maker,
      day: printed(record.fixed),
    },
    (paper) => drawFacsimile(paper, facts, record, holder),
  );

export const bodyCertificate: PaperOf<"body-certificate"> = (facts, record) =>
  paperOf(
    "body-certificate",
    record,
    {
      path: place("completion", record),
      title: printed(record.type),
      number: printed(record.number),
      by: record.body ?? facts.body,
      day: printed(record.date),
    },
    (paper) => drawBodyCertificate(paper, facts, record),
  );

export const declaration: PaperOf<"declaration"> = (facts, record) =>
  paperOf(
    "declaration",
    record,
    {
      path: "completion/declaration.pdf",
      title: "EU declaration of conformity",
      number: printed(record.number),
      by: facts.maker,
      day: printed(record.date),
    },
    (paper) => drawDeclaration(paper, facts, record),
  );

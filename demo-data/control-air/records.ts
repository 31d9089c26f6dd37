import { file, type RecordFile } from "../book/records.ts";
import { dimensionChecks } from "./facts/dimensions.ts";
import { bodyCertificates, declaration, issue, nameplate } from "./facts/legal.ts";
import { heatTreatments, pieceMarks, productionTests } from "./facts/materials.ts";
import { documents, drawings } from "./facts/papers.ts";
import { pressureTest, safetyValve } from "./facts/pressure-test.ts";
import { procedures } from "./facts/procedures.ts";
import { instruments, ndtReports } from "./facts/testing.ts";
import { book, equipment, joints, parts } from "./facts/vessel.ts";
import { weldLogs } from "./facts/welding.ts";

/** Every record file of the book itself but plan, calculation sheets and `original` records, without sources. */
export const recordFiles = (cutOff: string): readonly RecordFile[] => [
  file("book.json", "book", [book]),
  file("issue.json", "issue", [issue(cutOff)]),
  file("design/equipment.json", "equipment", [equipment]),
  file("design/parts.json", "part", parts),
  file("design/joints.json", "joint", joints),
  file("design/drawings.json", "drawing", drawings),
  file("design/documents.json", "document", documents),
  file("materials/marks.json", "piece-mark", pieceMarks),
  file("materials/heat-treatment.json", "heat-treatment", heatTreatments),
  file("welding/logs.json", "weld-log", weldLogs),
  file("welding/production-tests.json", "production-test", productionTests),
  file(
    "testing/procedures.json",
    "procedure",
    procedures.map(({ record }) => record),
  ),
  file("testing/instruments.json", "instrument", instruments),
  file("testing/reports.json", "ndt-report", ndtReports),
  file("testing/dimensions.json", "dimension-check", dimensionChecks),
  file("testing/pressure-test.json", "pressure-test", [pressureTest]),
  file("completion/safety-valve.json", "safety-valve", [safetyValve]),
  file("completion/nameplate.json", "nameplate", [nameplate]),
  file("completion/body-certificates.json", "body-certificate", bodyCertificates),
  file("completion/declaration.json", "declaration", [declaration]),
];

import { file, type Edition, type RecordFile } from "../book/records.ts";
import { calculationSheets } from "./facts/calculations.ts";
import { coatingReport } from "./facts/coating.ts";
import { dimensionChecks } from "./facts/dimensions.ts";
import { bodyCertificates, declaration, issueOf, nameplate } from "./facts/legal.ts";
import { heatTreatments, pieceMarks } from "./facts/materials.ts";
import { documents, drawings } from "./facts/papers.ts";
import { inspectionSteps } from "./facts/plan.ts";
import { pressureTest, safetyValve } from "./facts/pressure-test.ts";
import { ndtReports, nonconformities } from "./facts/testing.ts";
import { book, equipment, joints, parts } from "./facts/vessel.ts";
import { productionTests, repairs } from "./facts/repairs.ts";
import { weldLogs } from "./facts/welding.ts";

const welds = (ids: RegExp) => weldLogs.filter(({ joint }) => ids.test(joint));
const tests = (method: string) => ndtReports.filter((report) => report.method === method);

/** Every record file of the final book itself but `original` records, without sources. */
export function recordFiles({ revision, cutOff }: Edition): readonly RecordFile[] {
  return [
    file("book.json", "book", [book]),
    file("issue.json", "issue", [issueOf(revision, cutOff)]),
    file("design/equipment.json", "equipment", [equipment]),
    file("design/parts.json", "part", parts),
    file("design/joints.json", "joint", joints),
    file("design/drawings.json", "drawing", drawings),
    file("design/documents.json", "document", documents),
    file("design/calculations.json", "calculation-sheet", calculationSheets),
    file("plan/steps.json", "inspection-step", inspectionSteps),
    file("materials/marks.json", "piece-mark", pieceMarks),
    file("materials/heat-treatment.json", "heat-treatment", heatTreatments),
    file("welding/seams.json", "weld-log", welds(/^[LC]/)),
    file("welding/nozzles.json", "weld-log", welds(/^N/)),
    file("welding/repairs.json", "repair", repairs),
    file("welding/production-tests.json", "production-test", productionTests),
    file("testing/visual.json", "ndt-report", tests("VT")),
    file("testing/radiography.json", "ndt-report", tests("RT")),
    file("testing/surface.json", "ndt-report", [...tests("MT"), ...tests("PT")]),
    file("testing/dimensions.json", "dimension-check", dimensionChecks),
    file("testing/coating.json", "coating-report", [coatingReport]),
    file("testing/pressure-test.json", "pressure-test", [pressureTest]),
    file("testing/nonconformities.json", "nonconformity-report", nonconformities),
    file("completion/safety-valve.json", "safety-valve", [safetyValve]),
    file("completion/nameplate.json", "nameplate", [nameplate]),
    file("completion/body-certificates.json", "body-certificate", bodyCertificates),
    file("completion/declaration.json", "declaration", [declaration]),
  ];
}

import type { RecordFile } from "../../book/records.ts";
import { certificates } from "./certificates.ts";
import { coatingReport } from "./coating.ts";
import { deviations } from "./deviations.ts";
import { dimensionChecks } from "./dimensions.ts";
import { documents } from "./documents.ts";
import { drawings } from "./drawings.ts";
import { instruments } from "./instruments.ts";
import { bodyCertificate, declaration, issue, nameplate } from "./legal.ts";
import { millApprovals, pieceMarks } from "./marks.ts";
import { organisations, people } from "./people.ts";
import { inspectionSteps } from "./plan.ts";
import { pressureTest } from "./pressure-test.ts";
import { safetyValves } from "./safety-valves.ts";
import { procedures } from "./shop-procedures.ts";

/** Supply and completion: who, what of, to which papers, and what was found when the boiler was finished. */
export const supplyFiles: readonly RecordFile[] = [
  { path: "issue.json", kind: "issue", records: [issue] },
  { path: "design/drawings.json", kind: "drawing", records: drawings },
  { path: "design/documents.json", kind: "document", records: documents },
  { path: "people/organisations.json", kind: "organisation", records: organisations },
  { path: "people/people.json", kind: "person", records: people },
  { path: "plan/steps.json", kind: "inspection-step", records: inspectionSteps },
  { path: "procedures/procedures.json", kind: "procedure", records: procedures.map(({ record }) => record) },
  { path: "materials/certificates.json", kind: "material-certificate", records: certificates },
  { path: "materials/mills.json", kind: "mill-approval", records: millApprovals },
  { path: "materials/marks.json", kind: "piece-mark", records: pieceMarks },
  { path: "testing/dimensions.json", kind: "dimension-check", records: dimensionChecks },
  { path: "testing/coating.json", kind: "coating-report", records: [coatingReport] },
  { path: "testing/pressure-test.json", kind: "pressure-test", records: [pressureTest] },
  { path: "testing/instruments.json", kind: "instrument", records: instruments },
  { path: "completion/safety-valves.json", kind: "safety-valve", records: safetyValves },
  { path: "completion/nameplate.json", kind: "nameplate", records: [nameplate] },
  { path: "completion/body-certificates.json", kind: "body-certificate", records: [bodyCertificate] },
  { path: "completion/declaration.json", kind: "declaration", records: [declaration] },
  { path: "completion/deviations.json", kind: "deviation", records: deviations },
];

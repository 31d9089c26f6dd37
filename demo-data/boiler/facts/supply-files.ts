import { file, type RecordFile } from "../record-file.ts";
import { answeredQueries, deviations } from "./answers.ts";
import { certificates } from "./certificates.ts";
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
  file("issue.json", "issue", [issue]),
  file("design/drawings.json", "drawing", drawings),
  file("design/documents.json", "document", documents),
  file("people/organisations.json", "organisation", organisations),
  file("people/people.json", "person", people),
  file("plan/steps.json", "inspection-step", inspectionSteps),
  file(
    "procedures/procedures.json",
    "procedure",
    procedures.map(({ record }) => record),
  ),
  file("materials/certificates.json", "material-certificate", certificates),
  file("materials/mills.json", "mill-approval", millApprovals),
  file("materials/marks.json", "piece-mark", pieceMarks),
  file("testing/dimensions.json", "dimension-check", dimensionChecks),
  file("testing/pressure-test.json", "pressure-test", [pressureTest]),
  file("testing/instruments.json", "instrument", instruments),
  file("completion/safety-valves.json", "safety-valve", safetyValves),
  file("completion/nameplate.json", "nameplate", [nameplate]),
  file("completion/body-certificates.json", "body-certificate", [bodyCertificate]),
  file("completion/declaration.json", "declaration", [declaration]),
  file("completion/answers.json", "answered-query", answeredQueries),
  file("completion/deviations.json", "deviation", deviations),
];

import type { RecordFile } from "../../book/records.ts";
import { batches } from "./consumables.ts";
import { nonconformities } from "./nonconformities.ts";
import { procedureQualifications } from "./procedure-qualifications.ts";
import { radiographicReports } from "./reports-radiography.ts";
import { magneticReports, penetrantReports, ultrasonicReports } from "./reports-surface.ts";
import { visualReports } from "./reports-visual.ts";
import { repairs } from "./repairs.ts";
import { testingProcedures } from "./testing-procedures.ts";
import { weldLogs } from "./weld-logs.ts";
import { ndtPersonnel, welderQualifications } from "./welders.ts";
import { weldingProcedures } from "./welding-procedures.ts";

/** Logs of the joints whose number begins like this. */
const welds = (begin: RegExp) => weldLogs.filter(({ joint }) => begin.test(joint));

/** Welding and testing: who welded and tested what, to which procedure, with what result. */
export const weldingFiles: readonly RecordFile[] = [
  { path: "people/welders.json", kind: "welder-qualification", records: welderQualifications },
  { path: "people/testers.json", kind: "ndt-personnel", records: ndtPersonnel },
  { path: "procedures/testing-procedures.json", kind: "procedure", records: testingProcedures },
  { path: "procedures/welding-procedures.json", kind: "welding-procedure", records: weldingProcedures },
  { path: "procedures/qualifications.json", kind: "procedure-qualification", records: procedureQualifications },
  { path: "materials/consumables.json", kind: "consumable-batch", records: batches },
  { path: "welding/seams.json", kind: "weld-log", records: welds(/^(L|C|FS|FC|WL)\d$/) },
  { path: "welding/corners.json", kind: "weld-log", records: welds(/^[EK]/) },
  { path: "welding/flanges.json", kind: "weld-log", records: welds(/^F\d\d/) },
  { path: "welding/branches.json", kind: "weld-log", records: welds(/^[NM]/) },
  { path: "welding/stays.json", kind: "weld-log", records: welds(/^S/) },
  { path: "welding/attachments.json", kind: "weld-log", records: welds(/^A/) },
  { path: "welding/repairs.json", kind: "repair", records: repairs },
  { path: "testing/visual.json", kind: "ndt-report", records: visualReports },
  { path: "testing/radiography.json", kind: "ndt-report", records: radiographicReports },
  { path: "testing/ultrasonic.json", kind: "ndt-report", records: ultrasonicReports },
  { path: "testing/surface.json", kind: "ndt-report", records: [...magneticReports, ...penetrantReports] },
  { path: "testing/nonconformities.json", kind: "nonconformity-report", records: nonconformities },
];

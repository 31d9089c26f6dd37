import { testersOf } from "../../shop/testers.ts";
import { welderQualificationsOf } from "../../shop/welder-qualifications.ts";

/** Who may weld and test what, on every day of the order; nobody welds outside of these. */
export const welderQualifications = welderQualificationsOf(
  "WQ-03-3 WQ-03-4 WQ-07-3 WQ-07-4 WQ-07-5 WQ-12-1 WQ-12-2 WQ-15-1 WQ-19-1 WQ-19-2 WQ-19-3 WQ-19-4 WQ-19-5",
);
export const ndtPersonnel = testersOf("VT", "MT", "PT", "RT", "UT");

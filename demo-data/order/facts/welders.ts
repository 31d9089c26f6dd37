import { testersOf } from "../../shop/testers.ts";
import { welderQualificationsOf } from "../../shop/welder-qualifications.ts";

export const welderQualifications = welderQualificationsOf("WQ-03-1 WQ-03-2 WQ-03-3 WQ-07-1 WQ-07-2");
export const ndtPersonnel = testersOf("VT", "MT", "PT", "RT");

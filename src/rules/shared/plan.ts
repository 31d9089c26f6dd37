import { commonPractice } from "../../model/basis.ts";

/** What a plan of inspections goes by. */
export const inspectionPlan = commonPractice(
  "inspection and test plan: what each party does at a step, and what it leaves on the plan",
);
